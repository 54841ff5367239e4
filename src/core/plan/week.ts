import { stopsOf, type PackFields, type Stop } from '../pack/pack.ts';
import { usualValue } from './choose-stops.ts';

/** One day of the week with the book. */
export interface Day {
  readonly reading: number;
  readonly purpose: string;
  readonly stops: readonly Stop[];
  /** The question to ask if nothing else is asked; undefined when the reading has no stops. */
  readonly mustAsk: Stop | undefined;
  /** What moved since the reading before: stops asked again, stops that are new, stops that rest. On the first day all are new. */
  readonly again: readonly Stop[];
  readonly fresh: readonly Stop[];
  readonly resting: readonly Stop[];
}

/** The readings of a pack in their order, each with its stops and what is other than the day before. */
export function weekOf(pack: PackFields): readonly Day[] {
  const readings = [...pack.readings].sort((a, b) => a.reading - b.reading);
  return readings.map(({ reading, purpose }, index) => {
    const stops = stopsOf(pack, reading);
    const before = readings[index - 1];
    const earlier = before ? stopsOf(pack, before.reading) : [];
    return {
      reading,
      purpose,
      stops,
      mustAsk: mustAskOf(pack, reading),
      again: stops.filter((stop) => earlier.includes(stop)),
      fresh: stops.filter((stop) => !earlier.includes(stop)),
      resting: earlier.filter((stop) => !stops.includes(stop)),
    };
  });
}

/** The question that a reading must not end without: the one it names, else its must of most value, else its stop of most value. */
export function mustAskOf(pack: PackFields, reading: number): Stop | undefined {
  const named = pack.readings.find((each) => each.reading === reading)?.mustAsk;
  const stops = stopsOf(pack, reading);
  const musts = stops.filter((stop) => stop.must);
  return pack.stops.find((stop) => stop.id === named) ?? mostValued(musts) ?? mostValued(stops);
}

function mostValued(stops: readonly Stop[]): Stop | undefined {
  return stops.reduce<Stop | undefined>((best, stop) => (best === undefined || (stop.value ?? usualValue) > (best.value ?? usualValue) ? stop : best), undefined);
}
