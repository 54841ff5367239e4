/** How long stops and lessons take when the author gives no seconds. */
import { expect, test } from 'vitest';
import { defaults, durationsOf, paceFromPractice, paceOf, secondsOfLesson, secondsOfStop, type TimedStop } from '../../../src/core/plan/seconds.ts';

const stop = (more: Partial<TimedStop>): TimedStop => ({ id: 'gate', answer: 'say', kind: 'reason', ...more });

test('a question answered aloud: 6 to ask, 5 to wait, and two children of 8 and 3 seconds each', () => {
  expect(secondsOfStop(stop({}), 'class')).toEqual({ id: 'gate', ask: 6, wait: 5, task: 0, shares: 2, share: 8, secondWait: 3, total: 33 });
});

test.each([
  ['partner', 45],
  ['act', 40],
  ['write', 120],
  ['draw', 180],
] as const)('to %s takes %i seconds when the author gives none', (answer, task) => {
  expect(secondsOfStop(stop({ answer }), 'class').task).toBe(task);
});

test.each([
  ['a feeling with one blank', { kind: 'feeling', frames: ['Bo is ___.'] }, 60],
  ['a word without a frame', { kind: 'word' }, 60],
  ['a word with one long blank', { kind: 'word', frames: ['It means ________.'] }, 60],
  ['a feeling with its reason', { kind: 'feeling', frames: ['Bo is ___.', 'Bo is ___ because ___.'] }, 120],
  ['a reason with one blank', { kind: 'reason', frames: ['Because ___.'] }, 120],
] as const)('to write %s', (_, more, task) => {
  expect(secondsOfStop(stop({ answer: 'write', ...more }), 'class').task).toBe(task);
});

test('what the author gives comes before the defaults, nought too', () => {
  expect(secondsOfStop(stop({ answer: 'draw', wait: 10, task: 0, shares: 0 }), 'class').total).toBe(6 + 10);
});

test('a recording hears nobody and waits for no task; with one child, one child is heard', () => {
  expect(secondsOfStop(stop({ answer: 'draw', shares: 4 }), 'recording').total).toBe(6 + 5);
  expect(secondsOfStop(stop({ answer: 'draw', shares: 4 }), 'one child').total).toBe(6 + 5 + 8 + 3);
});

test('in a small group each of the four is heard, and each does the task; where nobody is heard alone, nobody is', () => {
  expect(secondsOfStop(stop({ answer: 'partner', shares: 1 }), 'small group').total).toBe(6 + 5 + 45 + 4 * (8 + 3));
  expect(secondsOfStop(stop({ shares: 0 }), 'small group').total).toBe(6 + 5);
  expect(secondsOfLesson({ words: 130, openings: 1 }, [], { setting: 'small group', pace: 130 }).total).toBe(60 + 2 + 60 + 90);
});

test('a teacher may bring other durations', () => {
  const durations = { ...defaults, opening: 0, closing: 0, pageTurn: 0, ask: 10 };
  const lesson = secondsOfLesson({ words: 100, openings: 8 }, [stop({})], { setting: 'class', pace: 100, durations });
  expect(lesson.total).toBe(60 + 10 + 5 + 22);
});

test('a library without a pace of its own reads 130 words a minute', () => {
  expect(paceOf({})).toBe(130);
  expect(paceOf({ pace: 110 })).toBe(110);
});

test('a pack may have a pace and durations of its own, before those of its library', () => {
  expect(paceOf({ pace: 110 }, { pace: 95 })).toBe(95);
  expect(durationsOf({ durations: { ask: 10, wait: 8 } }, { durations: { ask: 12 } })).toEqual({ ...defaults, ask: 12, wait: 8 });
});

test.each([
  // 520 words in 14 openings: 28 seconds of page turns.
  ['4:28 for the book is 130 words a minute', 268, 130],
  ['5:40 is an unhurried 100', 340, 100],
  ['half a minute cannot be the whole book', 30, undefined],
  ['nor can an hour', 3600, undefined],
] as const)('one practice reading: %s', (_, seconds, pace) => {
  expect(paceFromPractice({ words: 520, openings: 14 }, seconds)).toBe(pace);
});
