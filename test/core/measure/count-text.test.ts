/** The counts of a whole text, and what is not counted. */
import { describe, expect, test } from 'vitest';
import { countText } from '../../../src/core/measure/count-text.ts';

describe('countText', () => {
  test('counts words, sentences, letters, syllables and long words', () => {
    const counts = countText('A caterpillar sat. The other caterpillar ate 12 leaves!', 'en');
    expect(counts).toMatchObject({ words: 9, sentences: 2, letters: 45, syllables: 16, polysyllables: 2, longestSentence: 6 });
    expect(counts.longWords).toEqual(['caterpillar']);
  });

  test('takes blocks that are parted already, and keeps them apart', () => {
    const blocks = [{ text: 'Look up' }, { text: 'A kite' }];
    expect(countText(blocks, 'en')).toMatchObject({ words: 4, sentences: 2 });
  });

  test('counts nothing in an empty text, or in signs alone', () => {
    const nothing = { words: 0, sentences: 0, letters: 0, syllables: 0, polysyllables: 0, longestSentence: 0 };
    expect(countText('', 'en')).toMatchObject(nothing);
    expect(countText('… !? — * * *\n\n"', 'es')).toMatchObject(nothing);
  });

  test('goes by the language and not by the region', () => {
    expect(countText('El búho.', 'es-MX')).toEqual(countText('El búho.', 'es'));
    expect(countText('The owl.', 'en-GB')).toEqual(countText('The owl.', 'en'));
  });

  test('counts what it can in a language whose sounds it does not know', () => {
    const counts = countText('ذهب الأرنب إلى النهر. هل عاد؟ نعم.', 'ar');
    expect(counts).toMatchObject({ words: 7, sentences: 3, syllables: undefined, polysyllables: undefined });
  });

  test('looks for unfamiliar words only when asked', () => {
    expect(countText('A zither.', 'en').unfamiliar).toBeUndefined();
    expect(countText('A zither.', 'en', { familiar: () => false }).unfamiliar).toBe(2);
  });

  test('gives the same counts for accents written as one character or as two', () => {
    const text = 'La cigüeña voló. ¡Adiós, pingüino!';
    expect(countText(text.normalize('NFD'), 'es')).toEqual(countText(text.normalize('NFC'), 'es'));
  });
});

describe('a text that no one would write is counted all the same', () => {
  const odd: Readonly<Record<string, string>> = {
    'quotation marks': '"'.repeat(100_000),
    'full stops': '.'.repeat(100_000),
    'a word, full stops, a word': `a${'.'.repeat(100_000)}a`,
    'hyphens between letters': 'a-'.repeat(50_000),
    figures: '9'.repeat(100_000),
    'one very long word': 'b'.repeat(100_000),
    'accents on one letter': `e${'\u0301'.repeat(50_000)}`,
    'empty list items': '- \n'.repeat(30_000),
    'half a surrogate pair': 'a\ud83d b',
  };
  test.each(Object.entries(odd))('%s', (_, text) => {
    for (const language of ['en', 'es'] as const) {
      const { words, sentences, syllables } = countText(text, language);
      expect(words).toBeLessThanOrEqual(2);
      expect(sentences).toBeLessThanOrEqual(words);
      expect(syllables).toBeGreaterThanOrEqual(words);
    }
  });
});
