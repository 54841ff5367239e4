import type { Kind, Model, Pack, Step } from '../pack/pack.ts';

/** Stops that a pack must have before its balance can be spoken of: fewer is a pack just begun. Common practice, no source. */
const fewestStops = 4;

/** True when what is missing can be missed: the pack was read whole and has stops enough. */
export function canBeWeighed(pack: Pack): boolean {
  return !pack.partial && pack.stops.length >= fewestStops;
}

/** A stop's prompt or a question for after the book, with the way to it. Questions have no kind. */
export interface Prompt {
  readonly steps: readonly Step[];
  readonly ask: string;
  readonly depth: number;
  readonly kind: Kind | undefined;
  readonly models: readonly Model[];
}

/** Everything that is asked in class, in the order of the file. */
export function promptsOf(pack: Pack): readonly Prompt[] {
  return [
    ...pack.stops.map((stop, i) => ({ steps: ['stops', i], ask: stop.ask, depth: stop.depth, kind: stop.kind, models: stop.models ?? [] })),
    ...(pack.questions ?? []).map((each, i) => ({ steps: ['questions', i], ask: each.ask, depth: each.depth, kind: undefined, models: each.models ?? [] })),
  ];
}
