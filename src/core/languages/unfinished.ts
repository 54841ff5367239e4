/** A language's phrases while some are still missing: what is there has the shape of the English one, and a wrong name is an error of the compiler. */
export type Unfinished<T> = T extends (...parts: never[]) => unknown
  ? T
  : T extends readonly unknown[]
    ? T
    : T extends Readonly<Record<string, unknown>>
      ? { readonly [K in keyof T]?: Unfinished<T[K]> }
      : T;

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The phrases there are, and the English ones in place of those that are missing. */
export function filledUp<T extends object>(english: T, phrases: NoInfer<Unfinished<T>>): T {
  const own = phrases as Readonly<Record<string, unknown>>;
  const filled = Object.entries(english).map(([name, value]: [string, unknown]) => [name, isGroup(value) ? filledUp(value, (own[name] ?? {}) as Unfinished<typeof value>) : (own[name] ?? value)]);
  return Object.fromEntries(filled) as T;
}

/** Names of the phrases that a language does not have yet: "lesson.glance". */
export function missingPhrases(english: object, phrases: object, within = ''): readonly string[] {
  const own = phrases as Readonly<Record<string, unknown>>;
  return Object.entries(english).flatMap(([name, value]: [string, unknown]) => {
    const there = own[name];
    if (isGroup(value)) return missingPhrases(value, isGroup(there) ? there : {}, `${within}${name}.`);
    return there === undefined ? [within + name] : [];
  });
}
