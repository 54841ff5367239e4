import { unwrapped, type Shape } from './schema-shape.ts';
import type { Places, Step } from './pack.ts';

/**
 * Leaving out of a value what cannot be read, and still knowing where in the file each thing that is left stands.
 */

/** For a list that lost items: the index in the file of each item that is left. */
export type Origins = WeakMap<readonly unknown[], readonly number[]>;

/** Steps through the value as it is now, as steps through what the author wrote. */
export function inTheFile(steps: readonly Step[], value: unknown, origins: Origins): readonly Step[] {
  let at = value;
  return steps.map((step) => {
    const origin = Array.isArray(at) && typeof step === 'number' ? (origins.get(at)?.[step] ?? step) : step;
    at = (at as Record<Step, unknown> | undefined)?.[step];
    return origin;
  });
}

/** The author's places under the steps of a value that lost some list items. */
export function renumbered(places: Places, value: unknown, origins: Origins): Places {
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

/** The value without what stands at each of the steps: without the nearest optional field or list item around it. Undefined when that is all of it. */
export function leaveOut(value: unknown, faults: readonly (readonly Step[])[], schema: Shape, origins: Origins): unknown {
  const out: Out = new Map();
  for (const steps of faults) {
    const removable = removableOf(steps, schema);
    if (removable.length === 0) return undefined;
    let at = out;
    for (const [index, step] of removable.entries()) {
      const below: Out | undefined = at.get(step);
      // What is left out as a whole needs no look inside.
      if (below === all) break;
      const next = index === removable.length - 1 ? all : (below ?? new Map<Step, Out>());
      at.set(step, next);
      at = next;
    }
  }
  return without(value, out, origins);
}

/** What is left out, as a tree of steps, so that thousands of faults cost one walk. */
type Out = Map<Step, Out>;
/** The end of a way through the tree: all that stands there. */
const all: Out = new Map();

/** The steps to the nearest optional field or list item around a fault; none where there is none. */
function removableOf(steps: readonly Step[], schema: Shape): readonly Step[] {
  let shape: Shape | undefined = schema;
  let removable = 0;
  steps.forEach((step, index) => {
    const inner: Shape | undefined = shape ? unwrapped(shape) : undefined;
    const next: Shape | undefined = typeof step === 'number' ? inner?.item : (inner?.entries?.[step] ?? inner?.value);
    if (typeof step === 'number' || next?.type === 'optional') removable = index + 1;
    shape = next;
  });
  return steps.slice(0, removable);
}

function without(value: unknown, out: Out, origins: Origins): unknown {
  if (out === all) return undefined;
  const kept = (item: unknown, step: Step): unknown => {
    const below = out.get(step);
    return below ? without(item, below, origins) : item;
  };
  if (Array.isArray(value)) {
    const list = value.map(kept);
    const before = origins.get(value);
    if (before) origins.set(list, before);
    return list;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, kept(item, key)]));
}

/** The value without undefined items and fields. */
export function dropUndefined(value: unknown, origins: Origins): unknown {
  if (Array.isArray(value)) {
    const before = origins.get(value);
    const kept: unknown[] = [];
    const indices: number[] = [];
    value.forEach((item: unknown, index) => {
      if (item === undefined) return;
      kept.push(dropUndefined(item, origins));
      indices.push(before?.[index] ?? index);
    });
    origins.set(kept, indices);
    return kept;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .map(([key, item]) => [key, dropUndefined(item, origins)]),
  );
}
