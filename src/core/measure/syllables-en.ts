/**
 * Syllables of English as pronounced in General American. A short table of exceptions first, then the inflections,
 * then the `syllable` package, to which this file is the only door.
 */
import { syllable } from 'syllable';
import { stemsOf, type Ending } from './inflections-en.ts';
import { readAloudInEnglish } from './read-aloud-en.ts';
import { exceptions } from './syllable-exceptions-en.ts';
import { plainWord } from './words.ts';

/** Syllables of words, in small letters, that the rules here would miscount. */
export type SyllableTable = ReadonlyMap<string, number>;

/** Anything longer is no word; its vowels are counted plainly, in one pass. */
const longestWord = 100;

/** Syllables of one written word: plain, hyphenated, contracted, abbreviated or in figures. At least one. */
export function syllablesInEnglish(written: string, table: SyllableTable = exceptions): number {
  if (written.length > longestWord) return vowelGroups(written.toLowerCase());
  const spoken = readAloudInEnglish(written);
  const words = spoken === undefined ? separateWords(written) : spoken.split(' ');
  return Math.max(
    1,
    words.reduce((sum, word) => sum + (/[a-z]/u.test(word) ? spokenWord(word, table) : 0), 0),
  );
}

/** The parts of a hyphenated word, without accents. */
function separateWords(written: string): readonly string[] {
  return plainWord(written)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .split(/[^a-z']+/u);
}

/** Syllables of one word in small letters, with or without apostrophes. */
function spokenWord(word: string, table: SyllableTable): number {
  if (word === 'w') return 3;
  return table.get(word) ?? contraction(word, table) ?? letters(word, table);
}

/** Contractions that follow no rule. Where two forms are heard, as in aren't, the shorter (Flesch 1948). */
const contractions: SyllableTable = new Map([
  ["ma'am", 1],
  ["y'all", 1],
  ["ne'er", 1],
  ["e'er", 1],
  ["o'er", 1],
  ["aren't", 1],
  ["weren't", 1],
  ["there've", 1],
  ["hallowe'en", 3],
]);

/** A word with an apostrophe by the word before it: didn't, fox's, it'll. */
function contraction(word: string, table: SyllableTable): number | undefined {
  const irregular = contractions.get(word);
  if (irregular !== undefined) return irregular;
  const at = word.lastIndexOf("'");
  if (at < 0) return undefined;
  const stem = word.slice(0, at);
  const ending = word.slice(at + 1);
  if (stem === '' || ending === '') return spokenWord(stem + ending, table);
  if (ending === 't' && stem.endsWith('n')) {
    return spokenWord(stem.slice(0, -1), table) + (/(?:[dst]|ve)n$/u.test(stem) ? 1 : 0);
  }
  return spokenWord(stem, table) + (contractedSyllables(stem, ending) ?? letters(ending, table));
}

const sibilant = /(?:[sxz]|[cs]h|[cgsxz]e)$/u;
const vowelSound = /[aeiouyw]$/u;
const silentE = /[aeiouy].*[^aeiou]e$/u;

/** What 's, 'd, 'll, 've and 're add to the word before them; undefined for another ending, as in o'clock. */
function contractedSyllables(stem: string, ending: string): number | undefined {
  switch (ending) {
    case 's':
      return sibilant.test(stem) ? 1 : 0;
    case 'd':
      return /[dt]$/u.test(stem) ? 1 : 0;
    case 'll':
    case 've':
      return vowelSound.test(stem) && !silentE.test(stem) ? 0 : 1;
    case 're':
      return stem === 'we' || stem === 'you' || stem === 'they' ? 0 : 1;
    case 'm':
      return 0;
    default:
      return undefined;
  }
}

/** A word of letters alone. */
function letters(word: string, table: SyllableTable): number {
  return table.get(word) ?? inflected(word, table) ?? Math.max(1, syllable(word));
}

/** An inflected word by its stem: one in the table first, then, for the commonest endings, any stem at all. */
function inflected(word: string, table: SyllableTable): number | undefined {
  const stems = stemsOf(word);
  for (const { stem, ending } of stems) {
    const known = table.get(stem);
    if (known !== undefined) return known + endingSyllables(stem, ending);
  }
  const likeliest = stems.find(({ ending }) => ending === 's' || ending === 'es' || ending === 'ed' || ending === 'ing');
  return likeliest && letters(likeliest.stem, table) + endingSyllables(likeliest.stem, likeliest.ending);
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
