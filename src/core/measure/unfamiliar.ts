/**
 * Which words of a text a list of familiar words does not know. Names and figures are passed over, as the directions
 * of both lists have it.
 */
import { plainWord, type Token } from './words.ts';

/** The unfamiliar words: how many in all, and the different ones as first met. */
export interface Unfamiliar {
  readonly count: number;
  readonly words: readonly string[];
}

/** Looks up every word of the sentences. */
export function unfamiliarIn(sentences: readonly (readonly Token[])[], familiar: (word: string) => boolean): Unfamiliar {
  const names = namesIn(sentences);
  const isUnfamiliar = new Map<string, boolean>();
  const words = new Map<string, string>();
  let count = 0;
  for (const token of sentences.flat()) {
    const key = plainWord(token.word);
    let answer = isUnfamiliar.get(key);
    if (answer === undefined) {
      answer = /\p{L}/u.test(key) && !/\d/u.test(key) && !names.has(nameOf(token.word)) && !familiar(key);
      isUnfamiliar.set(key, answer);
    }
    if (!answer) continue;
    count += 1;
    if (!words.has(key)) words.set(key, key);
  }
  return { count, words: [...words.values()] };
}

/**
 * Words that are names: never written small, and with a capital at least once where no sentence or quotation begins.
 * A name met only at the start of sentences cannot be told from a word; an allow list has to say so.
 */
export function namesIn(sentences: readonly (readonly Token[])[]): ReadonlySet<string> {
  const capital = new Set<string>();
  const small = new Set<string>();
  for (const sentence of sentences) {
    sentence.forEach((token, index) => {
      const key = nameOf(token.word);
      if (/^\p{Ll}/u.test(token.word)) small.add(key);
      else if (index > 0 && /^\p{Lu}/u.test(token.word) && !beginsSpeech(token, sentence[index - 1])) capital.add(key);
    });
  }
  return new Set([...capital].filter((key) => !small.has(key)));
}

/** The key under which a name is kept: the word without its possessive. */
export function nameOf(word: string): string {
  return plainWord(word).replace(/'s?$/u, '');
}

/** A capital is due here without a name. A single stop before is an abbreviation's, since the sentence goes on. */
function beginsSpeech(token: Token, previous: Token | undefined): boolean {
  return /["“‘«¿¡([]/u.test(token.before) || /[:?!…]|\.\./u.test(previous?.after ?? '');
}
