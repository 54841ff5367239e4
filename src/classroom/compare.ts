import { agreementOf, type Agreement, type TwiceScored } from './agreement.ts';
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

/** Two scorers' scores of the same answers, trait by trait and, where there are several traits, added up. Weights of one's own belong to one line. */
export function compare(
  judged: readonly Judgeable[],
  { steps, scores: first }: Scoring,
  second: Scores,
  weights?: { readonly trait: string | undefined; readonly table: CrossTable },
): readonly Compared[] {
  const traits = [...new Set(judged.flatMap(({ pack }) => (pack.rubric ?? []).map(({ trait }) => trait)))];
  const line = (trait: string | undefined, most: number, scoreOf: (scores: Scores, each: Judgeable) => number | undefined): Compared => {
    const scored = judged.map((each) => ({ answer: each.key, first: scoreOf(first, each), second: scoreOf(second, each) }));
    return { trait, most, scored, agreement: agreementOf(scored, most, weights && weights.trait === trait ? weights.table : undefined) };
  };
  const lines = traits.map((trait) => line(trait, steps, (scores, { key }) => scores[key]?.[trait]));
  const most = steps * Math.max(0, ...judged.map(({ pack }) => pack.rubric?.length ?? 0));
  return traits.length < 2 ? lines : [...lines, line(undefined, most, sumOf)];
}
