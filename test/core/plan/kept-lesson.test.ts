/** What a teacher keeps of lessons on the device: read back as it was written, and never trusted blindly. */
import { expect, test } from 'vitest';
import { keep, mostKept, readKept, without, type KeptLesson } from '../../../src/core/plan/kept-lesson.ts';

const lesson = (more: Partial<KeptLesson> = {}): KeptLesson => ({
  version: 1,
  pack: 'the-borrowed-ladder',
  language: 'en',
  day: '2026-11-30',
  reading: 1,
  minutes: 12,
  parts: [
    { key: 'opening', planned: 60, took: 75 },
    { key: 'tall', planned: 145, took: 190 },
  ],
  ...more,
});

test('a lesson that was kept is read back as it was', () => {
  const first = lesson();
  const second = lesson({ day: '2026-12-02', children: 22, heard: 9 });
  expect(readKept(keep(readKept(keep([], first)), second))).toEqual([first, second]);
});

test('the oldest goes when there are too many', () => {
  const many = Array.from({ length: mostKept }, (_, index) => lesson({ reading: index }));
  const kept = readKept(keep(many, lesson({ reading: 99 })));
  expect([kept.length, kept[0]?.reading, kept.at(-1)?.reading]).toEqual([mostKept, 1, 99]);
});

test.each([
  ['nothing', null],
  ['no JSON', '{oh'],
  ['something else', '{"a":1}'],
  ['a later version', JSON.stringify([{ ...lesson(), version: 2 }])],
  ['seconds that are no number', JSON.stringify([{ ...lesson(), parts: [{ key: 'tall', planned: 'long', took: 1 }] }])],
  ['a day that is none', JSON.stringify([lesson({ day: 'Monday' })])],
  ['fewer than nobody', JSON.stringify([lesson({ children: -1 })])],
])('%s is no lesson', (_, text) => {
  expect(readKept(text)).toEqual([]);
});

test('one faulty entry costs no other', () => {
  expect(readKept(JSON.stringify([null, lesson(), { version: 1 }]))).toEqual([lesson()]);
});

test("erasing one book's lessons leaves another's, and nothing at all when there is no other", () => {
  const other = lesson({ pack: 'the-wheelbarrow-goes-home' });
  expect(without([lesson(), other], 'the-borrowed-ladder')).toBe(JSON.stringify([other]));
  expect(without([lesson()], 'the-borrowed-ladder')).toBeUndefined();
});
