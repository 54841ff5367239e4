import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { retirementAhead } from '../core/check/check-retired.ts';
import { reviewDate } from '../core/check/review-date.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { Source } from '../core/pack/pack.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { throughRetirement } from '../outputs/through-stages.ts';
import { codeMark, hashOf } from './code-mark.ts';
import { writeWhole } from './kept.ts';
import { lookAt, type Kept } from './look-at.ts';
import { markPack } from './marks.ts';
import type { TextThreads } from './text-threads.ts';
import { turns } from './turns.ts';

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
  /** All of these, in their order. Those that are not kept are read on threads. */
  lookAll(sources: readonly Source[], today: string, threads: TextThreads, progress?: (done: number, all: number) => void): Promise<readonly Looked[]>;
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
  const pathOf = (mark: string) => (folder === undefined ? undefined : join(folder, mark));
  const markOf = (source: Source) => hashOf(around + JSON.stringify(source));
  const keptOf = (mark: string): Kept | undefined => {
    const path = pathOf(mark);
    const kept = path === undefined ? undefined : readKept(path);
    if (kept && path !== undefined) used.add(path);
    return kept;
  };
  const keepOf = async (mark: string, content: Uint8Array): Promise<void> => {
    const path = pathOf(mark);
    if (path === undefined) return;
    used.add(path);
    await keep(path, content);
  };
  const looked = (source: Source, mark: string, { pack, findings }: Kept, today: string): Looked => {
    if (pack) markPack(pack, mark);
    // What is told of dates changes from day to day, so it is not kept.
    const ofDates = pack ? datedRules.flatMap((rule) => [...rule(pack, { today, roster: [], contact: '' })]) : [];
    return { source: nameOf(source), pack, findings: [...findings, ...ofDates] };
  };
  /** A day decides over it, and it is read in no time. */
  const retiredOf = (source: Source, today: string): Looked | undefined => {
    const retired = throughRetirement(source, library, today);
    return retired && { ...retired, source: nameOf(source) };
  };
  return {
    used,
    look: async (source, today) => {
      const retired = retiredOf(source, today);
      if (retired) return retired;
      const mark = markOf(source);
      const kept = keptOf(mark);
      if (kept) return looked(source, mark, kept, today);
      const found = lookAt(source, library);
      await keepOf(mark, serialize(found));
      return looked(source, mark, found, today);
    },
    lookAll: async (sources, today, threads, progress) => {
      const all: Looked[] = [];
      const missing: { readonly index: number; readonly source: Source; readonly mark: string }[] = [];
      const turn = turns();
      for (const [index, source] of sources.entries()) {
        await turn();
        const retired = retiredOf(source, today);
        const mark = retired ? '' : markOf(source);
        const kept = retired ? undefined : keptOf(mark);
        if (retired) all[index] = retired;
        else if (kept) all[index] = looked(source, mark, kept, today);
        else missing.push({ index, source, mark });
      }
      let done = 0;
      await threads.look(library, missing, async ({ index, source, mark }, content) => {
        await keepOf(mark, content);
        all[index] = looked(source, mark, deserialize(content) as Kept, today);
        progress?.(++done, missing.length);
      });
      return all;
    },
  };
}

/** Rules that hold a pack against the day. */
const datedRules = [reviewDate, retirementAhead];

function nameOf({ slug, file, owner }: Source): Looked['source'] {
  return { slug, file, ...(owner && { owner }) };
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
async function keep(path: string, content: Uint8Array): Promise<void> {
  await writeWhole(path, Buffer.concat([sha256(content), content])).catch(() => undefined);
}

function sha256(content: Uint8Array): Buffer {
  return createHash('sha256').update(content).digest();
}
