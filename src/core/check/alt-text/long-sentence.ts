import { wordsOf } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/** Most words of a sentence: whoever listens cannot look back. Common practice for reading aloud, no source. */
const longest = 25;

export const longSentence: AltRule<'alt-text/long-sentence'> = {
  code: 'alt-text/long-sentence',
  level: 'note',
  look: (alt) => {
    const words = Math.max(0, ...alt.text.split(/[.!?…;](?:["”»)])?(?= |$)/u).map((sentence) => wordsOf(sentence).length));
    return words > longest ? { words, most: longest } : undefined;
  },
};
