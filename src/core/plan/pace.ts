import { chooseStops, usualWishes, type Candidate } from './choose-stops.ts';
import type { PlanStop } from './plannable.ts';
import type { RunSheetRow } from './run-sheet.ts';

/** One step of a lesson that is followed: the opening, a stop together with the reading that leads up to it, or the end of the book and the closing. */
export interface Step {
  /** `opening`, `closing`, or the stop's id. */
  readonly key: string;
  readonly stop: string | undefined;
  /** Planned seconds from the start of the lesson. */
  readonly begins: number;
  /** Of the seconds, those that are read aloud first. */
  readonly reading: number;
  readonly seconds: number;
}

/** The steps of a run sheet, its reading put to what comes after it. */
export function stepsOf(rows: readonly RunSheetRow<PlanStop>[]): readonly Step[] {
  const steps: Step[] = [];
  let reading = 0;
  const add = (key: string, stop: string | undefined, row: { readonly begins: number; readonly seconds: number }) => {
    steps.push({ key, stop, begins: row.begins - reading, reading, seconds: reading + row.seconds });
    reading = 0;
  };
  for (const row of rows) {
    if (row.kind === 'reading') reading += row.seconds;
    else if (row.kind === 'stop') add(row.stop.id, row.stop.id, row);
    else if (row.kind !== 'end') add(row.kind, undefined, row);
    else if (reading > 0) add('closing', undefined, row);
  }
  return steps;
}

/**
 * The steps moved so that they end when the lesson was to end. A stop left out on the way thus gives its seconds to what follows:
 * whoever was behind by as much is on time again.
 */
export function endingAt(steps: readonly Step[], end: number): readonly Step[] {
  const last = steps.at(-1);
  const by = last ? end - last.begins - last.seconds : 0;
  return steps.map((step) => ({ ...step, begins: step.begins + by }));
}

/** Where a lesson stands. Seconds count from its start. */
export interface Moment {
  /** Index of the step that is going on. */
  readonly at: number;
  /** When it began. */
  readonly entered: number;
  readonly now: number;
}

/** What the choice among the steps to come depends on. */
export interface Limits {
  /** Seconds there are for the whole lesson. */
  readonly budget: number;
  /** Openings that are read. */
  readonly openings: number;
  /** Every stop of the reading, asked in this lesson or left for another day. */
  readonly candidates: readonly Candidate[];
  /** Seconds that can be saved by a short closing. */
  readonly closingCanGive: number;
}

export interface Standing {
  /** Seconds behind the plan; below 0, ahead of it. */
  readonly late: number;
  /** When the lesson ends if it goes on as planned from here, in seconds from its start. */
  readonly ends: number;
  /** Stops to come that no longer fit: the least worth, as `chooseStops` weighs it. */
  readonly leaveOut: readonly string[];
  /** Stops further on, left out until now, for which there would be time. */
  readonly takeIn: readonly string[];
  /** Seconds by which even the musts run over, with the closing as planned. */
  readonly over: number;
  /** True where a short closing saves those seconds. */
  readonly shortClosingDoes: boolean;
}

/** Less than this, in seconds, nobody calls late or early, and for less than this no stop is left out. Common practice, no source. */
export const onTime = 45;

/**
 * Ahead, on time or behind, and what to do about it. Pure: the clock is the caller's.
 * A step that runs over is late by as much as it runs over; one that has just begun is late by as much as it began late.
 */
export function standingAt(steps: readonly Step[], moment: Moment, limits: Limits): Standing {
  const step = steps[moment.at];
  const later = steps.slice(moment.at + 1);
  const spent = moment.now - moment.entered;
  const late = step ? moment.entered - step.begins + Math.max(0, spent - step.seconds) : 0;
  const leftHere = step ? Math.max(0, step.seconds - spent) : 0;
  const leftAfter = later.reduce((sum, each) => sum + each.seconds, 0);
  const withoutStops = later.reduce((sum, each) => sum + (each.stop === undefined ? each.seconds : each.reading), 0);
  const ends = moment.now + leftHere + leftAfter;

  const coming = new Set(later.flatMap((each) => each.stop ?? []));
  const done = new Set(steps.slice(0, moment.at + 1).flatMap((each) => each.stop ?? []));
  const reached = Math.max(0, ...limits.candidates.filter((each) => done.has(each.id)).map((each) => each.opening));
  const open = limits.candidates
    .filter((each) => coming.has(each.id) || (each.opening > reached && !done.has(each.id)))
    // What has been asked has been asked: nothing waits for it.
    .map((each) => ({ ...each, after: each.after !== undefined && done.has(each.after) ? undefined : each.after }));
  const room = Math.floor(limits.budget - moment.now - leftHere - withoutStops);
  const planned = open.filter((each) => coming.has(each.id));
  const within = { room, openings: limits.openings, wishes: usualWishes };
  const nothing = { late, ends, leaveOut: [], takeIn: [], over: 0, shortClosingDoes: false };

  if (planned.reduce((sum, each) => sum + each.seconds, 0) < room + onTime) {
    const more = chooseStops(
      open.map((each) => ({ ...each, must: each.must || coming.has(each.id) })),
      within,
    );
    return { ...nothing, takeIn: more.fits ? more.ids.filter((id) => !coming.has(id)) : [] };
  }
  const choice = chooseStops(planned, within);
  if (choice.fits) return { ...nothing, leaveOut: planned.flatMap((each) => (choice.ids.includes(each.id) ? [] : [each.id])) };
  const over = choice.why === 'must out of reach' ? 0 : choice.shortBy;
  return { ...nothing, leaveOut: planned.flatMap((each) => (each.must ? [] : [each.id])), over, shortClosingDoes: over <= limits.closingCanGive };
}

/** Ahead, on time or behind, in whole minutes and at least one. */
export function inMinutes(late: number): { readonly state: 'ahead' | 'on time' | 'behind'; readonly minutes: number } {
  if (Math.abs(late) < onTime) return { state: 'on time', minutes: 0 };
  return { state: late < 0 ? 'ahead' : 'behind', minutes: Math.max(1, Math.round(Math.abs(late) / 60)) };
}

/**
 * The start that a lesson is measured from, in seconds since midnight: the time that was set for it, if the lesson is going on by then
 * (whoever begins late has fewer minutes), and otherwise now.
 */
export function measuredFrom(set: number | undefined, now: number, budget: number): number {
  return set !== undefined && now >= set && now < set + budget ? set : now;
}
