import { copyFileSync, linkSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { mkdir, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { hashOf } from './code-mark.ts';
import { readSealed, sealed, writeWhole } from './kept.ts';
import type { Staging } from './publish.ts';
import { fileAt } from './site-folder.ts';

/**
 * The files of a new site that the old one has already. A record beside the site says of each file what it was made of (its mark),
 * and how the file lay there; where both still hold, the new site gets the same file by a second name, and nothing is made or written.
 */

export interface Sized {
  /** Hash of the content. */
  readonly hash: string;
  readonly bytes: number;
}

interface Noted extends Sized {
  readonly mark: string;
  /** The file's time of change in whole seconds, as it was published; absent of one that was not published yet. */
  readonly seconds?: number;
}

interface Entry extends Noted {
  readonly seconds: number;
}

export interface KeptSite {
  /** Puts the old site's file into the new one. False where there is none that was made of the same. */
  take(url: string, mark: string): boolean;
  /** Writes a file into the new site; one with a mark may be taken by the next build. */
  write(url: string, content: string | Uint8Array, mark?: string): void;
  /** Notes a file that somebody else wrote into the new site. */
  note(url: string, content: string | Uint8Array, mark: string): void;
  /** The same for a file that was copied, whose content is read again. */
  noteFile(url: string, mark: string): void;
  /** Size and hash of a file that was taken, written or noted; undefined of others. */
  sized(url: string): Sized | undefined;
  /** Makes room for a file that somebody else writes, and tells where. */
  makeRoom(url: string): string;
  /** Files of the old site that the new one has not taken. */
  notTaken(): readonly string[];
  /** Forgets the record before the old site goes: from here to `save` a build that is killed leaves none, and the next makes everything. */
  forget(): Promise<void>;
  /** Writes the record of the new site, given the times that its files were published with. */
  save(times: ReadonlyMap<string, number>): Promise<void>;
}

/**
 * @param cache Where the record is kept, by the site's place.
 * @param staging The place of the old site, and the folder of the new one; on the same disk.
 */
export async function keptSite(cache: string, { place, site: folder }: Pick<Staging, 'place' | 'site'>): Promise<KeptSite> {
  const file = join(cache, 'sites', `${hashOf(resolve(place))}.json`);
  const before = await readRecord(file);
  const now = new Map<string, Noted>();
  const note = (url: string, content: string | Uint8Array, mark: string): void => {
    now.set(url, { mark, hash: hashOf(content), bytes: typeof content === 'string' ? Buffer.byteLength(content) : content.length });
  };
  return {
    take: (url, mark) => {
      const entry = before.get(url);
      if (entry?.mark !== mark) return false;
      const old = join(place, url);
      const status = fileAt(old);
      if (status?.size !== entry.bytes || status.mtimeMs !== entry.seconds * 1000) return false;
      if (!folder.hasSame(url, status)) sameFile(old, folder.makeRoom(url), entry.seconds);
      now.set(url, entry);
      return true;
    },
    write: (url, content, mark) => {
      writeFileSync(folder.makeRoom(url), content);
      if (mark !== undefined) note(url, content, mark);
    },
    note,
    noteFile: (url, mark) => {
      note(url, readFileSync(join(folder.folder, url)), mark);
    },
    sized: (url) => now.get(url),
    makeRoom: (url) => folder.makeRoom(url),
    notTaken: () => [...before.keys()].filter((url) => now.get(url) !== before.get(url)),
    forget: () => rm(file, { recursive: true, force: true }),
    save: async (times) => {
      const entries = [...now].flatMap(([url, { mark, hash, bytes, seconds: taken }]) => {
        const seconds = times.get(url) ?? taken;
        return seconds === undefined ? [] : [[url, mark, hash, bytes, seconds] as const];
      });
      // Without a record the next build makes everything; that is slower and no fault.
      await mkdir(dirname(file), { recursive: true })
        .then(() => writeWhole(file, sealed(JSON.stringify(entries))))
        .catch(() => undefined);
    },
  };
}

/** A second name for a file. Nothing is ever written over a file of a site, so one cannot change with the other. */
function sameFile(old: string, path: string, seconds: number): void {
  try {
    linkSync(old, path);
  } catch (error) {
    // Some disks have no second names, and some only so many.
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    copyFileSync(old, path);
    utimesSync(path, seconds, seconds);
  }
}

async function readRecord(file: string): Promise<ReadonlyMap<string, Entry>> {
  const text = (await readSealed(file)) ?? '[]';
  const entries = JSON.parse(text) as readonly (readonly [string, string, string, number, number])[];
  return new Map(entries.map(([url, mark, hash, bytes, seconds]) => [url, { mark, hash, bytes, seconds }]));
}
