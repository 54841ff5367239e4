import type { CheckedPack } from '../check/check-pack.ts';
import type { PassageMeasure } from './passage-measures.ts';
import type { InfleszBand } from './readability-es.ts';

/** A sentence that costs a reader much, with its line in the pack's file. */
export interface HardSentence {
  readonly text: string;
  readonly words: number;
  readonly line: number;
}

/** What was counted in one part of a pack, and what may honestly be said about it. */
export interface TextMeasure {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** Mean words a sentence; 0 when there is no sentence. */
  readonly wordsPerSentence: number;
  readonly longest: HardSentence | undefined;
  /** Words of three or more syllables, each once. */
  readonly longWords: readonly string[];
  readonly estimate: GradeEstimate;
  /** Raw figures for scripts; people get the estimate. Undefined where no formula fits the language. */
  readonly fleschReadingEase: number | undefined;
  readonly fleschKincaid: number | undefined;
  /** Blocks that were left out because they are no running prose. */
  readonly leftOut: { readonly headings: number; readonly listItems: number };
}

/** What may be said of how hard a text is: nothing for a short one, a band of whole grades or of ease for a longer one. */
export type GradeEstimate =
  | { readonly kind: 'too short' }
  | { readonly kind: 'no formula' }
  | { readonly kind: 'grades'; readonly formula: string; readonly low: number; readonly high: number; readonly belowFloor: boolean; readonly aboveCeiling: boolean }
  | { readonly kind: 'ease'; readonly formula: string; readonly band: InfleszBand; readonly shortSample: boolean };

export interface Measures {
  /** Everything that a family reads: summary, home prompts and note, care notes, body. */
  readonly family: TextMeasure;
  /** Numbers of the private passage, where there is one. */
  readonly passage: PassageMeasure | undefined;
}

/** A pack whose texts have been counted. */
export type MeasuredPack = CheckedPack & { readonly measures: Measures };
