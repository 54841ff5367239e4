/** How many syllables a word of a text has as it is read aloud, with the signs around it that are read as well. */
import { syllablesInEnglish } from './syllables-en.ts';
import { syllablesInSpanish } from './syllables-es.ts';
import type { Token } from './words.ts';

const syllablesIn: ReadonlyMap<string, (written: string) => number> = new Map([
  ['en', (written: string) => syllablesInEnglish(written)],
  ['es', syllablesInSpanish],
]);

/** Words that were worked out, by language. The same few thousand come back in every pack; at so many the memory is emptied. */
const remembered = new Map<string, Map<string, number>>();
const mostRemembered = 50_000;

/** Asks for the syllables of one word of a text. Undefined for a language whose sounds are not known here. */
export function spokenIn(primaryLanguage: string): ((token: Token, isLast: boolean) => number) | undefined {
  const count = syllablesIn.get(primaryLanguage);
  if (!count) return undefined;
  let known = remembered.get(primaryLanguage);
  if (!known) remembered.set(primaryLanguage, (known = new Map<string, number>()));
  const memory = known;
  return (token, isLast) => {
    const written = token.before === '' && token.after === '' ? token.word : asWritten(token, isLast);
    let found = memory.get(written);
    if (found === undefined) {
      if (memory.size >= mostRemembered) memory.clear();
      memory.set(written, (found = count(written)));
    }
    return found;
  };
}

/** A word with the signs that are read aloud with it: $3, 5 %, and the stop of an abbreviation, but not of a sentence. */
function asWritten({ before, word, after }: Token, isLast: boolean): string {
  const sign = /[$£€#]$/u.exec(before)?.[0] ?? '';
  const behind = /^[%€]/u.exec(after)?.[0] ?? (after === '.' && !isLast ? '.' : '');
  return `${sign}${word}${behind}`;
}
