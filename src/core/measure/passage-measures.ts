import type { Estimate } from './honest-estimate.ts';

/**
 * What is known about the private text of a book: numbers, and single words with where they stand. No sentence and no
 * phrase of the text is in it, so that whatever shows it cannot give the text away.
 */
export interface PassageMeasure {
  readonly words: number;
  readonly sentences: number;
  /** Mean words a sentence; 0 when there is no sentence. */
  readonly wordsPerSentence: number;
  /** Words in the longest sentence. */
  readonly longestSentence: number;
  readonly estimate: Estimate;
  /** Words and sentences of each opening; empty when the text has no marks of openings. */
  readonly openings: readonly OpeningCount[];
  /** Each taught word, in the order of the pack. */
  readonly vocabulary: readonly WordPlaces[];
  /** Words that might be taught, the likeliest first; undefined for a language without a list of familiar words. The teacher decides. */
  readonly candidates: readonly Candidate[] | undefined;
  readonly copied: Copied;
}

export interface OpeningCount {
  readonly opening: number;
  readonly words: number;
  readonly sentences: number;
}

/** Where a word stands: its sentence, from 1, and its opening where the text has marks. */
export interface WordPlace {
  readonly opening: number | undefined;
  readonly sentence: number;
}

export interface WordPlaces {
  readonly word: string;
  readonly places: readonly WordPlace[];
}

export interface Candidate extends WordPlace {
  readonly word: string;
  readonly times: number;
  /** Words in the sentence that is named. */
  readonly sentenceWords: number;
}

/** How much of the text the pack publishes. */
export interface Copied {
  /** Words of the longest run that a published text shares with the book. */
  readonly longestRun: number;
  /** Words of the book that stand in published texts, each counted once. */
  readonly words: number;
  /** That, of all words of the book: 0 to 1. */
  readonly share: number;
  /** The most words that may be quoted, by the rule of `copy-safety.ts`. */
  readonly most: number;
  /** True where the book's rights let a pack quote as it likes. */
  readonly exempt: boolean;
}
