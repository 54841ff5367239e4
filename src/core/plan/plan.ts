import type { MeasuredPack } from '../measure/measures.ts';

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

/** Who is there: a class, a recording that waits by itself, or one adult with one child. */
export type Setting = 'class' | 'recording' | 'one child';

export interface Plan {
  /** The first reading with a class, all its stops: what the lesson page shows before anybody changes a thing. */
  readonly lesson: LessonSeconds;
  /** Words a minute that the reading seconds were worked out with. */
  readonly pace: number;
}

/** A pack whose lesson has been worked out. */
export type PlannedPack = MeasuredPack & { readonly plan: Plan };
