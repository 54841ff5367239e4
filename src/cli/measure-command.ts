import { readTexts, type TextToCount } from '../build/read-text.ts';
import { countText } from '../core/measure/count-text.ts';
import { familiarBy } from '../core/measure/familiar-words.ts';
import { honestEstimate, type Estimate } from '../core/measure/honest-estimate.ts';
import { scoresOf } from '../core/measure/scores.ts';
import { readArguments } from './arguments.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow measure`: raw counts for scripts, an honest estimate for people. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['language'], ['json']);
  if (rest.length === 0) throw new WrongUse('Name a file to count: bookfellow measure letter-home.md');
  const texts: TextToCount[] = [];
  for (const path of rest) {
    texts.push(
      ...(await readTexts(path).catch((error: unknown) => {
        throw new WrongUse(`"${path}" cannot be opened. Check the name.`, { cause: error });
      })),
    );
  }
  const all = texts.map((text) => measured(text, values.language));
  if (flags.has('json')) {
    const plain = all.map(({ file, language, counts, scores }) => ({ file, language, counts, scores }));
    console.log(JSON.stringify(plain.length === 1 && rest.length === 1 ? plain[0] : plain, null, 2));
  } else console.log(all.map(inWords).join('\n\n'));
  return 0;
}

interface Measured {
  readonly file: string;
  readonly language: string;
  readonly counts: Readonly<Record<'words' | 'sentences' | 'letters', number>> & Readonly<Record<'syllables' | 'polysyllables' | 'unfamiliar' | 'uniqueUnfamiliar', number | undefined>>;
  readonly scores: Readonly<Record<string, number>>;
  readonly longest: number;
  readonly longWords: readonly string[];
  readonly estimate: Estimate;
  readonly leftOut: TextToCount['leftOut'];
}

function measured(text: TextToCount, asked: string | undefined): Measured {
  const language = asked ?? text.language ?? 'en';
  const english = language.split('-')[0] === 'en';
  const all = countText(text.prose, language, english ? { familiar: familiarBy('dale-chall') } : {});
  // Spache has a list of its own, and counts each unfamiliar word once.
  const spache = english ? countText(text.prose, language, { familiar: familiarBy('spache') }) : undefined;
  const { words, sentences, letters, syllables, polysyllables, unfamiliar } = all;
  const counts = { words, sentences, syllables, letters, polysyllables, unfamiliar, uniqueUnfamiliar: spache?.uniqueUnfamiliar };
  return {
    file: text.file,
    language,
    counts,
    scores: scoresOf(counts, language),
    longest: all.longestSentence,
    longWords: all.longWords,
    estimate: honestEstimate(all, language, 'family'),
    leftOut: text.leftOut,
  };
}

function inWords({ file, counts, longest, longWords, estimate, leftOut }: Measured): string {
  const mean = counts.sentences === 0 ? 0 : counts.words / counts.sentences;
  const lines = [
    file,
    `  ${String(counts.words)} words, ${String(counts.sentences)} sentences; ${mean.toFixed(0)} words in the mean sentence, ${String(longest)} in the longest.`,
    longWords.length === 0
      ? '  No words of three syllables or more.'
      : `  Words of three syllables or more: ${longWords.slice(0, 12).join(', ')}${longWords.length > 12 ? `, and ${String(longWords.length - 12)} more` : ''}.`,
    `  ${estimateInWords(estimate)}`,
  ];
  if (leftOut.headings + leftOut.listItems > 0) lines.push(`  Left out, because they are no running prose: ${String(leftOut.headings)} headings, ${String(leftOut.listItems)} list items.`);
  return lines.join('\n');
}

function estimateInWords(estimate: Estimate): string {
  switch (estimate.kind) {
    case 'too short':
      return `Too short for a grade estimate (that takes ${String(estimate.leastWords)} words and ${String(estimate.leastSentences)} sentences).`;
    case 'no formula':
      return 'No formula fits this language, so there is no estimate.';
    case 'grades':
      return `${estimate.belowFloor ? `About grade ${String(estimate.band[1])} or below` : `About grades ${String(estimate.band[0])} to ${String(estimate.band[1])}`}, an estimate by the Flesch-Kincaid formula. It sees the length of words and sentences, and nothing else.`;
    case 'ease':
      return `"${estimate.band}" on the INFLESZ scale, an estimate.${estimate.shortSample ? ' The scale was made with texts of 500 words or more; this one is shorter.' : ''}`;
  }
}
