import { finding, type Finding } from '../finding.ts';
import type { CheckedPack } from '../check/check-pack.ts';
import { placeOf } from '../pack/pack.ts';
import { measureProse } from './measure-prose.ts';
import type { MeasuredPack, TextMeasure } from './measures.ts';
import { childrenText, familyText, type PartText } from './pack-texts.ts';
import type { PassageMeasure } from './passage-measures.ts';
import type { Reader } from './fitting-formula.ts';

/** Above this grade the text for families is told about; grade 6 is the aim. Our line on the range of public guidance, which runs from grade 5 to grade 8. */
export const hardestFamilyGrade = 8;
/** Below this perspicuity a Spanish text for families is told about: there the INFLESZ band "algo difícil" begins (Barrio-Cantalejo et al. 2008). */
export const leastFamilyEase = 55;

/** Third stage: counts what families and children read, each by the formula that fits it, and says what may honestly be said of it. The numbers of the passage, if there is one, go along. */
export function measurePack(pack: CheckedPack, passage?: PassageMeasure): { readonly value: MeasuredPack; readonly findings: readonly Finding[] } {
  const part = ({ prose, leftOut }: PartText, reader: Reader) => measureProse(prose, { language: pack.language, reader, allowed: pack.allowWords ?? [], leftOut });
  const family = part(familyText(pack), 'family');
  const children = part(childrenText(pack), 'child');
  return { value: { ...pack, measures: { family, children, passage } }, findings: tooHard(pack, family) };
}

/** What there is to tell about the text for families; nothing about a text too short for an estimate. */
function tooHard(pack: CheckedPack, { estimate, figure, costliest }: TextMeasure): readonly Finding[] {
  if (figure === undefined) return [];
  const lines = costliest.map((each) => each.line);
  const place = costliest[0] ? { file: pack.file, line: costliest[0].line, column: 1 } : placeOf(pack, 'summary');
  // Rounded, because the formula cannot tell grade 8.4 from grade 8.
  if (estimate.kind === 'grades' && Math.round(figure) > hardestFamilyGrade)
    return [finding('text/too-hard', 'warn', place, { low: estimate.low, high: estimate.high, most: hardestFamilyGrade, lines })];
  if (estimate.kind === 'ease' && figure < leastFamilyEase) return [finding('text/low-ease', 'warn', place, { band: estimate.band, lines })];
  return [];
}
