import { agreementOf, alphaOfAll, type Agreement, type Coefficient, type TwiceScored } from './agreement.ts';
import type { CrossTable } from './cohen-kappa.ts';
import { sumOf, type Judgeable, type Scores, type Scoring } from './judging.ts';

/** One line of what two scorers agree on: a trait, or all traits of an answer added up. */
export interface Compared {
  /** Undefined for the sum. */
  readonly trait: string | undefined;
  /** Scores go from 0 to this. */
  readonly most: number;
  readonly scored: readonly TwiceScored[];
  readonly agreement: Agreement;
}

/** What there is to score: each trait, and all of them added up where there are several. */
function partsOf(judged: readonly Judgeable[], steps: number) {
  type Part = { readonly trait: string | undefined; readonly most: number; readonly scoreOf: (scores: Scores, each: Judgeable) => number | undefined };
  const traits = [...new Set(judged.flatMap(({ pack }) => (pack.rubric ?? []).map(({ trait }) => trait)))];
  const parts = traits.map((trait): Part => ({ trait, most: steps, scoreOf: (scores, { key }) => scores[key]?.[trait] }));
  const most = steps * Math.max(0, ...judged.map(({ pack }) => pack.rubric?.length ?? 0));
  return traits.length < 2 ? parts : [...parts, { trait: undefined, most, scoreOf: sumOf } satisfies Part];
}

/** Two scorers' scores of the same answers, part by part. Weights of one's own belong to one part. */
export function compare(
  judged: readonly Judgeable[],
  { steps, scores: first }: Scoring,
  second: Scores,
  weights?: { readonly trait: string | undefined; readonly table: CrossTable },
): readonly Compared[] {
  return partsOf(judged, steps).map(({ trait, most, scoreOf }) => {
    const scored = judged.map((each) => ({ answer: each.key, first: scoreOf(first, each), second: scoreOf(second, each) }));
    return { trait, most, scored, agreement: agreementOf(scored, most, weights && weights.trait === trait ? weights.table : undefined) };
  });
}

/** Alpha of three or more people's scores, part by part: kappa knows no more than two. */
export function compareAll(judged: readonly Judgeable[], { steps, scores }: Scoring, others: readonly Scores[]): readonly { readonly trait: string | undefined; readonly alpha: Coefficient }[] {
  return partsOf(judged, steps).map(({ trait, scoreOf }) => ({ trait, alpha: alphaOfAll([scores, ...others].map((each) => judged.map((answer) => scoreOf(each, answer)))) }));
}
