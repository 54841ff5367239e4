import { finding, type Finding } from '../finding.ts';
import type { MeasuredPack } from '../measure/measures.ts';
import type { Library } from '../pack/library.ts';
import { placeOf, stopsOf } from '../pack/pack.ts';
import type { PlannedPack } from './plan.ts';
import { paceOf, secondsOfLesson } from './seconds.ts';

/** A lesson may run this many seconds over the pack's minutes before that is told. */
const grace = 60;

/** Fourth stage: adds the lesson in minutes, the first reading with a class. */
export function planLesson(pack: MeasuredPack, library: Pick<Library, 'pace'>): { readonly value: PlannedPack; readonly findings: readonly Finding[] } {
  const pace = paceOf(library);
  const first = pack.readings[0]?.reading ?? 1;
  const lesson = secondsOfLesson(pack.book, stopsOf(pack, first), { setting: 'class', pace });
  const findings: Finding[] = [];
  if (lesson.total > pack.for.minutes * 60 + grace) {
    findings.push(finding('plan/over-minutes', 'warn', placeOf(pack, 'for', 'minutes'), { planned: Math.ceil(lesson.total / 60), minutes: pack.for.minutes }));
  }
  return { value: { ...pack, plan: { lesson, pace } }, findings };
}
