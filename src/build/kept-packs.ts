import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { retirementAhead } from '../core/check/check-retired.ts';
import { reviewDate } from '../core/check/review-date.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { Places, Source } from '../core/pack/pack.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { throughRetirement, throughStages } from '../outputs/through-stages.ts';
import { codeMark, hashOf } from './code-mark.ts';
import { writeWhole } from './kept.ts';
import { markPack } from './marks.ts';

/**
 * What a pack was found to be is kept by everything that it depends on: its text and what lies beside it, the library's
 * settings, and the code. Most builds change one pack of many.
 */

/** A pack as far as it came, with what was told about it on the way. Of its file nothing is held but the name: a large library's texts would fill the memory. */
export interface Looked {
  readonly source: Pick<Source, 'slug' | 'file' | 'owner'>;
  readonly pack: PlannedPack | undefined;
  readonly retired?: RetiredPack;
  readonly findings: readonly Finding[];
}

export interface PackKeeper {
  /** The pack of a source: as it was kept, or read, checked, measured and planned now. `today` is the day that dates are held against. */
  look(source: Source, today: string): Promise<Looked>;
  /** Paths of what was taken or put into the cache. */
  readonly used: ReadonlySet<string>;
}

/**
 * A keeper for one run over a library.
 *
 * @param cache The library's folder for what can be made again; packs are kept in its `packs/`. Nothing is kept where it is undefined.
 */
export async function packKeeper(library: Library, cache: string | undefined): Promise<PackKeeper> {
  const around = JSON.stringify([await codeMark(), library]);
  const folder = cache === undefined ? undefined : join(cache, 'packs');
  const used = new Set<string>();
  if (folder !== undefined) await mkdir(folder, { recursive: true }).catch(() => undefined);
  return {
    used,
    look: async (source, today) => {
      // A day decides over it, and it is read in no time.
      const retired = throughRetirement(source, library, today);
      if (retired) return { ...retired, source: nameOf(source) };
      const mark = hashOf(around + JSON.stringify(source));
      const path = folder === undefined ? undefined : join(folder, mark);
      const kept = path === undefined ? undefined : readKept(path);
      const { pack, findings } = kept ?? lookAt(source, library);
      if (path !== undefined) {
        used.add(path);
        if (!kept) await keep(path, { pack, findings });
      }
      if (pack) markPack(pack, mark);
      // What is told of dates changes from day to day, so it is not kept.
      const ofDates = pack ? datedRules.flatMap((rule) => [...rule(pack, { today, roster: [], contact: '' })]) : [];
      return { source: nameOf(source), pack, findings: [...findings, ...ofDates] };
    },
  };
}

/** Rules that hold a pack against the day. */
const datedRules = [reviewDate, retirementAhead];

function nameOf({ slug, file, owner }: Source): Looked['source'] {
  return { slug, file, ...(owner && { owner }) };
}

type Kept = Pick<Looked, 'pack' | 'findings'>;

function lookAt(source: Source, library: Library): Kept {
  const { pack, findings } = throughStages(source, library, undefined);
  return { pack: pack && { ...pack, places: nearTop(pack.places) }, findings };
}

/** The places of fields and of their parts. Findings about what lies deeper have been made by now, and places are half of a pack. */
function nearTop(places: Places): Places {
  return Object.fromEntries(Object.entries(places).filter(([steps]) => steps.split('.', 3).length < 3 && !steps.endsWith('.*')));
}

/** Bytes of the hash that stands before each kept pack, so that a damaged one is not believed. */
const hashLength = 32;

function readKept(path: string): Kept | undefined {
  const bytes = bytesAt(path);
  if (bytes === undefined) return undefined;
  const content = bytes.subarray(hashLength);
  return sha256(content).equals(bytes.subarray(0, hashLength)) ? (deserialize(content) as Kept) : undefined;
}

function bytesAt(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}

/** A cache that cannot be written to is a slower build and no fault. */
async function keep(path: string, kept: Kept): Promise<void> {
  const content = serialize(kept);
  await writeWhole(path, Buffer.concat([sha256(content), content])).catch(() => undefined);
}

function sha256(content: Uint8Array): Buffer {
  return createHash('sha256').update(content).digest();
}
