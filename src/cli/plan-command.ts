import { readWholeLibrary } from '../build/read-library.ts';
import type { Finding } from '../core/finding.ts';
import { stopsOf, type Stop } from '../core/pack/pack.ts';
import { secondsOfClock } from '../core/plan/clock.ts';
import type { LessonSeconds, PlannedPack } from '../core/plan/plan.ts';
import { runSheet, type RunSheetRow } from '../core/plan/run-sheet.ts';
import { shortLesson, type Remedy } from '../core/plan/short-lesson.ts';
import { readArguments, wholeNumber } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { asText, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow plan`: a lesson in minutes, on the clock. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'minutes', 'start', 'reading'], ['json']);
  const [name, second] = rest;
  if (name === undefined || second !== undefined) throw new WrongUse('Name one pack: bookfellow plan seven-buttons --start 9:05');
  const start = secondsOfClock(values.start ?? '9:00');
  if (start === undefined) throw new WrongUse(`--start takes a time such as 9:05; "${values.start ?? ''}" is none.`);
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
  const short = shortLesson(pack, reading, minutes, { setting: 'class', pace: pack.plan.pace });
  if (!short.fits) {
    const { remedies, choice } = short;
    console.log(flags.has('json') ? JSON.stringify({ pack: pack.slug, language: pack.language, reading, minutes, fits: false, why: choice.why, remedies }, null, 2) : noFit(pack, minutes, remedies));
    return 0;
  }
  const { stops, lesson } = short;
  const rows = runSheet(pack.book, stops, lesson, start);
  if (flags.has('json')) {
    const plain = rows.map((row) => (row.kind === 'stop' ? { ...row, stop: row.stop.id } : row));
    console.log(JSON.stringify({ pack: pack.slug, language: pack.language, reading, minutes, fits: true, seconds: lesson, rows: plain }, null, 2));
  } else console.log(inWords({ pack, reading, minutes, stops, lesson, rows }));
  return 0;
}

interface Planned {
  readonly pack: PlannedPack;
  readonly reading: number;
  readonly minutes: number;
  readonly stops: readonly Stop[];
  readonly lesson: LessonSeconds;
  readonly rows: readonly RunSheetRow[];
}

/** The lesson that fits: all stops of the reading, or the best of them for the minutes there are. */
function inWords({ pack, reading, minutes, stops, lesson, rows }: Planned): string {
  const dropped = stopsOf(pack, reading).filter((stop) => !stops.includes(stop));
  const talk = lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return [
    `${pack.title}, reading ${String(reading)}: ${String(Math.ceil(lesson.total / 60))} minutes, of which ${String(Math.round(lesson.reading / 60))} are reading and ${String(Math.round(talk / 60))} are stops.`,
    ...rows.map((row) => `  ${row.at.padStart(5)}  ${rowInWords(row)}`),
    dropped.length === 0
      ? `All of it fits into ${String(minutes)} minutes.`
      : `Left out, so that it fits into ${String(minutes)} minutes: ${dropped.map((stop) => `"${stop.id}" (opening ${String(stop.at.opening)})`).join(', ')}.`,
  ].join('\n');
}

function rowInWords(row: RunSheetRow): string {
  switch (row.kind) {
    case 'opening':
      return 'Opening: settle, look at the cover, say what we read for';
    case 'reading':
      return row.from === row.to ? `Read opening ${String(row.from)}` : `Read openings ${String(row.from)} to ${String(row.to)}`;
    case 'stop':
      return `Stop after "${row.stop.at.cue}" (${row.stop.answer}): ${row.stop.ask}`;
    case 'closing':
      return 'Closing: one thing we will remember';
    case 'end':
      return 'End';
  }
}

function noFit(pack: PlannedPack, minutes: number, remedies: readonly Remedy[]): string {
  const said = remedies.map((remedy) => {
    switch (remedy.kind) {
      case 'shorter opening and closing':
        return 'cut the opening and the closing short';
      case 'read a part':
        return `read only to opening ${String(remedy.to)} (a stop that must be kept may lie behind it)`;
      case 'two days':
        return `read to opening ${String(remedy.firstDayTo)} today and the rest tomorrow`;
    }
  });
  return `"${pack.title}" does not fit into ${String(minutes)} minutes with the stops that must be kept.${said.length === 0 ? ' Give it more time.' : ` What would do: ${said.join('; or ')}.`}`;
}

async function findPack(content: string, name: string): Promise<{ pack: PlannedPack | undefined; findings: readonly Finding[] }> {
  const { told } = await readWholeLibrary(content);
  const wanted = name.replaceAll('\\', '/').replace(/\/+$/, '');
  const one = told.find((each) => wanted === each.source.slug || wanted.endsWith(each.source.file) || wanted.endsWith(`packs/${each.source.slug}`));
  if (!one) throw new WrongUse(`There is no pack "${name}". The packs are: ${[...new Set(told.map((each) => each.source.slug))].join(', ')}.`);
  return { pack: one.pack, findings: one.findings };
}
