import type { CheckedPack } from '../check/check-pack.ts';
import type { PassageMeasure } from './passage-measures.ts';
import type { InfleszBand } from './readability-es.ts';

/** A sentence with its line in the pack's file. */
export interface PlacedSentence {
  readonly text: string;
  readonly words: number;
  readonly line: number;
}

/** A sentence that costs a reader much. `cost` is how much easier the formula would find the text without it, in the formula's unit. */
export interface CostlySentence extends PlacedSentence {
  readonly cost: number;
}

/** Pieces of a text that were left out of the counts because they are no running prose. None is 0 or missing. */
export interface LeftOut {
  readonly headings?: number;
  /** List items and cells of tables. */
  readonly listItems?: number;
  /** Meanings and gestures of taught words. */
  readonly meanings?: number;
  /** Sentence frames: sentences with a blank in them. */
  readonly frames?: number;
  /** Words of word banks, and the short reasons beside the stars. */
  readonly bankWords?: number;
}

/** What was counted in one part of a pack, and what may honestly be said about it. */
export interface TextMeasure {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** Mean words a sentence; 0 when there is no sentence. */
  readonly wordsPerSentence: number;
  readonly longest: PlacedSentence | undefined;
  /**
   * Words of three or more syllables, each once, those with most syllables first; for a child's English also words that
   * the Spache list does not know. Names and the pack's `allow words` are passed over.
   */
  readonly longWords: readonly string[];
  readonly estimate: GradeEstimate;
  /** The raw figure of the formula that fits, for scripts and comparison; people get the estimate. Undefined where none fits. */
  readonly figure: number | undefined;
  /** At most three; none where there is no estimate. */
  readonly costliest: readonly CostlySentence[];
  readonly leftOut: LeftOut;
}

/** What may be said of how hard a text is: nothing for a short one, a band of whole grades or of ease for a longer one. */
export type GradeEstimate =
  | { readonly kind: 'too short' }
  | { readonly kind: 'no formula' }
  | { readonly kind: 'grades'; readonly formula: string; readonly low: number; readonly high: number; readonly belowFloor: boolean; readonly aboveCeiling: boolean }
  | { readonly kind: 'ease'; readonly formula: string; readonly band: InfleszBand; readonly shortSample: boolean };

export interface Measures {
  /** Everything that a family reads: summary, home prompts, example and note, care notes, body. */
  readonly family: TextMeasure;
  /** Numbers of the private passage, where there is one. */
  readonly passage: PassageMeasure | undefined;
  /** What a child reads in the booklet: the questions. Models are for grown-ups. */
  readonly children: TextMeasure;
}

/** A pack whose texts have been counted. */
export type MeasuredPack = CheckedPack & { readonly measures: Measures };
