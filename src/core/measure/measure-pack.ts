import { finding, type Finding } from '../finding.ts';
import type { CheckedPack } from '../check/check-pack.ts';
import { placeOf, type Step } from '../pack/pack.ts';
import { countText } from './count-text.ts';
import { honestEstimate, type Estimate } from './honest-estimate.ts';
import type { GradeEstimate, HardSentence, MeasuredPack, TextMeasure } from './measures.ts';
import type { PassageMeasure } from './passage-measures.ts';
import { fleschKincaid, fleschReadingEase } from './readability.ts';
import { sentencesOf } from './sentences.ts';
import { tokensOf } from './words.ts';

/** Above this grade the text for families is told about; grade 6 is the aim. Our line on the range of public guidance, which runs from grade 5 to grade 8. */
export const hardestFamilyGrade = 8;

/** A piece of prose with its line in the pack's file. */
interface Prose {
  readonly text: string;
  readonly line: number;
}

/** Third stage: counts the text that families read, and says what may honestly be said of it. The numbers of the passage, if there is one, go along. */
export function measurePack(pack: CheckedPack, passage?: PassageMeasure): { readonly value: MeasuredPack; readonly findings: readonly Finding[] } {
  const family = measureProse(familyText(pack), pack.language, {
    headings: pack.body.blocks.filter((block) => block.kind === 'heading').length,
    listItems: pack.body.blocks.filter((block) => block.kind === 'list item' || block.kind === 'table').length,
  });
  const findings: Finding[] = [];
  const { estimate } = family;
  if (estimate.kind === 'grades' && estimate.low > hardestFamilyGrade - 2 && Math.round((estimate.low + estimate.high) / 2) > hardestFamilyGrade) {
    const place = family.longest ? { file: pack.file, line: family.longest.line, column: 1 } : placeOf(pack, 'summary');
    findings.push(finding('text/too-hard', 'warn', place, { grade: Math.round((estimate.low + estimate.high) / 2), most: hardestFamilyGrade }));
  }
  return { value: { ...pack, measures: { family, passage } }, findings };
}

/** What a family reads as running prose: the summary, what stands under `home`, the care notes, and the body without its headings and lists. */
function familyText(pack: CheckedPack): readonly Prose[] {
  const field = (text: string | undefined, ...steps: readonly Step[]): readonly Prose[] => (text === undefined ? [] : [{ text, line: placeOf(pack, ...steps).line }]);
  return [
    ...field(pack.summary, 'summary'),
    ...(pack.home?.prompts ?? []).flatMap((prompt, index) => field(prompt, 'home', 'prompts', index)),
    ...(pack.home?.example ?? []).flatMap((line, index) => field(line.says, 'home', 'example', index, 'says')),
    ...field(pack.home?.note, 'home', 'note'),
    ...(pack.care ?? []).flatMap((note, index) => field(note, 'care', index)),
    ...pack.body.blocks.filter((block) => block.kind === 'paragraph' || block.kind === 'quote'),
  ];
}

/** The measures of some prose in a language. */
export function measureProse(prose: readonly Prose[], language: string, leftOut: TextMeasure['leftOut']): TextMeasure {
  const counts = countText(prose, language);
  const english = (language.split('-')[0] ?? '') === 'en' && counts.syllables !== undefined && counts.words > 0;
  const spoken = { words: counts.words, sentences: counts.sentences, syllables: counts.syllables ?? 0 };
  return {
    words: counts.words,
    sentences: counts.sentences,
    syllables: counts.syllables ?? 0,
    wordsPerSentence: counts.sentences === 0 ? 0 : counts.words / counts.sentences,
    longest: longestOf(prose, language),
    longWords: counts.longWords,
    estimate: estimateOf(honestEstimate(counts, language, 'family')),
    fleschReadingEase: english ? fleschReadingEase(spoken) : undefined,
    fleschKincaid: english ? fleschKincaid(spoken) : undefined,
    leftOut,
  };
}

/** The formulas by the names under which they were published. */
const formulaNames = { 'flesch-kincaid': 'Flesch-Kincaid', 'spache-1974': 'Spache', crawford: 'Crawford', 'szigriszt-pazos': 'Szigriszt-Pazos' } as const;

function estimateOf(estimate: Estimate): GradeEstimate {
  switch (estimate.kind) {
    case 'grades':
      return { kind: 'grades', formula: formulaNames[estimate.formula], low: estimate.band[0], high: estimate.band[1], belowFloor: estimate.belowFloor, aboveCeiling: estimate.aboveCeiling };
    case 'ease':
      return { ...estimate, formula: formulaNames[estimate.formula] };
    default:
      return { kind: estimate.kind };
  }
}

function longestOf(prose: readonly Prose[], language: string): HardSentence | undefined {
  let longest: HardSentence | undefined;
  for (const { text, line } of prose) {
    for (const sentence of sentencesOf(tokensOf(text), language.split('-')[0] ?? '')) {
      if (sentence.length > (longest?.words ?? 0)) longest = { text: sentence.map(({ before, word, after }) => before + word + after).join(' '), words: sentence.length, line };
    }
  }
  return longest;
}
