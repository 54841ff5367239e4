import { readingsOf, stopsOf, type Model, type Stop } from '../../core/pack/pack.ts';
import type { Phrases } from '../../core/languages/en.ts';
import { runSheet, type RunSheetRow } from '../../core/plan/run-sheet.ts';
import { packUrls } from '../addresses.ts';
import { capital, linesOf, sheetBase, timingOf, type Line, type Sheet, type SheetData, type SheetInput } from './sheet.ts';

/** The run sheet on paper: the first reading minute by minute, then the rest of the week. */
export interface LessonData extends SheetData {
  readonly kind: string;
  readonly book: string;
  readonly by: string;
  readonly labels: Readonly<Record<'startsAt' | 'minute' | 'glance' | 'before' | 'run' | 'week' | 'questions' | 'words' | 'feelings' | 'rights', string>>;
  readonly facts: readonly Line[];
  readonly aims: { readonly label: string; readonly items: readonly string[] };
  readonly care: readonly string[];
  readonly purpose: string;
  readonly rows: readonly LessonRow[];
  readonly week: readonly LessonReading[];
  readonly questions: readonly { readonly ask: string; readonly note: string }[];
  /** The words to teach with what they mean; the cards tell more. */
  readonly words: readonly Line[];
  readonly feelings: string;
  readonly rights: string;
  readonly maker: string;
}

export interface LessonRow {
  /** Whole minutes from the beginning. */
  readonly minute: string;
  /** A part's name; empty where only something is read. */
  readonly name: string;
  readonly text: string;
  readonly stop: LessonStopData | undefined;
}

export interface LessonStopData {
  readonly name: string;
  readonly kind: string;
  readonly cue: string;
  readonly ask: string;
  readonly lines: readonly Line[];
  readonly frames: Line;
  readonly note: string;
}

export interface LessonReading {
  readonly name: string;
  readonly purpose: string;
  readonly stops: string;
  readonly must: string;
  readonly own: readonly LessonStopData[];
}

export function lessonSheet(input: SheetInput): Sheet<LessonData> {
  const { shown, say, library } = input;
  const { pack } = shown;
  const { reading: first, stops, lesson } = pack.plan;
  const rows = runSheet(pack.book, stops, lesson, 0);
  const materials = [pack.recording === undefined ? say.lesson.theBook : say.lesson.theBookOrRecording, ...new Set(stops.flatMap((stop) => stop.materials ?? []))];
  return {
    kind: 'lesson',
    url: `${packUrls(pack.slug, pack.language, library.language).family}lesson.pdf`,
    data: {
      ...sheetBase(input, 'lesson'),
      kind: say.paper.kinds.lesson,
      book: pack.book.title,
      by: say.book.by(pack.book.author, pack.book.illustrator),
      labels: {
        startsAt: say.paper.startsAt,
        minute: say.paper.minute,
        glance: say.lesson.glance,
        before: say.lesson.before,
        run: say.sheet.runSheet,
        week: say.sheet.week,
        questions: say.lesson.questions,
        words: say.lesson.words,
        feelings: say.lesson.feelings,
        rights: say.lesson.rights,
      },
      facts: [
        { label: say.lesson.who, text: say.grades(pack.for.grades) },
        { label: say.lesson.time, text: say.paper.minutes(Math.round(pack.plan.lesson.total / 60)) },
        { label: say.lesson.book, text: `${say.openings(pack.book.openings)}${say.comma}${say.words(pack.book.words)}` },
        { label: say.lesson.have, text: say.listed(materials) },
      ],
      aims: { label: say.lesson.aims, items: (pack.aims ?? []).map((aim) => aim.skill) },
      care: pack.care ?? [],
      purpose: pack.readings.find((each) => each.reading === first)?.purpose ?? '',
      rows: rows.map((row) => rowOf(row, input)),
      week: laterReadings(input, first),
      questions: (pack.questions ?? []).map((question) => ({ ask: say.quoted(question.ask), note: modelsInWords(question.models ?? [], say) })),
      words: (pack.words ?? []).map((word) => ({ label: word.word, text: word.meaning })),
      feelings: (pack.feelings ?? []).map((feeling) => `${feeling.word} (${say.strengths[feeling.strength - 1] ?? ''})`).join(say.comma),
      rights: rightsOf(input),
      maker: [say.book.companionBy(pack.by.name, pack.by.school), say.book.licence(pack.by.licence)].map((line) => `${line}.`).join(' '),
    },
  };
}

function rowOf(row: RunSheetRow, input: SheetInput): LessonRow {
  const { say } = input;
  const minute = String(Math.round(row.begins / 60));
  switch (row.kind) {
    case 'opening':
      return { minute, name: say.sheet.openingPart, text: say.sheet.begin, stop: undefined };
    case 'reading':
      return { minute, name: '', text: say.paper.readFromTo(row.from, row.to), stop: undefined };
    case 'stop':
      return { minute, name: '', text: '', stop: stopOf(row.stop, input, true) };
    case 'closing':
      return { minute, name: say.sheet.closingPart, text: say.sheet.close, stop: undefined };
    case 'end':
      return { minute, name: '', text: say.paper.end, stop: undefined };
  }
}

/** One stop in the order in which it happens. */
function stopOf(stop: Stop, { shown, say }: SheetInput, first: boolean): LessonStopData {
  const { pack } = shown;
  const later = first ? readingsOf(pack, stop).filter((reading) => reading !== pack.plan.reading) : [];
  const ways = [say.ways[stop.answer], ...(stop.or === undefined || stop.or === stop.answer ? [] : [say.lesson.orWay(say.ways[stop.or])])].join(say.comma);
  const notes = [
    stop.must === true ? say.lesson.must : '',
    stop.after === undefined ? '' : say.lesson.after(pack.stops.findIndex((each) => each.id === stop.after) + 1),
    later.length > 0 ? say.paper.again(later) : '',
  ];
  return {
    name: say.stop(pack.stops.indexOf(stop) + 1),
    kind: [say.kinds[stop.kind], say.paper.opening(stop.at.opening).toLocaleLowerCase(pack.language)].join(say.comma),
    cue: [say.paper.readToCue(stop.at.cue), stop.at.picture === 'hidden' ? say.paper.hide : ''].filter((part) => part !== '').join(' '),
    ask: say.quoted(stop.ask),
    frames: { label: say.lesson.frames, text: (stop.frames ?? []).join('   ') },
    lines: linesOf([
      [say.lesson.how, `${ways}. ${timingOf(stop, pack.plan.durations, say)}`],
      [say.lesson.seated, stop.seated],
      [say.lesson.materials, stop.materials && say.listed(stop.materials)],
      [say.lesson.bank, stop.words && say.listed(stop.words)],
      [say.lesson.listenFor, stop.listenFor],
      [say.lesson.models, modelsInWords(stop.models ?? [], say)],
      [say.lesson.ifQuiet, stop.ifQuiet],
      [say.lesson.expand, stop.expand],
    ]),
    note: notes.filter((note) => note !== '').join(' '),
  };
}

function modelsInWords(models: readonly Model[], say: Phrases): string {
  return models.map((model) => say.quoted(model.text)).join(' ');
}

function laterReadings(input: SheetInput, first: number): readonly LessonReading[] {
  const { shown, say } = input;
  const { pack } = shown;
  const told = new Set(pack.plan.stops);
  return pack.readings
    .filter((each) => each.reading !== first || pack.plan.left.length > 0)
    .map((reading) => {
      const stops = stopsOf(pack, reading.reading);
      const own = stops.filter((stop) => !told.has(stop));
      for (const stop of own) told.add(stop);
      const must = pack.stops.find((stop) => stop.id === reading.mustAsk);
      const numbers = stops.map((stop) => pack.stops.indexOf(stop) + 1);
      return {
        name: say.sheet.readingN(reading.reading),
        purpose: reading.purpose,
        stops: numbers.length === 0 ? '' : `${capital(say.sheet.stops(numbers), pack.language)}.`,
        must: must === undefined ? '' : `${say.sheet.mustAsk}: ${say.stop(pack.stops.indexOf(must) + 1).toLocaleLowerCase(pack.language)}.`,
        own: own.map((stop) => stopOf(stop, input, false)),
      };
    });
}

function rightsOf({ shown, say }: SheetInput): string {
  const { book } = shown.pack;
  const from = [book.publisher, book.year === undefined ? undefined : String(book.year), book.isbn === undefined ? undefined : say.book.isbn(book.isbn)].filter((part) => part !== undefined);
  return [
    `${book.title}${say.comma}${say.book.by(book.author, book.illustrator)}.`,
    from.length > 0 ? `${from.join(say.comma)}.` : '',
    say.lesson.bookRights(say.rightsOf[book.rights]),
    book.rightsNote ?? '',
    say.lesson.quote,
  ]
    .filter((part) => part !== '')
    .join(' ');
}
