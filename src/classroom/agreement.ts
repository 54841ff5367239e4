import { cohenKappa, crossTable, type CrossTable } from './cohen-kappa.ts';
import { krippendorffAlpha, type Scale } from './krippendorff-alpha.ts';

/** Below so many answers scored by both, no coefficient is told: it would jump with a single answer. Common practice, no source. */
export const leastForCoefficient = 10;

/** A coefficient, or why there is none. `n` is the number of answers that both scored. */
export type Coefficient =
  | { readonly kind: 'value'; readonly value: number; readonly n: number }
  | { readonly kind: 'too few'; readonly n: number; readonly least: number }
  /** Both used one and the same category for everything: the formula would divide nothing by nothing. It is not 1. */
  | { readonly kind: 'cannot be computed'; readonly n: number };

/** One answer as two people scored it for one trait; undefined where one of them did not. */
export interface TwiceScored {
  /** What names the answer to both: of which booklet, at which stop, for which trait. */
  readonly answer: string;
  readonly first: number | undefined;
  readonly second: number | undefined;
}

export interface Agreement {
  /** Answers that both scored, and of these, those scored alike and those at most one step apart. */
  readonly n: number;
  readonly exact: number;
  readonly withinOne: number;
  readonly kappa: Coefficient;
  readonly linearKappa: Coefficient;
  readonly quadraticKappa: Coefficient;
  /** Kappa with disagreements as somebody weighed them; undefined when nobody did. */
  readonly givenKappa: Coefficient | undefined;
  /** Krippendorff's alpha for ordered scores, and for each kind of scale. */
  readonly alpha: Coefficient;
  readonly alphas: Readonly<Record<Scale, Coefficient>>;
  /** Answers to talk about first: those furthest apart, then in the order given. */
  readonly talkAbout: readonly TwiceScored[];
}

/** What two scorers' numbers say, for scores from 0 to `most`, with weights of one's own where there are any (rows and columns 0 to `most`, 0 on the diagonal). Scores that are no whole number in that range are an error of the caller. */
export function agreementOf(scored: readonly TwiceScored[], most: number, weights?: CrossTable): Agreement {
  const both = scored.filter((each): each is TwiceScored & { first: number; second: number } => each.first !== undefined && each.second !== undefined);
  const [first, second] = [both.map((each) => each.first), both.map((each) => each.second)];
  const categories = Array.from({ length: most + 1 }, (_, score) => score);
  const table = crossTable(categories, first, second);
  const apart = (each: { first: number; second: number }) => Math.abs(each.first - each.second);
  const n = both.length;
  // What only one of them scored says nothing of agreement: alpha leaves such units out by itself.
  const all = [scored.map((each) => each.first), scored.map((each) => each.second)];
  const alpha = (scale: Scale) => told(krippendorffAlpha(all, scale), n);
  return {
    n,
    exact: both.filter((each) => apart(each) === 0).length,
    withinOne: both.filter((each) => apart(each) <= 1).length,
    kappa: told(cohenKappa(table), n),
    linearKappa: told(cohenKappa(table, 'linear'), n),
    quadraticKappa: told(cohenKappa(table, 'quadratic'), n),
    givenKappa: weights && told(cohenKappa(table, weights), n),
    alpha: alpha('ordinal'),
    alphas: { nominal: alpha('nominal'), ordinal: alpha('ordinal'), interval: alpha('interval'), ratio: alpha('ratio') },
    talkAbout: both.filter((each) => apart(each) > 0).sort((a, b) => apart(b) - apart(a)),
  };
}

/** Alpha of any number of scorers for ordered scores; `n` is the number of answers that two or more of them scored. `scores[scorer][answer]`. */
export function alphaOfAll(scores: readonly (readonly (number | undefined)[])[]): Coefficient {
  const n = (scores[0] ?? []).filter((_, answer) => scores.filter((row) => row[answer] !== undefined).length > 1).length;
  return told(krippendorffAlpha(scores, 'ordinal'), n);
}

function told(value: number | undefined, n: number): Coefficient {
  if (n < leastForCoefficient) return { kind: 'too few', n, least: leastForCoefficient };
  return value === undefined ? { kind: 'cannot be computed', n } : { kind: 'value', value, n };
}
