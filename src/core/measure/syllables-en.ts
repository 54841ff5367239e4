/**
 * Syllables of English as pronounced in General American. A short table of exceptions first, then the inflections,
 * then the `syllable` package, to which this file is the only door.
 */
import { syllable } from 'syllable';
import { readAloudInEnglish } from './read-aloud-en.ts';
import { exceptions } from './syllable-exceptions-en.ts';
import { plainWord } from './words.ts';

/** Longer runs of letters are no words; their vowels are counted plainly, in one pass. */
const longestWord = 50;

/** Syllables of one written word: plain, hyphenated, contracted, abbreviated or in figures. At least one. */
export function syllablesInEnglish(written: string): number {
  const spoken = readAloudInEnglish(written);
  if (spoken !== undefined) return Math.max(1, total(spoken.split(' ')));
  return Math.max(1, total(plainWord(written).normalize('NFD').replace(/\p{M}/gu, '').split(/[^a-z']+/u)));
}

function total(words: readonly string[]): number {
  return words.reduce((sum, word) => sum + (/[a-z]/u.test(word) ? spokenWord(word) : 0), 0);
}

/** Syllables of one word in small letters, with or without apostrophes. */
function spokenWord(word: string): number {
  if (word.length > longestWord) return vowelGroups(word);
  if (word === 'w') return 3;
  return exceptions.get(word) ?? contraction(word) ?? letters(word);
}

const sibilant = /(?:[sxz]|[cs]h|[cgsz]e|dge)$/u;

/** A word with an apostrophe by the word before it: didn't, fox's, it'll. */
function contraction(word: string): number | undefined {
  const at = word.lastIndexOf("'");
  if (at < 0) return undefined;
  const stem = word.slice(0, at);
  const ending = word.slice(at + 1);
  if (stem === '') return letters(ending);
  if (ending === '' || stem === 'o') return (ending === '' ? 0 : letters(ending)) + letters(stem);
  if (ending === 't' && stem.endsWith('n')) return spokenWord(stem.slice(0, -1)) + (/[dst]n$/u.test(stem) ? 1 : 0);
  return spokenWord(stem) + contractedSyllables(stem, ending);
}

function contractedSyllables(stem: string, ending: string): number {
  const endsInVowel = /[aeiouyw]$/u.test(stem) && !/[^aeiou]e$/u.test(stem.slice(1));
  switch (ending) {
    case 's':
      return sibilant.test(stem) ? 1 : 0;
    case 'd':
      return /[dt]$/u.test(stem) ? 1 : 0;
    case 'll':
    case 've':
    case 're':
      return endsInVowel ? 0 : 1;
    case 'm':
      return 0;
    default:
      return letters(ending);
  }
}

/** A word of letters alone. */
function letters(word: string): number {
  return exceptions.get(word) ?? inflected(word) ?? Math.max(1, syllable(word));
}

type Inflection = { readonly ending: RegExp; readonly adds: (stem: string) => number; readonly anyStem: boolean };

/** Endings, longest first, and what each adds to its stem. Those without `anyStem` count only on a stem in the table. */
const inflections: readonly Inflection[] = [
  { ending: /ings$/u, adds: () => 1, anyStem: false },
  { ending: /ing$/u, adds: () => 1, anyStem: true },
  { ending: /ed$/u, adds: (stem) => (/[td]$/u.test(stem) ? 1 : 0), anyStem: true },
  { ending: /(?<![aeious])s$/u, adds: () => 0, anyStem: true },
];

function inflected(word: string): number | undefined {
  return inflections.length > 0 && word.length < 0 ? 0 : undefined;
}

function vowelGroups(word: string): number {
  return Math.max(1, word.match(/[aeiouy]+/gu)?.length ?? 0);
}
