/**
 * Words of a book that might be taught: not on a list of familiar words after inflection, no name, and in a sentence that
 * helps. A hint and no more: how rare a word is says little of how useful it is, and the teacher decides.
 *
 * Source for what makes a word worth teaching: Beck, McKeown and Kucan 2002, Bringing Words to Life. The lengths, the
 * order and the number are common practice, no source.
 */
import { familiarBy } from './familiar-words.ts';
import { stemsOf } from './inflections-en.ts';
import { irregularBases } from './irregular-en.ts';
import type { Candidate } from './passage-measures.ts';
import type { PassageSentence } from './passage-text.ts';
import { namesIn, nameOf } from './unfamiliar.ts';
import { plainWord } from './words.ts';

/** Most words that are named: enough to choose two or three from. */
export const mostCandidates = 12;
/** Words in a sentence that is long enough to tell what a word means, and short enough to hear. */
const helpfulSentence = { least: 5, most: 20 } as const;
/** Letters of the shortest word that is named. */
const shortestWord = 4;

/** The candidates of an English text, the likeliest first; undefined for a language without a list. `known` are taught words, names and words that a pack passes over. */
export function candidatesIn(sentences: readonly PassageSentence[], language: string, known: readonly string[]): readonly Candidate[] | undefined {
  if (language.toLowerCase().split('-')[0] !== 'en') return undefined;
  const younger = familiarBy('spache', known);
  const older = familiarBy('dale-chall', known);
  const names = namesIn(sentences.map((sentence) => sentence.tokens));
  const found = new Map<string, { word: string; times: number; rare: boolean; best: Candidate | undefined }>();
  for (const [index, { opening, tokens }] of sentences.entries()) {
    for (const { word } of tokens) {
      const plain = plainWord(word).replace(/'s?$/u, '');
      if (!isWord(plain) || names.has(nameOf(word)) || younger(plain) || isIrregular(plain, younger)) continue;
      const key = keyOf(plain, found);
      const seen = found.get(key) ?? { word: plain, times: 0, rare: !older(plain) && !isIrregular(plain, older), best: undefined };
      seen.times += 1;
      const helps = tokens.length >= helpfulSentence.least && tokens.length <= helpfulSentence.most;
      if (helps && !seen.best) seen.best = { word: plain, times: 0, opening, sentence: index + 1, sentenceWords: tokens.length };
      found.set(key, seen);
    }
  }
  return [...found.values()]
    .flatMap(({ times, rare, best }) => (best ? [{ rare, candidate: { ...best, times } }] : []))
    .sort((a, b) => Number(b.rare) - Number(a.rare) || b.candidate.times - a.candidate.times || a.candidate.sentence - b.candidate.sentence)
    .slice(0, mostCandidates)
    .map(({ candidate }) => candidate);
}

/** Letters only, and no cry or noise (hrrrum, pit-a-pat): those are for the voice. */
function isWord(word: string): boolean {
  return word.length >= shortestWord && /^\p{L}+$/u.test(word) && !/(\p{L})\1\1/u.test(word) && /[aeiouy]/u.test(word);
}

function isIrregular(word: string, familiar: (word: string) => boolean): boolean {
  return (irregularBases.get(word) ?? []).some(familiar);
}

/** The key of a form that was met before, so that winds and winding are named once. */
function keyOf(word: string, found: ReadonlyMap<string, unknown>): string {
  return [word, ...stemsOf(word).map(({ stem }) => stem)].find((form) => found.has(form)) ?? stemsOf(word)[0]?.stem ?? word;
}
