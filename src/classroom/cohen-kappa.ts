/**
 * How far two scorers agree beyond what their habits alone would bring about.
 *
 * Source: J. Cohen 1960, Educational and Psychological Measurement 20:37-46; with weights, J. Cohen 1968,
 * Psychological Bulletin 70:213-220. Kappa = 1 − Σ w·p / Σ w·r·c, with w the disagreement of two categories,
 * p the share of answers in a cell, r and c the shares of its row and column.
 */

/** Counts of answers: row, the first scorer's category; column, the second's. Square, in the order of the categories. */
export type CrossTable = readonly (readonly number[])[];

/** How much two categories disagree: any other category counts in full, by distance, by the square of the distance, or as given (0 on the diagonal). */
export type Weights = 'none' | 'linear' | 'quadratic' | CrossTable;

/** Cohen's kappa, at most 1; undefined where it cannot be computed, because both scorers used one and the same category throughout, or there is no answer. */
export function cohenKappa(table: CrossTable, weights: Weights = 'none'): number | undefined {
  const n = sum(table.flat());
  if (n === 0) return undefined;
  const rows = table.map((row) => sum(row));
  const columns = table.map((_, column) => sum(table.map((row) => row[column] ?? 0)));
  let seen = 0;
  let expected = 0;
  for (const [i, row] of table.entries()) {
    for (const [j, count] of row.entries()) {
      const weight = disagreement(i, j, weights);
      seen += weight * count;
      expected += (weight * (rows[i] ?? 0) * (columns[j] ?? 0)) / n;
    }
  }
  return expected === 0 ? undefined : 1 - seen / expected;
}

/** The table of two scorers' categories for the same answers, in the same order. A category that is not in the list is an error of the caller. */
export function crossTable<C>(categories: readonly C[], first: readonly C[], second: readonly C[]): CrossTable {
  const table = categories.map(() => categories.map(() => 0));
  for (const [index, one] of first.entries()) {
    const row = table[categories.indexOf(one)];
    const column = categories.indexOf(second[index] as C);
    if (row === undefined || column < 0) throw new RangeError(`not a category: ${String(one)} or ${String(second[index])}`);
    row[column] = (row[column] ?? 0) + 1;
  }
  return table;
}

function disagreement(i: number, j: number, weights: Weights): number {
  if (weights === 'none') return i === j ? 0 : 1;
  if (weights === 'linear') return Math.abs(i - j);
  if (weights === 'quadratic') return (i - j) ** 2;
  return weights[i]?.[j] ?? 0;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
