import type { PackFields, Stop } from '../pack/pack.ts';
import { clockOf } from './clock.ts';
import type { LessonSeconds } from './plan.ts';

/** One row of a lesson on the clock. What to call it is the page's business, in its own language. */
export type RunSheetRow = {
  /** Clock time, `9:05`. */
  readonly at: string;
  /** Seconds from the start of the lesson. */
  readonly begins: number;
  readonly seconds: number;
} & (
  | { readonly kind: 'opening' | 'closing' | 'end' }
  /** Read these openings, the last one as far as its cue where a stop follows. */
  | { readonly kind: 'reading'; readonly from: number; readonly to: number }
  | { readonly kind: 'stop'; readonly stop: Stop }
);

type What = RunSheetRow extends infer Row ? (Row extends RunSheetRow ? Omit<Row, 'at' | 'begins' | 'seconds'> : never) : never;

/**
 * A lesson minute by minute: the seconds worked out for it, laid on the clock from `start` (seconds since midnight).
 * Reading and page turns are shared out over the openings evenly, since nobody counts the words of each.
 */
export function runSheet(book: Pick<PackFields['book'], 'openings'>, stops: readonly Stop[], lesson: LessonSeconds, start: number): readonly RunSheetRow[] {
  const rows: RunSheetRow[] = [];
  let now = 0;
  const add = (what: What, seconds: number) => {
    rows.push({ at: clockOf(start + now), begins: now, seconds, ...what });
    now += seconds;
  };
  const perOpening = (lesson.reading + lesson.pageTurns) / book.openings;
  let read = 0;
  const readTo = (opening: number) => {
    if (opening > read) add({ kind: 'reading', from: read + 1, to: opening }, (opening - read) * perOpening);
    read = Math.max(read, opening);
  };
  if (lesson.opening > 0) add({ kind: 'opening' }, lesson.opening);
  for (const stop of [...stops].sort((a, b) => a.at.opening - b.at.opening)) {
    const seconds = lesson.stops.find((each) => each.id === stop.id)?.total;
    if (seconds === undefined) continue;
    readTo(Math.min(stop.at.opening, book.openings));
    add({ kind: 'stop', stop }, seconds);
  }
  readTo(book.openings);
  if (lesson.closing > 0) add({ kind: 'closing' }, lesson.closing);
  add({ kind: 'end' }, 0);
  return rows;
}
