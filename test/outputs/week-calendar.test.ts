/**
 * The week as a calendar file, read by a general calendar library, and its lines by the rules of RFC 5545.
 */
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../src/core/check/check-pack.ts';
import { lessonInEnglish } from '../../src/core/languages/en-lesson.ts';
import { lessonInSpanish } from '../../src/core/languages/es-lesson.ts';
import { measurePack } from '../../src/core/measure/measure-pack.ts';
import { planLesson } from '../../src/core/plan/plan-lesson.ts';
import { lessonDataOf, type LessonData } from '../../src/outputs/lesson-data.ts';
import { schoolDays, weekCalendar, type WeekPlan } from '../../src/outputs/week-calendar.ts';
import { samplePack } from '../core/plan/sample-pack.ts';

const data: LessonData = lessonDataOf(planLesson(measurePack(checkPack(samplePack()).value).value, {}).value);
const plan: WeekPlan = { firstDay: '2026-11-30', start: 9 * 3600 + 300, minutes: 20, address: 'https://shelf.example/packs/the-borrowed-ladder/lesson/' };
const read = (text: string) => new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

describe('the calendar file', () => {
  test('is read by another program as three lessons on Monday, Wednesday and Friday', () => {
    const events = read(weekCalendar(data, plan, lessonInEnglish));
    expect(events.map((event) => [event.summary, event.startDate.toString(), event.duration.toString()])).toEqual([
      ['The Borrowed Ladder, reading 1', '2026-11-30T09:05:00', 'PT20M'],
      ['The Borrowed Ladder, reading 2', '2026-12-02T09:05:00', 'PT20M'],
      ['The Borrowed Ladder, reading 3', '2026-12-04T09:05:00', 'PT20M'],
    ]);
    expect(events.map((event) => event.startDate.zone.tzid)).toEqual(['floating', 'floating', 'floating']);
    expect(events[1]?.description).toBe('Look at the neighbors.\nBe sure to ask: “Why does nobody ask?”\nAsk stops 2, 3, and 4.');
    expect(events[1]?.component.getFirstPropertyValue('url')).toBe('https://shelf.example/packs/the-borrowed-ladder/lesson/?reading=2');
  });

  test('without a time of day has whole days', () => {
    const [first] = read(weekCalendar(data, { ...plan, start: undefined }, lessonInEnglish));
    expect([first?.startDate.isDate, first?.startDate.toString()]).toEqual([true, '2026-11-30']);
  });

  test('keeps signs that mean something in calendars, in the words of any language', () => {
    const strange = { ...data, title: 'Salt; pepper, and \\ — «¿Qué?» 🌧 '.repeat(6).trim() };
    const [first] = read(weekCalendar(strange, plan, lessonInSpanish));
    expect(first?.summary).toBe(`${strange.title}, lectura 1`);
  });

  test('ends its lines with CR LF and folds them at 75 octets, never within a character', () => {
    const text = weekCalendar({ ...data, title: 'ñandú 🌧 '.repeat(30) }, plan, lessonInSpanish);
    const lines = text.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of lines) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain('\ufffd');
    }
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
  });

  test('is the same, byte for byte, when it is made again, and each event keeps its name', () => {
    const once = weekCalendar(data, plan, lessonInEnglish);
    expect(weekCalendar(data, plan, lessonInEnglish)).toBe(once);
    const uids = read(once).map((event) => event.uid);
    expect(new Set(uids).size).toBe(3);
    expect(read(weekCalendar(data, { ...plan, start: 10 * 3600 }, lessonInEnglish)).map((event) => event.uid)).toEqual(uids);
  });

  test("carries the day of the pack's last review as its stamp", () => {
    expect(weekCalendar({ ...data, reviewed: '2026-09-14' }, plan, lessonInEnglish)).toContain('\r\nDTSTAMP:20260914T000000Z\r\n');
  });
});

describe('school days', () => {
  test.each([
    ['three readings from a Monday', '2026-11-30', 3, '2026-11-30 2026-12-02 2026-12-04'],
    ['three from a Wednesday pass over the weekend', '2026-12-02', 3, '2026-12-02 2026-12-04 2026-12-08'],
    ['two have a day between them', '2026-11-30', 2, '2026-11-30 2026-12-02'],
    ['five fill the week', '2026-11-30', 5, '2026-11-30 2026-12-01 2026-12-02 2026-12-03 2026-12-04'],
    ['a first day on a Saturday is the teacher’s own choice', '2026-12-05', 2, '2026-12-05 2026-12-08'],
    ['no date has no days', 'soon', 3, ''],
  ])('%s', (_, first, readings, days) => {
    expect(schoolDays(first, readings).join(' ')).toBe(days);
  });
});
