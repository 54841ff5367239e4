import { folded, isFunctionWord, sameWords, wordsOf } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/**
 * An alt text that is the title, the question or the sentence beside it is heard twice and says nothing new. Source: W3C, "An alt Decision
 * Tree" and technique H2. A run of words counts when it has 4 words, 3 of them with a meaning of their own, and is half of the alt text or 8
 * words long: "at the end of the day" is everybody's. Those marks are our own.
 */
const shortestRun = 4;
const meaningfulWords = 3;
const alwaysLong = 8;

export const repeats: AltRule<'alt-text/repeats'> = {
  code: 'alt-text/repeats',
  level: 'warn',
  look: (alt) => {
    if (alt.use === 'word picture') return undefined;
    for (const text of alt.beside ?? []) {
      const beside = wordsOf(text);
      if (sameWords(alt.words, beside)) return { found: text.slice(0, 80) };
      const run = longestRun(alt.words, beside);
      const meaningful = run.filter((word) => !isFunctionWord(word)).length;
      if (meaningful >= meaningfulWords && (run.length >= alwaysLong || run.length * 2 >= alt.words.length)) return { found: run.join(' ').slice(0, 80) };
    }
    return undefined;
  },
};

/** The longest run of words of `alt` each four of which stand in a row in `beside`. */
function longestRun(alt: readonly string[], beside: readonly string[]): readonly string[] {
  const fours = (words: readonly string[]) =>
    words.slice(0, Math.max(0, words.length - shortestRun + 1)).map((_, at) =>
      words
        .slice(at, at + shortestRun)
        .map(folded)
        .join(' '),
    );
  const there = new Set(fours(beside));
  let best: readonly [start: number, length: number] = [0, 0];
  let length = 0;
  for (const [at, four] of fours(alt).entries()) {
    length = !there.has(four) ? 0 : length === 0 ? shortestRun : length + 1;
    if (length > best[1]) best = [at + shortestRun - length, length];
  }
  return alt.slice(best[0], best[0] + best[1]);
}
