/** How many syllables a word of a text has as it is read aloud, with the signs around it that are read as well. */
import { syllablesInEnglish } from './syllables-en.ts';
import { syllablesInSpanish } from './syllables-es.ts';
import type { Token } from './words.ts';

const syllablesIn: ReadonlyMap<string, (written: string) => number> = new Map([
  ['en', (written: string) => syllablesInEnglish(written)],
  ['es', syllablesInSpanish],
]);

/** Asks for the syllables of one word of a text; each written form is worked out once. Undefined for a language whose sounds are not known here. */
export function spokenIn(primaryLanguage: string): ((token: Token, isLast: boolean) => number) | undefined {
  const count = syllablesIn.get(primaryLanguage);
  if (!count) return undefined;
  const known = new Map<string, number>();
  return (token, isLast) => {
    const written = token.before === '' && token.after === '' ? token.word : asWritten(token, isLast);
    let found = known.get(written);
    if (found === undefined) known.set(written, (found = count(written)));
    return found;
  };
}

/** A word with the signs that are read aloud with it: $3, 5 %, and the stop of an abbreviation, but not of a sentence. */
function asWritten({ before, word, after }: Token, isLast: boolean): string {
  const sign = /[$£€#]$/u.exec(before)?.[0] ?? '';
  const behind = /^[%€]/u.exec(after)?.[0] ?? (after === '.' && !isLast ? '.' : '');
  return `${sign}${word}${behind}`;
}
