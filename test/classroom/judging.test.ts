/** Judging and agreeing: what is scored and what never is, the two files, what is compared. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/classroom/compare.ts';
import { hintsFor } from '../../src/classroom/hints.ts';
import { isJudgedWhole, judgeables, sumOf, traitCounts, withScore, type Judgeable, type Scores, type Scoring } from '../../src/classroom/judging.ts';
import { readStackFile } from '../../src/classroom/read-stack-file.ts';
import { readScores, readSheet, writeScores, writeSheet } from '../../src/classroom/scoring-files.ts';
import type { Value } from '../../src/core/booklet/booklet.ts';
import values from '../outside/check-values.json' with { type: 'json' };
import { aClass, booklet, hen, stackOf } from './small-class.ts';

const written = (text: string): Value => ({ kind: 'written', text, frames: [] });
const judged = judgeables(aClass(), hen, 'a seed');

describe('what is judged', () => {
  test('answers about the story, stop by stop; never what a child says of itself, nor passing, nor "I can’t tell", nor stars', () => {
    expect(judged.map(({ stop }) => stop)).toEqual(['step', 'step', 'step', 'step', 'snow']);
    expect(judged.flatMap(({ values }) => values.map(({ kind }) => kind)).sort()).toEqual(['feeling', 'feeling', 'said', 'written', 'written', 'written']);
  });

  test('the order is the seed’s, and nobody’s bookmark is in it', () => {
    expect(judgeables(aClass(), hen, 'a seed')).toEqual(judged);
    expect(judgeables(aClass(), hen, 'another').map(({ key }) => key)).not.toEqual(judged.map(({ key }) => key));
    expect(JSON.stringify(judged)).not.toMatch(/waves|leaves|stitches|roofs|"colour"|bookmark/);
  });

  test('without a rubric there is nothing to judge with', () => {
    expect(judgeables(aClass(), { ...hen, rubric: undefined }, 'a')).toEqual([]);
  });

  test('a score is set, changed and rubbed out', () => {
    const [first] = judged;
    if (!first) throw new Error('nothing to judge');
    const one = withScore({}, first.key, 'whole sentence', 1);
    const two = withScore(one, first.key, 'gives a reason', 0);
    expect([isJudgedWhole(one, first), isJudgedWhole(two, first), sumOf(two, first)]).toEqual([false, true, 1]);
    expect(withScore(withScore(two, first.key, 'whole sentence', undefined), first.key, 'gives a reason', undefined)).toEqual({});
    expect(traitCounts(judged, { steps: 1, seed: '', scores: two })).toEqual([
      { trait: 'whole sentence', counts: [0, 1], n: 1 },
      { trait: 'gives a reason', counts: [1, 0], n: 1 },
    ]);
  });
});

describe('the sheet for a second person', () => {
  const text = writeSheet(judged, 1, 'a seed');
  const sheet = readSheet(JSON.parse(text));

  test('holds the answers, in another order, and neither bookmarks nor scores', () => {
    expect(sheet?.answers.map(({ key }) => key).sort()).toEqual(judged.map(({ key }) => key).sort());
    expect(text).not.toMatch(/waves|bookmark|"scores"|child000/);
    expect(readStackFile(text)).toMatchObject({ kind: 'sheet' });
    const many = judgeables(stackOf(Array.from({ length: 20 }, (_, child) => booklet(child, [['step', written(`Answer ${String(child)}.`)]]))), hen, 'x');
    expect(readSheet(JSON.parse(writeSheet(many, 1, 'x')))?.answers.map(({ key }) => key)).not.toEqual(many.map(({ key }) => key));
  });

  test('scores come back as they went, whatever the traits are called', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.stringMatching(/^[0-9a-f]{16}$/), fc.dictionary(fc.string({ maxLength: 30 }), fc.integer({ min: 0, max: 2 }), { minKeys: 1, maxKeys: 4 }), { maxKeys: 12 }),
        (scores) => {
          const back = readScores(JSON.parse(writeScores({ sheet: 'abcdef0123456789', by: 'second', steps: 2, scores: scores })));
          expect(back?.scores).toEqual(Object.fromEntries(Object.entries(scores).map(([key, traits]) => [key, Object.fromEntries(Object.entries(traits))])));
        },
      ),
      { numRuns: 200 },
    );
  });

  test('what somebody made up is refused or left out, and never throws', () => {
    fc.assert(
      fc.property(fc.anything(), (data) => {
        readSheet(data);
        readScores(data);
      }),
      { numRuns: 300 },
    );
    const bad = JSON.parse(text) as { answers: { pack: number; stop: string }[] };
    bad.answers = bad.answers.map((each, index) => (index === 0 ? { ...each, pack: 7 } : index === 1 ? { ...each, stop: 'nowhere' } : each));
    expect(readSheet(bad)?.answers).toHaveLength(judged.length - 2);
    expect(readScores({ format: 'companion scores', version: 1, sheet: '', by: 'first', steps: 1, scores: [['0123456789abcdef', 'reason', 2]] })?.scores).toEqual({});
  });
});

describe('two people’s scores', () => {
  /** The twenty answers with published agreement: one trait, two steps. */
  const [first = [], second = []] = ['2 2 1 0 2 1 1 2 0 1 2 2 1 0 1 2 2 1 0 2', '2 1 1 0 2 1 2 2 0 1 2 2 0 0 1 2 1 1 1 2'].map((row) => row.split(' ').map(Number));
  const one = { ...hen, rubric: hen.rubric?.slice(0, 1) };
  const twenty: readonly Judgeable[] = first.map((_, index) => ({ key: String(index).padStart(16, '0'), pack: one, stop: 'step', values: [written('x')] }));
  const scoresOf = (row: readonly number[]): Scores => Object.fromEntries(twenty.map(({ key }, index) => [key, { 'whole sentence': row[index] ?? 0 }]));
  const mine: Scoring = { steps: 2, seed: '', scores: scoresOf(first) };

  test('the worked example: 15 of 20 alike, kappa 39/64, alpha .781155', () => {
    const [line] = compare(twenty, mine, scoresOf(second));
    const expected = values.kappa.at(-1);
    expect(line?.agreement).toMatchObject({ n: 20, exact: 15, withinOne: 20 });
    const value = (coefficient: { kind: string; value?: number } | undefined) => coefficient?.value ?? Number.NaN;
    expect(value(line?.agreement.kappa)).toBeCloseTo(expected?.none ?? 0, 9);
    expect(value(line?.agreement.linearKappa)).toBeCloseTo(expected?.linear ?? 0, 9);
    expect(value(line?.agreement.quadraticKappa)).toBeCloseTo(expected?.quadratic ?? 0, 9);
    expect(value(line?.agreement.alphas.ordinal)).toBeCloseTo(0.781155, 6);
    expect(line?.agreement.talkAbout).toHaveLength(5);
  });

  test('weights of one’s own: those of a single step alone', () => {
    const table = [
      [0, 1, 1],
      [1, 0, 1],
      [1, 1, 0],
    ];
    const [line] = compare(twenty, mine, scoresOf(second), { trait: 'whole sentence', table });
    expect(line?.agreement.givenKappa).toEqual(line?.agreement.kappa);
    expect(compare(twenty, mine, scoresOf(second))[0]?.agreement.givenKappa).toBeUndefined();
  });

  test('below ten none is told; where both always say the same, none can be computed', () => {
    expect(compare(twenty.slice(0, 9), mine, scoresOf(second))[0]?.agreement.kappa).toEqual({ kind: 'too few', n: 9, least: 10 });
    const ones = scoresOf(first.map(() => 1));
    expect(compare(twenty, { ...mine, scores: ones }, ones)[0]?.agreement.kappa).toEqual({ kind: 'cannot be computed', n: 20 });
    expect(compare(twenty, { ...mine, scores: ones }, ones)[0]?.agreement.alphas.nominal).toEqual({ kind: 'cannot be computed', n: 20 });
  });

  test('what one of them left out counts for neither', () => {
    const some = Object.fromEntries(Object.entries(scoresOf(second)).slice(0, 12));
    expect(compare(twenty, mine, some)[0]?.agreement.n).toBe(12);
    expect(compare(twenty, mine, some)[0]?.agreement.alphas.ordinal).toMatchObject({ n: 12 });
  });

  test('several traits are also added up', () => {
    const lines = compare(judged, { steps: 1, seed: '', scores: {} }, {});
    expect(lines.map(({ trait, most }) => [trait, most])).toEqual([
      ['whole sentence', 1],
      ['gives a reason', 1],
      [undefined, 2],
    ]);
  });
});

describe('hints for the teacher', () => {
  const [step] = hen.stops;
  const hints = (...values: readonly Value[]) =>
    (step ? hintsFor(values, step, hen) : []).map((hint) => ('words' in hint ? `${hint.kind}: ${hint.words.join(', ')}` : 'word' in hint ? `${hint.kind}: ${hint.word}` : hint.kind));
  test.each([
    ['a whole answer', [written('She feels worried because the yard is gone.')], ['end mark', 'reason: because', 'feeling: worried']],
    ['misspelt, and nothing is said of that', [written('She feels wurrid')], []],
    ['words of the cue', [written('she put one foot out')], ['book']],
    ['in the picture', [{ kind: 'said', text: 'In the picture she is scared.' }], ['book', 'feeling: scared']],
    ['a word that was chosen', [{ kind: 'feeling', word: 'scared', family: 'afraid', strength: 2 }], ['feeling: scared']],
    ['a drawing without words', [{ kind: 'drawing', about: '', marks: [] }], []],
  ] as const satisfies readonly (readonly [string, readonly Value[], readonly string[]])[])('%s', (_, given, expected) => {
    expect(hints(...given)).toEqual(expected);
  });
});
