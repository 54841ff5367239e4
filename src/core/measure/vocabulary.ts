/** Where each taught word stands in the text of the book, after inflection. */
import type { WordPlace, WordPlaces } from './passage-measures.ts';
import type { PassageSentence } from './passage-text.ts';
import { keysOf } from './word-forms.ts';
import { plainWord, tokensOf } from './words.ts';

/** Where a word was found; `exact` when it stands there as it is taught and not in another form. */
export interface FoundPlace extends WordPlace {
  readonly exact: boolean;
}

export interface FoundWord extends WordPlaces {
  readonly places: readonly FoundPlace[];
}

/** What stands before a taught word and is no part of it. */
const articles = new Set(['a', 'an', 'the', 'to', 'el', 'la', 'los', 'las', 'un', 'una', 'lo']);

/**
 * The places of each taught word, in the order of the text. A word may be several (`set off`), or name two forms with a
 * comma or a slash between them (`vecina, vecino`).
 */
export function placesOfWords(taught: readonly string[], sentences: readonly PassageSentence[], language: string): readonly FoundWord[] {
  const index = indexOf(sentences, language);
  return taught.map((word) => ({ word, places: placesOf(word, sentences, index, language) }));
}

/** The forms that stand in the text, by the keys they meet under; and where each form stands. */
interface Index {
  readonly forms: ReadonlyMap<string, ReadonlySet<string>>;
  readonly places: ReadonlyMap<string, readonly (readonly [sentence: number, token: number])[]>;
}

function indexOf(sentences: readonly PassageSentence[], language: string): Index {
  const forms = new Map<string, Set<string>>();
  const places = new Map<string, [number, number][]>();
  for (const [sentence, { tokens }] of sentences.entries()) {
    for (const [at, { word }] of tokens.entries()) {
      const form = plainWord(word);
      const known = places.get(form);
      if (known) {
        known.push([sentence, at]);
        continue;
      }
      places.set(form, [[sentence, at]]);
      for (const key of keysOf(form, language)) (forms.get(key) ?? newSet(forms, key)).add(form);
    }
  }
  return { forms, places };
}

function newSet(map: Map<string, Set<string>>, key: string): Set<string> {
  const set = new Set<string>();
  map.set(key, set);
  return set;
}

function placesOf(taught: string, sentences: readonly PassageSentence[], index: Index, language: string): readonly FoundPlace[] {
  const found = new Map<string, readonly [number, number, boolean]>();
  for (const one of taught.split(/[,/;]/u)) {
    const words = tokensOf(one).map((token) => plainWord(token.word));
    while (words.length > 1 && articles.has(words[0] ?? '')) words.shift();
    const [first, ...others] = words;
    if (first === undefined) continue;
    for (const form of formsIn(index, first, language)) {
      for (const [sentence, at] of index.places.get(form) ?? []) {
        const next = sentences[sentence]?.tokens.slice(at + 1, at + 1 + others.length).map((token) => plainWord(token.word)) ?? [];
        if (!others.every((other, place) => isForm(next[place], other, language))) continue;
        const exact = form === first && others.every((other, place) => next[place] === other);
        found.set(`${String(sentence)} ${String(at)}`, [sentence, at, exact]);
      }
    }
  }
  return [...found.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]).map(([sentence, , exact]) => ({ opening: sentences[sentence]?.opening, sentence: sentence + 1, exact }));
}

function formsIn(index: Index, word: string, language: string): ReadonlySet<string> {
  const forms = new Set<string>();
  for (const key of keysOf(word, language)) for (const form of index.forms.get(key) ?? []) forms.add(form);
  return forms;
}

function isForm(found: string | undefined, word: string, language: string): boolean {
  if (found === undefined) return false;
  if (found === word) return true;
  const keys = keysOf(word, language);
  return [...keysOf(found, language)].some((key) => keys.has(key));
}
