/** Which stops are asked when the minutes are few. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseStops, usualWishes, type Candidate, type Limits } from '../../../src/core/plan/choose-stops.ts';

const stop = (id: string, opening: number, seconds: number, value: number, more: Partial<Candidate> = {}): Candidate => ({
  id,
  opening,
  seconds,
  value,
  must: false,
  after: undefined,
  feeling: false,
  writes: false,
  ...more,
});
const within = (room: number, more: Partial<Limits> = {}): Limits => ({ room, openings: 12, wishes: [], ...more });

describe('choosing stops', () => {
  test('two small stops beat the dearest one when they are worth more together', () => {
    expect(chooseStops([stop('big', 2, 100, 7), stop('one', 4, 50, 4), stop('two', 6, 50, 4)], within(100))).toEqual({ fits: true, ids: ['one', 'two'], seconds: 100, value: 8, unmet: [] });
  });

  test('a must stays, whatever it costs', () => {
    expect(chooseStops([stop('big', 2, 100, 1, { must: true }), stop('one', 4, 50, 9)], within(120))).toMatchObject({ ids: ['big'] });
  });

  test('a must brings the stop that it comes after', () => {
    expect(chooseStops([stop('word', 2, 40, 1), stop('why', 5, 40, 5, { must: true, after: 'word' }), stop('draw', 8, 40, 9)], within(80))).toMatchObject({ ids: ['word', 'why'] });
  });

  test('a stop is left out when the one it comes after does not fit', () => {
    expect(chooseStops([stop('word', 2, 90, 1), stop('why', 5, 40, 9, { after: 'word' }), stop('draw', 8, 40, 2)], within(80))).toMatchObject({ ids: ['draw'] });
  });

  test('a stop may come after one that the pack lists for a later opening', () => {
    expect(chooseStops([stop('why', 2, 40, 9, { after: 'word' }), stop('word', 5, 40, 0)], within(80))).toMatchObject({ ids: ['why', 'word'] });
  });

  test('a feeling is kept though a dearer question fits, and a way without writing too', () => {
    const stops = [stop('essay', 2, 60, 10, { writes: true }), stop('sad', 4, 60, 2, { writes: true, feeling: true }), stop('tell', 6, 60, 1)];
    expect(chooseStops(stops, within(120, { wishes: usualWishes }))).toMatchObject({ ids: ['sad', 'tell'], unmet: [] });
    expect(chooseStops(stops, within(120))).toMatchObject({ ids: ['essay', 'sad'] });
  });

  test('where only one wish can be met it is the feeling, and the other is told', () => {
    const stops = [stop('sad', 4, 60, 2, { writes: true, feeling: true }), stop('tell', 6, 60, 9)];
    expect(chooseStops(stops, within(60, { wishes: usualWishes }))).toMatchObject({ ids: ['sad'], unmet: ['a way without writing'] });
  });

  test('a wish that none of the stops could meet is not told', () => {
    expect(chooseStops([stop('tell', 6, 60, 9)], within(60, { wishes: usualWishes }))).toMatchObject({ ids: ['tell'], unmet: [] });
  });

  test('of sets alike in value and seconds, the one spread more evenly over the book', () => {
    expect(chooseStops([stop('a', 1, 30, 5), stop('b', 2, 30, 5), stop('c', 4, 30, 5), stop('d', 8, 30, 5)], within(60))).toMatchObject({ ids: ['c', 'd'] });
  });

  test('of sets alike in all that counts, the earlier stop', () => {
    expect(chooseStops([stop('first', 6, 30, 5), stop('second', 6, 30, 5)], within(30))).toMatchObject({ ids: ['first'] });
  });

  test('no room for any stop is still a lesson', () => {
    expect(chooseStops([stop('one', 4, 50, 4)], within(10))).toEqual({ fits: true, ids: [], seconds: 0, value: 0, unmet: [] });
  });

  test('when the reading alone is too long, or the musts are, the missing seconds are told', () => {
    expect(chooseStops([stop('one', 4, 50, 4)], within(-5))).toEqual({ fits: false, why: 'no time', shortBy: 5 });
    expect(chooseStops([stop('one', 4, 50, 4, { must: true })], within(-5))).toEqual({ fits: false, why: 'no time', shortBy: 55 });
    expect(chooseStops([stop('one', 4, 50, 4, { must: true })], within(10))).toEqual({ fits: false, why: 'musts too long', shortBy: 40 });
  });

  test('a must that comes after a stop that is not there, or after itself, is told', () => {
    expect(chooseStops([stop('why', 4, 10, 4, { must: true, after: 'gone' })], within(100))).toEqual({ fits: false, why: 'must out of reach', id: 'why' });
    expect(chooseStops([stop('a', 4, 10, 4, { after: 'b' }), stop('b', 5, 10, 4, { must: true, after: 'a' })], within(100))).toEqual({ fits: false, why: 'must out of reach', id: 'b' });
  });
});

describe('against trying every set', () => {
  const candidate = (index: number, count: number) =>
    fc.record({
      id: fc.constant(`s${String(index)}`),
      opening: fc.integer({ min: 1, max: 9 }),
      seconds: fc.integer({ min: 0, max: 6 }).map((steps) => steps * 10),
      value: fc.integer({ min: 0, max: 4 }),
      must: fc.integer({ min: 0, max: 9 }).map((chance) => chance === 0),
      after: fc.option(
        fc.integer({ min: 0, max: count }).map((other) => `s${String(other)}`),
        { nil: undefined, freq: 2 },
      ),
      feeling: fc.boolean(),
      writes: fc.boolean(),
    });
  const packs = (most: number) => fc.integer({ min: 0, max: most }).chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => candidate(index, count))));
  const anyWishes = fc.subarray([...usualWishes]);

  test('no set of up to 12 stops is better than the chosen one', () => {
    fc.assert(
      fc.property(packs(12), fc.integer({ min: -20, max: 300 }), anyWishes, (candidates, room, wishes) => {
        const limits = { room, openings: 9, wishes };
        const choice = chooseStops(candidates, limits);
        expect(choice.fits ? choice.ids : undefined).toEqual(bestByTryingAll(candidates, limits));
      }),
      { numRuns: 2000 },
    );
  });

  test('a chosen set never takes more seconds than there are', () => {
    fc.assert(
      fc.property(packs(40), fc.integer({ min: 0, max: 900 }), anyWishes, (candidates, room, wishes) => {
        const choice = chooseStops(candidates, { room, openings: 9, wishes });
        if (!choice.fits) return;
        const chosen = candidates.filter(({ id }) => choice.ids.includes(id));
        expect(chosen.reduce((sum, { seconds }) => sum + seconds, 0)).toBe(choice.seconds);
        expect(choice.seconds).toBeLessThanOrEqual(room);
      }),
      { numRuns: 100 },
    );
  });

  test('where very many stops hang on one another across the book, value and seconds are still the best there are', () => {
    const first = Array.from({ length: 30 }, (_, index) => stop(`p${String(index)}`, index + 1, 10 + index, index % 5));
    const second = first.map(({ id }, index) => stop(`c${String(index)}`, index + 31, 10, (index * 3) % 7, { after: id }));
    const choice = chooseStops([...first, ...second], within(400, { openings: 60 }));
    expect(choice).toMatchObject({ fits: true, value: bestValueOfPairs(first, second, 400) });
  });
});

/** The plain way: every subset, judged by the order of preference as it is written down. */
function bestByTryingAll(candidates: readonly Candidate[], { room, openings, wishes }: Limits): readonly string[] | undefined {
  if (room < 0) return undefined;
  const inBook = [...candidates].sort((a, b) => a.opening - b.opening);
  let best: { readonly key: readonly number[]; readonly ids: readonly string[] } | undefined;
  for (let set = 0; set < 2 ** inBook.length; set++) {
    const chosen = inBook.filter((_, index) => ((set >> index) & 1) === 1);
    const seconds = chosen.reduce((sum, each) => sum + each.seconds, 0);
    if (seconds > room || inBook.some((each) => each.must && !chosen.includes(each)) || !canBeAsked(chosen)) continue;
    const at = [0, ...chosen.map(({ opening }) => opening), openings];
    const key = [
      wishes.includes('a feeling') && !chosen.some(({ feeling }) => feeling) ? 1 : 0,
      wishes.includes('a way without writing') && !chosen.some(({ writes }) => !writes) ? 1 : 0,
      -chosen.reduce((sum, { value }) => sum + value, 0),
      seconds,
      at.slice(1).reduce((sum, opening, index) => sum + (opening - (at[index] ?? 0)) ** 2, 0),
      ...inBook.map((each) => (chosen.includes(each) ? 0 : 1)),
    ];
    if (!best || firstDifference(key, best.key) < 0) best = { key, ids: chosen.map(({ id }) => id) };
  }
  return best?.ids;
}

/** True when the stops can be asked one by one, each when its own has been. */
function canBeAsked(chosen: readonly Candidate[]): boolean {
  const asked = new Set<string>();
  for (let round = 0; round < chosen.length; round++) for (const each of chosen) if (each.after === undefined || asked.has(each.after)) asked.add(each.id);
  return asked.size === chosen.length;
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  for (const [index, each] of a.entries()) if (each !== b[index]) return each - (b[index] ?? 0);
  return 0;
}

/** Best value when of each pair nothing, the first, or both may be taken: the plain table by seconds. */
function bestValueOfPairs(first: readonly Candidate[], second: readonly Candidate[], room: number): number {
  let table = Array.from({ length: room + 1 }, () => 0);
  for (const [index, one] of first.entries()) {
    const two = second[index];
    if (!two) continue;
    table = table.map((none, seconds) => Math.max(none, (table[seconds - one.seconds] ?? -Infinity) + one.value, (table[seconds - one.seconds - two.seconds] ?? -Infinity) + one.value + two.value));
  }
  return table[room] ?? 0;
}
