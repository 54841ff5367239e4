import { lessonOf, type Lesson } from '../core/plan/lesson.ts';
import { partOf } from '../core/plan/part.ts';
import type { Plannable, PlanStop } from '../core/plan/plannable.ts';
import { runSheet, type RunSheetRow } from '../core/plan/run-sheet.ts';
import { endingAt, stepsOf, type Limits, type Step } from '../core/plan/pace.ts';
import { defaults, secondsOfLesson, secondsOfStop, type LessonOptions } from '../core/plan/seconds.ts';
import { candidatesOf } from '../core/plan/short-lesson.ts';
import type { Choices } from './lesson-choices.ts';
import type { LessonData } from './lesson-data.ts';

/** The run sheet for what has been chosen: the page shows it, and its script works it out anew with the same code. */
export interface Sheet extends Lesson<PlanStop> {
  readonly choices: Choices;
  readonly options: LessonOptions;
  /** The book, or the part of it that is read. */
  readonly book: Plannable<PlanStop>;
  readonly purpose: string;
  /** The lesson on the clock: from `choices.start`, or from 0. */
  readonly rows: readonly RunSheetRow<PlanStop>[];
  /** Stops that are not asked in this lesson, in the order of the book. */
  readonly rest: readonly PlanStop[];
}

/** @param planned The lesson of these choices, where it has been worked out before. */
export function sheetOf(data: LessonData, choices: Choices, planned?: Lesson<PlanStop>): Sheet {
  const { durations } = data;
  const options: LessonOptions = {
    setting: choices.setting,
    pace: choices.pace,
    durations: choices.shortEnds ? { ...durations, opening: Math.min(durations.opening, durations.shortestOpening), closing: Math.min(durations.closing, durations.shortestClosing) } : durations,
  };
  const whole = choices.from === 1 && choices.to === data.book.openings;
  const book = whole ? data : partOf(data, choices.from, choices.to);
  const lesson = planned ?? lessonOf(book, choices.reading, choices.minutes, options);
  const asked = new Set(lesson.stops.map((stop) => stop.id));
  return {
    ...lesson,
    choices,
    options,
    book,
    purpose: data.readings.find((each) => each.reading === choices.reading)?.purpose ?? '',
    rows: runSheet(book.book, lesson.stops, lesson.lesson, choices.start ?? 0),
    rest: data.stops.filter((stop) => !asked.has(stop.id)),
  };
}

/** The number by which a stop is called: its place in the pack, whatever is asked today. */
export function numberOf(data: Pick<LessonData, 'stops'>, id: string): number {
  return data.stops.findIndex((stop) => stop.id === id) + 1;
}

/** The seconds of any stop of the pack in this lesson's setting. */
export function secondsIn(sheet: Sheet, stop: PlanStop) {
  return secondsOfStop(stop, sheet.options.setting, sheet.options.durations);
}

/** The steps of a sheet with these stops asked. They end when the lesson was to end, whatever has been left out or taken in since. */
export function stepsWith(sheet: Sheet, asked: ReadonlySet<string>): readonly Step[] {
  const { book, options, lesson } = sheet;
  const stops = book.stops.filter((stop) => asked.has(stop.id));
  const changed = secondsOfLesson(book.book, stops, options);
  return endingAt(stepsOf(runSheet(book.book, stops, changed, 0)), lesson.total);
}

/** What the pace of a sheet is judged by. */
export function limitsOf({ book, choices, options, lesson }: Sheet): Limits {
  const { shortestClosing } = options.durations ?? defaults;
  return { budget: choices.minutes * 60, openings: book.book.openings, candidates: candidatesOf(book, choices.reading, options), closingCanGive: Math.max(0, lesson.closing - shortestClosing) };
}
