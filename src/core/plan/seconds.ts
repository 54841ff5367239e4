import type { Library } from '../pack/library.ts';
import type { PackFields, Stop, Way } from '../pack/pack.ts';
import type { LessonSeconds, Setting, StopSeconds } from './plan.ts';

/**
 * Every default duration, in seconds, and the pace in words a minute. The one place where these numbers live;
 * a stop's own `wait`, `task` and `shares` and the library's `pace` come before them.
 */
export const defaults = {
  /** Words a minute of a read-aloud. Common practice, no source; 183 is the mean of adults reading aloud (Brysbaert 2019), too fast for this. */
  wordsPerMinute: 130,
  /** Common practice, no source. */
  pageTurn: 2,
  opening: 60,
  closing: 90,
  ask: 6,
  share: 8,
  /** Three seconds at least, both after the question and after an answer (Rowe 1986); 5 for the first. */
  wait: 5,
  secondWait: 3,
  /** Children heard after a prompt with a class. Common practice, no source. */
  shares: 2,
  /** Time for the task itself, by way to answer. Common practice, no source. */
  task: { say: 0, partner: 45, act: 40, write: 120, draw: 180 } satisfies Record<Way, number>,
  /** Writing one word rather than a sentence. Common practice, no source. */
  writeWord: 60,
} as const;

export interface LessonOptions {
  readonly setting: Setting;
  /** Words a minute. */
  readonly pace: number;
}

/** The seconds of one stop in a setting. A recording asks and holds; with one child, one child is heard and nobody waits for others to finish a task. */
export function secondsOfStop(stop: Pick<Stop, 'id' | 'answer' | 'kind' | 'frames' | 'wait' | 'task' | 'shares'>, setting: Setting): StopSeconds {
  const { ask, share, secondWait } = defaults;
  const wait = stop.wait ?? defaults.wait;
  const task = setting === 'class' ? (stop.task ?? usualTask(stop)) : 0;
  const shares = setting === 'class' ? (stop.shares ?? defaults.shares) : setting === 'one child' ? 1 : 0;
  return { id: stop.id, ask, wait, task, shares, share, secondWait, total: ask + wait + task + shares * (share + secondWait) };
}

function usualTask(stop: Pick<Stop, 'answer' | 'kind' | 'frames'>): number {
  const oneWord = stop.answer === 'write' && (stop.kind === 'word' || stop.kind === 'feeling') && (stop.frames ?? []).every((frame) => frame.split('___').length <= 2);
  return oneWord ? defaults.writeWord : defaults.task[stop.answer];
}

/** The seconds of a lesson with these stops: reading, page turns, opening, closing, and each stop. */
export function secondsOfLesson(
  book: Pick<PackFields['book'], 'words' | 'openings'>,
  stops: readonly Pick<Stop, 'id' | 'answer' | 'kind' | 'frames' | 'wait' | 'task' | 'shares'>[],
  options: LessonOptions,
): LessonSeconds {
  const inClass = options.setting === 'class';
  const lesson = {
    reading: (book.words * 60) / options.pace,
    pageTurns: book.openings * defaults.pageTurn,
    opening: inClass ? defaults.opening : 0,
    closing: inClass ? defaults.closing : 0,
    stops: stops.map((stop) => secondsOfStop(stop, options.setting)),
  };
  const total = lesson.reading + lesson.pageTurns + lesson.opening + lesson.closing + lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return { ...lesson, total };
}

/** The pace to plan with: the library's own, or the default. */
export function paceOf(library: Pick<Library, 'pace'>): number {
  return library.pace ?? defaults.wordsPerMinute;
}
