/** What a lesson's minutes go to. */
import { expect, test } from 'vitest';
import { stopsOf } from '../../src/core/pack/pack.ts';
import { secondsOfLesson } from '../../src/core/plan/seconds.ts';
import { minutesSpent } from '../../src/outputs/minutes-spent.ts';
import { samplePack } from '../core/plan/sample-pack.ts';

const pack = samplePack();
const lesson = secondsOfLesson(pack.book, stopsOf(pack, 1), { setting: 'class', pace: 130 });
const of = (on: string) => minutesSpent(lesson).find((each) => each.on === on)?.seconds;

test('520 words at 130 a minute are 240 seconds of reading; opening and closing are 150', () => {
  expect([of('reading'), of('ends')]).toEqual([240, 150]);
});

test('all of it adds up to the lesson, and nothing is counted twice', () => {
  const spent = minutesSpent(lesson);
  expect(spent.reduce((sum, each) => sum + each.seconds, 0)).toBeCloseTo(lesson.total, 9);
  expect(new Set(spent.map((each) => each.on)).size).toBe(spent.length);
});

test('asking and the silences are what the stops say', () => {
  expect(of('asking')).toBe(lesson.stops.reduce((sum, stop) => sum + stop.ask, 0));
  expect(of('thinking')).toBe(lesson.stops.reduce((sum, stop) => sum + stop.wait + stop.shares * stop.secondWait, 0));
});

test('a reading without stops spends nothing on them', () => {
  const bare = secondsOfLesson(pack.book, [], { setting: 'class', pace: 130 });
  expect(minutesSpent(bare).map((each) => each.on)).toEqual(['reading', 'pages', 'ends']);
});
