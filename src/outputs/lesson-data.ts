import type { PlannedPack } from '../core/plan/plan.ts';
import type { Plannable, PlanStop } from '../core/plan/plannable.ts';
import type { Durations } from '../core/plan/seconds.ts';

/** What the lesson page plans with, on the server and again in the browser: nothing that the page does not show. */
export interface LessonData extends Plannable<PlanStop> {
  readonly slug: string;
  readonly language: string;
  readonly title: string;
  /** The pack's own minutes. */
  readonly minutes: number;
  /** Words a minute. */
  readonly pace: number;
  readonly durations: Durations;
  /** Day of the last review, `2026-09-14`. */
  readonly reviewed: string | undefined;
  readonly recording: boolean;
}

/** Of a pack what its lesson page plans with. */
export function lessonDataOf(pack: PlannedPack): LessonData {
  return {
    slug: pack.slug,
    language: pack.language,
    title: pack.title,
    minutes: pack.for.minutes,
    pace: pack.plan.pace,
    durations: pack.plan.durations,
    reviewed: pack.by.reviewed,
    recording: pack.recording !== undefined,
    book: { words: pack.book.words, openings: pack.book.openings },
    readings: pack.readings,
    stops: pack.stops.map(({ id, readings, at, ask, materials, answer, kind, frames, wait, task, shares, must, value, after }) => ({
      id,
      readings,
      at,
      ask,
      materials,
      answer,
      kind,
      frames,
      wait,
      task,
      shares,
      must,
      value,
      after,
    })),
  };
}
