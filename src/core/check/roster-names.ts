import { namesThatAreWords } from './names-that-are-words.ts';

/**
 * Finds the names of a class list in a text: a given name alone, or all names of a line one after another. Capitals count,
 * accents do not, and only whole words: Ana is not found in Anacleto, nor will in "she will".
 */

/** A name of the list: how it is written there, and its words evened out. */
interface RosterName {
  readonly name: string;
  readonly words: readonly string[];
}

/** The names of a list, ready to be looked for. */
export interface Roster {
  readonly byFirstWord: ReadonlyMap<string, readonly RosterName[]>;
  /** Given names that are no word, for file names, where no capital helps. */
  readonly givenNames: ReadonlyMap<string, string>;
  /** Words that may stand in a text although a name has them, and the names of makers, word by word; all evened out. */
  readonly allowedWords: ReadonlySet<string>;
  readonly makers: readonly (readonly string[])[];
}

/** Names that may stand in a text although they are on the list: words that a pack passes over, each by itself, and makers of the book under their whole names. */
export interface Allowed {
  readonly words: readonly string[];
  readonly makers: readonly string[];
}

/** Reads the lines of a list: `Ana`, `Ana Quillón`, `Quillón, Ana`, `3. Ana`. */
export function readRoster(lines: readonly string[], allowed: Allowed = { words: [], makers: [] }): Roster {
  const byFirstWord = new Map<string, RosterName[]>();
  const givenNames = new Map<string, string>();
  const add = (words: readonly string[]): void => {
    const name: RosterName = { name: words.join(' '), words: words.map(evenedOut) };
    const first = name.words[0] ?? '';
    const known = byFirstWord.get(first) ?? [];
    if (!known.some((each) => each.name === name.name)) byFirstWord.set(first, [...known, name]);
  };
  for (const line of lines) {
    const [before = '', after = ''] = line
      .normalize('NFC')
      .replace(/^\d+\s*[.)]?\s+/u, '')
      .replace(/[;\t]+/gu, ' ')
      .split(',', 2);
    const words = (`${after} ${before}`.match(wordPattern) ?? []).map(capitalised);
    const [given] = words;
    // A single letter is an initial; it is found only with the names that follow it.
    if (given === undefined || words.join('').length < 2) continue;
    if (words.length > 1) add(words);
    if (given.length < 2) continue;
    add([given]);
    if (!isAlsoWord(evenedOut(given))) givenNames.set(evenedOut(given), given);
  }
  const wordsOf = (phrase: string): readonly string[] => (phrase.match(wordPattern) ?? []).map(evenedOut);
  return { byFirstWord, givenNames, allowedWords: new Set(allowed.words.flatMap(wordsOf)), makers: allowed.makers.map(wordsOf).filter((maker) => maker.length > 0) };
}

/** Names of the list that stand in a text, each once. */
export function rosterNamesIn(text: string, roster: Roster): readonly string[] {
  if (roster.byFirstWord.size === 0) return [];
  const found = new Set<string>();
  const whole = text.normalize('NFC');
  const words = [...whole.matchAll(wordPattern)].map((match) => ({ text: match[0], at: match.index, key: evenedOut(match[0]) }));
  const standsAt = (index: number, name: readonly string[]): boolean => name.every((each, place) => words[index + place]?.key === each);
  const makers = new Set(words.flatMap((_, index) => roster.makers.filter((maker) => standsAt(index, maker)).flatMap((maker) => maker.map((__, place) => index + place))));
  for (const [index, { text: word, at, key }] of words.entries()) {
    const names = roster.byFirstWord.get(key);
    if (!names || !/^\p{Lu}/u.test(word) || roster.allowedWords.has(key) || makers.has(index)) continue;
    for (const name of names) if (standsAt(index, name.words) && !(name.words.length === 1 && isOrdinaryWord(word, whole, at))) found.add(name.name);
  }
  // "Ana Quillón" says all that "Ana" would.
  return [...found].filter((name) => ![...found].some((other) => other !== name && other.startsWith(`${name} `)));
}

/** Names of the list in the name of a file: `ana-and-the-boat.jpg`. */
export function rosterNamesInFileName(file: string, roster: Roster): readonly string[] {
  const parts = evenedOut(file)
    .replace(/\.[^.]*$/u, '')
    .split(/[^\p{L}]+/u);
  return [...new Set(parts)].flatMap((part) => (roster.allowedWords.has(part) ? [] : (roster.givenNames.get(part) ?? [])));
}

/** A word with what may stand inside one: an apostrophe or a hyphen. The possessive is no part of it. */
const wordPattern = /\p{L}[\p{L}\p{M}]*(?:[’'-](?!s(?!\p{L}))\p{L}[\p{L}\p{M}]*)*/gu;
/** What ends before a capital that any word gets: the beginning of a text, a stop, an opening mark. */
const beforeAnyCapital = /(?:^|[.?!:…\n"“”«»‘(¿¡—–•*-])\s*$/u;
/** The names of months, after which or before which a date stands. */
const months = new Set(['april', 'may', 'june', 'august', 'march', 'abril', 'agosto', 'julio']);
const beforeMonth = /(?:\b(?:in|of|on|by|since|until|till|from|to|last|next|this|early|late|mid|every|each|through|en|de|desde|hasta)|\d|\d(?:st|nd|rd|th))[\s,-]*$/iu;

/** A name that is a word as well and stands where the word would have its capital, or is a month. */
function isOrdinaryWord(word: string, text: string, at: number): boolean {
  const small = evenedOut(word);
  if (!isAlsoWord(small)) return false;
  const before = text.slice(Math.max(0, at - 20), at);
  if ((word.length > 1 && word === word.toUpperCase()) || beforeAnyCapital.test(at <= 20 ? before : `x${before}`)) return true;
  return months.has(small) && (beforeMonth.test(before) || /^\s*\d/u.test(text.slice(at + word.length)));
}

/** A name of two letters is a word in one language or the other: An, My, Al, Yo. */
function isAlsoWord(small: string): boolean {
  return small.length < 3 || namesThatAreWords.has(small);
}

/** Small letters without accents: José and Jose are one. ñ stays. */
function evenedOut(word: string): string {
  if (/^[\u0020-\u007e]*$/u.test(word)) return word.toLowerCase();
  return word
    .normalize('NFD')
    .replace(/(?<![nN])\p{M}/gu, '')
    .replace(/([nN])(?!\u0303)\p{M}/gu, '$1')
    .normalize('NFC')
    .toLowerCase()
    .replace(/’/gu, "'");
}

/** ana, ANA and Ana as Ana; jean-luc as Jean-Luc. */
function capitalised(word: string): string {
  // Small words inside a name stay small: de, la, van.
  if (/^(?:de|del|la|las|los|y|van|von|der|den|da|dos|di)$/u.test(word)) return word;
  const plain = word.length > 1 && word === word.toUpperCase() ? word.toLowerCase() : word;
  return plain.replace(/(?:^|-)\p{L}/gu, (start) => start.toUpperCase());
}
