import * as v from 'valibot';
import { finding, type Expected, type Finding, type Place } from '../finding.ts';
import type { Raw } from './front-matter.ts';
import { nearest } from './nearest.ts';
import type { Places, Step } from './pack.ts';

/**
 * Reads text as typed against a schema: turns `"20"` into 20 where a number is asked for, tells
 * unknown and missing fields, and leaves out what cannot be read, so that the rest can still be checked.
 */

/** The parts of a valibot schema that a walk over it needs. */
interface Shape {
  readonly type: string;
  readonly wrapped?: Shape;
  readonly entries?: Readonly<Record<string, Shape>>;
  readonly item?: Shape;
  readonly value?: Shape;
  readonly options?: readonly string[];
  readonly pipe?: readonly unknown[];
}

export type Where = (...steps: readonly Step[]) => Place;

export interface Fitted {
  /** The value in the schema's own kinds, or undefined where nothing could be read. */
  readonly value: unknown;
  /** True when something had to be left out. */
  readonly partial: boolean;
  /** The places under the steps of the value, which differ from the author's where list items were left out. */
  readonly places: Places;
}

/** The value that a raw text, list or group has under a schema, and what there is to tell about it. */
export function fitToSchema(raw: Raw, schema: v.GenericSchema, where: Where, places: Places, findings: Finding[]): Fitted {
  const fit: Fit = { where, findings, partial: false, origins: new WeakMap() };
  const value = fitted(raw, schema, [], fit);
  if (value === undefined) return { value, partial: true, places };
  const [sound, shaped] = withoutFaults(value, schema, fit);
  return { value: sound, partial: fit.partial, places: fit.partial ? renumbered(places, shaped, fit.origins) : places };
}

interface Fit {
  readonly where: Where;
  readonly findings: Finding[];
  partial: boolean;
  /** For a list that lost items: the index in the file of each item that is left. */
  readonly origins: WeakMap<readonly unknown[], readonly number[]>;
}

function fitted(raw: Raw, shape: Shape, steps: readonly Step[], fit: Fit): unknown {
  const inner = unwrapped(shape);
  switch (inner.type) {
    case 'object':
      return fitGroup(raw, inner.entries ?? {}, steps, fit);
    case 'record': {
      if (!isGroup(raw)) return wrongType('group', raw, steps, fit);
      const group: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
      for (const [key, value] of Object.entries(raw)) group[key] = fitted(value, inner.value ?? inner, [...steps, key], fit);
      return group;
    }
    case 'array': {
      if (!Array.isArray(raw)) return wrongType('list', raw, steps, fit);
      const items: unknown[] = [];
      for (const [index, item] of (raw as readonly Raw[]).entries()) {
        const value = fitted(item, inner.item ?? inner, [...steps, index], fit);
        // A list keeps its places: what could not be read stands as undefined and is dropped at the end.
        items.push(value);
      }
      return items;
    }
    case 'number': {
      if (typeof raw !== 'string') return wrongType('number', raw, steps, fit);
      if (!/^-?\d{1,15}(?:\.\d{1,6})?$/.test(raw.trim())) return wrongType(isWhole(inner) ? 'whole number' : 'number', raw, steps, fit);
      return Number(raw);
    }
    case 'boolean': {
      const known = new Map([
        ['true', true],
        ['yes', true],
        ['false', false],
        ['no', false],
      ]);
      const value = typeof raw === 'string' ? known.get(raw.trim().toLowerCase()) : undefined;
      return value ?? wrongType('yes or no', raw, steps, fit);
    }
    case 'picklist':
      if (typeof raw !== 'string') return wrongType('text', raw, steps, fit);
      return raw.trim();
    default:
      if (typeof raw !== 'string') return wrongType('text', raw, steps, fit);
      return raw.replace(/\s+$/u, '');
  }
}

function fitGroup(raw: Raw, entries: Readonly<Record<string, Shape>>, steps: readonly Step[], fit: Fit): unknown {
  if (!isGroup(raw)) return wrongType('group', raw, steps, fit);
  const names = Object.keys(entries);
  const group: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(raw)) {
    const entry = Object.hasOwn(entries, name) ? entries[name] : undefined;
    if (entry) {
      // `answer:` with nothing behind it is a field still to be filled in, which is the same as none.
      if (value === '' && entry.type !== 'array' && name !== 'alt') continue;
      group[name] = fitted(value, entry, [...steps, name], fit);
      continue;
    }
    const within = label(steps);
    const place = fit.where(...steps, name, '*');
    const suggestion = nearest(
      name,
      names.filter((each) => !Object.hasOwn(raw, each)),
    );
    if (suggestion === undefined) fit.findings.push(finding('pack/unknown-field', 'warn', place, { field: name, within }));
    else {
      fit.findings.push(finding('pack/misspelt-field', 'stop', place, { field: name, within, suggestion }));
      // What was meant is clear enough to check the rest with; the finding keeps the pack off the site.
      const meant = entries[suggestion];
      if (meant) group[suggestion] = fitted(value, meant, [...steps, name], fit);
      fit.partial = true;
    }
  }
  return group;
}

/**
 * Asks valibot about the value, tells its issues, leaves the faulty part out and asks again, until what is
 * left is sound or nothing is. A fault in a list's item costs that item, a fault in an optional field that field.
 */
function withoutFaults(value: unknown, schema: v.GenericSchema, fit: Fit): readonly [sound: unknown, shaped: unknown] {
  let current = dropUndefined(value, fit);
  for (let round = 0; round < 20; round++) {
    const result = v.safeParse(schema, current);
    if (result.success) return [result.output, current];
    fit.partial = true;
    const told = new Set<string>();
    const faults: (readonly Step[])[] = [];
    for (const issue of result.issues) {
      const here = (issue.path ?? []).map((part) => part.key as Step);
      const steps = inTheFile(here, current, fit.origins);
      const key = steps.join('.');
      if (told.has(key)) continue;
      told.add(key);
      faults.push(here);
      if (!fit.findings.some((each) => sameCause(each, fit.where(...steps), steps))) fit.findings.push(asFinding(issue, steps, fit));
    }
    const pruned = faults.reduce<unknown>((rest, steps) => leaveOut(rest, steps, schema, fit), current);
    if (pruned === undefined) return [undefined, undefined];
    current = dropUndefined(pruned, fit);
  }
  return [undefined, undefined];
}

/** Steps through the value as it is now, as steps through what the author wrote. */
function inTheFile(steps: readonly Step[], value: unknown, origins: Fit['origins']): readonly Step[] {
  let at = value;
  return steps.map((step) => {
    const origin = Array.isArray(at) && typeof step === 'number' ? (origins.get(at)?.[step] ?? step) : step;
    at = (at as Record<Step, unknown> | undefined)?.[step];
    return origin;
  });
}

/** The author's places under the steps of a value that lost some list items. */
function renumbered(places: Places, value: unknown, origins: Fit['origins']): Places {
  const moved: Record<string, readonly [number, number]> = Object.create(null) as Record<string, readonly [number, number]>;
  const walk = (at: unknown, from: string, to: string): void => {
    const place = places[from];
    if (place) moved[to] = place;
    if (typeof at !== 'object' || at === null) return;
    const list = Array.isArray(at) ? at : undefined;
    for (const [key, item] of Object.entries(at)) {
      const origin = list ? String(origins.get(list)?.[Number(key)] ?? key) : key;
      const [below, belowNow] = from === '' ? [origin, key] : [`${from}.${origin}`, `${to}.${key}`];
      const name = places[`${below}.*`];
      if (name) moved[`${belowNow}.*`] = name;
      walk(item, below, belowNow);
    }
  };
  walk(value, '', '');
  return moved;
}

/** A field that was of the wrong kind is then also missing; that is one mistake, and it has been told. */
function sameCause(told: Finding, place: Place, steps: readonly Step[]): boolean {
  const field = label(steps);
  return (told.code === 'pack/wrong-type' || told.code === 'pack/not-a-choice') && told.facts.field === field && told.place.file === place.file && told.place.line === place.line;
}

function asFinding(issue: v.BaseIssue<unknown>, steps: readonly Step[], fit: Fit): Finding {
  const place = fit.where(...steps);
  const field = label(steps);
  const found = typeof issue.input === 'string' ? issue.input.slice(0, 60) : typeof issue.input === 'number' ? String(issue.input) : '';
  const requirement: unknown = issue.requirement;
  const number = typeof requirement === 'number' ? requirement : undefined;
  switch (issue.type) {
    case 'min_value':
      return finding('pack/out-of-range', 'stop', place, { field, found, ...(number === undefined ? {} : { least: number }) });
    case 'max_value':
      return finding('pack/out-of-range', 'stop', place, { field, found, ...(number === undefined ? {} : { most: number }) });
    case 'max_length':
      return finding('pack/too-long', 'stop', place, { field, length: Number(issue.received), most: number ?? 0 });
    case 'non_empty':
      return finding('pack/empty-field', 'stop', place, { field });
    case 'integer':
      return finding('pack/wrong-type', 'stop', place, { field, expected: 'whole number', found });
    case 'picklist': {
      if (issue.input === undefined) return missing(steps, fit);
      const choices = choicesOf(issue);
      const suggestion = nearest(found, choices);
      return finding('pack/not-a-choice', 'stop', place, { field, found, choices, ...(suggestion === undefined ? {} : { suggestion }) });
    }
    case 'regex':
    case 'url':
    case 'starts_with':
    case 'iso_date':
      return finding('pack/bad-format', 'stop', place, { field, found, example: exampleFor(steps) });
    default:
      return issue.input === undefined ? missing(steps, fit) : finding('pack/wrong-type', 'stop', place, { field, expected: kindOf(issue.expected), found });
  }
}

function missing(steps: readonly Step[], fit: Fit): Finding {
  const last = String(steps.at(-1) ?? '');
  return finding('pack/missing-field', 'stop', fit.where(...steps), { field: last, within: label(steps.slice(0, -1)) });
}

function wrongType(expected: Expected, raw: Raw, steps: readonly Step[], fit: Fit): undefined {
  fit.partial = true;
  const found = typeof raw === 'string' ? raw.slice(0, 60) : Array.isArray(raw) ? '[list]' : '[group]';
  fit.findings.push(finding('pack/wrong-type', 'stop', fit.where(...steps), { field: label(steps), expected, found }));
  return undefined;
}

/** How a field is named to its author: `stops 3: ask`, counting from 1. */
export function label(steps: readonly Step[]): string {
  return steps.reduce<string>((said, step) => (typeof step === 'number' ? `${said} ${String(step + 1)}` : said === '' ? step : `${said}: ${step}`), '');
}

function isGroup(raw: Raw): raw is { readonly [field: string]: Raw } {
  return typeof raw === 'object' && !Array.isArray(raw);
}

function unwrapped(shape: Shape): Shape {
  return shape.type === 'optional' && shape.wrapped ? unwrapped(shape.wrapped) : shape;
}

function isWhole(shape: Shape): boolean {
  return (shape.pipe ?? []).some((action) => (action as { type?: string }).type === 'integer');
}

function choicesOf(issue: v.BaseIssue<unknown>): readonly string[] {
  return (issue.expected ?? '')
    .replace(/^\(|\)$/g, '')
    .split(' | ')
    .map((each) => each.replace(/^"|"$/g, ''));
}

function kindOf(expected: string | null): Expected {
  if (expected === 'Array') return 'list';
  if (expected === 'Object') return 'group';
  if (expected === 'number') return 'number';
  return expected === 'boolean' ? 'yes or no' : 'text';
}

const examples: Readonly<Record<string, string>> = {
  id: 'cold-hands',
  after: 'cold-hands',
  'must ask': 'cold-hands',
  stop: 'cold-hands',
  language: 'en',
  reviewed: '2026-09-01',
  checked: '2026-09-01',
  recording: '2:40',
  isbn: '978-0-00-000000-2',
  uri: 'https://standards.example/items/1',
  file: 'harbour.png',
  picture: 'harbour.png',
  captions: 'reading.vtt',
};
function exampleFor(steps: readonly Step[]): string {
  const name = steps.findLast((step) => typeof step === 'string');
  return examples[String(name)] ?? (steps.includes('in other languages') ? 'es' : '…');
}

/** The value without what stands at the steps: without the nearest optional field or list item around it. */
function leaveOut(value: unknown, steps: readonly Step[], schema: Shape, fit: Fit): unknown {
  let shape: Shape | undefined = schema;
  let removable = 0;
  steps.forEach((step, index) => {
    const inner: Shape | undefined = shape ? unwrapped(shape) : undefined;
    const next: Shape | undefined = typeof step === 'number' ? inner?.item : (inner?.entries?.[step] ?? inner?.value);
    if (typeof step === 'number' || next?.type === 'optional') removable = index + 1;
    shape = next;
  });
  return removable === 0 ? undefined : removed(value, steps.slice(0, removable), fit);
}

function removed(value: unknown, steps: readonly Step[], fit: Fit): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return undefined;
  if (Array.isArray(value)) {
    const list = value.map((item: unknown, index) => (index === step ? removed(item, rest, fit) : item));
    const origins = fit.origins.get(value);
    if (origins) fit.origins.set(list, origins);
    return list;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, key === step ? removed(item, rest, fit) : (item as unknown)]));
}

function dropUndefined(value: unknown, fit: Fit): unknown {
  if (Array.isArray(value)) {
    const before = fit.origins.get(value);
    const kept: unknown[] = [];
    const origins: number[] = [];
    value.forEach((item: unknown, index) => {
      if (item === undefined) return;
      kept.push(dropUndefined(item, fit));
      origins.push(before?.[index] ?? index);
    });
    fit.origins.set(kept, origins);
    return kept;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .map(([key, item]) => [key, dropUndefined(item, fit)]),
  );
}
