/** What may be shown of a formula: how wide the band is, where it ends, and when nothing may be shown at all. */
import { describe, expect, test } from 'vitest';
import type { TextCounts } from '../../../src/core/measure/count-text.ts';
import { honestEstimate } from '../../../src/core/measure/honest-estimate.ts';

/** Counts of a text with so many words and sentences; of the rest, what a test needs. */
const counts = (given: Partial<TextCounts>): TextCounts => ({
  words: 200,
  sentences: 20,
  letters: 800,
  syllables: 240,
  polysyllables: 5,
  longWords: [],
  longestSentence: 20,
  unfamiliar: undefined,
  uniqueUnfamiliar: undefined,
  unfamiliarWords: [],
  ...given,
});

describe('a short text gets no grade', () => {
  test.each([
    ['99 words', { words: 99, sentences: 12 }],
    ['9 sentences', { words: 300, sentences: 9 }],
    ['nothing at all', { words: 0, sentences: 0, syllables: 0 }],
  ])('%s', (_, given) => {
    for (const reader of ['family', 'child', 'passage'] as const) {
      expect(honestEstimate(counts(given), 'en', reader)).toEqual({ kind: 'too short', leastWords: 100, leastSentences: 10 });
    }
  });
});

describe('English for families: Flesch-Kincaid', () => {
  test('10 to 29 sentences: two whole grades either way', () => {
    // 0.39 * 10 + 11.8 * 1.4 - 15.59 = 4.83
    const estimate = honestEstimate(counts({ words: 290, sentences: 29, syllables: 406 }), 'en', 'family');
    expect(estimate).toEqual({ kind: 'grades', formula: 'flesch-kincaid', band: [3, 7], belowFloor: false, aboveCeiling: false });
  });

  test('30 sentences and more: one and a half', () => {
    const estimate = honestEstimate(counts({ words: 300, sentences: 30, syllables: 420 }), 'en', 'family');
    expect(estimate).toMatchObject({ band: [3, 6] });
  });

  test('a band that reaches below grade 1 ends there and says so', () => {
    // 0.39 * 10 + 11.8 * 1.2 - 15.59 = 2.47
    expect(honestEstimate(counts({}), 'en-US', 'family')).toMatchObject({ band: [1, 4], belowFloor: true });
  });

  test('a text of one-syllable words is never given a negative grade', () => {
    const estimate = honestEstimate(counts({ words: 100, sentences: 25, syllables: 100 }), 'en', 'family');
    expect(estimate).toMatchObject({ band: [1, 1], belowFloor: true });
  });

  test('a text beyond school ends at grade 12 and says so', () => {
    const estimate = honestEstimate(counts({ words: 400, sentences: 10, syllables: 800 }), 'en', 'family');
    expect(estimate).toMatchObject({ band: [12, 12], aboveCeiling: true });
  });
});

describe('English for children and passages: Spache, grades 1 to 4', () => {
  test('with a list of familiar words', () => {
    // 0.121 * 10 + 0.082 * 10 + 0.659 = 2.69
    for (const reader of ['child', 'passage'] as const) {
      const estimate = honestEstimate(counts({ uniqueUnfamiliar: 20 }), 'en', reader);
      expect(estimate).toEqual({ kind: 'grades', formula: 'spache-1974', band: [1, 4], belowFloor: false, aboveCeiling: true });
    }
  });

  test('without a list there is nothing to go by', () => {
    expect(honestEstimate(counts({}), 'en', 'child')).toEqual({ kind: 'no formula' });
  });
});

describe('Spanish', () => {
  test('for families the INFLESZ band, with a word on samples under 500 words', () => {
    // 206.835 - 62.3 * 1.9 - 12.5 = 75.965
    const short = honestEstimate(counts({ words: 250, sentences: 20, syllables: 475 }), 'es', 'family');
    expect(short).toEqual({ kind: 'ease', formula: 'szigriszt-pazos', band: 'bastante fácil', shortSample: true });
    const long = honestEstimate(counts({ words: 500, sentences: 40, syllables: 950 }), 'es-MX', 'family');
    expect(long).toMatchObject({ band: 'bastante fácil', shortSample: false });
  });

  test('for children Crawford, grades 1 to 6', () => {
    // -0.205 * 15 + 0.049 * 185 - 3.407 = 2.58
    const estimate = honestEstimate(counts({ words: 200, sentences: 30, syllables: 370 }), 'es', 'child');
    expect(estimate).toEqual({ kind: 'grades', formula: 'crawford', band: [1, 4], belowFloor: false, aboveCeiling: false });
  });
});

test('another language has no formula here', () => {
  expect(honestEstimate(counts({ syllables: undefined }), 'ar', 'family')).toEqual({ kind: 'no formula' });
});

test('whatever the counts, a band is made of whole grades in order and within what the formula names', () => {
  for (let sentences = 10; sentences < 60; sentences += 7) {
    for (let words = 100; words < 1500; words += 93) {
      const estimate = honestEstimate(counts({ words, sentences, syllables: words * 1.3 }), 'en', 'family');
      if (estimate.kind !== 'grades') throw new Error(`A grade was expected, not ${estimate.kind}.`);
      const [low, high] = estimate.band;
      expect([Number.isInteger(low), Number.isInteger(high), low >= 1, high <= 12, low <= high]).not.toContain(false);
    }
  }
});
