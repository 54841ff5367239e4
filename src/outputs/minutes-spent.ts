import type { LessonSeconds } from '../core/plan/seconds.ts';

/** What a lesson's seconds go to. */
export const spending = ['reading', 'pages', 'asking', 'thinking', 'doing', 'hearing', 'ends'] as const;
export type Spending = (typeof spending)[number];

export interface Spent {
  readonly on: Spending;
  readonly seconds: number;
}

/** How the seconds of a lesson are spent, in the order of `spending`; what takes no time is left out. They add up to the lesson's total. */
export function minutesSpent(lesson: LessonSeconds): readonly Spent[] {
  const stops = lesson.stops.flatMap((stop) => spentAt(stop));
  const at = (on: Spending) => stops.filter((each) => each.on === on).reduce((sum, each) => sum + each.seconds, 0);
  const seconds: Readonly<Record<Spending, number>> = {
    ...{ reading: lesson.reading, pages: lesson.pageTurns, ends: lesson.opening + lesson.closing },
    ...{ asking: at('asking'), thinking: at('thinking'), doing: at('doing'), hearing: at('hearing') },
  };
  return spending.map((on) => ({ on, seconds: seconds[on] })).filter((each) => each.seconds > 0);
}

/** How the seconds of one stop follow each other. The silence after each answer is thinking as well; it is put to the first silence. */
export function spentAt(stop: LessonSeconds['stops'][number]): readonly Spent[] {
  const parts: readonly Spent[] = [
    { on: 'asking', seconds: stop.ask },
    { on: 'thinking', seconds: stop.wait + stop.shares * stop.secondWait },
    { on: 'doing', seconds: stop.task },
    { on: 'hearing', seconds: stop.shares * stop.share },
  ];
  return parts.filter((each) => each.seconds > 0);
}
