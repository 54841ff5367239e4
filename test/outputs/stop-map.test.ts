/** Where the stops of a pack stand along its book, and room for what is drawn of them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MeasuredPack } from '../../src/core/measure/measures.ts';
import { apart, stopMap } from '../../src/outputs/stop-map.ts';
import { samplePack } from '../core/plan/sample-pack.ts';

const pack = samplePack();
const measured = (openings: readonly (readonly [opening: number, words: number])[]): Pick<MeasuredPack, 'book' | 'stops' | 'measures'> => ({
  ...pack,
  measures: { passage: openings.length === 0 ? undefined : { openings: openings.map(([opening, words]) => ({ opening, words, sentences: 1 })) } } as MeasuredPack['measures'],
});

describe('the stops along a book of ten openings', () => {
  test('nobody has counted: the 520 words of the pack are shared out evenly', () => {
    const map = stopMap(measured([]));
    expect(map).toMatchObject({ counted: false, words: 520, openings: 10 });
    expect(map.stops.map(({ number, opening, words }) => [number, opening, words])).toEqual([
      [1, 2, 104],
      [2, 4, 208],
      [3, 6, 312],
      [4, 8, 416],
      [5, 9, 468],
    ]);
  });

  test('counted by opening: words read by the end of a stop’s opening, openings without text with none', () => {
    const map = stopMap(
      measured([
        [1, 10],
        [2, 90],
        [4, 50],
        [6, 100],
        [10, 30],
      ]),
    );
    expect(map).toMatchObject({ counted: true, words: 280, readBy: [10, 100, 100, 150, 150, 250, 250, 250, 250, 280] });
    expect(map.stops.map(({ words }) => words)).toEqual([100, 150, 250, 250, 250]);
  });

  test('marks past the end of the book are not trusted', () => {
    expect(stopMap(measured([[11, 40]])).counted).toBe(false);
  });

  test('ways, depth and what has to stay', () => {
    expect(stopMap(measured([])).stops.map(({ ways, depth, must }) => [...ways, depth, must])).toEqual([
      ['say', 2, false],
      ['write', 2, true],
      ['partner', 3, false],
      ['act', 1, false],
      ['draw', 2, true],
    ]);
  });
});

describe('room between heads', () => {
  test.each([
    ['far enough apart, each stays at its place', [0.1, 0.5, 0.9], [0.1, 0.5, 0.9]],
    ['two at one place: the second gives way', [0.2, 0.2], [0.2, 0.4]],
    ['at the end: the first gives way', [1, 1], [0.8, 1]],
    ['more than there is room for: all alike', [0, 0, 0, 0, 0, 0, 1], [0, 1 / 6, 2 / 6, 3 / 6, 4 / 6, 5 / 6, 1]],
    ['none', [], []],
  ])('%s', (_, wanted, expected) => {
    const places = apart(wanted, 0.2);
    expect(places).toHaveLength(expected.length);
    for (const [index, place] of places.entries()) expect(place).toBeCloseTo(expected[index] ?? NaN, 9);
  });

  test('in any order of the book: never out of it, never out of order, never too near where there is room', () => {
    const wanted = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 40 }).map((all) => all.sort((a, b) => a - b));
    fc.assert(
      fc.property(wanted, (all) => {
        const places = apart(all, 0.1);
        expect(places.every((place) => place >= -1e-9 && place <= 1 + 1e-9)).toBe(true);
        const nearest = Math.min(1, ...places.slice(1).map((place, index) => place - (places[index] ?? 0)));
        expect(nearest).toBeGreaterThan(all.length <= 11 ? 0.1 - 1e-9 : 0);
      }),
    );
  });
});
