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
import { syllablesInEnglish } from './syllables-en.ts';
import { syllablesInSpanish } from './syllables-es.ts';
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

const syllablesIn: ReadonlyMap<string, (written: string) => number> = new Map([
  ['en', (written: string) => syllablesInEnglish(written)],
  ['es', syllablesInSpanish],
]);

/** Counts a text in a language named by its tag (`en`, `es-MX`). */
export function countText(text: string | readonly Prose[], language: 'en' | 'es', options?: CountOptions): SpokenCounts;
export function countText(text: string | readonly Prose[], language: string, options?: CountOptions): TextCounts;
export function countText(text: string | readonly Prose[], language: string, options: CountOptions = {}): TextCounts {
  const primary = language.toLowerCase().split('-')[0] ?? '';
  const blocks = typeof text === 'string' ? blocksOf(text) : text;
  const sentences = blocks.flatMap((block) => sentencesOf(tokensOf(block.text), primary));
  const tokens = sentences.flat();
  const unfamiliar = options.familiar && unfamiliarIn(sentences, options.familiar);
  return {
    words: tokens.length,
    sentences: sentences.length,
    letters: tokens.reduce((sum, { word }) => sum + lettersIn(word), 0),
    ...sounds(sentences, syllablesIn.get(primary)),
    longestSentence: sentences.reduce((longest, each) => Math.max(longest, each.length), 0),
    unfamiliar: unfamiliar?.count,
    uniqueUnfamiliar: unfamiliar?.words.length,
    unfamiliarWords: unfamiliar?.words ?? [],
  };
}

type Sounds = Pick<TextCounts, 'syllables' | 'polysyllables' | 'longWords'>;

function sounds(sentences: readonly (readonly Token[])[], count: ((written: string) => number) | undefined): Sounds {
  if (!count) return { syllables: undefined, polysyllables: undefined, longWords: [] };
  const known = new Map<string, number>();
  const longWords = new Map<string, string>();
  let syllables = 0;
  let polysyllables = 0;
  for (const sentence of sentences) {
    sentence.forEach((token, index) => {
      const written = asWritten(token, index === sentence.length - 1);
      const found = known.get(written) ?? count(written);
      known.set(written, found);
      syllables += found;
      if (found < 3) return;
      polysyllables += 1;
      const key = plainWord(token.word);
      if (!longWords.has(key)) longWords.set(key, token.word);
    });
  }
  return { syllables, polysyllables, longWords: [...longWords.values()] };
}

/** A word with the signs that are read aloud with it: $3, 5 %, and the stop of an abbreviation, but not of a sentence. */
function asWritten({ before, word, after }: Token, isLast: boolean): string {
  const sign = /[$£€#]$/u.exec(before)?.[0] ?? '';
  const behind = /^[%€]/u.exec(after)?.[0] ?? (after === '.' && !isLast ? '.' : '');
  return `${sign}${word}${behind}`;
}
