import type { PackFields, Stop } from '../../core/pack/pack.ts';
import { usualValue } from '../../core/plan/choose-stops.ts';
import { secondsOfLesson, type LessonOptions } from '../../core/plan/seconds.ts';
import { mustAskOf } from '../../core/plan/week.ts';
import type { Phrases } from '../../core/languages/en.ts';
import { packUrls } from '../addresses.ts';
import { adviceFor, otherMinutes, type Advice } from './if-time-is-short.ts';
import { capital, linesOf, sheetBase, timingOf, type Line, type Sheet, type SheetData, type SheetInput } from './sheet.ts';
import { firstSentences, shortTo } from './shorten.ts';

/**
 * One side of paper for somebody who has never seen the book (the fields: what lists for substitute teachers agree on; common practice).
 * It holds nothing private: what belongs to one room only is a blank line, or comes from a local file (`local-sheet.ts`).
 */
export interface SubstituteData extends SheetData {
  readonly kind: string;
  readonly book: string;
  readonly by: string;
  readonly lead: string;
  readonly labels: {
    readonly went: string;
    readonly wentHint: string;
  };
  /** The same sheet ever shorter; the template takes the first that fits on one side. */
  readonly versions: readonly SubstituteVersion[];
  /** Private details of one room, on a second page. Empty on what is published. */
  readonly local: { readonly title: string; readonly note: string; readonly lines: readonly Line[] } | undefined;
}

export interface SubstituteVersion {
  /** Points of the running text. */
  readonly size: number;
  /** What only this room knows; an empty text is a line to fill in. */
  readonly blanks: readonly Line[];
  readonly facts: readonly Line[];
  readonly stops: readonly SubstituteStop[];
  /** If there are more minutes, or fewer. */
  readonly times: readonly Line[];
  readonly notes: readonly Line[];
  /** Tells that something was left out for want of room. */
  readonly leftOut: string;
}

export interface SubstituteStop {
  /** Said of the one question that must not be left out; empty for the others. */
  readonly must: string;
  readonly number: string;
  readonly opening: string;
  readonly cue: string;
  readonly ask: string;
  readonly lines: readonly Line[];
}

/** Most stops on the sheet; lists for substitutes ask for three to six. Common practice, no source. */
const mostStops = 6;
const fewestStops = 3;
/** Points of the text: what it should be, and the least that is read at arm's length. Common practice, no source. */
const usualSize = 11;
const leastSize = 10.5;

/** How much of the words beside the questions is told, in sentences. The questions themselves are never cut. */
interface Telling {
  /** Model answers, where there is something else to listen for. */
  readonly examples: boolean;
  /** What good answers are like; what to say into a silence; each note of care. */
  readonly good: number;
  readonly silence: number;
  readonly care: number;
  /** Most notes of care, and most characters of any one text. */
  readonly notes: number;
  readonly characters: number;
}

const whole: Telling = { examples: true, good: Infinity, silence: Infinity, care: Infinity, notes: Infinity, characters: Infinity };
const noExamples: Telling = { ...whole, examples: false };
const shortNotes: Telling = { ...noExamples, care: 1 };
const twoSentences: Telling = { ...shortNotes, good: 2 };
/** Words to say into a silence are cut last: they are said as they stand. */
const fewSentences: readonly Telling[] = [
  { ...shortNotes, good: 1 },
  { ...shortNotes, good: 1, silence: 2 },
];
const fewWords: Telling = { ...shortNotes, good: 1, silence: 1, notes: 1, characters: 110 };

export function substituteSheet(input: SheetInput): Sheet<SubstituteData> {
  const { shown, say, library } = input;
  const { pack } = shown;
  const { paper } = say;
  return {
    kind: 'substitute',
    url: `${packUrls(pack.slug, pack.language, library.language).family}substitute.pdf`,
    data: {
      ...sheetBase(input, 'substitute'),
      kind: paper.kinds.substitute,
      book: pack.book.title,
      by: say.book.by(pack.book.author, pack.book.illustrator),
      lead: paper.substitute.lead,
      labels: { went: paper.substitute.went, wentHint: paper.substitute.wentHint },
      versions: versionsOf(input),
      local: undefined,
    },
  };
}

/** From the whole sheet down to its bones: smaller letters, then no examples, then shorter notes, then fewer stops, then first sentences, then fewer still. */
function versionsOf({ shown, say }: SheetInput): readonly SubstituteVersion[] {
  const { pack } = shown;
  const { reading, pace, durations, stops: all } = pack.plan;
  const options: LessonOptions = { setting: 'class', pace, durations };
  const most = keep(pack, reading, all, mostStops);
  const steps: (readonly [size: number, stops: readonly Stop[], telling: Telling])[] = [
    [usualSize, most, whole],
    [leastSize, most, whole],
    [leastSize, most, noExamples],
    [leastSize, most, shortNotes],
    [leastSize, most, twoSentences],
  ];
  for (let number = most.length - 1; number >= fewestStops; number--) steps.push([leastSize, keep(pack, reading, all, number), twoSentences]);
  const few = keep(pack, reading, all, fewestStops);
  for (const telling of fewSentences) steps.push([leastSize, few, telling]);
  for (let number = few.length; number > 0; number--) steps.push([leastSize, keep(pack, reading, all, number), fewWords]);
  if (few.length === 0) steps.push([leastSize, few, fewWords]);
  return steps.map(([size, stops, telling]) => versionOf({ pack, reading, all, stops, telling, size, options, say }));
}

/** The stops to keep, in the order of the book: first the one that must be asked, then musts, then what is worth most. */
function keep(pack: PackFields, reading: number, stops: readonly Stop[], number: number): readonly Stop[] {
  const must = mustAskOf(pack, reading);
  const rank = (stop: Stop) => (stop === must ? 1000 : 0) + (stop.must === true ? 100 : 0) + (stop.value ?? usualValue);
  const kept = new Set([...stops].sort((a, b) => rank(b) - rank(a)).slice(0, number));
  return stops.filter((stop) => kept.has(stop)).sort((a, b) => a.at.opening - b.at.opening);
}

interface VersionInput {
  readonly pack: SheetInput['shown']['pack'];
  readonly reading: number;
  readonly all: readonly Stop[];
  readonly stops: readonly Stop[];
  readonly telling: Telling;
  readonly size: number;
  readonly options: LessonOptions;
  readonly say: Phrases;
}

function versionOf(input: VersionInput): SubstituteVersion {
  const { pack, reading, all, stops, telling, size, options, say } = input;
  const words = say.paper.substitute;
  const numberOf = (stop: Stop) => pack.stops.indexOf(stop) + 1;
  const cut = (text: string, sentences = Infinity) => cutTo(text, sentences, telling, pack.language);
  const must = mustAskOf({ ...pack, stops }, reading);
  const lesson = secondsOfLesson(pack.book, stops, options);
  const purpose = pack.readings.find((each) => each.reading === reading)?.purpose;
  const minutes = (seconds: number) => Math.max(1, Math.round(seconds / 60));
  const missing = all.filter((stop) => !stops.includes(stop)).map(numberOf);
  const shortened = telling.care < Infinity;
  return {
    size,
    blanks: [words.place, words.seating, words.quiet].map((label) => ({ label, text: '' })),
    facts: linesOf([
      [words.reading, words.readingTime(minutes(lesson.reading + lesson.pageTurns), minutes(lesson.total))],
      [words.purpose, purpose === undefined ? undefined : cut(purpose, 1)],
    ]),
    stops: stops.map((stop) => ({ ...stopOf(stop, numberOf(stop), input, cut), must: stop === must ? words.must : '' })),
    times: timesOf(input, numberOf),
    notes: notesOf(input, numberOf, cut),
    leftOut: [missing.length > 0 ? words.leftOut(missing) : '', shortened ? words.shortened : ''].filter((part) => part !== '').join(' '),
  };
}

type Cut = (text: string, sentences?: number) => string;

function cutTo(text: string, sentences: number, { characters }: Telling, language: string): string {
  return shortTo(sentences === Infinity ? text : firstSentences(text, sentences, language), characters);
}

function stopOf(stop: Stop, number: number, { pack, say, telling }: VersionInput, cut: Cut): Omit<SubstituteStop, 'must'> {
  const { substitute: words, readToCue, hide, opening } = say.paper;
  const models = (stop.models ?? []).slice(0, 2).map((model) => say.quoted(model.text));
  const heard = stop.listenFor === undefined ? [] : [cut(stop.listenFor, telling.good)];
  const good = telling.examples || heard.length === 0 ? [...heard, ...models.map((model) => cut(model))] : heard;
  const ways = [say.ways[stop.answer], ...(stop.or === undefined || stop.or === stop.answer ? [] : [say.lesson.orWay(say.ways[stop.or])])].join(say.comma);
  return {
    number: String(number),
    opening: opening(stop.at.opening),
    cue: [readToCue(stop.at.cue), stop.at.picture === 'hidden' ? hide : ''].filter((part) => part !== '').join(' '),
    ask: stop.ask,
    lines: linesOf([
      [words.how, `${capital(ways, pack.language)}: ${timingOf(stop, pack.plan.durations, say)}`],
      [words.good, good.join(' ')],
      [words.silence, stop.ifQuiet === undefined ? undefined : cut(stop.ifQuiet, telling.silence)],
      [words.have, stop.materials === undefined ? undefined : cut(say.listed(stop.materials))],
    ]),
  };
}

function timesOf({ pack, reading, stops, options, say, telling }: VersionInput, numberOf: (stop: Stop) => number): readonly Line[] {
  const words = say.paper.substitute;
  const whole = secondsOfLesson(pack.book, stops, options).total;
  const numbers = (ids: readonly string[]) => pack.stops.filter((stop) => ids.includes(stop.id)).map(numberOf);
  return otherMinutes.map((minutes) => {
    const advice = adviceFor(pack, reading, stops, minutes, options);
    const label = minutes * 60 < whole ? words.only(minutes) : words.more(minutes);
    return { label, text: inWords(advice) };
  });

  function inWords(advice: Advice): string {
    switch (advice.kind) {
      case 'all fits':
        return words.allFits;
      case 'read only':
        return words.readOnly;
      case 'no time':
        return words.noTime;
      case 'ask only':
        return words.askOnly(numbers(advice.stops));
      case 'brisk':
        return words.brisk(numbers(advice.stops));
      case 'part':
        return words.part(advice.opening, numbers([advice.stop])[0] ?? 0);
      case 'add':
        return words.add(advice.questions.slice(0, telling.care === Infinity ? 2 : 1).flatMap((index) => (pack.questions?.[index] ? [say.quoted(pack.questions[index].ask)] : [])));
    }
  }
}

function notesOf({ pack, stops, telling, say }: VersionInput, numberOf: (stop: Stop) => number, cut: Cut): readonly Line[] {
  const words = say.paper.substitute;
  const onPaper = stops.filter((stop) => stop.answer === 'write' || stop.answer === 'draw').map(numberOf);
  const taught = (pack.words ?? []).map((each) => each.word);
  const care = (pack.care ?? []).slice(0, telling.notes).map((note) => cut(note, telling.care));
  return linesOf([
    [words.words, cut([taught.length > 0 ? `${say.listed(taught)}. ${words.wordsNote}` : '', words.names].filter((part) => part !== '').join(' '))],
    [words.care, care.length > 0 ? care.join(' ') : words.noCare],
    [words.collect, onPaper.length > 0 ? `${words.booklets(onPaper)} ______` : words.nothing],
    [words.dont, pack.readings.length > 1 ? words.otherReadings : words.noMarks],
  ]);
}
