import { finding, type Finding } from '../finding.ts';
import type { MeasuredPack } from '../measure/measures.ts';
import type { Library } from '../pack/library.ts';
import { placeOf, stopsOf } from '../pack/pack.ts';
import { lessonOf } from './lesson.ts';
import type { PlannedPack } from './plan.ts';
import { durationsOf, paceOf, secondsOfLesson } from './seconds.ts';

/** Fourth stage: adds the lesson in minutes, the first reading with a class in the pack's own minutes. */
export function planLesson(pack: MeasuredPack, library: Pick<Library, 'pace' | 'durations'>): { readonly value: PlannedPack; readonly findings: readonly Finding[] } {
  const pace = paceOf(library, pack);
  const durations = durationsOf(library, pack);
  const options = { setting: 'class', pace, durations } as const;
  const reading = pack.readings[0]?.reading ?? 1;
  const lesson = lessonOf(pack, reading, pack.for.minutes, options);
  const findings: Finding[] = [];
  const planned = Math.ceil(secondsOfLesson(pack.book, stopsOf(pack, reading), options).total / 60);
  if (planned > pack.for.minutes) {
    findings.push(finding('plan/over-minutes', 'warn', placeOf(pack, 'for', 'minutes'), { planned, minutes: pack.for.minutes }));
  }
  return { value: { ...pack, plan: { ...lesson, reading, pace, durations } }, findings };
}
