/** The lesson for the minutes there are, from a pack. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shortLesson } from '../../../src/core/plan/short-lesson.ts';
import { samplePack } from './sample-pack.ts';

// Without stops the lesson takes 410 seconds: reading 240, turns 20, opening 60, closing 90.
const options = { setting: 'class', pace: 130 } as const;
const idsOf = (reading: number, minutes: number) => {
  const short = shortLesson(samplePack(), reading, minutes, options);
  return short.fits ? short.stops.map(({ id }) => id) : short;
};

describe('a short lesson', () => {
  test('with all the minutes asks all the stops of the reading', () => {
    expect(idsOf(1, 11)).toEqual(['guess', 'tall', 'ask-back']);
  });

  test('with a minute less drops the stop that counts least', () => {
    expect(idsOf(1, 10)).toEqual(['tall', 'ask-back']);
  });

  test('with all the minutes asks a stop that its author values at 0, too', () => {
    const pack = samplePack();
    const short = shortLesson({ ...pack, stops: pack.stops.map((stop) => ({ ...stop, value: 0 })) }, 1, 11, options);
    expect(short.fits && short.stops.map(({ id }) => id)).toEqual(['guess', 'tall', 'ask-back']);
  });

  test('keeps the must when there is hardly time, and a way to answer without writing', () => {
    expect(idsOf(1, 9)).toEqual(['guess', 'tall']);
  });

  test('counts the question that the reading must ask as a must, with the stop it comes after', () => {
    expect(shortLesson(samplePack(), 2, 9, options)).toMatchObject({ fits: false, choice: { why: 'musts too long', shortBy: 93 + 78 - 130 } });
  });

  test('a stop asked on an earlier day has been asked: what comes after it may be asked without it', () => {
    expect(idsOf(3, 12)).toEqual(['climb', 'mine']);
  });

  test('says what would help when the musts do not fit', () => {
    // 7 minutes leave 10 seconds for a stop of 93; the shortest opening and closing give 100 more.
    // Two days after opening 4: 150 + 104 + 93 seconds, then 150 + 156.
    expect(shortLesson(samplePack(), 1, 7, options)).toEqual({
      fits: false,
      choice: { fits: false, why: 'musts too long', shortBy: 83 },
      remedies: [{ kind: 'shorter opening and closing' }, { kind: 'read a part', to: 6 }, { kind: 'two days', firstDayTo: 4 }],
    });
  });

  test('says so when nothing would help', () => {
    expect(shortLesson(samplePack(), 1, 2, options)).toMatchObject({ fits: false, choice: { why: 'no time' }, remedies: [] });
  });

  test('never takes longer than its minutes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 60, max: 200 }),
        fc.constantFrom('class', 'recording', 'one child'),
        (minutes, reading, pace, setting) => {
          const short = shortLesson(samplePack(), reading, minutes, { setting, pace });
          if (short.fits) expect(short.lesson.total).toBeLessThanOrEqual(minutes * 60 + 1e-6);
          else expect(short.choice.why).not.toBe('must out of reach');
        },
      ),
      { numRuns: 100 },
    );
  });
});
