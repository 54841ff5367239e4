import { finding, type Finding } from '../finding.ts';
import { nearest } from '../pack/nearest.ts';
import { placeOf, type Pack, type Step } from '../pack/pack.ts';

/** Ids of stops are unique, and what names a stop or a reading names one that is there. */
export function* stopIds(pack: Pack): Iterable<Finding> {
  const firstLines = new Map<string, number>();
  for (const [index, stop] of pack.stops.entries()) {
    const at = placeOf(pack, 'stops', index, 'id');
    const firstLine = firstLines.get(stop.id);
    if (firstLine === undefined) firstLines.set(stop.id, at.line);
    else yield finding('stop/duplicate-id', 'stop', at, { id: stop.id, firstLine });
    if (stop.at.opening > pack.book.openings) {
      yield finding('stop/opening-past-the-end', 'stop', placeOf(pack, 'stops', index, 'at', 'opening'), { id: stop.id, opening: stop.at.opening, openings: pack.book.openings });
    }
  }
  // Where stops or readings had to be left out, a reference to one of them is no mistake of its own.
  if (pack.partial) return;
  yield* references(pack, [...firstLines.keys()]);
}

function* references(pack: Pack, ids: readonly string[]): Iterable<Finding> {
  const unknown = (field: string, id: string, ...steps: readonly Step[]): Finding => {
    const suggestion = nearest(id, ids);
    return finding('stop/unknown-reference', 'stop', placeOf(pack, ...steps), { field, id, ...(suggestion === undefined ? {} : { suggestion }) });
  };
  const readings = new Set(pack.readings.map((each) => each.reading));
  const afterOf = new Map(pack.stops.map((stop) => [stop.id, stop.after]));
  for (const [index, stop] of pack.stops.entries()) {
    if (stop.after !== undefined && !ids.includes(stop.after)) yield unknown('after', stop.after, 'stops', index, 'after');
    if (comesAfterItself(stop.id, afterOf)) yield finding('stop/after-itself', 'stop', placeOf(pack, 'stops', index, 'after'), { id: stop.id });
    for (const [place, reading] of (stop.readings ?? []).entries()) {
      if (!readings.has(reading)) yield finding('reading/unknown', 'stop', placeOf(pack, 'stops', index, 'readings', place), { reading });
    }
  }
  for (const [index, reading] of pack.readings.entries()) {
    if (reading.mustAsk !== undefined && !ids.includes(reading.mustAsk)) yield unknown('must ask', reading.mustAsk, 'readings', index, 'must ask');
  }
  for (const [index, { stop }] of (pack.whatFellFlat ?? []).entries()) {
    if (!ids.includes(stop)) yield unknown('what fell flat', stop, 'what fell flat', index, 'stop');
  }
  for (const [index, picture] of (pack.pictures ?? []).entries()) {
    if (picture.stop !== undefined && !ids.includes(picture.stop)) {
      yield finding('picture/unknown-stop', 'stop', placeOf(pack, 'pictures', index, 'stop'), { picture: picture.file, stop: picture.stop });
    }
  }
}

function comesAfterItself(id: string, afterOf: ReadonlyMap<string, string | undefined>): boolean {
  const seen = new Set<string>();
  for (let next = afterOf.get(id); next !== undefined && !seen.has(next); next = afterOf.get(next)) {
    if (next === id) return true;
    seen.add(next);
  }
  return false;
}
