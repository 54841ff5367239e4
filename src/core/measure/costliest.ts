/**
 * The sentences that cost a text most: those without which its formula would give an easier figure, most of all first.
 * A sentence's cost is the figure of the whole text less the figure of the text without that sentence, in the formula's
 * own unit. It says where rewriting helps the figure, and nothing of whether the sentence is a good one.
 */
import { figureOf, higherIsHarder, type FittingFormula, type FormulaCounts } from './fitting-formula.ts';

/** What one sentence adds to the counts of its text. `unfamiliar` are the keys of its unfamiliar words. */
export interface SentenceCounts {
  readonly words: number;
  readonly syllables: number;
  readonly unfamiliar: readonly string[];
}

/** Index and cost of the costliest sentences, at most `most`, and only those that make the text harder at all. */
export function costliestOf(sentences: readonly SentenceCounts[], formula: FittingFormula, most: number): readonly { readonly index: number; readonly cost: number }[] {
  const inSentences = new Map<string, number>();
  for (const each of sentences) for (const word of new Set(each.unfamiliar)) inSentences.set(word, (inSentences.get(word) ?? 0) + 1);
  const whole = {
    words: sentences.reduce((sum, each) => sum + each.words, 0),
    sentences: sentences.length,
    syllables: sentences.reduce((sum, each) => sum + each.syllables, 0),
    uniqueUnfamiliar: inSentences.size,
  };
  const without = (each: SentenceCounts): FormulaCounts => ({
    words: whole.words - each.words,
    sentences: whole.sentences - 1,
    syllables: whole.syllables - each.syllables,
    uniqueUnfamiliar: whole.uniqueUnfamiliar - [...new Set(each.unfamiliar)].filter((word) => inSentences.get(word) === 1).length,
  });
  const figure = figureOf(formula, whole);
  const sign = higherIsHarder(formula) ? 1 : -1;
  return sentences
    .map((each, index) => ({ index, cost: sign * ((figure ?? 0) - (figureOf(formula, without(each)) ?? figure ?? 0)) }))
    .filter(({ cost }) => cost > 0)
    .sort((a, b) => b.cost - a.cost || a.index - b.index)
    .slice(0, most);
}
