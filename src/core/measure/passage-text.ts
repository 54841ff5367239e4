/**
 * The private text of a book, taken apart: openings, sentences, words. A line of its own that reads `[opening 4]` begins
 * an opening; what stands before the first mark belongs to none. Marks may be left out, and then nothing is told by opening.
 */
import { blocksOf } from './blocks.ts';
import { sentencesOf } from './sentences.ts';
import { tokensOf, type Token } from './words.ts';

export interface PassageSentence {
  readonly opening: number | undefined;
  readonly tokens: readonly Token[];
}

export interface PassageText {
  /** The text without its marks, in blocks that a counter takes. */
  readonly blocks: readonly { readonly text: string }[];
  readonly sentences: readonly PassageSentence[];
  /** The openings that are marked, in the order of the text. */
  readonly openings: readonly number[];
  /** Marks that cannot be right, with their lines from 1. */
  readonly oddMarks: readonly OddMark[];
}

export interface OddMark {
  readonly line: number;
  /** `order`: not higher than the mark before. `form`: meant as a mark, and without a number. */
  readonly why: 'order' | 'form';
}

const mark = /^\s*\[\s*opening\s+(\d{1,3})\s*\]\s*$/iu;
/** A line in brackets of its own that speaks of an opening: nobody's sentence, so a mark that went wrong. */
const nearlyMark = /^\s*\[\s*(?:openings?|spread|page|apertura|doble página|página)\b[^\]]{0,30}\]\s*$/iu;

/** Takes a passage apart. It never fails: what is no mark is text. */
export function readPassage(text: string, language: string): PassageText {
  const parts: { opening: number | undefined; lines: string[] }[] = [{ opening: undefined, lines: [] }];
  const oddMarks: OddMark[] = [];
  let highest = 0;
  const lines = text
    .normalize('NFC')
    .replace(/^\ufeff/u, '')
    .split(/\r\n|[\n\r]/u);
  for (const [index, line] of lines.entries()) {
    const number = mark.exec(line)?.[1];
    if (number === undefined) {
      if (nearlyMark.test(line)) oddMarks.push({ line: index + 1, why: 'form' });
      else parts.at(-1)?.lines.push(line);
      continue;
    }
    const opening = Number(number);
    if (opening <= highest) oddMarks.push({ line: index + 1, why: 'order' });
    highest = Math.max(highest, opening);
    parts.push({ opening, lines: [] });
  }
  const primary = language.toLowerCase().split('-')[0] ?? '';
  const blocks = parts.flatMap(({ opening, lines: own }) => blocksOf(own.join('\n')).map((block) => ({ opening, text: block.text })));
  return {
    blocks,
    sentences: blocks.flatMap(({ opening, text: block }) => sentencesOf(tokensOf(block), primary).map((tokens) => ({ opening, tokens }))),
    openings: [...new Set(parts.flatMap((part) => part.opening ?? []))],
    oddMarks,
  };
}
