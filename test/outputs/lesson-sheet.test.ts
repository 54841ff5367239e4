/** The lesson page's choices, their address, and the sheet that is worked out for them. */
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../src/core/check/check-pack.ts';
import { measurePack } from '../../src/core/measure/measure-pack.ts';
import { planLesson } from '../../src/core/plan/plan-lesson.ts';
import { choicesFrom, queryOf, usualChoices } from '../../src/outputs/lesson-choices.ts';
import { lessonDataOf } from '../../src/outputs/lesson-data.ts';
import { numberOf, sheetOf, stepsWith } from '../../src/outputs/lesson-sheet.ts';
import { samplePack } from '../core/plan/sample-pack.ts';

const planned = (minutes = 20) => planLesson(measurePack(checkPack(samplePack(minutes)).value).value, {}).value;
const data = lessonDataOf(planned());
const usual = usualChoices(data);

describe('an address', () => {
  test.each([
    ['', {}],
    ['?start=9.05&minutes=12&reading=2', { start: 9 * 3600 + 300, minutes: 12, reading: 2 }],
    ['?with=group&pace=110', { setting: 'small group', pace: 110 }],
    ['?with=child&ends=short&openings=1-6', { setting: 'one child', shortEnds: true, from: 1, to: 6 }],
  ] as const)('"%s" says what differs from the usual, and comes back the same', (query, choices) => {
    expect(choicesFrom(query, data)).toEqual({ ...usual, ...choices });
    expect(queryOf({ ...usual, ...choices }, data)).toBe(query);
  });

  test.each(['?start=25.00', '?minutes=0', '?minutes=many', '?reading=4', '?with=crowd', '?pace=1000', '?openings=9-2', '?openings=1-99', '?<script>', '?start', '?=&&', '?with=recording'])(
    'what makes no sense in "%s" counts as not chosen',
    (query) => {
      expect(choicesFrom(query, data)).toEqual(usual);
    },
  );

  test('with a colon, as somebody may type it, is understood too', () => {
    expect(choicesFrom('?start=9:05', data).start).toBe(9 * 3600 + 300);
    expect(choicesFrom('?start=9%3A05', data).start).toBe(9 * 3600 + 300);
  });
});

describe('the sheet', () => {
  test("without a choice is the plan of the pack's own minutes", () => {
    for (const minutes of [20, 10, 9, 7]) {
      const pack = planned(minutes);
      const sheet = sheetOf(lessonDataOf(pack), usualChoices(lessonDataOf(pack)));
      expect(sheet.lesson).toEqual(pack.plan.lesson);
      expect(sheet.stops.map(({ id }) => id)).toEqual(pack.plan.stops.map(({ id }) => id));
      expect(sheet.left.map(({ id }) => id)).toEqual(pack.plan.left.map(({ id }) => id));
    }
  });

  test('shows each stop once: asked, or among the rest', () => {
    const sheet = sheetOf(data, { ...usual, minutes: 9 });
    expect([...sheet.stops, ...sheet.rest].map(({ id }) => id).sort()).toEqual(data.stops.map(({ id }) => id).sort());
    expect(sheet.rest.map((stop) => numberOf(data, stop.id))).toEqual([3, 4, 5]);
  });

  test('fits seven minutes once the opening and the closing are cut short', () => {
    expect(sheetOf(data, { ...usual, minutes: 7 }).fit.fits).toBe(false);
    const short = sheetOf(data, { ...usual, minutes: 7, shortEnds: true });
    expect([short.fit.fits, short.lesson.opening, short.lesson.closing]).toEqual([true, 20, 30]);
  });

  test('of two days holds the whole book, and each day its own openings and stops', () => {
    const first = sheetOf(data, { ...usual, minutes: 7, to: 4 });
    const second = sheetOf(data, { ...usual, minutes: 7, from: 5 });
    expect([first.fit.fits, second.fit.fits]).toEqual([true, true]);
    expect(first.lesson.reading + second.lesson.reading).toBeCloseTo((data.book.words * 60) / 130, 9);
    expect(first.rows.flatMap((row) => (row.kind === 'reading' ? [[row.from, row.to]] : []))).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(second.stops.map(({ id }) => id)).toEqual(['ask-back']);
    expect(second.rows.flatMap((row) => (row.kind === 'reading' ? [[row.from, row.to]] : []))).toEqual([
      [5, 6],
      [7, 10],
    ]);
  });

  test('followed without one of its stops still ends when it was to end', () => {
    const sheet = sheetOf(data, usual);
    const steps = stepsWith(sheet, new Set(['tall', 'ask-back']));
    const last = steps.at(-1);
    expect((last?.begins ?? 0) + (last?.seconds ?? 0)).toBeCloseTo(sheet.lesson.total, 9);
    expect(steps[0]?.begins).toBeCloseTo(33, 9);
  });
});
