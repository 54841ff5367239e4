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
  /** The rule's place in the table of practice that the team works from: R prompts, T time, W a week, Vo words, E feelings, L frames, M ways, Q rubrics, F families, D aims, P ratings. */
  readonly row?: string;
}

/** What the rules behind the findings stand on. A code that only says that a file is broken has none. */
export const groundsOf: Readonly<Partial<Record<Code, Ground>>> = {
  'alt-text/missing': { mark: 'source', source: 'WCAG 2.2, 1.1.1 Non-text Content' },
  'alt-text/decorative-with-alt': { mark: 'source', source: 'WCAG 2.2, 1.1.1 Non-text Content' },
  'frames/missing': { mark: 'common practice', row: 'L2' },
  'models/missing': { mark: 'common practice', row: 'Q3' },
  'library/logo-alt': { mark: 'source', source: 'WCAG 2.2, 1.1.1 Non-text Content' },
  'library/contrast': { mark: 'source', source: 'WCAG 2.2, 1.4.3 Contrast (Minimum)' },
  'best-of/how-many': { mark: 'common practice', source: 'best and worst of a few, Behavior Research Methods 53, 2021', row: 'P4' },
  'home/too-many-prompts': { mark: 'common practice', row: 'F5' },
  'text/low-ease': { mark: 'source', source: 'INFLESZ, Barrio-Cantalejo et al. 2008', row: 'F1' },
  'text/too-hard': { mark: 'common practice', source: 'plain-language rules of Head Start', row: 'F1' },
  'recording/no-captions': { mark: 'source', source: 'WCAG 2.2, 1.2.2 Captions', row: 'V6' },
  'recording/captions-too-fast': { mark: 'source', source: 'Captioning Key, DCMP and NAD', row: 'V2' },
  'recording/too-large': { mark: 'common practice' },
  'plan/over-minutes': { mark: 'common practice', row: 'T12' },
  'passage/word-count': { mark: 'common practice' },
  'words/not-in-passage': { mark: 'common practice' },
  'words/first-met': { mark: 'common practice' },
  'copy/long-quote': { mark: 'common practice', source: 'classroom guidelines of 1976, US Copyright Office, Circular 21', row: 'Y2' },
  'copy/too-much': { mark: 'common practice', source: 'classroom guidelines of 1976, US Copyright Office, Circular 21', row: 'Y2' },
  'privacy/roster-name': { mark: 'common practice', source: '16 CFR 312.2, names as personal information', row: 'Z4' },
  'privacy/roster-unread': { mark: 'common practice', row: 'Z4' },
  'privacy/email': { mark: 'common practice', row: 'Z4' },
  'privacy/phone': { mark: 'common practice', row: 'Z4' },
  'privacy/room': { mark: 'common practice', row: 'Z4' },
  'privacy/picture-place': { mark: 'common practice', source: '16 CFR 312.2, precise place as personal information', row: 'Z4' },
  'rights/book-note': { mark: 'common practice', row: 'Y6' },
  'rights/picture-note': { mark: 'common practice', row: 'Y2' },
  'translation/unchecked': { mark: 'common practice', row: 'L7' },
  'by/parent-missing': { mark: 'common practice' },
  'retired/instead': { mark: 'common practice' },
  'by/review-past': { mark: 'common practice' },
  'by/review-ahead': { mark: 'common practice' },

  'balance/few-kinds': { mark: 'common practice', source: 'Whitehurst et al. 1988; National Research Council 2000', row: 'R2' },
  'balance/no-own-life': { mark: 'common practice', source: 'Whitehurst et al. 1988; National Research Council 2000', row: 'R2' },
  'balance/mostly-completion': { mark: 'common practice', source: 'National Research Council 2000', row: 'R2' },
  'balance/mostly-recall': { mark: 'common practice', source: 'Webb 1997; Raphael 1986', row: '2.4' },
  'balance/no-deep-prompt': { mark: 'common practice', source: 'Webb 1997; Raphael 1986', row: '2.4' },
  'balance/few-why': { mark: 'source', source: 'Deshmukh et al. 2019', row: 'R9' },
  'balance/few-ways': { mark: 'common practice', source: 'CAST, Universal Design for Learning', row: 'M6' },
  'balance/only-own-feelings': { mark: 'common practice', row: 'E8' },
  'reading/no-why': { mark: 'common practice', source: 'McGee & Schickedanz 2007', row: 'W3' },
  'reading/many-first-stops': { mark: 'common practice', source: 'McGee & Schickedanz 2007', row: 'T13' },
  'reading/first-has-most': { mark: 'common practice', source: 'McGee & Schickedanz 2007', row: 'W3' },
  'reading/hands-twice': { mark: 'common practice', row: 'M6' },
  'stop/needs-handwriting': { mark: 'common practice', source: 'CAST, Universal Design for Learning', row: 'M6' },
  'stop/needs-a-pencil': { mark: 'common practice', source: 'CAST, Universal Design for Learning', row: 'M6' },
  'stop/no-seated-way': { mark: 'common practice', source: 'CAST, Universal Design for Learning', row: 'M6' },
  'stop/too-close': { mark: 'common practice', row: 'T13' },
  'stop/too-early': { mark: 'common practice', row: 'T13' },
  'stop/at-the-end': { mark: 'common practice', row: 'T13' },
  'stop/short-wait': { mark: 'source', source: 'Rowe 1986', row: 'T1' },
  'stop/depth-four-must': { mark: 'common practice', source: 'Webb 1997', row: '2.4' },
  'stop/deep-word-first': { mark: 'source', source: 'Blewitt et al. 2009', row: 'R10' },
  'stop/no-about': { mark: 'common practice', row: 'E8' },
  'stop/no-evidence-asked': { mark: 'common practice', row: 'E8' },
  'ask/family-trouble': { mark: 'common practice', row: 'E11' },
  'frames/too-many-blanks': { mark: 'common practice', row: 'L3' },
  'frames/article-before-blank': { mark: 'common practice', row: 'L3' },
  'frames/not-first-person': { mark: 'common practice', row: 'E8' },
  'frames/own-feeling-for-character': { mark: 'common practice', row: 'E8' },
  'models/fits-no-frame': { mark: 'common practice', row: 'L3' },
  'models/does-not-show': { mark: 'common practice', source: 'Jonsson & Svingby 2007', row: 'Q3' },
  'models/unknown-trait': { mark: 'common practice', source: 'Jonsson & Svingby 2007', row: 'Q3' },
  'models/alike': { mark: 'common practice', row: 'Q3' },
  'models/no-short-one': { mark: 'common practice', row: 'Q3' },
  'home/needs-the-book': { mark: 'common practice', row: 'F5' },
  'home/example-length': { mark: 'common practice', source: 'Huebner & Meltzoff 2005', row: 'F4' },
  'aims/no-prompt': { mark: 'common practice', row: 'D7' },
  'feelings/no-entry': { mark: 'source', source: 'Widen & Russell 2010', row: 'E5' },
  'feelings/situation-names-word': { mark: 'common practice', row: 'E5' },
  'words/meaning-uses-word': { mark: 'from memory', source: 'Beck, McKeown & Kucan 2002', row: 'Vo5' },
  'words/long-meaning': { mark: 'common practice', source: 'Beck, McKeown & Kucan 2002', row: 'Vo5' },
  'words/too-many': { mark: 'source', source: 'McGee & Schickedanz 2007', row: 'W2' },
  'care/no-note': { mark: 'common practice' },
};

const markWords = {
  en: { source: 'Source', 'from memory': 'From memory', 'common practice': 'Common practice', bare: 'Common practice, no source', after: 'Common practice; compare' },
  es: { source: 'Fuente', 'from memory': 'De memoria', 'common practice': 'Práctica común', bare: 'Práctica común, sin fuente', after: 'Práctica común; compárese' },
  ar: { source: 'المصدر', 'from memory': 'من الذاكرة', 'common practice': 'ممارسة شائعة', bare: 'ممارسة شائعة، بلا مصدر', after: 'ممارسة شائعة؛ قارنوا' },
} as const;

/** A ground as a short line to show beside a finding: "Source: Rowe 1986", "Common practice; compare …". In English where the language has no words for it. */
export function groundInWords(ground: Ground, language: string): string {
  const own = language.split('-')[0] ?? '';
  const words = own in markWords ? markWords[own as keyof typeof markWords] : markWords.en;
  if (ground.source === undefined) return ground.mark === 'common practice' ? words.bare : words[ground.mark];
  // A source is cited in Latin letters: in a sentence that runs the other way it stands apart.
  const source = words === markWords.ar ? `\u2068${ground.source}\u2069` : ground.source;
  return ground.mark === 'common practice' ? `${words.after} ${source}` : `${words[ground.mark]}: ${source}`;
}
