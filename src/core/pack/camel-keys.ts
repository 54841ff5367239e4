import type { Fields } from './pack.ts';

/** `{ 'listen for': … }` as `{ listenFor: … }`, all the way down. */
export function camelKeys<T>(value: T): Fields<T> {
  if (Array.isArray(value)) return value.map((item: unknown) => camelKeys(item)) as Fields<T>;
  if (typeof value !== 'object' || value === null) return value as Fields<T>;
  const entries = Object.entries(value).map(([key, item]) => [key.includes(' ') ? camelKey(key) : key, camelKeys(item as unknown)]);
  return Object.fromEntries(entries) as Fields<T>;
}

function camelKey(key: string): string {
  return key.replace(/ ([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
