import type { Library } from '../pack/library.ts';
import type { PackFields, Stop, Way } from '../pack/pack.ts';
import type { LessonSeconds, Setting, StopSeconds } from './plan.ts';

/** How long each thing takes, in seconds, and the pace in words a minute. */
export interface Durations {
  readonly wordsPerMinute: number;
  readonly pageTurn: number;
  readonly opening: number;
  readonly closing: number;
  /** What an opening and a closing can be cut down to when the minutes are few. */
  readonly shortestOpening: number;
  readonly shortestClosing: number;
  readonly ask: number;
  readonly share: number;
  readonly wait: number;
  readonly secondWait: number;
  /** Children heard one after another, a number and no seconds. */
  readonly shares: number;
  readonly task: Readonly<Record<Way, number>>;
  readonly writeWord: number;
}

/**
 * Every default duration. The one place where these numbers live;
 * a stop's own `wait`, `task` and `shares` and the library's `pace` come before them.
 */
export const defaults: Durations = {
  /** Common practice, no source; 183 is the mean of adults reading aloud (Brysbaert 2019), too fast for this. */
  wordsPerMinute: 130,
  /** The next five: common practice, no source. */
  pageTurn: 2,
  opening: 60,
  closing: 90,
  shortestOpening: 20,
  shortestClosing: 30,
  /** Common practice, no source. */
  ask: 6,
  share: 8,
  /** Three seconds at least, both after the question and after an answer (Rowe 1986); 5 for the first is common practice, no source. */
  wait: 5,
  secondWait: 3,
  /** Children heard after a prompt with a class. Common practice, no source. */
  shares: 2,
  /** Time for the task itself, by way to answer; to write is to write a sentence. Common practice, no source. */
  task: { say: 0, partner: 45, act: 40, write: 120, draw: 180 },
  /** Writing one word rather than a sentence. Common practice, no source. */
  writeWord: 60,
};

/** What the seconds of a stop depend on. */
export type TimedStop = Pick<Stop, 'id' | 'answer' | 'kind' | 'frames' | 'wait' | 'task' | 'shares'>;

export interface LessonOptions {
  readonly setting: Setting;
  /** Words a minute. */
  readonly pace: number;
  /** A teacher's own durations in place of the defaults. */
  readonly durations?: Durations;
}

/** The seconds of one stop in a setting. A recording asks and holds; with one child, one child is heard and nobody waits for others to finish a task. */
export function secondsOfStop(stop: TimedStop, setting: Setting, durations: Durations = defaults): StopSeconds {
  const { ask, share, secondWait } = durations;
  const wait = stop.wait ?? durations.wait;
  const task = setting === 'class' ? (stop.task ?? usualTask(stop, durations)) : 0;
  const shares = setting === 'class' ? (stop.shares ?? durations.shares) : setting === 'one child' ? 1 : 0;
  return { id: stop.id, ask, wait, task, shares, share, secondWait, total: ask + wait + task + shares * (share + secondWait) };
}

function usualTask(stop: TimedStop, durations: Durations): number {
  return stop.answer === 'write' && asksForOneWord(stop) ? durations.writeWord : durations.task[stop.answer];
}

/** A word or a feeling, and no frame with more than one blank to fill. */
function asksForOneWord(stop: TimedStop): boolean {
  if (stop.kind !== 'word' && stop.kind !== 'feeling') return false;
  return (stop.frames ?? []).every((frame) => (frame.match(/_{3,}/gu)?.length ?? 0) <= 1);
}

/** The seconds of a lesson with these stops: reading, page turns, opening, closing, and each stop. */
export function secondsOfLesson(book: Pick<PackFields['book'], 'words' | 'openings'>, stops: readonly TimedStop[], options: LessonOptions): LessonSeconds {
  const { setting, pace, durations = defaults } = options;
  const lesson = {
    reading: (book.words * 60) / pace,
    pageTurns: book.openings * durations.pageTurn,
    opening: setting === 'class' ? durations.opening : 0,
    closing: setting === 'class' ? durations.closing : 0,
    stops: stops.map((stop) => secondsOfStop(stop, setting, durations)),
  };
  const total = lesson.reading + lesson.pageTurns + lesson.opening + lesson.closing + lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return { ...lesson, total };
}

/** The pace to plan with: the library's own, or the default. */
export function paceOf(library: Pick<Library, 'pace'>): number {
  return library.pace ?? defaults.wordsPerMinute;
}
