/**
 * Familiar words by the lists of Spache and of Dale and Chall, with the regular inflections their directions allow. The
 * only door to the packages `spache` and `dale-chall`; nothing else imports this file unless it asks for unfamiliar words.
 *
 *   familiarBy('spache', ['Marisol', 'kite'])    a question to ask of a word, for `countText`
 */
import { daleChall } from 'dale-chall';
import { spache } from 'spache';
import { stemsOf } from './inflections-en.ts';
import { readAloudInEnglish } from './read-aloud-en.ts';
import { plainWord } from './words.ts';

/** `spache`: some 1,060 words of grades 1 to 3. `dale-chall`: some 2,940 words known to most fourth-graders. */
export type WordList = 'spache' | 'dale-chall';

const lists: Readonly<Record<WordList, ReadonlySet<string>>> = {
  spache: new Set(spache),
  'dale-chall': new Set(daleChall),
};

/**
 * Whether a word, in small letters, is familiar by a list: itself, a regular form of a listed word (-s -ies -es -ed -ied
 * -ing -n -er -est -ly), its possessive or contraction, a hyphenated word of familiar parts, or an abbreviation read as
 * familiar words. `allowed` are the names and taught words that a pack passes over.
 */
export function familiarBy(list: WordList, allowed: Iterable<string> = []): (word: string) => boolean {
  const listed = lists[list];
  const passedOver = new Set<string>();
  for (const phrase of allowed) for (const word of phrase.split(/\s+/u)) passedOver.add(plainWord(word.normalize('NFC')));
  const isKnown = (word: string): boolean => listed.has(word) || passedOver.has(word);
  const isForm = (word: string): boolean => isKnown(word) || stemsOf(word).some(({ stem }) => isKnown(stem));
  const isFamiliar = (word: string): boolean => isForm(word) || isForm(withoutApostrophe(word));
  return (word) => {
    const key = plainWord(word);
    const parts = readAloudInEnglish(key)?.split(' ') ?? key.split('-').filter(Boolean);
    return isFamiliar(key) || (parts.length > 0 && parts.every(isFamiliar));
  };
}

/** The word in a possessive or a contraction: fox's, they'll, didn't, can't. */
function withoutApostrophe(word: string): string {
  if (word === 'cannot' || word === "can't") return 'can';
  if (word === "won't") return 'will';
  return word.replace(/(?:n't|'(?:s|d|ll|ve|re|m)?)$/u, '');
}
