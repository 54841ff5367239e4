/**
 * How far any number of scorers agree, with answers that some of them left out.
 *
 * Source: K. Krippendorff, Content Analysis (2004, 2019), from memory; check values in `test/outside/`.
 * Alpha = 1 − Do/De, on the table of coincidences: in a unit with m scores each ordered pair of scores counts 1/(m − 1).
 */

/** What a step between two scores means: only other or same; a place in an order; a distance; a ratio. */
export type Scale = 'nominal' | 'ordinal' | 'interval' | 'ratio';

/**
 * Krippendorff's alpha, at most 1. `scores[scorer][answer]`; undefined for an answer that a scorer did not score.
 * Undefined where it cannot be computed: fewer than two scores of the same answer, or no two different scores at all.
 */
export function krippendorffAlpha(scores: readonly (readonly (number | undefined)[])[], scale: Scale): number | undefined {
  const units = unitsOf(scores).filter((unit) => unit.length > 1);
  const values = [...new Set(units.flat())].sort((a, b) => a - b);
  const coincidences = values.map(() => values.map(() => 0));
  for (const unit of units) addPairs(coincidences, unit, values);
  const totals = coincidences.map((row) => row.reduce((sum, each) => sum + each, 0));
  const n = totals.reduce((sum, each) => sum + each, 0);
  let observed = 0;
  let expected = 0;
  for (const i of values.keys()) {
    for (const j of values.keys()) {
      const step = difference(i, j, values, totals, scale);
      observed += (coincidences[i]?.[j] ?? 0) * step;
      expected += ((totals[i] ?? 0) * (totals[j] ?? 0) * step) / (n - 1);
    }
  }
  return expected > 0 ? 1 - observed / expected : undefined;
}

/** The scores of each answer, without the missing ones. */
function unitsOf(scores: readonly (readonly (number | undefined)[])[]): readonly (readonly number[])[] {
  const answers = Math.max(0, ...scores.map((row) => row.length));
  return Array.from({ length: answers }, (_, answer) => scores.flatMap((row) => row[answer] ?? []));
}

function addPairs(coincidences: number[][], unit: readonly number[], values: readonly number[]): void {
  const places = unit.map((score) => values.indexOf(score));
  for (const [one, i] of places.entries()) {
    for (const [other, j] of places.entries()) {
      const row = coincidences[i];
      if (one !== other && row) row[j] = (row[j] ?? 0) + 1 / (unit.length - 1);
    }
  }
}

/** The squared difference of two values, given by their places in the sorted list. */
function difference(i: number, j: number, values: readonly number[], totals: readonly number[], scale: Scale): number {
  if (i === j) return 0;
  const [a, b] = [values[i] ?? 0, values[j] ?? 0];
  switch (scale) {
    case 'nominal':
      return 1;
    case 'ordinal': {
      const [low, high] = [Math.min(i, j), Math.max(i, j)];
      const between = totals.slice(low, high + 1).reduce((sum, each) => sum + each, 0);
      return (between - ((totals[i] ?? 0) + (totals[j] ?? 0)) / 2) ** 2;
    }
    case 'interval':
      return (a - b) ** 2;
    case 'ratio':
      return a + b === 0 ? 0 : ((a - b) / (a + b)) ** 2;
  }
}
