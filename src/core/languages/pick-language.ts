import { en, type Phrases } from './en.ts';
import { es } from './es.ts';

/** The interface languages there are. A new one is a file here, a line here, and a file of findings' sentences. */
const catalogues: Readonly<Record<string, Phrases>> = { en, es };

/** The interface in a language, or in English where there is none yet. */
export function phrasesFor(language: string): Phrases {
  return catalogues[language.split('-')[0] ?? ''] ?? en;
}

/** Tags of the languages that have an interface. */
export const interfaceLanguages: readonly string[] = Object.keys(catalogues);
