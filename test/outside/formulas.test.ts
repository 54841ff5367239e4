/** Our formulas against general-purpose packages that compute the same, on random counts. */
import { automatedReadability as packagedAri } from 'automated-readability';
import { colemanLiau as packagedColemanLiau } from 'coleman-liau';
import { daleChallFormula as packagedDaleChall } from 'dale-chall-formula';
import { check, integer, property, record, type Arbitrary } from 'fast-check';
import { flesch as packagedFlesch } from 'flesch';
import { fleschKincaid as packagedFleschKincaid } from 'flesch-kincaid';
import { smogFormula as packagedSmog } from 'smog-formula';
import { spacheFormula as packagedSpache } from 'spache-formula';
import { expect, test } from 'vitest';
import { automatedReadability, colemanLiau, fleschKincaid, fleschReadingEase, smog } from '../../src/core/measure/readability.ts';
import { spache1974 } from '../../src/core/measure/readability-word-lists.ts';
import { daleChallAdjusted } from './other-formulas.ts';

interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  readonly letters: number;
  readonly polysyllables: number;
  readonly unfamiliar: number;
  readonly uniqueUnfamiliar: number;
}

const anyCounts: Arbitrary<Counts> = record({
  sentences: integer({ min: 1, max: 10_000 }),
  words: integer({ min: 1, max: 200_000 }),
  syllables: integer({ min: 1, max: 600_000 }),
  letters: integer({ min: 1, max: 1_000_000 }),
  polysyllables: integer({ min: 0, max: 100_000 }),
  unfamiliar: integer({ min: 0, max: 100_000 }),
  uniqueUnfamiliar: integer({ min: 0, max: 20_000 }),
});

type Formula = (counts: Counts) => number;

const pairs: readonly (readonly [title: string, ours: Formula, packaged: Formula])[] = [
  ['Flesch reading ease', fleschReadingEase, (each) => packagedFlesch({ sentence: each.sentences, word: each.words, syllable: each.syllables })],
  ['Flesch-Kincaid grade', fleschKincaid, (each) => packagedFleschKincaid({ sentence: each.sentences, word: each.words, syllable: each.syllables })],
  ['SMOG', smog, (each) => packagedSmog({ sentence: each.sentences, polysillabicWord: each.polysyllables })],
  ['Coleman-Liau', colemanLiau, (each) => packagedColemanLiau({ sentence: each.sentences, word: each.words, letter: each.letters })],
  ['Automated readability', automatedReadability, (each) => packagedAri({ sentence: each.sentences, word: each.words, character: each.letters })],
  ['Spache 1974', spache1974, (each) => packagedSpache({ sentence: each.sentences, word: each.words, unfamiliarWord: each.uniqueUnfamiliar })],
  ['Dale-Chall 1948, adjusted', daleChallAdjusted, (each) => packagedDaleChall({ sentence: each.sentences, word: each.words, difficultWord: each.unfamiliar })],
];

/** Equal to a billionth, of the value or of one, whichever is larger: sums in another order differ in the last digits. */
function agree(ours: number, packaged: number): boolean {
  return Math.abs(ours - packaged) <= 1e-9 * Math.max(1, Math.abs(packaged));
}

test.each(pairs)('%s is the same as packaged, for 10,000 random counts', (_, ours, packaged) => {
  const result = check(
    property(anyCounts, (counts) => agree(ours(counts), packaged(counts))),
    { numRuns: 10_000 },
  );
  expect(result.counterexample).toBeNull();
});
