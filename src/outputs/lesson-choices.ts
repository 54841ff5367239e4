import { clockOf, secondsOfClock } from '../core/plan/clock.ts';
import { believablePace, type Setting } from '../core/plan/seconds.ts';
import type { LessonData } from './lesson-data.ts';

/** What a teacher chooses on the lesson page. All of it may stand in the page's address, and nothing else does. */
export interface Choices {
  /** Seconds since midnight, or undefined: the sheet then counts from the beginning of the lesson. */
  readonly start: number | undefined;
  readonly minutes: number;
  readonly reading: number;
  readonly setting: Setting;
  /** Words a minute. */
  readonly pace: number;
  /** True: opening and closing are cut to their shortest. */
  readonly shortEnds: boolean;
  /** First and last opening that are read. */
  readonly from: number;
  readonly to: number;
}

/** The fewest and most minutes that can be chosen. */
export const minuteLimits = { least: 3, most: 120 } as const;

/** The choices of a page on which nobody has chosen yet: the first reading with a class, in the pack's own minutes. */
export function usualChoices(data: LessonData): Choices {
  return { start: undefined, minutes: data.minutes, reading: data.readings[0]?.reading ?? 1, setting: 'class', pace: data.pace, shortEnds: false, from: 1, to: data.book.openings };
}

/** How a setting is named in an address. */
const names: Readonly<Record<Setting, string>> = { class: 'class', 'small group': 'group', 'one child': 'child', recording: 'recording' };

/** `?start=9.05&minutes=12&reading=2&with=class`: what differs from the usual choices, or nothing. */
export function queryOf(choices: Choices, data: LessonData): string {
  const usual = usualChoices(data);
  const parts: string[] = [];
  if (choices.start !== undefined) parts.push(`start=${clockOf(choices.start).replace(':', '.')}`);
  if (choices.minutes !== usual.minutes) parts.push(`minutes=${String(choices.minutes)}`);
  if (choices.reading !== usual.reading) parts.push(`reading=${String(choices.reading)}`);
  if (choices.setting !== usual.setting) parts.push(`with=${names[choices.setting]}`);
  if (choices.pace !== usual.pace) parts.push(`pace=${String(choices.pace)}`);
  if (choices.shortEnds) parts.push('ends=short');
  if (choices.from !== usual.from || choices.to !== usual.to) parts.push(`openings=${String(choices.from)}-${String(choices.to)}`);
  return parts.length === 0 ? '' : `?${parts.join('&')}`;
}

/** The choices that an address holds. What makes no sense in it counts as not chosen. */
export function choicesFrom(query: string, data: LessonData): Choices {
  const usual = usualChoices(data);
  const given = new Map(
    query
      .replace(/^\?/, '')
      .split('&')
      .map((part): readonly [string, string] => {
        const [name = '', value = ''] = part.split('=', 2);
        return [name, value];
      }),
  );
  const number = (name: string, least: number, most: number) => wholeBetween(given.get(name), least, most);
  const reading = number('reading', 1, 5);
  const part = /^(\d{1,3})-(\d{1,3})$/.exec(given.get('openings') ?? '');
  const [from, to] = [wholeBetween(part?.[1], 1, data.book.openings), wholeBetween(part?.[2], 1, data.book.openings)];
  const setting = (Object.keys(names) as Setting[]).find((each) => names[each] === given.get('with') && (each !== 'recording' || data.recording));
  return {
    start: secondsOfClock((given.get('start') ?? '').replace('.', ':').replace(/%3A/i, ':')),
    minutes: number('minutes', minuteLimits.least, minuteLimits.most) ?? usual.minutes,
    reading: data.readings.some((each) => each.reading === reading) ? (reading ?? usual.reading) : usual.reading,
    setting: setting ?? usual.setting,
    pace: number('pace', believablePace.least, believablePace.most) ?? usual.pace,
    shortEnds: given.get('ends') === 'short',
    ...(from !== undefined && to !== undefined && from <= to ? { from, to } : { from: usual.from, to: usual.to }),
  };
}

function wholeBetween(text: string | undefined, least: number, most: number): number | undefined {
  if (text === undefined || !/^\d{1,4}$/.test(text)) return undefined;
  const number = Number(text);
  return number >= least && number <= most ? number : undefined;
}
