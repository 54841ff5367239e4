import { stopsOf, type Stop } from '../pack/pack.ts';
import { usualValue } from './choose-stops.ts';
import type { Plannable, PlanStop } from './plannable.ts';

/** One day of the week with the book. */
export interface Day<S extends PlanStop = Stop> {
  readonly reading: number;
  readonly purpose: string;
  readonly stops: readonly S[];
  /** The question to ask if nothing else is asked; undefined when the reading has no stops. */
  readonly mustAsk: S | undefined;
  /** What moved since the reading before: stops asked again, stops that are new, stops that are back after a rest, stops that rest. On the first day all are new. */
  readonly again: readonly S[];
  readonly fresh: readonly S[];
  readonly back: readonly S[];
  readonly resting: readonly S[];
}

/** The readings of a pack in their order, each with its stops and what is other than the day before. */
export function weekOf<S extends PlanStop>(pack: Plannable<S>): readonly Day<S>[] {
  const readings = [...pack.readings].sort((a, b) => a.reading - b.reading);
  return readings.map(({ reading, purpose }, index) => {
    const stops = stopsOf(pack, reading);
    const before = readings[index - 1];
    const yesterday = before ? stopsOf(pack, before.reading) : [];
    const everBefore = new Set(readings.slice(0, index).flatMap((each) => stopsOf(pack, each.reading)));
    return {
      reading,
      purpose,
      stops,
      mustAsk: mustAskOf(pack, reading),
      again: stops.filter((stop) => yesterday.includes(stop)),
      fresh: stops.filter((stop) => !everBefore.has(stop)),
      back: stops.filter((stop) => everBefore.has(stop) && !yesterday.includes(stop)),
      resting: yesterday.filter((stop) => !stops.includes(stop)),
    };
  });
}

/** The question that a reading must not end without: the one it names, else its must of most value, else its stop of most value. */
export function mustAskOf<S extends PlanStop>(pack: Plannable<S>, reading: number): S | undefined {
  const named = pack.readings.find((each) => each.reading === reading)?.mustAsk;
  const stops = stopsOf(pack, reading);
  const musts = stops.filter((stop) => stop.must);
  return pack.stops.find((stop) => stop.id === named) ?? mostValued(musts) ?? mostValued(stops);
}

function mostValued<S extends PlanStop>(stops: readonly S[]): S | undefined {
  return stops.reduce<S | undefined>((best, stop) => (best === undefined || (stop.value ?? usualValue) > (best.value ?? usualValue) ? stop : best), undefined);
}
