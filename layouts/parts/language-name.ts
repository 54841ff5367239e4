import { languageNameIn } from '../../src/core/languages/about-language.ts';

export { directionOf, languageNameIn as languageName, localeOf } from '../../src/core/languages/about-language.ts';

/** A language's name in itself, as it begins a line: "Español". */
export function ownName(language: string): string {
  const name = languageNameIn(language, language);
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}
