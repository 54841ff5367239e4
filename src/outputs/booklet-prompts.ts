import type { Prompt } from '../core/booklet/booklet-schema.ts';
import { wholeBook } from '../core/booklet/booklet.ts';
import type { BookletData } from './booklet-data.ts';

/** The questions as they are shown, for the booklet's file. */
export function promptsOf({ stops, rating }: BookletData): readonly Prompt[] {
  const asked: Prompt[] = stops.map(({ id, number, opening, ask, about }) => (about === undefined ? { of: id, number, opening, ask } : { of: id, number, opening, ask, about }));
  return rating ? [...asked, { of: wholeBook, number: stops.length + 1, ask: rating.ask }] : asked;
}
