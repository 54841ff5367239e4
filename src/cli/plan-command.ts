import { readWholeLibrary } from '../build/read-library.ts';
import type { Finding } from '../core/finding.ts';
import { stopsOf, type Stop } from '../core/pack/pack.ts';
import type { LessonSeconds, PlannedPack } from '../core/plan/plan.ts';
import { secondsOfLesson } from '../core/plan/seconds.ts';
import { readArguments, wholeNumber } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { asText, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow plan`: a lesson in minutes, on the clock. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'minutes', 'start', 'reading'], ['json']);
  const [name, second] = rest;
  if (name === undefined || second !== undefined) throw new WrongUse('Name one pack: bookfellow plan seven-buttons --start 9:05');
  const start = startOf(values.start ?? '9:00');
  const found = await findPack(await folderThatExists(values.content ?? 'content'), name);
  if (!found.pack) {
    console.error(asText(found.findings, 'en', wantsColour(process.stderr)));
    console.error('\nThis pack cannot be read yet, so there is no plan.');
    return 1;
  }
  const { pack } = found;
  const minutes = wholeNumber(values.minutes, 'minutes', 1, 240) ?? pack.for.minutes;
  const reading = wholeNumber(values.reading, 'reading', 1, 5) ?? pack.readings[0]?.reading ?? 1;
  if (!pack.readings.some((each) => each.reading === reading)) throw new WrongUse(`This pack has no reading ${String(reading)}. It has: ${pack.readings.map((each) => each.reading).join(', ')}.`);
  const stops = stopsOf(pack, reading);
  const lesson = secondsOfLesson(pack.book, stops, { setting: 'class', pace: pack.plan.pace });
  const rows = onTheClock(pack, stops, lesson, start);
  if (flags.has('json')) console.log(JSON.stringify({ pack: pack.slug, language: pack.language, reading, minutes, seconds: lesson, rows }, null, 2));
  else console.log(inWords(pack, reading, minutes, lesson, rows));
  return 0;
}

interface Row {
  /** Clock time, `9:05`. */
  readonly at: string;
  readonly what: string;
  readonly seconds: number;
}

/** The lesson row by row. The text between two stops takes its share of the reading by openings. */
function onTheClock(pack: PlannedPack, stops: readonly Stop[], lesson: LessonSeconds, start: number): readonly Row[] {
  const perOpening = (lesson.reading + lesson.pageTurns) / pack.book.openings;
  const rows: Row[] = [{ at: clock(start), what: 'Opening: settle, look at the cover, say what we read for', seconds: lesson.opening }];
  let now = start + lesson.opening;
  let read = 0;
  const readTo = (opening: number) => {
    const seconds = Math.max(0, opening - read) * perOpening;
    if (seconds > 0) rows.push({ at: clock(now), what: `Read openings ${String(read + 1)} to ${String(opening)}`, seconds });
    now += seconds;
    read = Math.max(read, opening);
  };
  const inOrder = [...stops].sort((a, b) => a.at.opening - b.at.opening);
  for (const stop of inOrder) {
    readTo(stop.at.opening);
    const seconds = lesson.stops.find((each) => each.id === stop.id)?.total ?? 0;
    rows.push({ at: clock(now), what: `Stop after "${stop.at.cue}" (${stop.answer}): ${stop.ask}`, seconds });
    now += seconds;
  }
  readTo(pack.book.openings);
  rows.push({ at: clock(now), what: 'Closing: one thing we will remember', seconds: lesson.closing }, { at: clock(now + lesson.closing), what: 'End', seconds: 0 });
  return rows;
}

function inWords(pack: PlannedPack, reading: number, minutes: number, lesson: LessonSeconds, rows: readonly Row[]): string {
  const over = lesson.total / 60 - minutes;
  const talk = lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return [
    `${pack.title}, reading ${String(reading)}: ${String(Math.ceil(lesson.total / 60))} minutes, of which ${String(Math.round(lesson.reading / 60))} are reading and ${String(Math.round(talk / 60))} are stops.`,
    ...rows.map((row) => `  ${row.at.padStart(5)}  ${row.what}`),
    over > 0.5
      ? `That is about ${String(Math.ceil(over))} minutes more than the ${String(minutes)} there are. Keep the stops marked "must" and drop the dearest of the others first.`
      : `That fits into ${String(minutes)} minutes.`,
  ].join('\n');
}

async function findPack(content: string, name: string): Promise<{ pack: PlannedPack | undefined; findings: readonly Finding[] }> {
  const { told } = await readWholeLibrary(content);
  const wanted = name.replaceAll('\\', '/').replace(/\/+$/, '');
  const one = told.find((each) => wanted === each.source.slug || wanted.endsWith(each.source.file) || wanted.endsWith(`packs/${each.source.slug}`));
  if (!one) throw new WrongUse(`There is no pack "${name}". The packs are: ${[...new Set(told.map((each) => each.source.slug))].join(', ')}.`);
  return { pack: one.pack, findings: one.findings };
}

/** Seconds since midnight of `9:05`. */
function startOf(text: string): number {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(text);
  if (!match || Number(match[1]) > 23) throw new WrongUse(`--start takes a time such as 9:05; "${text}" is none.`);
  return Number(match[1]) * 3600 + Number(match[2]) * 60;
}

function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${String(Math.floor(minutes / 60) % 24)}:${String(minutes % 60).padStart(2, '0')}`;
}
