import { finding, type Finding } from '../finding.ts';
import { placeOf, stopsOf, type Pack, type Stop } from '../pack/pack.ts';
import { indexOfRun, wordsOf } from './plain-words.ts';
import type { Surroundings } from './surroundings.ts';

/** Words to read between two stops of one reading, so that the story is not lost. Common practice, no source. */
const leastWords = 40;
/** Part of the book that is read before the first stop, unless children predict. Common practice, no source. */
const leastBefore = 0.1;
/** Words that are left to read after the last stop; with fewer it is a question for after the book. Common practice, no source. */
const leastAfter = 4;
/** Books shorter than this are over before stops can be spaced. Common practice, no source. */
const shortestBook = 100;

/**
 * Stops leave the story room: some words before the first, between two, and after the last. Where the passage is there, words
 * are counted from cue to cue; without it they are estimated from openings and words an opening.
 */
export function* spacing(pack: Pack, around: Surroundings): Iterable<Finding> {
  if (pack.partial || pack.book.words < shortestBook) return;
  const spotOf = spots(pack, wordsOf(around.passage ?? ''));
  const told = new Set<string>();
  for (const { reading } of pack.readings) {
    const stops = [...stopsOf(pack, reading)].sort((a, b) => spotOf(a).words - spotOf(b).words);
    for (const [i, stop] of stops.entries()) {
      const before = stops[i - 1];
      if (before === undefined || told.has(`${before.id} ${stop.id}`)) continue;
      const [from, to] = [spotOf(before), spotOf(stop)];
      const words = Math.round(to.words - from.words);
      if (words >= leastWords) continue;
      told.add(`${before.id} ${stop.id}`);
      yield finding('stop/too-close', 'note', at(pack, stop), { stop: stop.id, before: before.id, words, estimated: !(from.counted && to.counted), least: leastWords });
    }
  }
  for (const stop of pack.stops) {
    const { start, words, counted, of } = spotOf(stop);
    if (stop.kind !== 'predict' && (counted ? words : start) < of * leastBefore && (counted || stop.at.opening / pack.book.openings <= leastBefore)) {
      yield finding('stop/too-early', 'note', at(pack, stop), { stop: stop.id });
    }
    if (counted ? of - words < leastAfter : stop.at.opening === pack.book.openings) yield finding('stop/at-the-end', 'note', at(pack, stop), { stop: stop.id });
  }
}

function at(pack: Pack, stop: Stop) {
  return placeOf(pack, 'stops', pack.stops.indexOf(stop), 'at');
}

/** Words read when a stop comes: `words` to the cue's end, `start` to the opening's beginning, `of` in the book. */
interface Spot {
  readonly words: number;
  readonly start: number;
  readonly of: number;
  readonly counted: boolean;
}

function spots(pack: Pack, passage: readonly string[]): (stop: Stop) => Spot {
  const of = passage.length > 0 ? passage.length : pack.book.words;
  const perOpening = of / pack.book.openings;
  const known = new Map<Stop, Spot>();
  for (const stop of pack.stops) {
    const start = (stop.at.opening - 1) * perOpening;
    const counted = passage.length > 0 ? endOfCue(passage, wordsOf(stop.at.cue), start + perOpening / 2) : undefined;
    known.set(stop, { words: counted ?? start + perOpening / 2, start, of, counted: counted !== undefined });
  }
  return (stop) => known.get(stop) ?? { words: 0, start: 0, of, counted: false };
}

/** Words up to the end of the cue; of several places the one nearest to the opening. */
function endOfCue(passage: readonly string[], cue: readonly string[], near: number): number | undefined {
  let best: number | undefined;
  for (let found = indexOfRun(passage, cue); found >= 0; found = indexOfRun(passage, cue, found + 1)) {
    const end = found + cue.length;
    if (best === undefined || Math.abs(end - near) < Math.abs(best - near)) best = end;
  }
  return best;
}
