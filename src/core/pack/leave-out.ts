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

/** The value without what stands at the steps: without the nearest optional field or list item around it. */
export function leaveOut(value: unknown, steps: readonly Step[], schema: Shape, origins: Origins): unknown {
  let shape: Shape | undefined = schema;
  let removable = 0;
  steps.forEach((step, index) => {
    const inner: Shape | undefined = shape ? unwrapped(shape) : undefined;
    const next: Shape | undefined = typeof step === 'number' ? inner?.item : (inner?.entries?.[step] ?? inner?.value);
    if (typeof step === 'number' || next?.type === 'optional') removable = index + 1;
    shape = next;
  });
  return removable === 0 ? undefined : removed(value, steps.slice(0, removable), origins);
}

function removed(value: unknown, steps: readonly Step[], origins: Origins): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return undefined;
  if (Array.isArray(value)) {
    const list = value.map((item: unknown, index) => (index === step ? removed(item, rest, origins) : item));
    const before = origins.get(value);
    if (before) origins.set(list, before);
    return list;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, key === step ? removed(item, rest, origins) : (item as unknown)]));
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
