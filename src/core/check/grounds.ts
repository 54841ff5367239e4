import type { Code } from '../finding.ts';

/**
 * What a rule stands on, so that advice can be weighed by whoever reads it.
 * `source`: seen in a copy of what is cited, often its abstract; `from memory`: cited without one at hand;
 * `common practice`: what careful teachers do, with no source. Where a rule leans on a source and its number does not
 * come from there, the mark is `common practice` and the source stands beside it.
 */
export type Mark = 'source' | 'from memory' | 'common practice';

export interface Ground {
  readonly mark: Mark;
  /** A short citation, in the form in which it may stand beside a finding. */
  readonly source?: string;
  /** The row of the team's table of practice: a letter or two for its part, and a number. */
  readonly row?: string;
}

/** What the rules behind the findings stand on. A code that only says that a file is broken has none. */
export const groundsOf: Readonly<Partial<Record<Code, Ground>>> = {
  'alt-text/missing': { mark: 'source', source: 'WCAG 2.2, 1.1.1 Non-text Content' },
  'alt-text/decorative-with-alt': { mark: 'source', source: 'WCAG 2.2, 1.1.1 Non-text Content' },
  'frames/missing': { mark: 'common practice', row: 'L2' },
  'models/missing': { mark: 'common practice', row: 'Q3' },
  'home/too-many-prompts': { mark: 'common practice', row: 'F5' },
  'text/too-hard': { mark: 'common practice', source: 'leans on plain-language rules of Head Start', row: 'F1' },
  'text/low-ease': { mark: 'source', source: 'INFLESZ, Barrio-Cantalejo et al. 2008', row: 'F1' },
  'recording/no-captions': { mark: 'source', source: 'WCAG 2.2, 1.2.2 Captions', row: 'V6' },
  'recording/captions-too-fast': { mark: 'source', source: 'Captioning Key, DCMP and NAD', row: 'V2' },
  'recording/too-large': { mark: 'common practice' },
  'plan/over-minutes': { mark: 'common practice', row: 'T12' },
  'passage/word-count': { mark: 'common practice' },
  'words/not-in-passage': { mark: 'common practice' },
  'words/first-met': { mark: 'common practice' },
  'copy/long-quote': { mark: 'common practice', source: 'stricter than the classroom guidelines of 1976, US Copyright Office, Circular 21', row: 'Y2' },
  'copy/too-much': { mark: 'common practice', source: 'stricter than the classroom guidelines of 1976, US Copyright Office, Circular 21', row: 'Y2' },
  'privacy/roster-name': { mark: 'common practice', source: 'leans on 16 CFR 312.2, names as personal information', row: 'Z4' },
  'privacy/roster-unread': { mark: 'common practice', row: 'Z4' },
  'privacy/email': { mark: 'common practice', row: 'Z4' },
  'privacy/phone': { mark: 'common practice', row: 'Z4' },
  'privacy/room': { mark: 'common practice', row: 'Z4' },
  'privacy/picture-place': { mark: 'common practice', source: 'leans on 16 CFR 312.2, precise place as personal information', row: 'Z4' },
  'rights/book-note': { mark: 'common practice', row: 'Y6' },
  'rights/picture-note': { mark: 'common practice', row: 'Y2' },
  'translation/unchecked': { mark: 'common practice', row: 'L7' },
  'by/review-past': { mark: 'common practice' },
  'by/review-ahead': { mark: 'common practice' },
};

const markWords = {
  en: { source: 'Source', 'from memory': 'From memory', 'common practice': 'Common practice', bare: 'Common practice, no source' },
  es: { source: 'Fuente', 'from memory': 'De memoria', 'common practice': 'Práctica común', bare: 'Práctica común, sin fuente' },
} as const;

/** A ground as a short line to show beside a finding: "Source: Rowe 1986", "Common practice, no source". In English where the language has no words for it. */
export function groundInWords(ground: Ground, language: string): string {
  const words = language.split('-')[0] === 'es' ? markWords.es : markWords.en;
  if (ground.source === undefined) return ground.mark === 'common practice' ? words.bare : words[ground.mark];
  return `${words[ground.mark]}: ${ground.source}`;
}
