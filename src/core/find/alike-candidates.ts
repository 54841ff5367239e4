import type { Compared } from './compared.ts';
import { titleOf } from './same-book.ts';

/**
 * Pairs of places worth a closer look, each once, the lower place first: found by what they have in common, never by holding each
 * pack against each other one.
 */
export function candidates(packs: readonly Compared[], isbns: readonly (string | undefined)[], telling: readonly ReadonlySet<number>[]): readonly (readonly [number, number])[] {
  const pairs = new Set<number>();
  const add = (a: number, b: number) => {
    if (a !== b) pairs.add(Math.min(a, b) * packs.length + Math.max(a, b));
  };
  const blocks = new Map<string, number[]>();
  const put = (key: string, place: number) => {
    const block = blocks.get(key);
    if (block === undefined) blocks.set(key, [place]);
    else if (block.at(-1) !== place) block.push(place);
  };
  for (const [place, pack] of packs.entries()) {
    const isbn = isbns[place];
    if (isbn !== undefined) put(`isbn ${isbn}`, place);
    for (const near of nearTitles(titleOf(pack.book.title))) put(`${pack.language} ${near}`, place);
  }
  for (const block of blocks.values()) {
    // Of a book that has hundreds of packs, each is held beside the next few: they hang together all the same.
    for (const [index, a] of block.entries()) for (const b of block.slice(index + 1, block.length > largeBlock ? index + 4 : undefined)) add(a, b);
  }
  for (const [a, b] of sharing(packs, telling)) add(a, b);
  return [...pairs].sort((x, y) => x - y).map((pair) => [Math.floor(pair / packs.length), pair % packs.length]);
}

const largeBlock = 60;

/**
 * A title and all that it becomes when a letter is left out. Two titles a slip apart (a letter left out, one too many, one exchanged,
 * neighbours turned round) have at least one of these in common.
 */
function nearTitles(title: string): readonly string[] {
  const letters = [...title].slice(0, 60);
  return title === '' ? [] : [title, ...letters.map((_, at) => [...letters.slice(0, at), ...letters.slice(at + 1)].join(''))];
}

/** Shared by more packs than this, a run of words is a stock phrase ("what do you think will happen") and says nothing about where it came from. */
const stockPhrase = (packs: number) => Math.max(20, Math.ceil(packs / 200));

/** The runs of each pack without stock phrases. */
export function tellingOf(all: readonly ReadonlySet<number>[]): readonly ReadonlySet<number>[] {
  const counts = new Map<number, number>();
  for (const set of all) for (const shingle of set) counts.set(shingle, (counts.get(shingle) ?? 0) + 1);
  const most = stockPhrase(all.length);
  return all.map((set) => new Set([...set].filter((shingle) => (counts.get(shingle) ?? 0) <= most)));
}

/** Fewer runs than this in common are chance. */
export const fewestShared = 6;

/**
 * Pairs of one language that share at least a third of the fewer of their runs. One pass through an index from runs to packs; since no run
 * stands in more packs than a stock phrase may, the work grows with the packs and not with their pairs.
 */
function sharing(packs: readonly Compared[], telling: readonly ReadonlySet<number>[]): readonly (readonly [number, number])[] {
  const where = new Map<number, number[]>();
  const found: (readonly [number, number])[] = [];
  for (const [place, set] of telling.entries()) {
    const shared = new Map<number, number>();
    for (const shingle of set) {
      const places = where.get(shingle);
      if (places === undefined) where.set(shingle, [place]);
      else {
        for (const other of places) shared.set(other, (shared.get(other) ?? 0) + 1);
        places.push(place);
      }
    }
    for (const [other, count] of shared) {
      const fewer = Math.min(set.size, telling[other]?.size ?? 0);
      if (count >= fewestShared && count * 3 >= fewer && packs[place]?.language === packs[other]?.language) found.push([other, place]);
    }
  }
  return found;
}
