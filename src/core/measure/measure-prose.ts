/** The measures of one part of a pack, or of any prose: counts, long words, an honest estimate, and where the costly sentences stand. */
import type { PlacedProse } from './blocks.ts';
import { costliestOf } from './costliest.ts';
import { countSentences, type Sentence } from './count-text.ts';
import { familiarBy } from './familiar-words.ts';
import { figureOf, fittingFormula, type Reader } from './fitting-formula.ts';
import { honestEstimate, type Estimate } from './honest-estimate.ts';
import type { GradeEstimate, LeftOut, PlacedSentence, TextMeasure } from './measures.ts';
import { sentencesOf } from './sentences.ts';
import { spokenIn } from './spoken.ts';
import { namesIn, nameOf, unfamiliarBy } from './unfamiliar.ts';
import { plainWord, tokensOf } from './words.ts';

/** As many sentences are named: enough to begin with. */
const mostNamed = 3;

export interface ProseOptions {
  /** A tag: `en`, `es-MX`. */
  readonly language: string;
  readonly reader: Reader;
  /** Names and taught words that are passed over: a pack's `allow words`. */
  readonly allowed?: readonly string[];
  readonly leftOut?: LeftOut;
}

/** A sentence and the block that it stands in. `first` is the number of words before it in the block. */
interface InBlock {
  readonly sentence: Sentence;
  readonly block: PlacedProse;
  readonly first: number;
}

/** Counts prose whose lines are known, and says what may honestly be said of it. */
export function measureProse(prose: readonly PlacedProse[], { language, reader, allowed = [], leftOut = {} }: ProseOptions): TextMeasure {
  const primary = language.toLowerCase().split('-')[0] ?? '';
  const placed = prose.flatMap((block) => sentencesInBlock(block, primary));
  const sentences = placed.map((each) => each.sentence);
  const names = namesIn(sentences);
  const formula = fittingFormula(language, reader);
  const familiar = formula === 'spache-1974' ? familiarBy('spache', allowed) : undefined;
  const counts = countSentences(sentences, language, familiar && { familiar });
  const estimate = gradeEstimateOf(honestEstimate(counts, language, reader));
  const worthNaming = formula !== undefined && (estimate.kind === 'grades' || estimate.kind === 'ease');
  const longest = placed.reduce<InBlock | undefined>((most, each) => (each.sentence.length > (most?.sentence.length ?? 0) ? each : most), undefined);
  return {
    words: counts.words,
    sentences: counts.sentences,
    syllables: counts.syllables ?? 0,
    wordsPerSentence: counts.sentences === 0 ? 0 : counts.words / counts.sentences,
    longest: longest && placedSentence(longest),
    longWords: longWordsIn(names, primary, [...counts.longWords, ...counts.unfamiliarWords], allowed),
    estimate,
    figure: formula && figureOf(formula, counts),
    costliest: worthNaming ? costly(placed, formula, primary, familiar && unfamiliarBy(names, familiar)) : [],
    leftOut,
  };
}

function sentencesInBlock(block: PlacedProse, primary: string): readonly InBlock[] {
  let first = 0;
  return sentencesOf(tokensOf(block.text), primary).map((sentence) => {
    const one = { sentence, block, first };
    first += sentence.length;
    return one;
  });
}

function costly(placed: readonly InBlock[], formula: Parameters<typeof costliestOf>[1], primary: string, unfamiliar: ((written: string) => string | undefined) | undefined): TextMeasure['costliest'] {
  const spoken = spokenIn(primary);
  const each = placed.map(({ sentence }) => ({
    words: sentence.length,
    syllables: sentence.reduce((sum, token, index) => sum + (spoken?.(token, index === sentence.length - 1) ?? 0), 0),
    unfamiliar: unfamiliar ? sentence.flatMap(({ word }) => unfamiliar(word) ?? []) : [],
  }));
  return costliestOf(each, formula, mostNamed).flatMap(({ index, cost }) => {
    const one = placed[index];
    return one ? [{ ...placedSentence(one), cost }] : [];
  });
}

function placedSentence({ sentence, block, first }: InBlock): PlacedSentence {
  return {
    text: sentence.map(({ before, word, after }) => before + word + after).join(' '),
    words: sentence.length,
    line: block.line + (block.keepsLines === true ? lineOfWord(block.text, first) : 0),
  };
}

/** The line of a block, from 0, on which the word with that number stands. A new line always parts two words. */
function lineOfWord(text: string, wanted: number): number {
  let words = 0;
  for (const [index, line] of text.split('\n').entries()) {
    words += tokensOf(line).length;
    if (words > wanted) return index;
  }
  return 0;
}

/** Each word once, those with most syllables first, without names and the words passed over. */
function longWordsIn(names: ReadonlySet<string>, primary: string, words: readonly string[], allowed: readonly string[]): readonly string[] {
  const passedOver = new Set([...names, ...allowed.flatMap((phrase) => phrase.split(/\s+/u)).map(nameOf)]);
  const spoken = spokenIn(primary);
  const found = new Map<string, { readonly word: string; readonly syllables: number }>();
  for (const word of words) {
    const key = plainWord(word);
    if (!passedOver.has(nameOf(word)) && !found.has(key)) found.set(key, { word: key, syllables: spoken?.({ before: '', word, after: '' }, true) ?? 0 });
  }
  return [...found.values()].sort((a, b) => b.syllables - a.syllables).map((each) => each.word);
}

/** The formulas by the names under which they were published. */
const formulaNames = { 'flesch-kincaid': 'Flesch-Kincaid', 'spache-1974': 'Spache', crawford: 'Crawford', 'szigriszt-pazos': 'Szigriszt-Pazos' } as const;

/** An estimate as a page and a command show it. */
export function gradeEstimateOf(estimate: Estimate): GradeEstimate {
  switch (estimate.kind) {
    case 'grades':
      return { kind: 'grades', formula: formulaNames[estimate.formula], low: estimate.band[0], high: estimate.band[1], belowFloor: estimate.belowFloor, aboveCeiling: estimate.aboveCeiling };
    case 'ease':
      return { ...estimate, formula: formulaNames[estimate.formula] };
    default:
      return { kind: estimate.kind };
  }
}
