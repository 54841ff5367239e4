/**
 * Readability formulas by lists of familiar words (familiar-words.ts). Names are passed over, regular inflections of
 * listed words are familiar.
 */
import type { Counts } from './readability.ts';

/** Counts made with a list of familiar words. */
type ListCounts<Key extends 'unfamiliar' | 'uniqueUnfamiliar'> = Counts<'words' | 'sentences'> & Readonly<Record<Key, number>>;

/**
 * Grade: 0.121 words/sentences + 0.082 (unique unfamiliar words per 100 words) + 0.659, by the revised Spache list.
 * Spache 1953, Elementary School J. 53:410-413, revised 1974; grades 1 to 3 (to 4), samples of 100 to 150 words. Each
 * unfamiliar word counts once, so a long text scores lower than its parts.
 */
export function spache1974({ words, sentences, uniqueUnfamiliar }: ListCounts<'uniqueUnfamiliar'>): number {
  return 0.121 * (words / sentences) + 0.082 * ((100 * uniqueUnfamiliar) / words) + 0.659;
}

/**
 * Cloze score: 64 - 0.95 (unfamiliar words per 100 words) - 0.69 words/sentences, by the Dale-Chall list. Higher is easier.
 * Chall and Dale 1995, Readability Revisited; samples of 100 words, from grade 1 up, to be read as a band.
 */
export function daleChall1995({ words, sentences, unfamiliar }: ListCounts<'unfamiliar'>): number {
  return 64 - 0.95 * ((100 * unfamiliar) / words) - 0.69 * (words / sentences);
}

const levels: readonly (readonly [least: number, level: string])[] = [
  [58, '1'],
  [54, '2'],
  [50, '3'],
  [45, '4'],
  [40, '5-6'],
  [34, '7-8'],
  [28, '9-10'],
  [22, '11-12'],
  [16, '13-15'],
];

/** The reading level of a cloze score, rounded up first (Chall and Dale 1995, table 5-8). */
export function daleChallLevel(cloze: number): string {
  return levels.find(([least]) => Math.ceil(cloze) >= least)?.[1] ?? '16+';
}
