import type { Stop } from '../pack/pack.ts';
import { clockOf } from './clock.ts';
import type { Plannable, PlanStop } from './plannable.ts';
import type { LessonSeconds } from './seconds.ts';

/** One row of a lesson on the clock. What to call it is the page's business, in its own language. */
export type RunSheetRow<S extends PlanStop = Stop> = {
  /** Clock time, `9:05`. */
  readonly at: string;
  /** Seconds from the start of the lesson. */
  readonly begins: number;
  readonly seconds: number;
} & (
  | { readonly kind: 'opening' | 'closing' | 'end' }
  /** Read these openings, the last one as far as its cue where a stop follows. */
  | { readonly kind: 'reading'; readonly from: number; readonly to: number }
  | { readonly kind: 'stop'; readonly stop: S }
);

type What<S extends PlanStop> = RunSheetRow<S> extends infer Row ? (Row extends RunSheetRow<S> ? Omit<Row, 'at' | 'begins' | 'seconds'> : never) : never;

/**
 * A lesson minute by minute: the seconds worked out for it, laid on the clock from `start` (seconds since midnight).
 * Reading and page turns are shared out over the openings evenly, since nobody counts the words of each.
 */
export function runSheet<S extends PlanStop>(book: Pick<Plannable['book'], 'openings' | 'first'>, stops: readonly S[], lesson: LessonSeconds, start: number): readonly RunSheetRow<S>[] {
  const rows: RunSheetRow<S>[] = [];
  let now = 0;
  const add = (what: What<S>, seconds: number) => {
    rows.push({ at: clockOf(start + now), begins: now, seconds, ...what });
    now += seconds;
  };
  const perOpening = (lesson.reading + lesson.pageTurns) / book.openings;
  const first = book.first ?? 1;
  const last = first + book.openings - 1;
  let read = first - 1;
  const readTo = (opening: number) => {
    if (opening > read) add({ kind: 'reading', from: read + 1, to: opening }, (opening - read) * perOpening);
    read = Math.max(read, opening);
  };
  if (lesson.opening > 0) add({ kind: 'opening' }, lesson.opening);
  for (const stop of [...stops].sort((a, b) => a.at.opening - b.at.opening)) {
    const seconds = lesson.stops.find((each) => each.id === stop.id)?.total;
    if (seconds === undefined) continue;
    readTo(Math.min(stop.at.opening, last));
    add({ kind: 'stop', stop }, seconds);
  }
  readTo(last);
  if (lesson.closing > 0) add({ kind: 'closing' }, lesson.closing);
  add({ kind: 'end' }, 0);
  return rows;
}
