/** The feeling words: what is found in a text, and that the lexicon keeps its own rules. */
import { describe, expect, test } from 'vitest';
import { feelingOf, feelingsIn } from '../../../src/core/measure/feeling-words.ts';
import { feelings, usualValence } from '../../../src/core/measure/feelings-lexicon.ts';
import { families } from '../../../src/core/pack/schema.ts';
import { casesIn } from '../cases.ts';

describe('feeling words in a text', () => {
  test.each(casesIn('feeling-words'))('$title', ({ input, expected }) => {
    const [, language = '', text = ''] = /^(\w+): ([^]*)$/u.exec(input) ?? [];
    const told = feelingsIn(text, language).map(({ word, feeling }) => `${word}: ${feeling.family} ${String(feeling.strength)}, ${String(feeling.valence)}`);
    expect(told.join('\n')).toBe(expected);
  });
});

describe('the lexicon', () => {
  test('holds sixty feelings, each with words in both languages', () => {
    expect(feelings).toHaveLength(60);
    expect(feelings.filter(({ words }) => words.en.length === 0 || words.es.length === 0 || Object.values(words).flat().includes(''))).toEqual([]);
  });

  test('no word stands for two feelings', () => {
    for (const language of ['en', 'es'] as const) {
      const words = feelings.flatMap((feeling) => feeling.words[language]);
      expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([]);
    }
  });

  test.each(families)('the family %s has words, all of one side or near the middle, stronger ones further from it', (family) => {
    const own = feelings.filter((each) => each.family === family);
    expect(own.length).toBeGreaterThanOrEqual(3);
    const far = own.filter(({ valence }) => Math.abs(valence) > 0.2).map(({ valence }) => Math.sign(valence));
    expect(new Set(far).size).toBe(1);
    const mean = (strength: number) => Math.abs(usualValence(family, strength));
    expect(mean(3)).toBeGreaterThan(mean(1));
  });

  // The six of Ekman and Friesen 1969, as cited in Baron-Cohen et al. 2010, and the ladders of common practice.
  test.each([
    ['happy feliz', 'glad 2'],
    ['sad triste', 'sad 2'],
    ['angry enojada', 'cross 2'],
    ['afraid asustada', 'afraid 2'],
    ['surprised sorprendida', 'surprised 2'],
    ['disgusted asqueada', 'disgusted 2'],
    ['glad contenta', 'glad 1'],
    ['thrilled entusiasmada', 'glad 3'],
    ['upset disgustada', 'sad 1'],
    ['miserable abatida', 'sad 3'],
    ['cross malhumorada', 'cross 1'],
    ['furious furiosa', 'cross 3'],
    ['worried preocupada', 'afraid 1'],
    ['terrified aterrada', 'afraid 3'],
  ])('%s: %s', (pair, expected) => {
    const [english = '', spanish = ''] = pair.split(' ');
    const told = [feelingOf(english, 'en-GB'), feelingOf(spanish, 'es-MX')].map((each) => each && `${each.family} ${String(each.strength)}`);
    expect(told).toEqual([expected, expected]);
  });
});
