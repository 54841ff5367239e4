/**
 * The one formula that fits a text by its language and its reader, and its raw figure.
 *
 * English for families: Flesch-Kincaid. Spanish for families: Szigriszt-Pazos, told by its INFLESZ bands. What a child
 * reads, and the passage of a picture book: the formulas that were fitted to primary readers, Spache in English (grades 1
 * to 4) and Crawford in Spanish (grades 1 to 6). The others were made from texts for adults and say nothing at this age.
 * source: the samples that each author names; see readability.ts, readability-es.ts, readability-word-lists.ts.
 */
import type { TextCounts } from './count-text.ts';
import { fleschKincaid } from './readability.ts';
import { crawford, szigrisztPazos } from './readability-es.ts';
import { spache1974 } from './readability-word-lists.ts';

/** Who reads the text: a family at home, a child, or nobody yet: the passage of a book that is read aloud. */
export type Reader = 'family' | 'child' | 'passage';

export type FittingFormula = 'flesch-kincaid' | 'spache-1974' | 'crawford' | 'szigriszt-pazos';

/** The counts that the four formulas ask for. */
export type FormulaCounts = Pick<TextCounts, 'words' | 'sentences' | 'syllables' | 'uniqueUnfamiliar'>;

/** The formula for a language and a reader; undefined when none fits. */
export function fittingFormula(language: string, reader: Reader): FittingFormula | undefined {
  switch (language.toLowerCase().split('-')[0]) {
    case 'en':
      return reader === 'family' ? 'flesch-kincaid' : 'spache-1974';
    case 'es':
      return reader === 'family' ? 'szigriszt-pazos' : 'crawford';
    default:
      return undefined;
  }
}

/** The raw figure, for scripts and for comparing sentences; never shown as it is. Undefined where a count is missing or nothing was counted. */
export function figureOf(formula: FittingFormula, { words, sentences, syllables, uniqueUnfamiliar }: FormulaCounts): number | undefined {
  if (words === 0 || sentences === 0) return undefined;
  if (formula === 'spache-1974') return uniqueUnfamiliar === undefined ? undefined : spache1974({ words, sentences, uniqueUnfamiliar });
  if (syllables === undefined) return undefined;
  switch (formula) {
    case 'flesch-kincaid':
      return fleschKincaid({ words, sentences, syllables });
    case 'crawford':
      return crawford({ words, sentences, syllables });
    case 'szigriszt-pazos':
      return szigrisztPazos({ words, sentences, syllables });
  }
}

/** True when a higher figure is a harder text: so with grades, and the other way with ease. */
export function higherIsHarder(formula: FittingFormula): boolean {
  return formula !== 'szigriszt-pazos';
}
