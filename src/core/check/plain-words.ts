import type { Pack } from '../pack/pack.ts';

/** The languages whose words these checks know. In others they keep silent about wording. */
export type KnownLanguage = 'en' | 'es';

/** The pack's language when its wording can be looked at. */
export function languageOf(pack: Pick<Pack, 'language'>): KnownLanguage | undefined {
  const language = pack.language.split('-')[0];
  return language === 'en' || language === 'es' ? language : undefined;
}

/** Lower case, without accents (ñ stays), with plain apostrophes: the form in which word lists are written. */
export function plain(text: string): string {
  // Most texts are plain letters, and taking marks apart is slow.
  if (/^[ -~]*$/u.test(text)) return text.toLowerCase().replaceAll('`', "'");
  const bare = text
    .normalize('NFD')
    .replace(/n\u0303/giu, 'ñ')
    .replace(/\p{M}/gu, '')
    .normalize('NFC');
  return bare.toLowerCase().replace(/[’ʼ‘`´]/gu, "'");
}

/** What a pattern for plain text finds in a text, as its author spelled it. The pattern has no `g`: it would go on where it stopped in another text. */
export function foundIn(text: string, pattern: RegExp): string | undefined {
  const match = pattern.exec(plain(text));
  if (match === null) return undefined;
  // Plain text is as long as the composed text it was made from, but for a few rare letters.
  const spelled = text.normalize('NFC').slice(match.index, match.index + match[0].length);
  return plain(spelled) === match[0] ? spelled : match[0];
}

/** The words of a text in plain form, without punctuation. */
export function wordsOf(text: string): readonly string[] {
  return plain(text).match(/[\p{L}\p{N}]+(?:['-][\p{L}\p{N}]+)*/gu) ?? [];
}

/** Where a run of words begins in a text, from 0, or -1. */
export function indexOfRun(words: readonly string[], run: readonly string[], from = 0): number {
  if (run.length === 0) return -1;
  for (let at = from; at + run.length <= words.length; at++) if (run.every((word, i) => words[at + i] === word)) return at;
  return -1;
}

/** A word or phrase in a form that all its regular inflections share: for looking up, never shown. */
export function keyOf(phrase: string, language: KnownLanguage): string {
  return stemsOf(phrase, language).join(' ');
}

/** Does the text hold this word or phrase, in any regular form? */
export function holds(text: string, phrase: string, language: KnownLanguage): boolean {
  return indexOfRun(stemsOf(text, language), stemsOf(phrase, language)) >= 0;
}

/** How often the word or phrase stands in the text, in any regular form. */
export function timesIn(text: string, phrase: string, language: KnownLanguage): number {
  const stems = stemsOf(text, language);
  const run = stemsOf(phrase, language);
  let times = 0;
  for (let at = indexOfRun(stems, run); at >= 0; at = indexOfRun(stems, run, at + run.length)) times++;
  return times;
}

function stemsOf(text: string, language: KnownLanguage): readonly string[] {
  return wordsOf(text).map((word) => stemOf(word, language));
}

/** A rough stem, good enough to see that two words are forms of one; never shown. */
function stemOf(word: string, language: KnownLanguage): string {
  if (language === 'es') return word.replace(/(?<=.{3})(?:os|as|es|o|a|e|s)$/u, '');
  return word
    .replace(/'s?$/u, '')
    .replace(/(?<=.{3})(?:ing|ed|es|er|est|ly|s|d|e)$/u, '')
    .replace(/y$/u, 'i')
    .replace(/([bdgkmnprt])\1$/u, '$1');
}

/** The sentences of a short text, each with its end mark. */
export function sentencesOf(text: string): readonly string[] {
  return text.trim().split(/(?<=[.!?…]["”’»)]?)\s+/u);
}
