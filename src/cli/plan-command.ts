import { readWholeLibrary } from '../build/read-library.ts';
import type { Finding } from '../core/finding.ts';
import { secondsOfClock } from '../core/plan/clock.ts';
import { lessonOf, type Lesson } from '../core/plan/lesson.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { runSheet, type RunSheetRow } from '../core/plan/run-sheet.ts';
import { believablePace, settings, type LessonOptions, type Setting } from '../core/plan/seconds.ts';
import type { Remedy } from '../core/plan/short-lesson.ts';
import { weekOf } from '../core/plan/week.ts';
import { readArguments, wholeNumber } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { asText, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow plan`: a lesson in minutes, on the clock; or the week. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'minutes', 'start', 'reading', 'with', 'pace'], ['json', 'week']);
  const [name, second] = rest;
  if (name === undefined || second !== undefined) throw new WrongUse('Name one pack: bookfellow plan seven-buttons --start 9:05');
  const start = secondsOfClock(values.start ?? '9:00');
  if (start === undefined) throw new WrongUse(`--start takes a time such as 9:05; "${values.start ?? ''}" is none.`);
  const setting = settingOf(values.with ?? 'class');
  const pace = wholeNumber(values.pace, 'pace', believablePace.least, believablePace.most);
  const found = await findPack(await folderThatExists(values.content ?? 'content'), name);
  if (!found.pack) {
    console.error(asText(found.findings, 'en', wantsColour(process.stderr)));
    console.error('\nThis pack cannot be read yet, so there is no plan.');
    return 1;
  }
  const { pack } = found;
  const minutes = wholeNumber(values.minutes, 'minutes', 1, 240) ?? pack.for.minutes;
  const options: LessonOptions = { setting, pace: pace ?? pack.plan.pace, durations: pack.plan.durations };
  if (flags.has('week')) {
    console.log(flags.has('json') ? JSON.stringify(weekAsData(pack, minutes, options), null, 2) : weekInWords(pack, minutes, options));
    return 0;
  }
  const reading = wholeNumber(values.reading, 'reading', 1, 5) ?? pack.plan.reading;
  if (!pack.readings.some((each) => each.reading === reading)) throw new WrongUse(`This pack has no reading ${String(reading)}. It has: ${pack.readings.map((each) => each.reading).join(', ')}.`);
  const lesson = lessonOf(pack, reading, minutes, options);
  if (!lesson.fit.fits) {
    const { remedies, choice } = lesson.fit;
    console.log(flags.has('json') ? JSON.stringify({ pack: pack.slug, language: pack.language, reading, minutes, fits: false, why: choice.why, remedies }, null, 2) : noFit(pack, minutes, remedies));
    return 0;
  }
  const rows = runSheet(pack.book, lesson.stops, lesson.lesson, start);
  if (flags.has('json')) {
    const plain = rows.map((row) => (row.kind === 'stop' ? { ...row, stop: row.stop.id } : row));
    console.log(JSON.stringify({ pack: pack.slug, language: pack.language, reading, minutes, fits: true, seconds: lesson.lesson, rows: plain }, null, 2));
  } else console.log(inWords(pack, reading, minutes, lesson, rows));
  return 0;
}

/** A setting by its name, or by the last word of it: "small group", "group". */
function settingOf(word: string): Setting {
  const setting = settings.find((each) => each === word || each.endsWith(` ${word}`));
  if (!setting) throw new WrongUse(`--with takes one of: ${settings.map((each) => each.split(' ').at(-1)).join(', ')}; "${word}" is none.`);
  return setting;
}

/** The lesson that fits: all stops of the reading, or the best of them for the minutes there are. */
function inWords(pack: PlannedPack, reading: number, minutes: number, { lesson, left }: Lesson, rows: readonly RunSheetRow[]): string {
  const talk = lesson.stops.reduce((sum, stop) => sum + stop.total, 0);
  return [
    `${pack.title}, reading ${String(reading)}: ${String(Math.ceil(lesson.total / 60))} minutes, of which ${String(Math.round(lesson.reading / 60))} are reading and ${String(Math.round(talk / 60))} are stops.`,
    ...rows.map((row) => `  ${row.at.padStart(5)}  ${rowInWords(row)}`),
    left.length === 0
      ? `All of it fits into ${String(minutes)} minutes.`
      : `Left out, so that it fits into ${String(minutes)} minutes: ${left.map((stop) => `"${stop.id}" (opening ${String(stop.at.opening)})`).join(', ')}.`,
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

/** Each reading with its minutes, its stops, its one question, and what moved since the reading before. */
function weekAsData(pack: PlannedPack, minutes: number, options: LessonOptions) {
  const ids = (stops: readonly { readonly id: string }[]) => stops.map(({ id }) => id);
  return weekOf(pack).map((day) => {
    const { fit, stops, left, lesson } = lessonOf(pack, day.reading, minutes, options);
    return {
      reading: day.reading,
      purpose: day.purpose,
      fits: fit.fits,
      minutes: Math.ceil(lesson.total / 60),
      stops: ids(stops),
      left: ids(left),
      mustAsk: day.mustAsk?.id,
      again: ids(day.again),
      fresh: ids(day.fresh),
      back: ids(day.back),
      resting: ids(day.resting),
    };
  });
}

function weekInWords(pack: PlannedPack, minutes: number, options: LessonOptions): string {
  const listed = (name: string, ids: readonly string[]) => (ids.length === 0 ? [] : [`    ${name}: ${ids.join(', ')}`]);
  const days = weekAsData(pack, minutes, options).flatMap((day, index) => [
    `  Reading ${String(day.reading)}, ${String(day.minutes)} minutes${day.fits ? '' : `, which does not fit into ${String(minutes)}`}. ${day.purpose}`,
    ...listed('be sure to ask', day.mustAsk === undefined ? [] : [day.mustAsk]),
    ...(index === 0 ? listed('stops', day.stops) : [...listed('new', day.fresh), ...listed('again', day.again), ...listed('back', day.back), ...listed('resting', day.resting)]),
    ...listed('left out, so that it fits', day.left),
  ]);
  return [`${pack.title}: the week`, ...days].join('\n');
}

async function findPack(content: string, name: string): Promise<{ pack: PlannedPack | undefined; findings: readonly Finding[] }> {
  const { told } = await readWholeLibrary(content);
  const wanted = name.replaceAll('\\', '/').replace(/\/+$/, '');
  const one = told.find((each) => wanted === each.source.slug || wanted.endsWith(each.source.file) || wanted.endsWith(`packs/${each.source.slug}`));
  if (!one) throw new WrongUse(`There is no pack "${name}". The packs are: ${[...new Set(told.map((each) => each.source.slug))].join(', ')}.`);
  return { pack: one.pack, findings: one.findings };
}
