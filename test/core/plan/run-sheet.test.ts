/** The lesson on the clock, and the week. */
import { describe, expect, test } from 'vitest';
import { clockOf, secondsOfClock } from '../../../src/core/plan/clock.ts';
import { stopsOf } from '../../../src/core/pack/pack.ts';
import { runSheet, type RunSheetRow } from '../../../src/core/plan/run-sheet.ts';
import { secondsOfLesson } from '../../../src/core/plan/seconds.ts';
import { samplePack } from './sample-pack.ts';

const pack = samplePack();
const told = (row: RunSheetRow) => `${row.at} ${row.kind}${row.kind === 'stop' ? ` ${row.stop.id}` : row.kind === 'reading' ? ` ${String(row.from)}-${String(row.to)}` : ''}, ${String(row.seconds)} s`;
const sheet = (setting: 'class' | 'recording', start: string) => {
  const stops = stopsOf(pack, 1);
  return runSheet(pack.book, stops, secondsOfLesson(pack.book, stops, { setting, pace: 130 }), secondsOfClock(start) ?? 0);
};

describe('a run sheet', () => {
  test('says what to do at each minute of the clock', () => {
    // 26 seconds an opening: 240 of reading and 20 of turns over 10 openings.
    expect(sheet('class', '9:05').map(told)).toEqual([
      '9:05 opening, 60 s',
      '9:06 reading 1-2, 52 s',
      '9:07 stop guess, 33 s',
      '9:07 reading 3-4, 52 s',
      '9:08 stop tall, 93 s',
      '9:10 reading 5-6, 52 s',
      '9:11 stop ask-back, 78 s',
      '9:12 reading 7-10, 104 s',
      '9:14 closing, 90 s',
      '9:15 end, 0 s',
    ]);
  });

  test('of a recording begins with the book and ends with it', () => {
    const rows = sheet('recording', '9:00');
    expect([rows.at(0)?.kind, rows.at(-2)?.kind]).toEqual(['reading', 'reading']);
  });

  test('takes as long as the lesson', () => {
    expect(sheet('class', '9:05').at(-1)?.begins).toBeCloseTo(614, 9);
  });
});

describe('the clock', () => {
  test.each(['9:05', '0:00', '23:59'])('%s is read and written back', (time) => {
    expect(clockOf(secondsOfClock(time) ?? -1)).toBe(time);
  });

  test.each(['24:00', '9:60', '9.05', 'nine', ''])('"%s" is no time of day', (time) => {
    expect(secondsOfClock(time)).toBeUndefined();
  });

  test('goes on after midnight', () => {
    expect(clockOf(24 * 3600 + 300)).toBe('0:05');
  });
});
