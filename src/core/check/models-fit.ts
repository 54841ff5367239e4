import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { patternOf } from './frame-pattern.ts';
import { isWholeSentence } from './models-show.ts';
import { wordsOf } from './plain-words.ts';

/** Words of a model answer that still counts as short. Common practice, no source. */
const shortAnswer = 10;
/** Frames of one stop that are looked at: no stop needs as many, and a file full of them must not hold up a library. */
const mostFrames = 20;

/**
 * The model answers of a stop fit its frames, differ, and one is short. Common practice, no source. A model of a word or two needs no frame.
 */
export function* modelsFit(pack: Pack): Iterable<Finding> {
  for (const [index, stop] of pack.stops.entries()) {
    const patterns = (stop.frames ?? []).slice(0, mostFrames).map(patternOf);
    const models = (stop.models ?? []).map(({ text }) => ({ text, words: wordsOf(text) }));
    const seen = new Set<string>();
    for (const [place, { text, words }] of models.entries()) {
      if (patterns.length > 0 && isWholeSentence(text) && !patterns.some((fits) => fits(text)))
        yield finding('models/fits-no-frame', 'note', placeOf(pack, 'stops', index, 'models', place), { stop: stop.id, model: text });
      const same = words.join(' ');
      if (seen.has(same)) yield finding('models/alike', 'warn', placeOf(pack, 'stops', index, 'models', place), { stop: stop.id, model: text });
      seen.add(same);
    }
    const shortest = Math.min(...models.map(({ words }) => words.length));
    if (models.length >= 2 && shortest > shortAnswer) yield finding('models/no-short-one', 'note', placeOf(pack, 'stops', index, 'models'), { stop: stop.id, shortest, most: shortAnswer });
  }
}
