import { stops as stopsPublishing, type Finding, type Level } from '../core/finding.ts';
import { sayFinding } from '../core/languages/say-finding.ts';
import { filledIn } from '../core/pack/fill-in.ts';
import { readFrontMatter, type Raw } from '../core/pack/front-matter.ts';
import type { Library } from '../core/pack/library.ts';
import { readBody } from '../core/pack/markdown.ts';
import type { Pack, PictureFile, Places, Source } from '../core/pack/pack.ts';
import { camelKeys } from '../core/pack/camel-keys.ts';
import type { FrontMatter } from '../core/pack/schema.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { secondsOfStop } from '../core/plan/seconds.ts';
import { plainLines } from './maker-fields.ts';
import { afterReading, throughStages, type Told } from './through-stages.ts';

/** What the form that makes packs is told about the text it works on. The text is all there is; everything here is read from it. */

export interface TextToLook {
  readonly text: string;
  readonly slug: string;
  /** The book's own text, for counting only. */
  readonly passage?: string | undefined;
  readonly pictureFiles: readonly PictureFile[];
}

/** A finding beside the field that it is about. */
export interface Advice {
  readonly code: string;
  readonly level: Level;
  /** Steps to the field, joined with a dot: `stops.2.ask`; `body`, or empty where it is about the file. */
  readonly path: string;
  readonly line: number;
  readonly say: string;
  /** What is told about something that is still empty can wait until somebody asks. */
  readonly empty: boolean;
}

/** The minutes of the first reading, by the reckoning of the build. */
export interface Minutes {
  readonly minutes: number;
  /** Seconds with all stops, and with those of the short lesson. */
  readonly all: number;
  readonly parts: { readonly opening: number; readonly reading: number; readonly pageTurns: number; readonly stops: number; readonly closing: number };
  readonly chosen: number;
  readonly fits: boolean;
  /** Of every stop in the file's order: its seconds, whether it belongs to the first reading, and whether it is in the short lesson. */
  readonly stops: readonly { readonly id: string; readonly seconds: number; readonly first: boolean; readonly chosen: boolean }[];
}

export interface PassageFigures {
  readonly words: number;
  readonly sentences: number;
  readonly candidates: readonly string[];
  readonly copiedPercent: number;
}

export interface Look {
  /** What `bookfellow check` tells of this text, in its order. */
  readonly advice: readonly Advice[];
  /** Told early about what is there, while something that must be there is missing. */
  readonly early: readonly Advice[];
  /** Nothing keeps it from being published. */
  readonly ready: boolean;
  readonly minutes: Minutes | undefined;
  readonly passage: PassageFigures | undefined;
}

/** Everything there is to tell about a text. The sentences are in `language`. */
export function lookAt(to: TextToLook, library: Library, language: string, today: string): Look {
  const source = sourceOf(to);
  const told = throughStages(source, library, today);
  const front = readFrontMatter(plainLines(to.text), source.file).value;
  const place = placesBack(front?.places ?? {}, front?.bodyLine ?? Infinity);
  const advice = told.findings.map((found) => asAdvice(found, place, language));
  const draft = told.pack ? undefined : draftOf(to, library, today, language);
  const early = (draft?.findings ?? []).map((found) => asAdvice(found, place, language)).filter((each) => each.path !== '' && hasValue(front?.raw, each.path));
  const pack = told.pack ?? draft?.pack;
  return { advice, early, ready: !stopsPublishing(told.findings), minutes: pack && minutesOf(pack, front?.raw), passage: pack && passageFigures(pack) };
}

/** The pack as it would be published, or with gaps where something is missing. */
export function packToShow(to: TextToLook, library: Library, language: string, today: string): { readonly pack: PlannedPack; readonly whole: boolean } | undefined {
  const { pack } = throughStages(sourceOf(to), library, today);
  if (pack) return { pack, whole: !pack.partial };
  const draft = draftOf(to, library, today, language);
  return draft && { pack: draft.pack, whole: false };
}

function sourceOf({ text, slug, passage, pictureFiles }: TextToLook): Source {
  return { slug, file: `packs/${slug}/pack.md`, text, languageOfFile: undefined, pictureFiles, passage };
}

function draftOf(to: TextToLook, library: Library, today: string, language: string): (Pick<Told, 'findings'> & { readonly pack: PlannedPack }) | undefined {
  const source = sourceOf(to);
  const front = readFrontMatter(plainLines(to.text), source.file).value;
  const fields = front && filledIn(front.raw, language);
  if (!front || !fields) return undefined;
  const pictures = (fields.pictures ?? []).map((picture) => picture.file);
  const { body } = readBody(front.body, front.bodyLine, source.file, pictures);
  const whole = camelKeys<FrontMatter>(fields);
  const pack: Pack = { ...whole, slug: to.slug, file: source.file, body, places: front.places, partial: true, pictureFiles: to.pictureFiles, recordingFiles: [] };
  return afterReading(pack, source, library, today);
}

type PathOf = (line: number, column: number) => string;

/** From a place in the file back to the steps of the field that stands there. */
function placesBack(places: Places, bodyLine: number): PathOf {
  const paths = new Map<string, string>();
  for (const [path, [line, column]] of Object.entries(places)) {
    const key = `${String(line)} ${String(column)}`;
    // A list's item stands where its first field's name stands; a finding about the item is about all of it.
    if (!paths.has(key) || paths.get(key)?.endsWith('.*') === true) paths.set(key, path);
  }
  return (line, column) => (line >= bodyLine ? 'body' : (paths.get(`${String(line)} ${String(column)}`) ?? '').replace(/\.\*$/, ''));
}

/** What is said of something that is not there: it names the field that is missing. */
function asAdvice(found: Finding, pathAt: PathOf, language: string): Advice {
  const { code, level, place } = found;
  const holder = pathAt(place.line, place.column);
  const missing = found.code === 'pack/missing-field' ? joined(stepsOfLabel(found.facts.within), found.facts.field) : undefined;
  return { code, level, path: missing ?? holder, line: place.line, say: sayFinding(found, language), empty: missing !== undefined || code === 'pack/empty-field' || code === 'pack/blank' };
}

/** `stops 3: at` as `stops.2.at`: how a finding names a field to its author, read back. */
function stepsOfLabel(label: string): string {
  return label
    .split(': ')
    .map((part) => part.replace(/ (\d+)(?= |$)/g, (_, number: string) => `.${String(Number(number) - 1)}`))
    .join('.');
}

function joined(above: string, name: string): string {
  return above === '' ? name : `${above}.${name}`;
}

function hasValue(raw: Raw | undefined, path: string): boolean {
  if (path === 'body') return true;
  const value = path.split('.').reduce<Raw | undefined>((at, step) => (typeof at === 'object' ? (at as Readonly<Record<string, Raw>>)[step] : undefined), raw);
  return value !== undefined && value !== '';
}

function minutesOf(pack: PlannedPack, raw: Raw | undefined): Minutes | undefined {
  if (!['book.words', 'book.openings', 'for.minutes'].every((path) => hasValue(raw, path))) return undefined;
  const { plan } = pack;
  const { fit, lesson } = plan;
  const seconds = new Map(pack.stops.map((stop) => [stop.id, secondsOfStop(stop, 'class', plan.durations).total]));
  const inReading = [...plan.stops, ...plan.left];
  const chosen = new Set(fit.fits ? fit.stops.map((stop) => stop.id) : []);
  const left = plan.left.reduce((sum, stop) => sum + (seconds.get(stop.id) ?? 0), 0);
  const ofStops = inReading.reduce((sum, stop) => sum + (seconds.get(stop.id) ?? 0), 0);
  return {
    minutes: pack.for.minutes,
    all: lesson.total + left,
    parts: { opening: lesson.opening, reading: lesson.reading, pageTurns: lesson.pageTurns, stops: ofStops, closing: lesson.closing },
    chosen: lesson.total,
    fits: fit.fits,
    stops: pack.stops.map((stop) => ({ id: stop.id, seconds: seconds.get(stop.id) ?? 0, first: inReading.some((each) => each.id === stop.id), chosen: chosen.has(stop.id) })),
  };
}

function passageFigures({ measures }: PlannedPack): PassageFigures | undefined {
  const { passage } = measures;
  return passage && { words: passage.words, sentences: passage.sentences, candidates: (passage.candidates ?? []).map((each) => each.word), copiedPercent: passage.copied.share * 100 };
}
