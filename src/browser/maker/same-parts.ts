/** What was read again, with the very parts of before wherever they are the same: who draws them can tell at a glance that nothing changed. */
export function sameParts<T>(before: unknown, now: T): T {
  if (before === now || typeof before !== 'object' || typeof now !== 'object' || before === null || now === null) return now;
  if (Array.isArray(before) !== Array.isArray(now)) return now;
  if (Array.isArray(now)) {
    const old = before as readonly unknown[];
    const parts = now.map((each: unknown, index) => sameParts(old[index], each));
    return (parts.length === old.length && parts.every((each, index) => each === old[index]) ? before : parts) as T;
  }
  const old = before as Readonly<Record<string, unknown>>;
  const names = Object.keys(now);
  const parts = Object.fromEntries(names.map((name) => [name, sameParts(old[name], (now as Readonly<Record<string, unknown>>)[name])]));
  const oldNames = Object.keys(old);
  return (oldNames.length === names.length && names.every((name, index) => name === oldNames[index] && parts[name] === old[name]) ? before : parts) as T;
}
