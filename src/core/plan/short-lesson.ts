import { readingsOf, stopsOf, type Stop } from '../pack/pack.ts';
import { chooseStops, usualValue, usualWishes, type Candidate, type Choice, type Wish } from './choose-stops.ts';
import type { Plannable, PlanStop } from './plannable.ts';
import { defaults, secondsOfLesson, secondsOfStop, type Durations, type LessonOptions, type LessonSeconds } from './seconds.ts';

export interface ShortLessonOptions extends LessonOptions {
  readonly wishes?: readonly Wish[];
}

/** What would make room: cut opening and closing to their shortest, read only as far as an opening, or part the book over two days, as evenly as it goes, after an opening. */
export type Remedy = { readonly kind: 'shorter opening and closing' } | { readonly kind: 'read a part'; readonly to: number } | { readonly kind: 'two days'; readonly firstDayTo: number };

export type ShortLesson<S extends PlanStop = Stop> =
  | { readonly fits: true; readonly choice: Extract<Choice, { fits: true }>; readonly stops: readonly S[]; readonly lesson: LessonSeconds }
  | { readonly fits: false; readonly choice: Extract<Choice, { fits: false }>; readonly remedies: readonly Remedy[] };

/** The lesson of one reading for the minutes there are: its best stops, or why there is none and what would help. */
export function shortLesson<S extends PlanStop>(pack: Plannable<S>, reading: number, minutes: number, options: ShortLessonOptions): ShortLesson<S> {
  const bare = secondsOfLesson(pack.book, [], options);
  const candidates = candidatesOf(pack, reading, options);
  const limits = { room: Math.floor(minutes * 60 - bare.total), openings: pack.book.openings, wishes: options.wishes ?? usualWishes };
  // Where all of them fit, all are asked: one that its author values at 0, too.
  const everything = chooseStops(
    candidates.map((each) => ({ ...each, must: true })),
    limits,
  );
  const choice = everything.fits ? everything : chooseStops(candidates, limits);
  if (!choice.fits) return { fits: false, choice, remedies: choice.why === 'must out of reach' ? [] : remediesFor(pack, candidates, minutes * 60, bare, options.durations ?? defaults) };
  const stops = stopsOf(pack, reading).filter((stop) => choice.ids.includes(stop.id));
  return { fits: true, choice, stops, lesson: secondsOfLesson(pack.book, stops, options) };
}

/** The stops of a reading as the choice sees them. A stop that an earlier reading asked has been asked: nothing waits for it. */
export function candidatesOf(pack: Plannable<PlanStop>, reading: number, options: LessonOptions): readonly Candidate[] {
  const stops = stopsOf(pack, reading);
  const mustAsk = pack.readings.find((each) => each.reading === reading)?.mustAsk;
  const askedBefore = (id: string) => !stops.some((stop) => stop.id === id) && pack.stops.some((stop) => stop.id === id && readingsOf(pack, stop).some((each) => each < reading));
  return stops.map((stop) => ({
    id: stop.id,
    opening: stop.at.opening - (pack.book.first ?? 1) + 1,
    seconds: secondsOfStop(stop, options.setting, options.durations).total,
    value: stop.value ?? usualValue,
    must: stop.must === true || stop.id === mustAsk,
    after: stop.after !== undefined && askedBefore(stop.after) ? undefined : stop.after,
    feeling: stop.kind === 'feeling',
    writes: stop.answer === 'write',
  }));
}

/** The remedies that would do on their own. */
function remediesFor(pack: Plannable<PlanStop>, candidates: readonly Candidate[], budget: number, bare: LessonSeconds, durations: Durations): readonly Remedy[] {
  const { openings } = pack.book;
  const musts = withTheirOwn(candidates);
  const perOpening = (bare.reading + bare.pageTurns) / openings;
  /** Seconds from one opening to another with the musts on the way. */
  const stretch = (from: number, to: number) => (to - from + 1) * perOpening + musts.filter((stop) => stop.opening >= from && stop.opening <= to).reduce((sum, stop) => sum + stop.seconds, 0);
  const ends = bare.opening + bare.closing;
  const shortestEnds = Math.min(bare.opening, durations.shortestOpening) + Math.min(bare.closing, durations.shortestClosing);
  /** From a place in what is read to the opening's own number. */
  const numberOf = (place: number) => place + (pack.book.first ?? 1) - 1;
  const remedies: Remedy[] = [];
  if (shortestEnds + stretch(1, openings) <= budget) remedies.push({ kind: 'shorter opening and closing' });
  const upTo = Array.from({ length: openings - 1 }, (_, index) => openings - 1 - index);
  const part = upTo.find((to) => ends + stretch(1, to) <= budget);
  if (part !== undefined) remedies.push({ kind: 'read a part', to: numberOf(part) });
  const days = upTo.map((to) => ({ to, first: ends + stretch(1, to), second: ends + stretch(to + 1, openings) })).filter(({ first, second }) => first <= budget && second <= budget);
  const evenest = days.sort((a, b) => Math.abs(a.first - a.second) - Math.abs(b.first - b.second))[0];
  if (evenest) remedies.push({ kind: 'two days', firstDayTo: numberOf(evenest.to) });
  return remedies;
}

/** The musts and every stop they come after. */
function withTheirOwn(candidates: readonly Candidate[]): readonly Candidate[] {
  const needed = new Set(candidates.filter((stop) => stop.must));
  for (const stop of needed) for (const other of candidates) if (other.id === stop.after) needed.add(other);
  return [...needed];
}
