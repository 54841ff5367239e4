/**
 * The best stops for the seconds there are. Exact: no better set exists under the order of preference below.
 *
 * A set is allowed when it keeps every must, when the stop that each of its stops comes `after` is in it too, and when it fits.
 * Of two allowed sets the better one is, by the first of these in which they differ:
 * 1. it meets a wish that the other does not (a feeling stop before a way without writing): they stand before value so that a short lesson
 *    does not lose them to a point more, and they are only wishes, so that a pack that cannot meet them still gets its lesson;
 * 2. more value; 3. fewer seconds; 4. stops more evenly spread over the book; 5. the earlier stop where the sets first differ.
 */

/** What a stop counts when its author gives no value: the middle of 0 to 10. Common practice, no source. */
export const usualValue = 5;

/** What a choice depends on. */
export interface Candidate {
  readonly id: string;
  readonly opening: number;
  /** Whole seconds. */
  readonly seconds: number;
  readonly value: number;
  readonly must: boolean;
  /** The stop that has to be asked for this one to make sense. */
  readonly after: string | undefined;
  readonly feeling: boolean;
  readonly writes: boolean;
}

/** What a choice should hold if it can; put first what counts more. */
export type Wish = 'a feeling' | 'a way without writing';
/** The wishes for a lesson with a class. */
export const usualWishes: readonly Wish[] = ['a feeling', 'a way without writing'];

const meets: Readonly<Record<Wish, (stop: Candidate) => boolean>> = {
  'a feeling': (stop) => stop.feeling,
  'a way without writing': (stop) => !stop.writes,
};

export interface Limits {
  /** Seconds there are for stops, all else taken off. */
  readonly room: number;
  /** Openings of the book, for the spread. */
  readonly openings: number;
  readonly wishes: readonly Wish[];
}

export type Choice =
  /** `unmet`: wishes that one of the stops would meet, had there been time for it. */
  | { readonly fits: true; readonly ids: readonly string[]; readonly seconds: number; readonly value: number; readonly unmet: readonly Wish[] }
  /** `shortBy`: seconds that are missing for the least that has to be asked. `no time`: less than nothing is left for stops. */
  | { readonly fits: false; readonly why: 'no time' | 'musts too long'; readonly shortBy: number }
  /** A must comes after a stop that is not there, or after itself. */
  | { readonly fits: false; readonly why: 'must out of reach'; readonly id: string };

/** The best of all allowed sets, its ids in the order of the book, or why there is none. */
export function chooseStops(candidates: readonly Candidate[], limits: Limits): Choice {
  const inBook = [...candidates].sort((a, b) => a.opening - b.opening);
  const chains = chainsOf(inBook);
  const lost = inBook.find((stop, index) => stop.must && chains[index] === undefined);
  if (lost) return { fits: false, why: 'must out of reach', id: lost.id };
  const forced = new Set(inBook.flatMap((stop, index) => (stop.must ? (chains[index] ?? []) : [])));
  const least = [...forced].reduce((sum, index) => sum + (inBook[index]?.seconds ?? 0), 0);
  if (least > limits.room) return { fits: false, why: limits.room < 0 ? 'no time' : 'musts too long', shortBy: Math.ceil(least - limits.room) };
  if (limits.room < 0) return { fits: false, why: 'no time', shortBy: Math.ceil(-limits.room) };

  const items = inBook.flatMap((stop, index) => {
    const chain = chains[index];
    return chain === undefined ? [] : [{ ...stop, index, parent: chain[1], must: forced.has(index) }];
  });
  const best = search(items, limits);
  const ids = inBook.flatMap((stop, index) => (has(best.chosen, index) ? [stop.id] : []));
  const unmet = limits.wishes.filter((wish, index) => !has(best.wishes, index) && candidates.some(meets[wish]));
  return { fits: true, ids, seconds: best.seconds, value: best.value, unmet };
}

/** For each stop the chain of stops it hangs on, itself first; undefined where the chain breaks or bites its own tail. */
function chainsOf(stops: readonly Candidate[]): readonly (readonly number[] | undefined)[] {
  return stops.map((_, index) => {
    const chain: number[] = [];
    for (let at = index; ;) {
      if (at < 0 || chain.includes(at)) return undefined;
      chain.push(at);
      const after = stops[at]?.after;
      if (after === undefined) return chain;
      at = stops.findIndex((stop) => stop.id === after);
    }
  });
}

interface Item extends Candidate {
  /** Place in the book's order, which is also its bit. */
  readonly index: number;
  readonly parent: number | undefined;
}

/** A set that has been decided up to some stop. */
interface Draft {
  readonly chosen: bigint;
  readonly wishes: bigint;
  readonly value: number;
  readonly seconds: number;
  /** The sum of squared gaps between stops, in openings: least when they are spread evenly. */
  readonly gaps: number;
  readonly lastOpening: number;
}

/** Dependencies that may be open at once before the spread is no longer weighed; each one may double the work. */
const mostOpenAtOnce = 8;

/**
 * Decides stop after stop, take or leave, and drops each draft that another one beats whatever follows.
 * In the order of the book the spread adds up gap by gap. Where very many `after`s cross, that order would take
 * too long: then each stop is followed by what hangs on it, which is quick, and the spread is left out of the reckoning.
 */
function search(items: readonly Item[], limits: Limits): Draft {
  const spread = Math.max(0, ...items.map((_, step) => bitsIn(openAfter(items, step)))) <= mostOpenAtOnce;
  const order = spread ? items : parentsFirst(items);
  let drafts: readonly Draft[] = [{ chosen: 0n, wishes: 0n, value: 0, seconds: 0, gaps: 0, lastOpening: 0 }];
  for (const [step, item] of order.entries()) {
    const needed = order.slice(0, step).reduce((bits, each) => (each.parent === item.index ? bits | bit(each.index) : bits), 0n);
    const decided = order.slice(0, step).some((each) => each.index === item.parent);
    const next: Draft[] = [];
    for (const draft of drafts) {
      if (!item.must && (draft.chosen & needed) === 0n) next.push(draft);
      const allowed = !decided || item.parent === undefined || has(draft.chosen, item.parent);
      if (allowed && draft.seconds + item.seconds <= limits.room) next.push(taking(draft, item, spread, limits.wishes));
    }
    drafts = unbeaten(next, openAfter(order, step));
  }
  const ended = drafts.map((draft) => (spread ? { ...draft, gaps: draft.gaps + (limits.openings - draft.lastOpening) ** 2 } : draft));
  return ended.reduce((best, each) => (compare(each, best, limits.wishes.length) < 0 ? each : best));
}

function taking(draft: Draft, item: Item, spread: boolean, wishes: readonly Wish[]): Draft {
  return {
    chosen: draft.chosen | bit(item.index),
    wishes: wishes.reduce((met, wish, index) => (meets[wish](item) ? met | bit(index) : met), draft.wishes),
    value: draft.value + item.value,
    seconds: draft.seconds + item.seconds,
    gaps: spread ? draft.gaps + (item.opening - draft.lastOpening) ** 2 : 0,
    lastOpening: spread ? item.opening : 0,
  };
}

/** The stops decided by this step on which an undecided one still depends, or that still wait for their own. */
function openAfter(order: readonly Item[], step: number): bigint {
  const before = new Set(order.slice(0, step + 1).map((item) => item.index));
  let open = 0n;
  for (const { index, parent } of order) {
    if (parent === undefined || before.has(index) === before.has(parent)) continue;
    open |= bit(before.has(index) ? index : parent);
  }
  return open;
}

/** Each stop followed by all that hangs on it. */
function parentsFirst(items: readonly Item[], parent?: number): readonly Item[] {
  return items.filter((item) => item.parent === parent).flatMap((item) => [item, ...parentsFirst(items, item.index)]);
}

/**
 * The drafts that nothing beats for certain. Only drafts that leave the same open dependencies and meet the same wishes are
 * comparable; of those, one with less value and no fewer seconds is lost, and of those alike in both, the worse spread up to the same last stop.
 */
function unbeaten(drafts: readonly Draft[], open: bigint): readonly Draft[] {
  const groups = new Map<string, Draft[]>();
  for (const draft of drafts) {
    const alike = `${String(draft.chosen & open)} ${String(draft.wishes)}`;
    const group = groups.get(alike);
    if (group) group.push(draft);
    else groups.set(alike, [draft]);
  }
  const kept: Draft[] = [];
  for (const group of groups.values()) {
    let fewest = Infinity;
    let value = Infinity;
    const lasts = new Set<number>();
    for (const draft of group.sort((a, b) => compare(a, b, 0))) {
      if (draft.seconds > fewest || (draft.seconds === fewest && draft.value < value)) continue;
      if (draft.value < value) lasts.clear();
      if (lasts.has(draft.lastOpening)) continue;
      lasts.add(draft.lastOpening);
      ({ seconds: fewest, value } = draft);
      kept.push(draft);
    }
  }
  return kept;
}

/** Less than 0 when the first is better. The first wish weighs more than all after it together; pass 0 wishes when they are alike. */
function compare(a: Draft, b: Draft, wishes: number): number {
  for (let wish = 0; wish < wishes && a.wishes !== b.wishes; wish++) {
    const difference = Number(has(b.wishes, wish)) - Number(has(a.wishes, wish));
    if (difference !== 0) return difference;
  }
  const difference = b.value - a.value || a.seconds - b.seconds || a.gaps - b.gaps;
  if (difference !== 0 || a.chosen === b.chosen) return difference;
  const different = a.chosen ^ b.chosen;
  return (a.chosen & different & -different) === 0n ? 1 : -1;
}

function bit(index: number): bigint {
  return 1n << BigInt(index);
}

function has(bits: bigint, index: number): boolean {
  return (bits & bit(index)) !== 0n;
}

function bitsIn(bits: bigint): number {
  return bits.toString(2).replaceAll('0', '').length;
}
