import * as v from 'valibot';
import { finding, type Expected, type Finding } from '../finding.ts';
import type { Raw } from './front-matter.ts';
import { dropUndefined, inTheFile, leaveOut, renumbered, type Origins } from './leave-out.ts';
import { nearest } from './nearest.ts';
import type { Places, Step } from './pack.ts';
import { asFinding, causeAt, causeOf, label, type Where } from './schema-findings.ts';
import { unwrapped, type Shape } from './schema-shape.ts';

/**
 * Reads text as typed against a schema: turns `"20"` into 20 where a number is asked for, tells
 * unknown and missing fields, and leaves out what cannot be read, so that the rest can still be checked.
 */

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
  readonly origins: Origins;
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
      const value = typeof raw === 'string' ? yesOrNo.get(raw.trim().toLowerCase()) : undefined;
      return value ?? wrongType('yes or no', raw, steps, fit);
    }
    case 'picklist':
      if (typeof raw !== 'string') return wrongType('text', raw, steps, fit);
      return raw.trim();
    default:
      if (typeof raw !== 'string') return wrongType('text', raw, steps, fit);
      return raw.trimEnd();
  }
}

const yesOrNo = new Map([
  ['true', true],
  ['yes', true],
  ['false', false],
  ['no', false],
]);

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
  // Only where something could not be read is anything undefined.
  let current = fit.partial ? dropUndefined(value, fit.origins) : value;
  const causes = new Set(fit.findings.map(causeOf));
  for (let round = 0; round < 20; round++) {
    const result = v.safeParse(schema, current);
    if (result.success) return [result.output, current];
    fit.partial = true;
    const asked = new Set<string>();
    const faults: (readonly Step[])[] = [];
    for (const issue of result.issues) {
      const here = (issue.path ?? []).map((part) => part.key as Step);
      const steps = inTheFile(here, current, fit.origins);
      const key = steps.join('.');
      if (asked.has(key)) continue;
      asked.add(key);
      faults.push(here);
      // A field that was of the wrong kind is then also missing; that is one mistake, and it has been told.
      if (causes.has(causeAt(steps, fit.where(...steps)))) continue;
      const told = asFinding(issue, steps, fit.where);
      causes.add(causeOf(told));
      fit.findings.push(told);
    }
    const pruned = leaveOut(current, faults, schema, fit.origins);
    if (pruned === undefined) return [undefined, undefined];
    current = dropUndefined(pruned, fit.origins);
  }
  return [undefined, undefined];
}

function wrongType(expected: Expected, raw: Raw, steps: readonly Step[], fit: Fit): undefined {
  fit.partial = true;
  const found = typeof raw === 'string' ? raw.slice(0, 60) : Array.isArray(raw) ? '[list]' : '[group]';
  fit.findings.push(finding('pack/wrong-type', 'stop', fit.where(...steps), { field: label(steps), expected, found }));
  return undefined;
}

/** True for a group of fields. */
export function isGroup(raw: Raw): raw is { readonly [field: string]: Raw } {
  return typeof raw === 'object' && !Array.isArray(raw);
}

function isWhole(shape: Shape): boolean {
  return (shape.pipe ?? []).some((action) => (action as { type?: string }).type === 'integer');
}
