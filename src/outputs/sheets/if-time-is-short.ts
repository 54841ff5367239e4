import type { PackFields, Stop } from '../../core/pack/pack.ts';
import { partOf } from '../../core/plan/part.ts';
import { defaults, secondsOfLesson, type LessonOptions } from '../../core/plan/seconds.ts';
import { shortLesson } from '../../core/plan/short-lesson.ts';
import { mustAskOf } from '../../core/plan/week.ts';

/** What to do with another number of minutes than the lesson was made for. Stops by their ids, questions by their index. */
export type Advice =
  | { readonly minutes: number; readonly kind: 'all fits' | 'read only' | 'no time' }
  | { readonly minutes: number; readonly kind: 'add'; readonly questions: readonly number[] }
  | { readonly minutes: number; readonly kind: 'ask only' | 'brisk'; readonly stops: readonly string[] }
  /** Read as far as this opening, ask this stop there, and leave the rest of the book. */
  | { readonly minutes: number; readonly kind: 'part'; readonly opening: number; readonly stop: string };

/** Other minutes that a substitute's sheet tells about (lists for substitutes agree on a short and a long version; the numbers are common practice, no source). */
export const otherMinutes = [10, 5, 25] as const;

/** What to do when there are `minutes`, with these stops of a reading on the sheet. */
export function adviceFor(pack: PackFields, reading: number, stops: readonly Stop[], minutes: number, options: LessonOptions): Advice {
  const only = { ...pack, stops };
  const whole = secondsOfLesson(pack.book, stops, options).total;
  if (whole <= minutes * 60) return withQuestions(pack, minutes, minutes * 60 - whole);
  const fitting = shortLesson(only, reading, minutes, options);
  if (fitting.fits) return fitting.stops.length > 0 ? { minutes, kind: 'ask only', stops: fitting.stops.map((stop) => stop.id) } : { minutes, kind: 'read only' };
  // Opening and closing as short as they can be.
  const usual = options.durations ?? defaults;
  const durations = { ...usual, opening: Math.min(usual.opening, usual.shortestOpening), closing: Math.min(usual.closing, usual.shortestClosing) };
  const brisk = shortLesson(only, reading, minutes, { ...options, durations });
  if (brisk.fits) return { minutes, kind: 'brisk', stops: brisk.stops.map((stop) => stop.id) };
  const must = mustAskOf(only, reading);
  if (must) {
    const seconds = secondsOfLesson(partOf(only, 1, must.at.opening).book, [must], { ...options, durations }).total;
    if (seconds <= minutes * 60) return { minutes, kind: 'part', opening: must.at.opening, stop: must.id };
  }
  return { minutes, kind: 'no time' };
}

/** A question to talk over with the book closed: asked, waited for, and two children heard, and as long again for what comes of it. */
const secondsOfQuestion = 2 * (defaults.ask + defaults.wait + 2 * (defaults.share + defaults.secondWait));

function withQuestions(pack: PackFields, minutes: number, spare: number): Advice {
  const room = Math.min(2, pack.questions?.length ?? 0, Math.floor(spare / secondsOfQuestion));
  return room > 0 ? { minutes, kind: 'add', questions: Array.from({ length: room }, (_, index) => index) } : { minutes, kind: 'all fits' };
}
