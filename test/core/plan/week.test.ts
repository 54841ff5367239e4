/** The same book on several days. */
import { expect, test } from 'vitest';
import { mustAskOf, weekOf } from '../../../src/core/plan/week.ts';
import { samplePack } from './sample-pack.ts';

const idsOf = (stops: readonly { readonly id: string }[]) => stops.map(({ id }) => id).join(' ');

test('each reading has its stops, its question, and what moved since the day before', () => {
  const week = weekOf(samplePack()).map((day) => ({ stops: idsOf(day.stops), ask: day.mustAsk?.id, again: idsOf(day.again), fresh: idsOf(day.fresh), resting: idsOf(day.resting) }));
  expect(week).toEqual([
    { stops: 'guess tall ask-back', ask: 'tall', again: '', fresh: 'guess tall ask-back', resting: '' },
    { stops: 'tall ask-back climb', ask: 'ask-back', again: 'tall ask-back', fresh: 'climb', resting: 'guess' },
    { stops: 'climb mine', ask: 'mine', again: 'climb', fresh: 'mine', resting: 'tall ask-back' },
  ]);
});

test('a stop that was asked on the first day and rested on the second is back on the third, and not new', () => {
  const pack = samplePack();
  const [, , third] = weekOf({ ...pack, stops: pack.stops.map((stop) => (stop.id === 'guess' ? { ...stop, readings: [1, 3] } : stop)) });
  expect([idsOf(third?.back ?? []), idsOf(third?.fresh ?? []), idsOf(third?.again ?? [])]).toEqual(['guess', 'mine', 'climb']);
});

test('readings stand in their order, however the pack lists them', () => {
  const pack = samplePack();
  expect(weekOf({ ...pack, readings: [...pack.readings].reverse() }).map(({ reading }) => reading)).toEqual([1, 2, 3]);
});

test('a reading that names no question and has no must asks its stop of most value', () => {
  const pack = samplePack();
  expect(mustAskOf({ ...pack, stops: pack.stops.map((stop) => ({ ...stop, must: false })) }, 1)?.id).toBe('ask-back');
});

test('a reading without stops has no question', () => {
  expect(mustAskOf({ ...samplePack(), stops: [] }, 1)).toBeUndefined();
});
