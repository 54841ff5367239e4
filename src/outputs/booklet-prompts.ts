import type { Prompt } from '../core/booklet/booklet-schema.ts';
import { bestOf as aFew, wholeBook } from '../core/booklet/booklet.ts';
import type { BookletData } from './booklet-data.ts';

/** The questions as they are shown, for the booklet's file. */
export function promptsOf({ stops, rating, bestOf }: BookletData): readonly Prompt[] {
  const asked: Prompt[] = stops.map(({ id, number, opening, ask, about }) => (about === undefined ? { of: id, number, opening, ask } : { of: id, number, opening, ask, about }));
  const number = stops.length + 1;
  return [...asked, ...(rating ? [{ of: wholeBook, number, ask: rating.ask } as const] : []), ...(bestOf ? [{ of: aFew, number: number + 1, ask: bestOf.ask } as const] : [])];
}
