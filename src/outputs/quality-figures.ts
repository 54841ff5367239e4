import type { Level } from '../core/finding.ts';

/** Shapes of the figures about quality, apart from the packs that they are about: the browser knows them too. */

/** By what a pack can be chosen on the page. `kinds` are the first parts of its findings' codes. */
export interface Facets {
  readonly language: string;
  readonly grades: readonly string[];
  readonly levels: readonly string[];
  readonly kinds: readonly string[];
}

/** How often a code was told, by level. */
export interface CodeCount {
  readonly code: string;
  readonly byLevel: Readonly<Record<Level, number>>;
}

export interface QualityTotals {
  readonly packs: number;
  /** Packs that a finding kept off the site. They are counted and not described: what is unpublished stays so. */
  readonly keptOff: number;
  readonly languages: readonly string[];
  readonly stops: number;
  readonly familyWords: number;
  readonly pictures: { readonly described: number; readonly all: number };
  readonly withFindings: number;
  readonly byLevel: Readonly<Record<Level, number>>;
  /** In the order of the alphabet. */
  readonly byCode: readonly CodeCount[];
  /** Packs for each grade, language by language; a pack for two grades is counted in both. */
  readonly coverage: readonly { readonly language: string; readonly byGrade: Readonly<Record<string, number>> }[];
}

/** Kinds of findings of which a published page says only that there is one, and where: what they found must not be easier to find because of us. */
export function isWithheld(code: string): boolean {
  return kindOf(code) === 'privacy';
}

/** The kind of a finding: the first part of its code. */
export function kindOf(code: string): string {
  return code.split('/')[0] ?? code;
}
