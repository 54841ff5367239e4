import type { MeasuredPack } from '../measure/measures.ts';
import type { Lesson } from './lesson.ts';
import type { Durations } from './seconds.ts';

/** What the lesson page shows before anybody changes a thing: the first reading with a class, in the pack's own minutes. */
export interface Plan extends Lesson {
  readonly reading: number;
  /** Words a minute that the reading seconds were worked out with. */
  readonly pace: number;
  readonly durations: Durations;
}

/** A pack whose lesson has been worked out. */
export type PlannedPack = MeasuredPack & { readonly plan: Plan };
