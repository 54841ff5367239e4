/**
 * What can be counted in a text: words, sentences, syllables, letters, long and unfamiliar words.
 *
 *   countText(text, 'en')                                        plain text; a blank line parts its blocks
 *   countText(blocks, 'es')                                      blocks already parted, as a pack's body has them
 *   countText(text, 'en', { familiar: familiarBy('spache') })    unfamiliar words as well (familiar-words.ts)
 *
 * The rules stand in words.ts, sentences.ts and syllables-*.ts. The caller chooses what is running prose: headings,
 * lists of materials and credits are best left out before counting.
 */
import { blocksOf, type Prose } from './blocks.ts';
import { sentencesOf } from './sentences.ts';
import { spokenIn } from './spoken.ts';
import { unfamiliarIn } from './unfamiliar.ts';
import { lettersIn, plainWord, tokensOf, type Token } from './words.ts';

/** The counts of a text. What needs the sounds of a language is undefined for a language whose sounds are not known here. */
export interface TextCounts {
  readonly words: number;
  readonly sentences: number;
  /** Letters and digits. */
  readonly letters: number;
  readonly syllables: number | undefined;
  /** Words of three syllables or more, names included; every repetition counts. */
  readonly polysyllables: number | undefined;
  /** The different words of three syllables or more, as first met. */
  readonly longWords: readonly string[];
  /** Words in the longest sentence. */
  readonly longestSentence: number;
  /** Words that the list of familiar words does not know; every repetition counts. Undefined without a list. */
  readonly unfamiliar: number | undefined;
  readonly uniqueUnfamiliar: number | undefined;
  /** The different unfamiliar words, as first met. */
  readonly unfamiliarWords: readonly string[];
}

/** The counts of a text whose syllables are known. */
export interface SpokenCounts extends TextCounts {
  readonly syllables: number;
  readonly polysyllables: number;
}

/** `familiar` says whether a word in small letters is known to the reader. */
export interface CountOptions {
  readonly familiar?: (word: string) => boolean;
}

/** The words of one sentence, in order. */
export type Sentence = readonly Token[];

/** The sentences of a text, block by block. */
export function sentencesIn(text: string | readonly Prose[], language: string): readonly Sentence[] {
  const primary = primaryOf(language);
  const blocks = typeof text === 'string' ? blocksOf(text) : text;
  return blocks.flatMap((block) => sentencesOf(tokensOf(block.text), primary));
}

/** Counts a text in a language named by its tag (`en`, `es-MX`). */
export function countText(text: string | readonly Prose[], language: 'en' | 'es', options?: CountOptions): SpokenCounts;
export function countText(text: string | readonly Prose[], language: string, options?: CountOptions): TextCounts;
export function countText(text: string | readonly Prose[], language: string, options: CountOptions = {}): TextCounts {
  return countSentences(sentencesIn(text, language), language, options);
}

/** Counts sentences that have been parted already. */
export function countSentences(sentences: readonly Sentence[], language: string, options: CountOptions = {}): TextCounts {
  const spoken = spokenIn(primaryOf(language));
  const unfamiliar = options.familiar && unfamiliarIn(sentences, options.familiar);
  const lettersOf = new Map<string, number>();
  const longWords = new Map<string, string>();
  let [words, letters, syllables, polysyllables, longestSentence] = [0, 0, 0, 0, 0];
  for (const sentence of sentences) {
    words += sentence.length;
    longestSentence = Math.max(longestSentence, sentence.length);
    for (const [index, token] of sentence.entries()) {
      let ofWord = lettersOf.get(token.word);
      if (ofWord === undefined) lettersOf.set(token.word, (ofWord = lettersIn(token.word)));
      letters += ofWord;
      const found = spoken?.(token, index === sentence.length - 1) ?? 0;
      syllables += found;
      if (found < 3) continue;
      polysyllables += 1;
      const key = plainWord(token.word);
      if (!longWords.has(key)) longWords.set(key, token.word);
    }
  }
  return {
    words,
    sentences: sentences.length,
    letters,
    syllables: spoken && syllables,
    polysyllables: spoken && polysyllables,
    longWords: [...longWords.values()],
    longestSentence,
    unfamiliar: unfamiliar?.count,
    uniqueUnfamiliar: unfamiliar?.words.length,
    unfamiliarWords: unfamiliar?.words ?? [],
  };
}

function primaryOf(language: string): string {
  return language.toLowerCase().split('-')[0] ?? '';
}
