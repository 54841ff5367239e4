/**
 * Readability formulas for English that see only length: pure functions of counts. What may be shown of them, and to
 * whom, is for honest-estimate.ts; the formulas by word lists are in readability-word-lists.ts, Spanish in readability-es.ts.
 * All give NaN or infinity for a text without words or sentences.
 */
import type { SpokenCounts } from './count-text.ts';

/** Some of the counts of a text. */
export type Counts<Key extends keyof SpokenCounts> = Readonly<Record<Key, number>>;

/**
 * Reading ease: 206.835 - 1.015 words/sentences - 84.6 syllables/words. Higher is easier.
 * Flesch 1948, J. Applied Psychology 32:221-233; samples of 100 words. At most 121.22; no lower end. The author's
 * labels begin at grade 5, so none fits texts for ages 5 to 9.
 */
export function fleschReadingEase({ words, sentences, syllables }: Counts<'words' | 'sentences' | 'syllables'>): number {
  return 206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);
}

/**
 * Grade: 0.39 words/sentences + 11.8 syllables/words - 15.59.
 * Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75; fitted to 531 adults reading 18 passages of
 * training manuals, none of them near the first grades. Lowest value -3.40.
 */
export function fleschKincaid({ words, sentences, syllables }: Counts<'words' | 'sentences' | 'syllables'>): number {
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/**
 * Grade: 1.0430 √(polysyllables × 30/sentences) + 3.1291, for full understanding of the text.
 * McLaughlin 1969, J. Reading 12:639-646; 30 sentences, standard error 1.5 grades, lowest value 3.13. The adjustment for
 * fewer sentences is McGraw's, not McLaughlin's, and `smogSample` says whether it may be used.
 */
export function smog({ polysyllables, sentences }: Counts<'polysyllables' | 'sentences'>): number {
  return 1.043 * Math.sqrt(polysyllables * (30 / sentences)) + 3.1291;
}

/** McLaughlin's rule by hand for 30 sentences: the root of the nearest perfect square (midway: the lower), and 3. */
export function smogQuickGrade(polysyllablesInThirtySentences: number): number {
  const below = Math.floor(Math.sqrt(polysyllablesInThirtySentences));
  const midway = (below ** 2 + (below + 1) ** 2) / 2;
  return (polysyllablesInThirtySentences > midway ? below + 1 : below) + 3;
}

/** The most polysyllables in 30 sentences for the grades 4, 5, 6 ... (McGraw's table; McLaughlin calls tables inexact). */
const smogTable: readonly number[] = [2, 6, 12, 20, 30, 42, 56, 72, 90, 110, 132, 156, 182];

/** Grade by the conversion table for 30 sentences, ±1.5 grades; undefined past its end. */
export function smogTableGrade(polysyllablesInThirtySentences: number): number | undefined {
  const row = smogTable.findIndex((most) => polysyllablesInThirtySentences <= most);
  return row < 0 ? undefined : row + 4;
}

/** Whether a text is long enough for SMOG: 30 sentences, 10 to 29 with McGraw's adjustment, or too short. */
export function smogSample(sentences: number): 'ok' | 'adjusted' | 'insufficient' {
  return sentences >= 30 ? 'ok' : sentences >= 10 ? 'adjusted' : 'insufficient';
}

/**
 * Grade: 5.88 letters/words - 29.6 sentences/words - 15.8 (per 100 words: 0.0588 and 0.296).
 * Coleman and Liau 1975, J. Applied Psychology 60:283-284; samples of 100 words, letters and digits.
 */
export function colemanLiau({ words, sentences, letters }: Counts<'words' | 'sentences' | 'letters'>): number {
  return 0.0588 * ((100 * letters) / words) - 0.296 * ((100 * sentences) / words) - 15.8;
}

/**
 * Grade: 4.71 letters/words + 0.5 words/sentences - 21.43, to be rounded up.
 * Senter and Smith 1967, AMRL-TR-66-220; letters and digits as typed.
 */
export function automatedReadability({ words, sentences, letters }: Counts<'words' | 'sentences' | 'letters'>): number {
  return 4.71 * (letters / words) + 0.5 * (words / sentences) - 21.43;
}

const schoolYears = `kindergarten,first grade,second grade,third grade,fourth grade,fifth grade,sixth grade,seventh grade,
eighth grade,ninth grade,tenth grade,eleventh grade,twelfth grade,college`.split(/,\s*/u);

/** The school year of an ARI score by the table that begins at 1 = kindergarten. An older table is one year off. */
export function automatedReadabilityLabel(score: number): string {
  const row = Math.min(schoolYears.length, Math.max(1, Math.ceil(score)));
  return schoolYears[row - 1] ?? '';
}
