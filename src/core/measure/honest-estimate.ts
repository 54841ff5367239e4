/**
 * How much of a readability formula may be shown: whole grades in a band, never decimals, nothing below the formula's
 * floor, and no grade at all for a short text. A value without words; the languages' files turn it into a sentence.
 *
 *   honestEstimate(counts, 'en', 'child')
 *
 * The widths follow the spread of the formulas in random draws of sentences: 10 sentences of one book vary by 1.4 grades
 * (standard deviation), 30 by 0.8; rounded up, as the formulas themselves are off by a grade and a half.
 */
import type { TextCounts } from './count-text.ts';
import { figureOf, fittingFormula, type FittingFormula, type Reader } from './fitting-formula.ts';
import { infleszBand, type InfleszBand } from './readability-es.ts';

export type { Reader } from './fitting-formula.ts';

/** What a text must have before any grade is told. */
export const leastWords = 100;
export const leastSentences = 10;
/** From so many sentences the band is narrower. */
const manySentences = 30;
/** The samples that the INFLESZ scale was validated on had at least so many words. */
const infleszWords = 500;

type GradeFormula = Exclude<FittingFormula, 'szigriszt-pazos'>;

/** The grades that a formula may name: its floor, and the top of what it was made for. */
const range: Readonly<Record<GradeFormula, readonly [floor: number, ceiling: number]>> = {
  'flesch-kincaid': [1, 12],
  'spache-1974': [1, 4],
  crawford: [1, 6],
};

/** What may be shown. The counts beside it are always shown. */
export type Estimate =
  | { readonly kind: 'too short'; readonly leastWords: number; readonly leastSentences: number }
  /** No formula fits this language and reader, or the words were counted without a list. */
  | { readonly kind: 'no formula' }
  /**
   * "About grades low to high". With `belowFloor` the band reaches below the formula's floor: say "grade high or below";
   * with `aboveCeiling`, above what the formula was made for: say "grade low or above".
   */
  | {
      readonly kind: 'grades';
      readonly formula: GradeFormula;
      readonly band: readonly [low: number, high: number];
      readonly belowFloor: boolean;
      readonly aboveCeiling: boolean;
    }
  /** A band of ease. `shortSample` when the text is shorter than those the scale was validated on. */
  | {
      readonly kind: 'ease';
      readonly formula: 'szigriszt-pazos';
      readonly band: InfleszBand;
      readonly shortSample: boolean;
    };

/** What may honestly be said about how hard a text is to read in print. */
export function honestEstimate(counts: TextCounts, language: string, reader: Reader): Estimate {
  const { words, sentences } = counts;
  if (words < leastWords || sentences < leastSentences) return { kind: 'too short', leastWords, leastSentences };
  const formula = fittingFormula(language, reader);
  const figure = formula && figureOf(formula, counts);
  if (formula === undefined || figure === undefined) return { kind: 'no formula' };
  return formula === 'szigriszt-pazos' ? { kind: 'ease', formula, band: infleszBand(figure), shortSample: words < infleszWords } : grades(formula, figure, sentences);
}

function grades(formula: GradeFormula, grade: number, sentences: number): Estimate {
  const margin = sentences >= manySentences ? 1.5 : 2;
  const [floor, ceiling] = range[formula];
  const [low, high] = [Math.round(grade - margin), Math.round(grade + margin)];
  const within = (value: number): number => Math.min(ceiling, Math.max(floor, value));
  return { kind: 'grades', formula, band: [within(low), within(high)], belowFloor: low < floor, aboveCeiling: high > ceiling };
}
