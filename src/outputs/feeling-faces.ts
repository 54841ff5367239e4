import { feelingOf } from '../core/measure/feeling-words.ts';
import { plainWord } from '../core/measure/words.ts';
import type { PackFields } from '../core/pack/pack.ts';
import type { FaceOf } from './face.ts';

/**
 * The face for a word of a pack, or undefined when the word is no feeling. What the author says of a feeling word (its family and
 * strength) goes before what our lexicon says; how pleasant it is comes from the lexicon where the families agree.
 */
export function faceOfWord(word: string, pack: Pick<PackFields, 'feelings' | 'language'>): FaceOf | undefined {
  const known = feelingOf(word, pack.language);
  const own = pack.feelings?.find((each) => plainWord(each.word) === plainWord(word));
  if (!own) return known;
  return { family: own.family, strength: own.strength, valence: known?.family === own.family && known.strength === own.strength ? known.valence : undefined };
}
