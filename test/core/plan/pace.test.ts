/** A lesson that is followed: ahead, on time or behind, and what to leave out. */
import { describe, expect, test } from 'vitest';
import { lessonOf } from '../../../src/core/plan/lesson.ts';
import { endingAt, inMinutes, measuredFrom, standingAt, stepsOf, type Limits, type Step } from '../../../src/core/plan/pace.ts';
import { runSheet } from '../../../src/core/plan/run-sheet.ts';
import type { Setting } from '../../../src/core/plan/seconds.ts';
import { candidatesOf } from '../../../src/core/plan/short-lesson.ts';
import { samplePack } from './sample-pack.ts';

const pack = samplePack();
const stepsIn = (setting: Setting) => {
  const { stops, lesson } = lessonOf(pack, 1, 20, { setting, pace: 130 });
  return stepsOf(runSheet(pack.book, stops, lesson, 0));
};
const told = (step: Step) => `${step.key} ${step.begins}, ${step.seconds} s (${step.reading} reading)`;

// Each opening takes 26 seconds. `guess` (33 s, worth 3) is at opening 2, `tall` (93 s, a must) at 4, `ask-back` (78 s, worth 8) at 6.
const steps = stepsIn('class');
const limits = (minutes: number, more: Partial<Limits> = {}): Limits => ({
  budget: minutes * 60,
  openings: 10,
  candidates: candidatesOf(pack, 1, { setting: 'class', pace: 130 }),
  closingCanGive: 60,
  ...more,
});

describe('the steps of a lesson', () => {
  test('put what is read to the stop that it leads up to, and the end of the book to the closing', () => {
    expect(steps.map(told)).toEqual([
      'opening 0, 60 s (0 reading)',
      'guess 60, 85 s (52 reading)',
      'tall 145, 145 s (52 reading)',
      'ask-back 290, 130 s (52 reading)',
      'closing 420, 194 s (104 reading)',
    ]);
  });

  test('of a recording begin with the first stop and end with the book', () => {
    expect(stepsIn('recording').map(({ key }) => key)).toEqual(['guess', 'tall', 'ask-back', 'closing']);
  });

  test('without a stop give its seconds to what follows, so that the lesson ends when it was to end', () => {
    const tall = { key: 'tall', stop: 'tall', begins: 60, reading: 104, seconds: 197 };
    const without = steps.filter(({ key }) => key !== 'guess').map((step) => (step.key === 'tall' ? tall : step.begins > 60 ? { ...step, begins: step.begins - 33 } : step));
    expect(endingAt(without, 614).map(({ key, begins }) => `${key} ${begins}`)).toEqual(['opening 33', 'tall 93', 'ask-back 290', 'closing 420']);
  });
});

describe('the pace', () => {
  test('is on time when a step began on time and is not over yet', () => {
    expect(standingAt(steps, { at: 1, entered: 60, now: 140 }, limits(20))).toEqual({ late: 0, ends: 614, leaveOut: [], takeIn: [], over: 0, shortClosingDoes: false });
  });

  test('is behind by what a step runs over', () => {
    expect(standingAt(steps, { at: 1, entered: 60, now: 265 }, limits(20))).toMatchObject({ late: 120, ends: 734 });
  });

  test('is behind by as much as a step began late, and stays so while the step goes on', () => {
    expect(standingAt(steps, { at: 2, entered: 235, now: 240 }, limits(20)).late).toBe(90);
    expect(standingAt(steps, { at: 2, entered: 235, now: 380 }, limits(20)).late).toBe(90);
  });

  test('is ahead when a step began early', () => {
    expect(standingAt(steps, { at: 3, entered: 200, now: 210 }, limits(20)).late).toBe(-90);
  });

  test.each([
    [44, 'on time', 0],
    [-44, 'on time', 0],
    [46, 'behind', 1],
    [89, 'behind', 1],
    [91, 'behind', 2],
    [-130, 'ahead', 2],
  ])('%i seconds are %s by %i minutes', (late, state, minutes) => {
    expect(inMinutes(late)).toEqual({ state, minutes });
  });
});

describe('what to leave out', () => {
  test('nothing, while what is to come still fits', () => {
    expect(standingAt(steps, { at: 1, entered: 60, now: 265 }, limits(13)).leaveOut).toEqual([]);
  });

  test('of the stops to come the one that is worth least, and never a must', () => {
    // With a small group the three stops take 55, 115 and 100 seconds. Of 660 seconds 90 are gone; 260 go to reading and 90 to the closing: 220 are left.
    const candidates = candidatesOf(pack, 1, { setting: 'small group', pace: 130 });
    expect(standingAt(stepsIn('small group'), { at: 0, entered: 0, now: 90 }, limits(11, { candidates }))).toMatchObject({ leaveOut: ['guess'], over: 0 });
  });

  test('nothing for less than three quarters of a minute, and then what is best together', () => {
    // 204 seconds of stops are to come. With 160 left that is close enough; with 150 left the must and `guess` go together.
    expect(standingAt(steps, { at: 0, entered: 0, now: 150 }, limits(11)).leaveOut).toEqual([]);
    expect(standingAt(steps, { at: 0, entered: 0, now: 160 }, limits(11)).leaveOut).toEqual(['ask-back']);
  });

  test('a stop that is asked already is never taken back: only what is to come may go', () => {
    expect(standingAt(steps, { at: 2, entered: 145, now: 400 }, limits(11)).leaveOut).toEqual(['ask-back']);
  });

  test('when even the musts run over, all else goes, and a short closing is said to do where it does', () => {
    const tight = standingAt(steps, { at: 0, entered: 0, now: 250 }, limits(11));
    // 250 gone, 260 to read, 90 to close and 93 for the must: 693 of 660.
    expect(tight).toMatchObject({ leaveOut: ['guess', 'ask-back'], over: 33, shortClosingDoes: true });
    expect(standingAt(steps, { at: 0, entered: 0, now: 300 }, limits(11))).toMatchObject({ over: 83, shortClosingDoes: false });
  });

  test('with time to spare, a stop further on that was left for another day may be asked after all', () => {
    const short = steps.filter(({ key }) => key !== 'ask-back');
    expect(standingAt(short, { at: 1, entered: 60, now: 70 }, limits(20)).takeIn).toEqual(['ask-back']);
    expect(standingAt(short, { at: 1, entered: 60, now: 70 }, limits(9)).takeIn).toEqual([]);
  });

  test('a stop whose page is past is offered no more', () => {
    const short = steps.filter(({ key }) => key !== 'guess');
    expect(standingAt(short, { at: 2, entered: 200, now: 210 }, limits(20)).takeIn).toEqual([]);
  });
});

describe('the start that is measured from', () => {
  const nine = 9 * 3600;
  test.each([
    ['no time set: from now', undefined, nine, nine],
    ['a little late: from the time set, so that it ends in time', nine, nine + 120, nine],
    ['before its time: from now', nine, nine - 600, nine - 600],
    ['long after its time: from now', nine, nine + 3600, nine + 3600],
  ])('%s', (_, set, now, from) => {
    expect(measuredFrom(set, now, 900)).toBe(from);
  });
});
