import type { Sheet } from '../outputs/lesson-sheet.ts';

/** A lesson under way. It lives in memory: leaving the page ends it. */
export interface Progress {
  readonly phase: 'before' | 'during' | 'after';
  /** The sheet that it began with. */
  readonly sheet: Sheet;
  /** Stops that are asked: those of the sheet, without what was left out and with what was taken in. */
  readonly asked: ReadonlySet<string>;
  /** The moment that its seconds are counted from, in milliseconds. */
  readonly origin: number;
  /** The step that is going on. */
  readonly key: string;
  /** When each step was come to, in seconds from the origin; the end is one of them. */
  readonly entered: ReadonlyMap<string, number>;
  /** Children in the room, or undefined while nobody has said. Numbers, no names. */
  readonly children: number | undefined;
  readonly heard: number;
}

export function newProgress(sheet: Sheet): Progress {
  return { phase: 'before', sheet, asked: new Set(sheet.stops.map((stop) => stop.id)), origin: 0, key: '', entered: new Map(), children: undefined, heard: 0 };
}
