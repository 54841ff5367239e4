import { finding, type Finding } from '../finding.ts';
import { placeOf, stopsOf, type Pack, type Way } from '../pack/pack.ts';
import { canBeWeighed } from './prompts.ts';

/** Ways to answer that a pack should mix. Common practice, no source; that one way does not fit all: CAST, Universal Design for Learning. */
const fewestWays = 3;
const byHand: readonly Way[] = ['write', 'draw'];

/** A pack mixes ways to answer, and in one reading hands are not asked for twice in a row. */
export function* waysToAnswer(pack: Pack): Iterable<Finding> {
  if (canBeWeighed(pack)) {
    const found = new Set(pack.stops.map((stop) => stop.answer)).size;
    if (found < fewestWays) yield finding('balance/few-ways', 'note', placeOf(pack, 'stops'), { found, least: fewestWays });
  }
  if (pack.partial) return;
  const told = new Set<string>();
  for (const { reading } of pack.readings) {
    const stops = stopsOf(pack, reading);
    for (const [index, stop] of stops.entries()) {
      const before = stops[index - 1];
      if (before === undefined || !byHand.includes(before.answer) || !byHand.includes(stop.answer)) continue;
      const pair = `${before.id} ${stop.id}`;
      if (told.has(pair)) continue;
      told.add(pair);
      yield finding('reading/hands-twice', 'note', placeOf(pack, 'stops', pack.stops.indexOf(stop), 'answer'), { reading, first: before.id, second: stop.id });
    }
  }
}
