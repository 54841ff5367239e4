import type { Stop } from '../../src/core/pack/pack.ts';
import type { LessonSeconds } from '../../src/core/plan/plan.ts';

/** "2:10" from seconds. */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${String(Math.floor(whole / 60))}:${String(whole % 60).padStart(2, '0')}`;
}

/** One stretch of a lesson: when it begins and how long it takes, in seconds from the start. */
export interface Stretch {
  readonly kind: 'opening' | 'reading' | 'stop' | 'closing';
  readonly stop: string | undefined;
  readonly begins: number;
  readonly takes: number;
}

/** The lesson in the order it happens. Reading and page turns are shared out over the openings evenly. */
export function stretchesOf(lesson: LessonSeconds, stops: readonly Stop[], openings: number): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let now = 0;
  let read = 0;
  const add = (kind: Stretch['kind'], takes: number, stop?: string) => {
    if (takes > 0 || kind !== 'reading') stretches.push({ kind, stop, begins: now, takes });
    now += takes;
  };
  const whole = lesson.reading + lesson.pageTurns;
  add('opening', lesson.opening);
  for (const stop of stops) {
    const seconds = lesson.stops.find((each) => each.id === stop.id);
    if (!seconds) continue;
    const until = whole * Math.min(1, stop.at.opening / openings);
    add('reading', Math.max(0, until - read));
    read = Math.max(read, until);
    add('stop', seconds.total, stop.id);
  }
  add('reading', whole - read);
  add('closing', lesson.closing);
  return stretches;
}
