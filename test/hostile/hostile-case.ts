/** How a case of the hostile library is written down. The classes are those of the field: one file each, beside this one. */
import { readFileSync } from 'node:fs';

export interface Hostile {
  /** What is tried, in words. */
  readonly name: string;
  /** Name of the pack's folder; bytes where the name is no UTF-8; `hostile-<class>-<number>` where nobody says. */
  readonly folder?: string | Buffer;
  /** Files of the pack by their names. */
  readonly files?: Readonly<Record<string, string | Buffer>>;
  /** Lays into the folder what is no plain file: links, pipes. `outside` is a folder beside the library. */
  readonly make?: (folder: string, outside: string) => void;
  /** Every finding that stops or warns: `line code`, with the file's name before it where that is not pack.md; `folder` for the folder itself. */
  readonly told: readonly string[];
  /** Whether the pack may be published in spite of it. */
  readonly published: boolean;
  /** The body alone, where nothing else is hostile. */
  readonly body?: string;
  /** Texts that the family page must show, letter for letter. */
  readonly shows?: readonly string[];
}

export interface HostileClass {
  readonly class: string;
  readonly cases: readonly Hostile[];
}

/** A pack that nothing is told about. Its body begins on line `bodyLine`. */
export const sound = readFileSync(new URL('../packs/sound/the-wheelbarrow-goes-home/pack.md', import.meta.url), 'utf8').replace(/\r\n/g, '\n');
const front = sound.slice(0, sound.indexOf('\n---\n', 4) + 5);
/** Line of the file on which the texts given to `withBody` begin. */
export const bodyLine = front.split('\n').length + 1;

/** True in a run that takes its time: everything in its full size. */
export const whole = process.env['BOOKFELLOW_WHOLE'] === '1';
/** A size as it stands in the list of faults; a twentieth of it in an ordinary run. */
export const many = (count: number): number => (whole ? count : Math.ceil(count / 20));

/** Most characters of a body that is read at all. */
const longest = 60_000;
/** A part repeated as often as the list of faults has it, or as fits into a share of a body; a twentieth of that in an ordinary run. */
export const fill = (part: string, count: number, share = 1): string => part.repeat(many(Math.min(count, Math.floor((longest * share - 100) / part.length))));

/** The sound pack with a body of one's own. */
export const withBody = (body: string | Buffer): Buffer => Buffer.concat([Buffer.from(`${front}\n`), Buffer.from(body), Buffer.from('\n')]);
/** The sound pack with a part of its text exchanged. */
export function withPart(part: string, by: string): string {
  if (!sound.includes(part)) throw new Error(`"${part}" is not in the sound pack`);
  return sound.replace(part, () => by);
}

/** A case of a body that is published: what it is told, by lines of the body. */
export function body(name: string, text: string, told: readonly (readonly [line: number, code: string])[] = [], shows: readonly string[] = []): Hostile {
  const found = told.map(([line, code]) => `${bodyLine + line - 1} ${code}`);
  return { name, body: text, files: { 'pack.md': withBody(text) }, told: found, published: true, shows };
}

/** A case of a whole file that is not published. */
export function refused(name: string, text: string | Buffer, ...told: readonly string[]): Hostile {
  return { name, files: { 'pack.md': text }, told, published: false };
}
