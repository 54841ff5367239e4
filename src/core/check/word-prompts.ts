import { finding, type Finding } from '../finding.ts';
import { placeOf, readingsOf, type Pack, type Stop } from '../pack/pack.ts';
import { plain } from './plain-words.ts';

/** The first prompt on a word is no harder than a later one: easier at the first meeting, harder later. Source: Blewitt et al. 2009, with three-year-olds. */
export function* wordPrompts(pack: Pack): Iterable<Finding> {
  if (pack.partial) return;
  const order = (stop: Stop): number => Math.min(...readingsOf(pack, stop), 9) * 1000 + stop.at.opening;
  const met = new Map<string, Stop>();
  for (const stop of pack.stops.filter(({ kind }) => kind === 'word').sort((a, b) => order(a) - order(b))) {
    for (const word of stop.words ?? []) {
      const first = met.get(plain(word));
      if (first === undefined) met.set(plain(word), stop);
      else if (first.depth > stop.depth) {
        met.set(plain(word), stop);
        yield finding('stop/deep-word-first', 'note', placeOf(pack, 'stops', pack.stops.indexOf(first), 'depth'), { word, first: first.id, later: stop.id });
      }
    }
  }
}
