/** Languages written from right to left, by their first subtag or script (Unicode CLDR layout data, from memory). */
const rightToLeft = new Set(['ar', 'ckb', 'dv', 'fa', 'he', 'ks', 'ps', 'sd', 'ug', 'ur', 'yi']);

/** `dir` of a language. */
export function directionOf(language: string): 'ltr' | 'rtl' {
  return rightToLeft.has(language.split('-')[0] ?? '') ? 'rtl' : 'ltr';
}

/** A language's name in another language, or in itself. The tag where there is no name. */
export function languageName(language: string, inLanguage: string): string {
  return new Intl.DisplayNames([inLanguage], { type: 'language' }).of(language) ?? language;
}

/** A language's name in itself, as it begins a line: "Español". */
export function ownName(language: string): string {
  const name = languageName(language, language);
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}
