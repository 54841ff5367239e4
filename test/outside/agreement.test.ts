import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cohenKappa, crossTable, type CrossTable } from '../../src/classroom/cohen-kappa.ts';
import { krippendorffAlpha, type Scale } from '../../src/classroom/krippendorff-alpha.ts';
import { wilsonInterval, starsOf } from '../../src/classroom/stars.ts';
import values from './check-values.json' with { type: 'json' };

/** Where each table's value was published; `worked out` ones follow from the formula in exact fractions. */
const kappaSources = [
  'Cohen 1968, Psychological Bulletin 70, Table 1: .492 and, with given weights, .348',
  'table of Fleiss, Cohen & Everitt 1969; its kappa worked out, 3/7',
  'test of a general-purpose statistics library: .348',
  'test of a general-purpose statistics library: .9315, .9412, .9541',
  'textbook example, from memory: .40',
  'two tables of 90 % agreement; kappas worked out: .7997',
  'two tables of 90 % agreement; kappas worked out: .4444',
  'own rubric of twenty answers; worked out: 39/64, 56/81, 18/23',
];

describe('Cohen’s kappa against published tables', () => {
  test.each(values.kappa.map((each, index) => [kappaSources[index] ?? 'no source', each] as const))('%s', (_, { m, none, linear, quadratic, given }) => {
    expect(cohenKappa(m)).toBeCloseTo(none, 9);
    if (linear !== undefined) expect(cohenKappa(m, 'linear')).toBeCloseTo(linear, 9);
    if (quadratic !== undefined) expect(cohenKappa(m, 'quadratic')).toBeCloseTo(quadratic, 9);
    if (given) expect(cohenKappa(m, given.v)).toBeCloseTo(given.k, 9);
  });
});

const alphaSources = ['four scorers, twelve units (fast-krippendorff’s tests): .743 .815 .849 .797', 'three scorers, fifteen units (the same): .691358 .810845'];

describe('Krippendorff’s alpha against published data', () => {
  test.each(values.alpha.map((each, index) => [alphaSources[index] ?? 'no source', each] as const))('%s', (_, { data, ...expected }) => {
    const scores = data.map((row) => row.map((score) => score ?? undefined));
    const scales = Object.entries(expected) as [Scale, number][];
    expect(scales.length).toBeGreaterThan(1);
    for (const [scale, value] of scales) expect(krippendorffAlpha(scores, scale)).toBeCloseTo(value, 9);
  });
});

/** The same by going through all pairs of scores, without a table. */
function kappaByPairs(first: readonly number[], second: readonly number[], weight: (a: number, b: number) => number): number | undefined {
  let seen = 0;
  let expected = 0;
  for (const [i, a] of first.entries()) {
    seen += weight(a, second[i] ?? 0) * first.length;
    for (const b of second) expected += weight(a, b);
  }
  return expected === 0 ? undefined : 1 - seen / expected;
}

function alphaByPairs(scores: readonly (readonly (number | undefined)[])[], step: (a: number, b: number, all: readonly number[]) => number): number | undefined {
  const units = (scores[0] ?? []).map((_, answer) => scores.flatMap((row) => row[answer] ?? [])).filter((unit) => unit.length > 1);
  const all = units.flat();
  let within = 0;
  for (const unit of units) for (const [i, a] of unit.entries()) for (const [j, b] of unit.entries()) if (i !== j) within += step(a, b, all) / (unit.length - 1);
  let between = 0;
  for (const [i, a] of all.entries()) for (const [j, b] of all.entries()) if (i !== j) between += step(a, b, all);
  return between === 0 ? undefined : 1 - within / all.length / (between / (all.length * (all.length - 1)));
}

const steps: Readonly<Record<Scale, (a: number, b: number, all: readonly number[]) => number>> = {
  nominal: (a, b) => (a === b ? 0 : 1),
  ordinal: (a, b, all) => {
    const share = (score: number) => all.filter((each) => each === score).length / 2;
    return a === b ? 0 : (all.filter((each) => each >= Math.min(a, b) && each <= Math.max(a, b)).length - share(a) - share(b)) ** 2;
  },
  interval: (a, b) => (a - b) ** 2,
  ratio: (a, b) => (a === b ? 0 : ((a - b) / (a + b)) ** 2),
};

const score = fc.integer({ min: 0, max: 3 });
const close = (a: number | undefined, b: number | undefined) => (a === undefined || b === undefined ? a === b : Math.abs(a - b) < 1e-9);

describe('against every pair counted one by one', () => {
  test('kappa of 1,000 random classes, three kinds of weights', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(score, score), { minLength: 1, maxLength: 30 }), (pairs) => {
        const [first, second] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
        const table = crossTable([0, 1, 2, 3], first, second);
        return (
          close(
            cohenKappa(table),
            kappaByPairs(first, second, (a, b) => (a === b ? 0 : 1)),
          ) &&
          close(
            cohenKappa(table, 'linear'),
            kappaByPairs(first, second, (a, b) => Math.abs(a - b)),
          ) &&
          close(
            cohenKappa(table, 'quadratic'),
            kappaByPairs(first, second, (a, b) => (a - b) ** 2),
          )
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('alpha of 1,000 random classes with missing scores, four scales', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(...Array.from({ length: 3 }, () => fc.option(score, { nil: undefined }))), { minLength: 1, maxLength: 12 }), (units) => {
        const scores = [0, 1, 2].map((scorer) => units.map((unit) => unit[scorer]));
        return (Object.keys(steps) as Scale[]).every((scale) => close(krippendorffAlpha(scores, scale), alphaByPairs(scores, steps[scale])));
      }),
      { numRuns: 1000 },
    );
  });

  test('who scores first makes no difference, and full agreement in two categories is 1', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(score, score), { minLength: 1, maxLength: 30 }), (pairs) => {
        const [first, second] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
        const there: CrossTable = crossTable([0, 1, 2, 3], first, second);
        const back = crossTable([0, 1, 2, 3], second, first);
        const same = crossTable([0, 1, 2, 3], first, first);
        const used = new Set(first).size;
        return (
          close(cohenKappa(there, 'linear'), cohenKappa(back, 'linear')) &&
          close(krippendorffAlpha([first, second], 'ordinal'), krippendorffAlpha([second, first], 'ordinal')) &&
          close(cohenKappa(same), used > 1 ? 1 : undefined) &&
          close(krippendorffAlpha([first, first], 'interval'), used > 1 ? 1 : undefined)
        );
      }),
    );
  });
});

describe('stars of 22 children: 1, 1, 3, 6, 11', () => {
  const { ratings } = values;
  const stars = starsOf(
    ratings.counts.flatMap((count, index) => Array.from({ length: count }, () => index + 1)),
    5,
  );
  test('the middle lies between 4 and 5, and 5 was given most often', () => {
    expect(stars).toMatchObject({ n: ratings.n, counts: ratings.counts, middle: [ratings.median_low, ratings.median_high], mostOften: [ratings.mode] });
  });
  test.each([
    [17, 22, ratings.wilson95_17_22],
    [6, 7, ratings.wilson95_6_7],
    [5, 5, ratings.wilson95_5_5],
  ] as const)('Wilson’s interval for %i of %i (formula of Wilson 1927, worked out apart)', (some, n, expected) => {
    const [low, high] = wilsonInterval(some, n);
    expect(low).toBeCloseTo(expected[0] ?? 0, 9);
    expect(high).toBeCloseTo(expected[1] ?? 0, 9);
  });
});
