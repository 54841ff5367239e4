/** How a text is parted and looked up, by the cases of test/core/cases. */
import { describe, expect, test } from 'vitest';
import { blocksOf } from '../../../src/core/measure/blocks.ts';
import { countText } from '../../../src/core/measure/count-text.ts';
import { familiarBy } from '../../../src/core/measure/familiar-words.ts';
import { sentencesOf } from '../../../src/core/measure/sentences.ts';
import { tokensOf } from '../../../src/core/measure/words.ts';
import { casesIn } from '../cases.ts';

describe('blocks', () => {
  test.each(casesIn('blocks'))('$title', ({ input, expected }) => {
    const blocks = blocksOf(input).map(({ text }) => `[${text.replace(/\n/gu, ' ')}]`);
    expect(blocks.join('\n')).toBe(expected);
  });
});

describe('words', () => {
  test.each(casesIn('words'))('$title', ({ input, expected }) => {
    const words = tokensOf(input).map(({ word }) => word);
    expect(words.join(' | ')).toBe(expected);
  });

  test.each(casesIn('words'))('$title, with accents written apart', ({ input, expected }) => {
    const words = tokensOf(input.normalize('NFD')).map(({ word }) => word);
    expect(words.join(' | ')).toBe(expected);
  });
});

describe.each(['en', 'es'])('sentences (%s)', (language) => {
  test.each(casesIn(`sentences-${language}`))('$title', ({ input, expected }) => {
    const sentences = sentencesOf(tokensOf(input), language).map((sentence) => sentence.map(({ before, word, after }) => before + word + after).join(' '));
    expect(sentences.join('\n')).toBe(expected);
  });
});

describe('unfamiliar words by the Spache list', () => {
  const familiar = familiarBy('spache');
  test.each(casesIn('unfamiliar'))('$title', ({ input, expected }) => {
    expect(countText(input, 'en', { familiar }).unfamiliarWords.join(', ')).toBe(expected);
  });

  test('the allow list of a pack passes over its names and taught words, in their regular forms too', () => {
    const allowed = familiarBy('spache', ['Brunella', 'tide pool', 'zither']);
    const counts = countText('Brunella saw two zithers by the tide pool. Brunella shivered.', 'en', { familiar: allowed });
    expect(counts.unfamiliarWords).toEqual(['shivered']);
  });

  test('every repetition counts as a token, once as a type', () => {
    const counts = countText('A zither is a zither.', 'en', { familiar });
    expect([counts.unfamiliar, counts.uniqueUnfamiliar]).toEqual([2, 1]);
  });

  test('the longer list of Dale and Chall knows more', () => {
    const text = 'They whispered about the parade on the avenue.';
    const knownBy = (list: 'spache' | 'dale-chall') => countText(text, 'en', { familiar: familiarBy(list) }).unfamiliar ?? NaN;
    expect(knownBy('dale-chall')).toBeLessThan(knownBy('spache'));
  });
});
