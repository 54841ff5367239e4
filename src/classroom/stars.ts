import { shownCounts, type Audience, type Shown } from './small-numbers.ts';

/**
 * The stars that children gave a book. Stars are an order, no measure: they are counted and have a middle, never a mean.
 * Source: S. Jamieson 2004, Medical Education 38:1217-1218. Words for small numbers: "18 of 22", no percentages.
 */

export interface Stars {
  /** How many gave each number of stars, from 1 to the most that could be given. */
  readonly counts: readonly number[];
  readonly n: number;
  /** The two middle ratings; the same one twice when there is one middle. Undefined when nobody rated. */
  readonly middle: readonly [low: number, high: number] | undefined;
  /** Ratings given most often; more than one when they tie. */
  readonly mostOften: readonly number[];
}

/** Counts ratings from 1 to `outOf`; a number outside is an error of the caller. */
export function starsOf(ratings: readonly number[], outOf: number): Stars {
  const counts = Array.from({ length: outOf }, () => 0);
  for (const rating of ratings) {
    if (!Number.isInteger(rating) || rating < 1 || rating > outOf) throw new RangeError(`not a rating of 1 to ${String(outOf)}: ${String(rating)}`);
    counts[rating - 1] = (counts[rating - 1] ?? 0) + 1;
  }
  const sorted = [...ratings].sort((a, b) => a - b);
  const n = sorted.length;
  const [low, high] = [sorted[Math.ceil(n / 2) - 1], sorted[Math.floor(n / 2)]];
  const most = Math.max(...counts);
  return {
    counts,
    n,
    middle: low === undefined || high === undefined ? undefined : [low, high],
    mostOften: n === 0 ? [] : counts.flatMap((count, index) => (count === most ? index + 1 : [])),
  };
}

/** The stars that may be seen, by the rules for small numbers. */
export function shownStars(stars: Stars, audience: Audience): Shown<Stars> {
  return shownCounts(stars, stars.n, stars.counts, audience);
}

/** Between which shares the true one lies with 95 % confidence, if `some` of `n` said yes. Source: E. B. Wilson 1927, J. American Statistical Association 22:209-212. */
export function wilsonInterval(some: number, n: number): readonly [low: number, high: number] {
  const z = 1.959963984540054;
  const share = some / n;
  const middle = share + (z * z) / (2 * n);
  const reach = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return [Math.max(0, (middle - reach) / scale), Math.min(1, (middle + reach) / scale)];
}
