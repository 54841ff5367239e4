import { basename, dirname, resolve } from 'node:path';
import { readOnePack } from '../build/read-pack-folder.ts';
import { checkPack } from '../core/check/check-pack.ts';
import { longestQuote } from '../core/measure/copy-safety.ts';
import { measurePassage } from '../core/measure/measure-passage.ts';
import type { PassageMeasure, WordPlace } from '../core/measure/passage-measures.ts';
import { readPack } from '../core/pack/read-pack.ts';

/** The numbers of the passage that lies beside a pack's file; undefined where there is none, or no folder of packs around it. */
export async function passageNumbers(packFile: string): Promise<PassageMeasure | undefined> {
  const folder = dirname(resolve(packFile));
  if (basename(dirname(folder)) !== 'packs') return undefined;
  const sources = await readOnePack(dirname(dirname(folder)), basename(folder));
  const source = sources.find((each) => basename(each.file) === basename(packFile));
  const pack = source && readPack(source).value;
  return source && pack && measurePassage(checkPack(pack).value, source).value;
}

/** What the passage tells the teacher who has it: openings, taught words, words that might be taught, and how much is quoted. */
export function passageInWords(measure: PassageMeasure): readonly string[] {
  const { openings, vocabulary, candidates } = measure;
  const lines: string[] = [];
  if (openings.length > 0) lines.push(`Words by opening: ${openings.map(({ opening, words }) => `${String(opening)}: ${String(words)}`).join(', ')}.`);
  else lines.push('No opening is marked. Put "[opening 1]" in a line of its own before the words of each, and they are counted by opening.');
  const found = vocabulary.filter(({ places }) => places.length > 0);
  const missing = vocabulary.filter(({ places }) => places.length === 0).map(({ word }) => word);
  if (found.length > 0) lines.push(`Taught words: ${found.map(({ word, places }) => `${word} ${whereOf(places)}`).join(', ')}.`);
  if (missing.length > 0) lines.push(`Taught, and not in the text: ${missing.join(', ')}.`);
  if (candidates === undefined) lines.push('There is no list of familiar words for this language, so no words to teach are proposed.');
  else if (candidates.length > 0) {
    lines.push(`Words that might be taught: ${candidates.map((each) => `${each.word} ${whereOf([each])}`).join(', ')}.`);
    lines.push('  A list knows which words are common, and not which are worth a lesson: you decide.');
  }
  lines.push(quoted(measure));
  return ['  In the book’s own text; numbers in brackets are openings', ...lines.map((line) => `    ${line}`)];
}

/** The openings of some places, each once; their sentences where no opening is marked. */
function whereOf(places: readonly WordPlace[]): string {
  const numbers = [...new Set(places.map(({ opening, sentence }) => (opening === undefined ? `sentence ${String(sentence)}` : String(opening))))];
  return `(${numbers.slice(0, 4).join(', ')}${numbers.length > 4 ? ', …' : ''})`;
}

function quoted({ words, copied }: PassageMeasure): string {
  const share = `${String(copied.words)} of ${String(words)} words (${String(Math.round(copied.share * 100))} %), at most ${String(copied.longestRun)} in a row`;
  if (copied.exempt) return `Quoted in the pack: ${share}. The rights of this book set no limit to that.`;
  return `Quoted in the pack: ${share}. The limit is ${String(copied.most)} in all and ${String(longestQuote)} in a row.`;
}
