import type { Library } from '../pack/library.ts';
import type { PackFields, Stop } from '../pack/pack.ts';

/** The seconds of one stop: ask + wait + task + shares × (share + second wait). */
export interface StopSeconds {
  readonly id: string;
  readonly ask: number;
  readonly wait: number;
  readonly task: number;
  /** Children heard one after another. */
  readonly shares: number;
  readonly share: number;
  readonly secondWait: number;
  readonly total: number;
}

/** The seconds of one lesson: reading + page turns + opening + closing + stops. */
export interface LessonSeconds {
  readonly reading: number;
  readonly pageTurns: number;
  readonly opening: number;
  readonly closing: number;
  readonly stops: readonly StopSeconds[];
  readonly total: number;
}

/** Who is there: a class, a few children, one adult with one child, or a recording that waits by itself. */
export const settings = ['class', 'small group', 'one child', 'recording'] as const;
export type Setting = (typeof settings)[number];

/** How long each thing takes, in seconds. */
export interface Durations {
  readonly pageTurn: number;
  readonly opening: number;
  readonly closing: number;
  /** What an opening and a closing can be cut down to when the minutes are few. */
  readonly shortestOpening: number;
  readonly shortestClosing: number;
  readonly ask: number;
  readonly wait: number;
  readonly share: number;
  readonly secondWait: number;
  /** Children heard one after another with a class: a number and no seconds. */
  readonly shares: number;
  /** Children in a small group, each of whom is heard: a number and no seconds. */
  readonly smallGroup: number;
  /** The task itself, by way to answer. */
  readonly say: number;
  readonly partner: number;
  readonly act: number;
  readonly draw: number;
  readonly writeAWord: number;
  readonly writeASentence: number;
}

/** Words a minute when nobody says otherwise. Common practice, no source; 183 is the mean of adults reading aloud to adults (Brysbaert 2019), too fast for this. */
export const usualPace = 130;

/**
 * Every default duration: the one place where these numbers live. `durations` in `library.yaml` comes before them,
 * `durations` in a pack before that, and a stop's own `wait`, `task` and `shares` before all.
 */
export const defaults: Durations = {
  /** Common practice, no source. */
  pageTurn: 2,
  /** Common practice, no source. */
  opening: 60,
  /** Common practice, no source. */
  closing: 90,
  /** Common practice, no source. */
  shortestOpening: 20,
  /** Common practice, no source. */
  shortestClosing: 30,
  /** Common practice, no source. */
  ask: 6,
  /** At least 3 (Rowe 1986); 5, for the youngest and for children with another language at home, is common practice, no source. */
  wait: 5,
  /** Common practice, no source. */
  share: 8,
  /** Rowe 1986: at least 3 seconds after an answer as well. */
  secondWait: 3,
  /** Common practice, no source. */
  shares: 2,
  /** Common practice, no source. */
  smallGroup: 4,
  /** Common practice, no source: it is said while it is shared. */
  say: 0,
  /** Common practice, no source. */
  partner: 45,
  /** Common practice, no source. */
  act: 40,
  /** Common practice, no source. */
  draw: 180,
  /** Common practice, no source. */
  writeAWord: 60,
  /** Common practice, no source. */
  writeASentence: 120,
};

/** What the seconds of a stop depend on. */
export type TimedStop = Pick<Stop, 'id' | 'answer' | 'kind' | 'frames' | 'wait' | 'task' | 'shares'>;

export interface LessonOptions {
  readonly setting: Setting;
  /** Words a minute. */
  readonly pace: number;
  /** A library's, a pack's or a teacher's own durations in place of the defaults. */
  readonly durations?: Durations;
}

/**
 * The seconds of one stop in a setting. With a class, some are heard; in a small group every child is, where the stop lets
 * anybody be heard at all (common practice, no source). With one child nobody waits for others to finish a task. A recording asks and holds.
 */
export function secondsOfStop(stop: TimedStop, setting: Setting, durations: Durations = defaults): StopSeconds {
  const { ask, share, secondWait } = durations;
  const wait = stop.wait ?? durations.wait;
  const together = setting === 'class' || setting === 'small group';
  const task = together ? (stop.task ?? usualTask(stop, durations)) : 0;
  const shares = sharesOf(stop, setting, durations);
  return { id: stop.id, ask, wait, task, shares, share, secondWait, total: ask + wait + task + shares * (share + secondWait) };
}

function sharesOf(stop: TimedStop, setting: Setting, durations: Durations): number {
  const withClass = stop.shares ?? durations.shares;
  switch (setting) {
    case 'class':
      return withClass;
    case 'small group':
      return withClass === 0 ? 0 : durations.smallGroup;
    case 'one child':
      return 1;
    case 'recording':
      return 0;
  }
}

function usualTask(stop: TimedStop, durations: Durations): number {
  if (stop.answer !== 'write') return durations[stop.answer];
  return asksForOneWord(stop) ? durations.writeAWord : durations.writeASentence;
}

/** A word or a feeling, and no frame with more than one blank to fill. */
function asksForOneWord(stop: TimedStop): boolean {
  if (stop.kind !== 'word' && stop.kind !== 'feeling') return false;
  return (stop.frames ?? []).every((frame) => (frame.match(/_{3,}/gu)?.length ?? 0) <= 1);
}

/** The seconds of a lesson with these stops: reading, page turns, opening, closing, and each stop. */
export function secondsOfLesson(book: Pick<PackFields['book'], 'words' | 'openings'>, stops: readonly TimedStop[], options: LessonOptions): LessonSeconds {
  const { setting, pace, durations = defaults } = options;
  const together = setting === 'class' || setting === 'small group';
  const lesson = {
    reading: (book.words * 60) / pace,
    pageTurns: book.openings * durations.pageTurn,
    opening: together ? durations.opening : 0,
    closing: together ? durations.closing : 0,
    stops: stops.map((stop) => secondsOfStop(stop, setting, durations)),
  };
  const total = lesson.reading + lesson.pageTurns + lesson.opening + lesson.closing + lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return { ...lesson, total };
}

/** The pace to plan with, in words a minute: the pack's own, else the library's, else the usual one. */
export function paceOf(library: Pick<Library, 'pace'>, pack: Pick<PackFields, 'pace'> = {}): number {
  return pack.pace ?? library.pace ?? usualPace;
}

/** The durations to plan with: the usual ones, what the library sets before them, and what the pack sets before both. */
export function durationsOf(library: Pick<Library, 'durations'>, pack: Pick<PackFields, 'durations'> = {}): Durations {
  // What nobody sets is not there at all, so nothing undefined can take a default's place.
  return { ...defaults, ...library.durations, ...pack.durations } as Durations;
}

/** Slowest and fastest pace that a practice reading is believed, in words a minute. Common practice, no source. */
export const believablePace = { least: 40, most: 250 } as const;

/** The pace of a reader who has read the whole book aloud once in so many seconds, pages turned; undefined when that cannot be. */
export function paceFromPractice(book: Pick<PackFields['book'], 'words' | 'openings'>, seconds: number, durations: Durations = defaults): number | undefined {
  const pace = Math.round((book.words * 60) / (seconds - book.openings * durations.pageTurn));
  return pace >= believablePace.least && pace <= believablePace.most ? pace : undefined;
}
