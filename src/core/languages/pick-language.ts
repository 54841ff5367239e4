import { ar, inEnglish } from './ar.ts';
import { en, type Phrases } from './en.ts';
import { es } from './es.ts';
import { filledUp, missingPhrases } from './unfinished.ts';

/** The interface languages there are. A new one is a file here, a line here, and a file of findings' sentences. */
const catalogues: Readonly<Record<string, Phrases>> = { en, es, ar: filledUp(en, ar) };

/** How many phrases of a language are still English ones. */
const missing: Readonly<Record<string, number>> = { ar: missingPhrases(en, ar).length };

/** The interface in a language, or in English where there is none yet. */
export function phrasesFor(language: string): Phrases {
  return catalogues[language.split('-')[0] ?? ''] ?? en;
}

/** Tags of the languages that have an interface. */
export const interfaceLanguages: readonly string[] = Object.keys(catalogues);

/** Whether some phrases of a language's interface are still in English. */
export function isPartlyEnglish(language: string): boolean {
  return (missing[language.split('-')[0] ?? ''] ?? 0) > 0;
}

/** Whether a page of a language has its words in English still, and should be marked so. */
export function isInEnglish(language: string, part: keyof Phrases): boolean {
  return language.split('-')[0] === 'ar' && inEnglish.includes(part);
}
