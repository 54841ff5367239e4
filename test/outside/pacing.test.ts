import { describe, expect, test } from 'vitest';
import { chooseStops } from '../../src/core/plan/choose-stops.ts';
import { secondsOfLesson, secondsOfStop } from '../../src/core/plan/seconds.ts';
import values from './check-values.json' with { type: 'json' };

/**
 * A lesson of 620 words and six stops, worked out by hand from the formula
 * stop = ask + wait + task + shares × (share + second wait); lesson = words × 60 / pace + turns + opening + closing + stops.
 * Source: worked example of the project's own reference, computed apart from this program; its durations are common practice, no source.
 */
const { pacing } = values;
const stops = pacing.stops.map((stop) => ({ id: stop.id, answer: 'say' as const, kind: 'reason' as const, wait: pacing.wait1_s, task: stop.task_s, shares: stop.shares }));
const book = { words: pacing.words, openings: pacing.turns };

describe('the seconds of a lesson of 620 words and six stops', () => {
  test.each(stops.map((stop, index) => [stop.id, stop, pacing.expected.stop_s[index]] as const))('%s takes the seconds worked out by hand', (_, stop, expected) => {
    expect(secondsOfStop(stop, 'class').total).toBe(expected);
  });

  test('reading aloud at 130 words a minute takes 286.15 seconds', () => {
    expect(secondsOfLesson(book, stops, { setting: 'class', pace: pacing.wpm }).reading).toBeCloseTo(pacing.expected.reading_s, 9);
  });

  test('with a class the lesson takes 16 minutes and 5 seconds', () => {
    const lesson = secondsOfLesson(book, stops, { setting: 'class', pace: pacing.wpm });
    expect(lesson.total).toBeCloseTo(pacing.expected.total_s, 9);
    expect(lesson.reading + lesson.pageTurns + lesson.opening + lesson.closing).toBeCloseTo(pacing.expected.fixed_s, 9);
  });

  test('a recording that asks and holds takes 6 minutes and 20 seconds', () => {
    expect(secondsOfLesson(book, stops, { setting: 'recording', pace: pacing.wpm }).total).toBeCloseTo(pacing.expected.video_s, 9);
  });

  test('one adult with one child takes 7 minutes and 26 seconds', () => {
    expect(secondsOfLesson(book, stops, { setting: 'one child', pace: pacing.wpm }).total).toBeCloseTo(pacing.expected.one_child_s, 9);
  });
});

/**
 * The best stops of that lesson for some budgets, found by trying all 64 sets.
 * Source: the same worked example; more value first, then fewer seconds, and no wishes beyond the musts.
 */
describe('the best stops of that lesson for the minutes there are', () => {
  test.each(values.selection)('$budget_s seconds with the musts $must', ({ budget_s, must, best, value, secs }) => {
    const fixed = secondsOfLesson(book, [], { setting: 'class', pace: pacing.wpm }).total;
    const candidates = pacing.stops.map(({ id, value: worth }, index) => ({
      id,
      opening: index + 1,
      seconds: pacing.expected.stop_s[index] ?? 0,
      value: worth,
      must: (must as readonly string[]).includes(id),
      after: undefined,
      feeling: false,
      writes: false,
    }));
    const choice = chooseStops(candidates, { room: Math.floor(budget_s - fixed), openings: pacing.turns, wishes: [] });
    expect(choice.fits ? choice : null).toEqual(best === null ? null : { fits: true, ids: best, seconds: secs, value, unmet: [] });
  });
});

/**
 * A picture book of 600 words with seven stops, three of them drawing, and a grown-up who models an answer at each: 15 to 25 minutes.
 * Common practice, no source.
 */
test('600 words with seven stops, some of them drawing, and answers modelled come out between 15 and 25 minutes', () => {
  const modelled = { wait: 5, shares: 3 };
  const seven = (['say', 'draw', 'partner', 'draw', 'act', 'say', 'draw'] as const).map((answer, index) => ({ id: `s${index}`, answer, kind: 'reason' as const, ...modelled }));
  const minutes = secondsOfLesson({ words: 600, openings: 14 }, seven, { setting: 'class', pace: 130 }).total / 60;
  expect(minutes).toBeGreaterThan(15);
  expect(minutes).toBeLessThan(25);
});
