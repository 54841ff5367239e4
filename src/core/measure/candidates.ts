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
import type { Candidate, WordPlace } from './passage-measures.ts';
import type { PassageSentence } from './passage-text.ts';
import { namesIn, nameOf } from './unfamiliar.ts';
import { plainWord } from './words.ts';

/** Most words that are named: enough to choose two or three from. */
export const mostCandidates = 12;
/** Words in a sentence that is long enough to tell what a word means, and short enough to hear. */
const helpfulSentence = { least: 5, most: 20 } as const;
/** Letters of the shortest word that is named. */
const shortestWord = 4;

/** Words that hold sentences together: the lists lack some of them, and no meaning is to be taught. */
const littleWords = new Set(
  `somebody nobody everybody anybody someone anyone everyone something anything nothing everything somewhere nowhere anywhere everywhere
onto upon toward towards themselves himself herself itself myself yourself yourselves ourselves whose whom neither either though although
unless until once twice therefore however whatever whoever whenever wherever third fourth fifth sixth seventh eighth ninth tenth eleventh
twelfth thirteen fourteen fifteen sixteen seventeen eighteen nineteen thirty forty fifty sixty seventy eighty ninety`.split(/\s+/u),
);

/** The candidates of an English text, the likeliest first; undefined for a language without a list. `known` are taught words, names and words that a pack passes over. */
export function candidatesIn(sentences: readonly PassageSentence[], language: string, known: readonly string[]): readonly Candidate[] | undefined {
  if (language.toLowerCase().split('-')[0] !== 'en') return undefined;
  const younger = familiarBy('spache', known);
  const older = familiarBy('dale-chall', known);
  const names = namesIn(sentences.map((sentence) => sentence.tokens));
  const met: Met[] = [];
  // Each form leads to the word that it belongs to, so that winds and winding are named once.
  const byForm = new Map<string, Met>();
  for (const [index, { opening, tokens }] of sentences.entries()) {
    for (const { word } of tokens) {
      const plain = plainWord(word).replace(/'s?$/u, '');
      if (!isWord(plain) || littleWords.has(plain) || names.has(nameOf(word)) || younger(plain) || isIrregular(plain, younger)) continue;
      const forms = [plain, ...(irregularBases.get(plain) ?? []), ...stemsOf(plain).map(({ stem }) => stem)];
      let one = forms.map((form) => byForm.get(form)).find((each) => each !== undefined);
      if (!one) {
        one = { word: plain, rare: !older(plain) && !isIrregular(plain, older), times: 0, best: undefined, sentenceWords: 0 };
        met.push(one);
      }
      for (const form of forms) if (!byForm.has(form)) byForm.set(form, one);
      one.times += 1;
      if (one.best || tokens.length < helpfulSentence.least || tokens.length > helpfulSentence.most) continue;
      one.best = { opening, sentence: index + 1 };
      one.sentenceWords = tokens.length;
    }
  }
  return met
    .flatMap(({ word, rare, times, best, sentenceWords }) => (best ? [{ rare, candidate: { word, times, ...best, sentenceWords } }] : []))
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

/** A word as it was met first, with all its forms. */
interface Met {
  readonly word: string;
  readonly rare: boolean;
  times: number;
  best: WordPlace | undefined;
  sentenceWords: number;
}
