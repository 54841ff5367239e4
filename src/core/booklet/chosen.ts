import { bestOf, wholeBook, type ValueOf } from './booklet.ts';

/** What is asked at no stop. */
export const isAtNoStop = (to: string): boolean => to === wholeBook || to === bestOf;

/** A choice among a few books to be kept; undefined when nothing is chosen. What comes first cannot come last as well, so the first choice stands. */
export function chosenOf(books: readonly string[], best: string | undefined, last: string | undefined): ValueOf<'chosen'> | undefined {
  if (best === undefined && last === undefined) return undefined;
  return { kind: 'chosen', ...(best !== undefined && { best }), ...(last !== undefined && last !== best && { last }), of: [...books] };
}
