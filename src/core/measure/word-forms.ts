/**
 * Whether two words are forms of one: cart and carts, creep and crept, asomarse and asomó. It serves to find a taught word
 * again in a text, and is generous: no dictionary stands behind it.
 */
import { stemsOf } from './inflections-en.ts';
import { irregularBases } from './irregular-en.ts';
import { stemsInSpanish } from './stems-es.ts';
import { plainWord } from './words.ts';

/** The keys under which the forms of a word meet: two words that share one are taken for forms of one word. */
export function keysOf(word: string, language: string): ReadonlySet<string> {
  const plain = plainWord(word.normalize('NFC'));
  switch (language.toLowerCase().split('-')[0]) {
    case 'en':
      return keysInEnglish(plain.replace(/'s?$/u, ''));
    case 'es':
      return stemsInSpanish(plain);
    default:
      return new Set([plain]);
  }
}

function keysInEnglish(word: string): ReadonlySet<string> {
  const keys = new Set([word, ...(irregularBases.get(word) ?? [])]);
  for (const { stem } of stemsOf(word)) keys.add(stem);
  return keys;
}
