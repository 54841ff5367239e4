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
  const ask = unfamiliarBy(namesIn(sentences), familiar);
  const words = new Set<string>();
  let count = 0;
  for (const sentence of sentences) {
    for (const { word } of sentence) {
      const key = ask(word);
      if (key === undefined) continue;
      count += 1;
      words.add(key);
    }
  }
  return { count, words: [...words] };
}

/** A question to ask of each word of a text: the key of an unfamiliar one, or undefined. Each written form is looked up once. */
export function unfamiliarBy(names: ReadonlySet<string>, familiar: (word: string) => boolean): (written: string) => string | undefined {
  const answers = new Map<string, string | undefined>();
  return (written) => {
    if (answers.has(written)) return answers.get(written);
    const key = plainWord(written);
    const answer = /\p{L}/u.test(key) && !/\d/u.test(key) && !names.has(nameOf(written)) && !familiar(key) ? key : undefined;
    answers.set(written, answer);
    return answer;
  };
}

/**
 * Words that are names, as `nameOf` writes them: never written small, and with a capital at least once where no sentence
 * or quotation begins. A name met only at the start of sentences cannot be told from a word; an allow list has to say so.
 */
export function namesIn(sentences: readonly (readonly Token[])[]): ReadonlySet<string> {
  const capital = new Set<string>();
  const small = new Set<string>();
  for (const sentence of sentences) {
    for (const [index, token] of sentence.entries()) {
      if (small.has(token.word) || capital.has(token.word)) continue;
      if (/^\p{Ll}/u.test(token.word)) small.add(token.word);
      else if (index > 0 && /^\p{Lu}/u.test(token.word) && !beginsSpeech(token, sentence[index - 1])) capital.add(token.word);
    }
  }
  const smallNames = new Set([...small].map(nameOf));
  return new Set([...capital].map(nameOf).filter((key) => !smallNames.has(key)));
}

/** A word as names are compared: in small letters, without a possessive. */
export function nameOf(word: string): string {
  return plainWord(word).replace(/'s?$/u, '');
}

/** A capital is due here without a name. A single stop before is an abbreviation's, since the sentence goes on. */
function beginsSpeech(token: Token, previous: Token | undefined): boolean {
  return /["“‘«¿¡([]/u.test(token.before) || /[:?!…]|\.\./u.test(previous?.after ?? '');
}
