import { languagesIn } from './formats.ts';

/** Languages written from right to left, by their first subtag (Unicode CLDR layout data, from memory). */
const rightToLeft = new Set(['ar', 'ckb', 'dv', 'fa', 'he', 'ks', 'ps', 'sd', 'ug', 'ur', 'yi']);

/** `dir` of a language. */
export function directionOf(language: string): 'ltr' | 'rtl' {
  return rightToLeft.has(language.split('-')[0] ?? '') ? 'rtl' : 'ltr';
}

/** A language's name in another language. The tag where there is no name. */
export function languageNameIn(language: string, inLanguage: string): string {
  return languagesIn(inLanguage).of(language) ?? language;
}

/** A language's name in itself. */
export function ownLanguageName(language: string): string {
  return languageNameIn(language, language);
}

/** The locale in which numbers and dates of a language are written: Arabic with the digits 0 to 9, as in its phrases. */
export function localeOf(language: string): string {
  return language.split('-')[0] === 'ar' ? `${language}-u-nu-latn` : language;
}
