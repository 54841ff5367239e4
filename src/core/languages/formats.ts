/** Intl's ways of writing numbers, lists, days and names of languages, each made when it is first asked for and kept: to make one takes longer than to write a paragraph with it. */

const made = new Map<string, unknown>();

function once<Format>(key: string, make: () => Format): Format {
  const known = made.get(key) as Format | undefined;
  if (known !== undefined) return known;
  const format = make();
  made.set(key, format);
  return format;
}

/** Writes numbers. `language` is a BCP 47 tag. */
export function numbersIn(language: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  return once(`numbers ${language} ${JSON.stringify(options)}`, () => new Intl.NumberFormat(language, options));
}

/** Writes lists: "a, b, and c", or with "or". */
export function listsIn(language: string, type: 'conjunction' | 'disjunction' = 'conjunction'): Intl.ListFormat {
  return once(`lists ${language} ${type}`, () => new Intl.ListFormat(language, { type }));
}

/** Writes days and times. */
export function daysIn(language: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return once(`days ${language} ${JSON.stringify(options)}`, () => new Intl.DateTimeFormat(language, options));
}

/** Names languages. */
export function languagesIn(language: string): Intl.DisplayNames {
  return once(`languages ${language}`, () => new Intl.DisplayNames([language], { type: 'language' }));
}
