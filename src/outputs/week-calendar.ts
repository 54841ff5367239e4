import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import type { PlanStop } from '../core/plan/plannable.ts';
import { weekOf, type Day } from '../core/plan/week.ts';
import type { LessonData } from './lesson-data.ts';
import { numberOf } from './lesson-sheet.ts';

/**
 * The week with a book as an iCalendar file. Source: RFC 5545: lines end with CR LF and are folded before the 76th octet,
 * text is escaped, each event has a UID that stays the same and a time stamp. The same week gives the same bytes.
 * Times are local ("floating"): 9:05 is 9:05 wherever the school is.
 */

export interface WeekPlan {
  /** First day, `2026-11-30`. */
  readonly firstDay: string;
  /** Seconds since midnight at which each reading begins; undefined for events without a time. */
  readonly start: number | undefined;
  readonly minutes: number;
  /** Address of the lesson page, where it is known. */
  readonly address: string | undefined;
}

/** The text of the file. */
export function weekCalendar(data: LessonData, plan: WeekPlan, say: LessonPhrases): string {
  const week = weekOf(data);
  const days = schoolDays(plan.firstDay, week.length);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Bookfellow//The week with a book//EN',
    'CALSCALE:GREGORIAN',
    ...week.flatMap((day, index) => eventOf(data, day, days[index] ?? plan.firstDay, plan, say)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventOf(data: LessonData, day: Day<PlanStop>, date: string, { start, minutes, address }: WeekPlan, say: LessonPhrases): readonly string[] {
  const compact = date.replaceAll('-', '');
  const numbers = day.stops.map((stop) => numberOf(data, stop.id));
  const told = [day.purpose, day.mustAsk ? say.calendar.ask(day.mustAsk.ask) : '', numbers.length > 0 ? say.calendar.stops(numbers) : ''].filter((text) => text !== '').join('\n');
  return [
    'BEGIN:VEVENT',
    `UID:${data.slug}-${data.language}-reading-${String(day.reading)}-${compact}@bookfellow.invalid`,
    `DTSTAMP:${(data.reviewed ?? '2026-01-01').replaceAll('-', '')}T000000Z`,
    ...(start === undefined ? [`DTSTART;VALUE=DATE:${compact}`] : [`DTSTART:${compact}T${two(Math.floor(start / 3600))}${two(Math.floor(start / 60) % 60)}00`, `DURATION:PT${String(minutes)}M`]),
    `SUMMARY:${escaped(say.calendar.event(data.title, day.reading))}`,
    `DESCRIPTION:${escaped(told)}`,
    ...(address === undefined ? [] : [`URL:${address}${address.includes('?') ? '&' : '?'}reading=${String(day.reading)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

const two = (n: number) => String(n).padStart(2, '0');

/** Backslash, semicolon, comma and line end mean something in iCalendar (RFC 5545, 3.3.11). */
function escaped(text: string): string {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\r\n?|\n/g, '\\n');
}

/** At most 75 octets a line; a fold stands between characters, and the next line begins with a blank (RFC 5545, 3.1). */
function folded(line: string): string {
  let text = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > 75) {
      text += '\r\n ';
      octets = 1;
    }
    text += character;
    octets += size;
  }
  return text;
}

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/** Days between readings in one school week, Monday to Friday: with a day between them while there are no more than three. Common practice, no source. */
const steps: Readonly<Record<number, readonly number[]>> = { 1: [0], 2: [0, 2], 3: [0, 2, 4], 4: [0, 1, 3, 4] };

/** The days of so many readings from a first day on, `2026-11-30`; after the first, only Mondays to Fridays. */
export function schoolDays(firstDay: string, readings: number): readonly string[] {
  const wanted = steps[readings] ?? Array.from({ length: readings }, (_, index) => index);
  const days: string[] = [];
  const date = new Date(`${firstDay}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return [];
  for (let step = 0; days.length < wanted.length; date.setUTCDate(date.getUTCDate() + 1)) {
    const weekend = date.getUTCDay() === 0 || date.getUTCDay() === 6;
    if (weekend && step > 0) continue;
    if (wanted.includes(step)) days.push(date.toISOString().slice(0, 10));
    step++;
  }
  return days;
}
