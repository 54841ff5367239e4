import { stopsOf, type Stop } from '../pack/pack.ts';
import type { Plannable, PlanStop } from './plannable.ts';
import { secondsOfLesson, type LessonOptions, type LessonSeconds } from './seconds.ts';
import { shortLesson, type ShortLesson } from './short-lesson.ts';

/** One reading as it is to be taught. */
export interface Lesson<S extends PlanStop = Stop> {
  readonly fit: ShortLesson<S>;
  /** The stops asked: the best for the minutes there are, or all of the reading when even the musts do not fit. */
  readonly stops: readonly S[];
  /** Stops of this reading that are kept for another day. */
  readonly left: readonly S[];
  readonly lesson: LessonSeconds;
}

/** The lesson of one reading in so many minutes. Where it cannot fit, all its stops are planned and `fit` says what would help. */
export function lessonOf<S extends PlanStop>(pack: Plannable<S>, reading: number, minutes: number, options: LessonOptions): Lesson<S> {
  const fit = shortLesson(pack, reading, minutes, options);
  const all = stopsOf(pack, reading);
  if (fit.fits) return { fit, stops: fit.stops, left: all.filter((stop) => !fit.stops.includes(stop)), lesson: fit.lesson };
  return { fit, stops: all, left: [], lesson: secondsOfLesson(pack.book, all, options) };
}
