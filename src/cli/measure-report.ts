import { qualityInEnglish as say } from '../core/languages/en-quality.ts';
import type { TextMeasure } from '../core/measure/measures.ts';

/** As many long words are named. */
const mostWords = 10;
/** Letters of a sentence that are quoted: enough to find it again. */
const mostLetters = 72;

/** One part of a file that was counted. `aim` is said where an estimate was made. */
export interface MeasuredPart {
  readonly name: string | undefined;
  /** The file that its lines are counted in. */
  readonly file: string;
  readonly aim: string | undefined;
  readonly measure: TextMeasure;
}

/** What may honestly be said of a file, part by part, for a person to read. */
export function measureInWords(parts: readonly MeasuredPart[], file: string): string {
  const graded = parts.some(({ measure }) => hasEstimate(measure));
  return [file, ...parts.flatMap(partInWords), ...(graded ? [`  ${say.sees}`] : [])].join('\n');
}

function hasEstimate({ estimate }: TextMeasure): boolean {
  return estimate.kind === 'grades' || estimate.kind === 'ease';
}

function partInWords({ name, file, aim, measure }: MeasuredPart): readonly string[] {
  const { words, sentences, wordsPerSentence, longest, longWords, estimate, costliest, leftOut } = measure;
  const indent = name === undefined ? '  ' : '    ';
  const lines: string[] = [];
  if (words === 0) lines.push(say.nothing);
  else {
    lines.push(`${say.counted(words, sentences)}; ${say.lengths(Math.round(wordsPerSentence), longest?.words ?? 0)}.`);
    const rare = 'formula' in estimate && estimate.formula === 'Spache';
    if (longWords.length > 0)
      lines.push(`${rare ? say.longOrRareWords : say.longWords} ${longWords.slice(0, mostWords).join(', ')}${longWords.length > mostWords ? say.andMore(longWords.length - mostWords) : ''}.`);
    lines.push(`${say.estimate(estimate)}${hasEstimate(measure) && aim !== undefined ? ` ${aim}` : ''}`);
  }
  const left = say.leftOut(leftOut);
  if (left !== '') lines.push(left);
  if (costliest.length > 0) lines.push(`${say.costliest}:`, ...costliest.map((each) => `  ${file}:${String(each.line)}  ${shortened(each.text)}`));
  return [...(name === undefined ? [] : [`  ${name}`]), ...lines.map((line) => indent + line)];
}

function shortened(text: string): string {
  return text.length <= mostLetters ? text : `${text.slice(0, mostLetters).replace(/\s+\S*$/, '')} …`;
}
