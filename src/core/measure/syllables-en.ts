/**
 * Syllables of English as pronounced in General American. A short table of exceptions first, then the inflections,
 * then the `syllable` package, to which this file is the only door.
 */
import { syllable } from 'syllable';
import { stemsOf, type Ending } from './inflections-en.ts';
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

const sibilant = /(?:[sxz]|[cs]h|[cgsxz]e)$/u;

/** Contractions that follow no rule. Where two forms are heard, as in aren't, the shorter (Flesch 1948). */
const contractions: ReadonlyMap<string, number> = new Map([
  ["ma'am", 1], ["y'all", 1], ["ne'er", 1], ["e'er", 1], ["o'er", 1], ["aren't", 1], ["weren't", 1], ["there've", 1],
  ["hallowe'en", 3],
]);

/** A word with an apostrophe by the word before it: didn't, fox's, it'll. */
function contraction(word: string): number | undefined {
  const at = word.lastIndexOf("'");
  if (at < 0) return undefined;
  const stem = word.slice(0, at);
  const ending = word.slice(at + 1);
  const irregular = contractions.get(word);
  if (irregular !== undefined) return irregular;
  if (stem === '') return letters(ending);
  if (ending === '' || stem === 'o') return (ending === '' ? 0 : letters(ending)) + letters(stem);
  if (ending === 't' && stem.endsWith('n')) return spokenWord(stem.slice(0, -1)) + (/(?:[dst]|ve)n$/u.test(stem) ? 1 : 0);
  return spokenWord(stem) + contractedSyllables(stem, ending);
}

function contractedSyllables(stem: string, ending: string): number {
  const endsInVowel = /[aeiouyw]$/u.test(stem) && !/[aeiouy].*[^aeiou]e$/u.test(stem);
  switch (ending) {
    case 's':
      return sibilant.test(stem) ? 1 : 0;
    case 'd':
      return /[dt]$/u.test(stem) ? 1 : 0;
    case 'll':
    case 've':
      return endsInVowel ? 0 : 1;
    case 're':
      return stem === 'we' || stem === 'you' || stem === 'they' ? 0 : 1;
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

/** An inflected word by its stem: one in the table first, then, for the commonest endings, any stem at all. */
function inflected(word: string): number | undefined {
  const stems = stemsOf(word);
  for (const { stem, ending } of stems) {
    const known = exceptions.get(stem);
    if (known !== undefined) return known + endingSyllables(stem, ending);
  }
  const likeliest = stems.find(({ ending }) => ending !== 'er' && ending !== 'est' && ending !== 'ly' && ending !== 'n');
  return likeliest && letters(likeliest.stem) + endingSyllables(likeliest.stem, likeliest.ending);
}

function endingSyllables(stem: string, ending: Ending): number {
  switch (ending) {
    case 'ed':
      return /[dt]e?$/u.test(stem) ? 1 : 0;
    case 's':
    case 'es':
      return sibilant.test(stem) ? 1 : 0;
    case 'n':
      return /[^aeou]e$/u.test(stem) ? 1 : 0;
    case 'ing':
    case 'er':
    case 'est':
    case 'ly':
      return 1;
  }
}

function vowelGroups(word: string): number {
  return Math.max(1, word.match(/[aeiouy]+/gu)?.length ?? 0);
}
