/** What is counted in a private passage, by cases that a teacher can read. */
import { describe, expect, test } from 'vitest';
import { candidatesIn, mostCandidates } from '../../../src/core/measure/candidates.ts';
import { readPassage } from '../../../src/core/measure/passage-text.ts';
import { placesOfWords } from '../../../src/core/measure/vocabulary.ts';
import { casesIn } from '../cases.ts';

describe.each(['en', 'es'])('taught words in a passage (%s)', (language) => {
  test.each(casesIn(`vocabulary-${language}`))('$title', ({ input, expected }) => {
    const [words = '', ...passage] = input.split('\n');
    const found = placesOfWords(words.split('; '), readPassage(passage.join('\n'), language).sentences, language);
    const lines = found.map(({ word, places }) => `${word}: ${places.length === 0 ? 'nowhere' : places.map(({ opening, sentence }) => `${opening ?? '?'}.${sentence}`).join(' ')}`);
    expect(lines.join('\n')).toBe(expected);
  });
});

describe('words that might be taught', () => {
  const candidates = (text: string, known: readonly string[] = []) => candidatesIn(readPassage(text, 'en').sentences, 'en', known);

  test.each(casesIn('candidates'))('$title', ({ input, expected }) => {
    const [known = '', ...passage] = input.split('\n');
    const found = candidates(passage.join('\n'), known.replace('known:', '').split(',')) ?? [];
    expect(found.map(({ word, times }) => `${word}×${times}`).join('\n')).toBe(expected);
  });

  test('at most twelve are named, and there is no list for Spanish', () => {
    const many = 'zither gondola marimba turnstile cummerbund parapet lozenge gherkin tassel bollard hammock lectern sundial trellis'.split(' ');
    expect(candidates(many.map((word) => `The cat sat on the ${word} all day.`).join(' '))).toHaveLength(mostCandidates);
    expect(candidatesIn(readPassage('La gata se sentó en la cítara.', 'es').sentences, 'es', [])).toBeUndefined();
  });
});

describe('marks of openings', () => {
  const marks = (text: string) => {
    const { openings, oddMarks, sentences } = readPassage(text, 'en');
    return { openings, oddMarks, words: sentences.map(({ opening, tokens }) => `${opening ?? '-'}:${tokens.length}`).join(' ') };
  };

  test('part the text, in small or capital letters, with room around them', () => {
    expect(marks('[opening 1]\nOne fish.\n\n  [Opening 2]  \nTwo more fish. Red ones.')).toEqual({ openings: [1, 2], oddMarks: [], words: '1:2 2:3 2:2' });
  });

  test('a number may be left out: an opening without words has none', () => {
    expect(marks('[opening 1]\nOne fish.\n[opening 4]\nTwo.').openings).toEqual([1, 4]);
  });

  test('a mark that goes back, or has no number, is told with its line', () => {
    expect(marks('[opening 3]\nOne.\n[opening 2]\nTwo.\n[opening four]\nThree.\n[página 5]\nFour.').oddMarks).toEqual([
      { line: 3, why: 'order' },
      { line: 5, why: 'form' },
      { line: 7, why: 'form' },
    ]);
  });

  test('brackets within a text are text', () => {
    expect(marks('She said [opening 3] aloud.').words).toBe('-:5');
    expect(marks('[Bark!]\nThe opening 3.').oddMarks).toEqual([]);
  });

  test('a sentence does not run over an opening', () => {
    expect(marks('[opening 1]\nAnd then the boat\n[opening 2]\nwas gone.').words).toBe('1:4 2:2');
  });

  test('nothing, and a byte order mark, are no text', () => {
    expect(marks('')).toEqual({ openings: [], oddMarks: [], words: '' });
    expect(marks('\ufeff[opening 1]\r\nOne fish.\r\n').words).toBe('1:2');
  });
});
