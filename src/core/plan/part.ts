import type { Plannable, PlanStop } from './plannable.ts';

/**
 * A part of a book, from one opening to another, as a book of its own: its share of the words, and the stops on the way.
 * Nobody counts the words of each opening, so they are shared out evenly.
 */
export function partOf<S extends PlanStop>(pack: Plannable<S>, from: number, to: number): Plannable<S> {
  const openings = to - from + 1;
  const { book } = pack;
  return {
    book: { words: (book.words * openings) / book.openings, openings, first: from },
    readings: pack.readings,
    // A question that was asked before this part may be built upon; one that comes later may not be waited for.
    stops: pack.stops
      .filter((stop) => stop.at.opening >= from && stop.at.opening <= to)
      .map((stop) => {
        const before = pack.stops.find((each) => each.id === stop.after);
        return before && before.at.opening < from ? { ...stop, after: undefined } : stop;
      }),
  };
}
