import type { Prompt } from '../core/booklet/booklet-schema.ts';
import type { BookletData } from './booklet-data.ts';

/** The questions as they are shown, for the booklet's file. */
export function promptsOf({ stops, atNoStop }: BookletData): readonly Prompt[] {
  return [...stops.map(({ id, number, opening, ask, about }) => ({ of: id, number, opening, ask, ...(about && { about }) })), ...atNoStop];
}
