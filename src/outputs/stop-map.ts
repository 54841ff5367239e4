import type { MeasuredPack } from '../core/measure/measures.ts';
import type { Stop, Way } from '../core/pack/pack.ts';

/** One stop on the map of a book. */
export interface MappedStop {
  readonly id: string;
  /** Its place in the pack, from 1. */
  readonly number: number;
  readonly opening: number;
  /** Words read by the end of its opening. */
  readonly words: number;
  /** Ways to answer: the one asked for, and the equal one. */
  readonly ways: readonly Way[];
  /** 1 to 4. */
  readonly depth: number;
  readonly must: boolean;
}

export interface StopMap {
  readonly words: number;
  readonly openings: number;
  /** Words read by the end of each opening, from the first. */
  readonly readBy: readonly number[];
  /** Whether the words were counted opening by opening, or the words that the pack states are shared out evenly. */
  readonly counted: boolean;
  /** In the order of the book. */
  readonly stops: readonly MappedStop[];
}

/** The stops of a pack along its book. Of the text of the book only numbers are known here. */
export function stopMap(pack: Pick<MeasuredPack, 'book' | 'stops' | 'measures'>): StopMap {
  const { openings } = pack.book;
  const counts = pack.measures.passage?.openings ?? [];
  const counted = counts.some((each) => each.words > 0) && counts.every((each) => each.opening <= openings);
  const wordsOf = (opening: number) => (counted ? (counts.find((each) => each.opening === opening)?.words ?? 0) : pack.book.words / openings);
  let sum = 0;
  const readBy = Array.from({ length: openings }, (_, index) => Math.round((sum += wordsOf(index + 1))));
  const placed = pack.stops.map((stop, index) => place(stop, index + 1, readBy));
  return { words: readBy.at(-1) ?? 0, openings, readBy, counted, stops: placed.sort((a, b) => a.opening - b.opening || a.number - b.number) };
}

function place(stop: Stop, number: number, readBy: readonly number[]): MappedStop {
  const opening = Math.min(stop.at.opening, readBy.length);
  const ways = stop.or === undefined || stop.or === stop.answer ? [stop.answer] : [stop.answer, stop.or];
  return { id: stop.id, number, opening, words: readBy[opening - 1] ?? 0, ways, depth: stop.depth, must: stop.must === true };
}

/**
 * Places along a line for heads that need `gap` between them, as near as can be to where they belong. All in shares of the line (0 to 1),
 * in order. Where they do not all fit, they share the line evenly.
 */
export function apart(wanted: readonly number[], gap: number): readonly number[] {
  const last = wanted.length - 1;
  if (last * gap > 1) return wanted.map((_, index) => index / last);
  const places: number[] = [];
  for (const place of wanted) places.push(Math.max(place, (places.at(-1) ?? -gap) + gap));
  for (let index = last; index >= 0; index--) places[index] = Math.min(places[index] ?? 0, index === last ? 1 : (places[index + 1] ?? 1) - gap);
  return places;
}
