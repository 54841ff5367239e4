/** Syllables and what is read aloud, by the cases of test/core/cases. */
import { describe, expect, test } from 'vitest';
import { readAloudInEnglish } from '../../../src/core/measure/read-aloud-en.ts';
import { readAloudInSpanish } from '../../../src/core/measure/read-aloud-es.ts';
import { syllablesInEnglish } from '../../../src/core/measure/syllables-en.ts';
import { syllablesInSpanish } from '../../../src/core/measure/syllables-es.ts';
import { casesIn } from '../cases.ts';

/** The words of an input with something said of each, the bars between them kept. */
const ofEach = (input: string, say: (word: string) => string | number): string =>
  input
    .split(' ')
    .map((word) => (word === '|' ? word : say(word)))
    .join(' ');
const ofEachPart = (input: string, say: (word: string) => string | undefined): string =>
  input
    .split(' | ')
    .map((word) => say(word) ?? '(as it is spelt)')
    .join(' | ');

describe('syllables of English', () => {
  test.each(casesIn('syllables-en'))('$title', ({ input, expected }) => {
    expect(ofEach(input, (word) => syllablesInEnglish(word))).toBe(expected);
    expect(ofEach(input.replace(/'/gu, '’'), (word) => syllablesInEnglish(word))).toBe(expected);
  });
});

describe('sílabas del español', () => {
  test.each(casesIn('syllables-es'))('$title', ({ input, expected }) => {
    expect(ofEach(input, syllablesInSpanish)).toBe(expected);
    expect(ofEach(input.normalize('NFD'), syllablesInSpanish)).toBe(expected);
  });
});

describe('read aloud', () => {
  test.each(casesIn('read-aloud-en'))('English: $title', ({ input, expected }) => {
    expect(ofEachPart(input, readAloudInEnglish)).toBe(expected);
  });
  test.each(casesIn('read-aloud-es'))('español: $title', ({ input, expected }) => {
    expect(ofEachPart(input, readAloudInSpanish)).toBe(expected);
  });
});
