import type { PackFields } from '../pack/pack.ts';
import { stemsOf } from './inflections-en.ts';
import { doubleMeaning, feelings, usualValence, type Family, type Feeling } from './feelings-lexicon.ts';
import { plainWord, tokensOf } from './words.ts';

/** A feeling word found in a text. */
export interface FoundFeeling {
  /** As it stands in the text. */
  readonly word: string;
  readonly feeling: Feeling;
}

const byForm = { en: index('en', (word) => [word]), es: index('es', spanishForms) };
const longestForm = 3;
const passedOver: ReadonlySet<string> = new Set([...doubleMeaning].flatMap(spanishForms));

function index(language: 'en' | 'es', formsOf: (word: string) => readonly string[]): ReadonlyMap<string, Feeling> {
  return new Map(feelings.flatMap((feeling) => feeling.words[language].flatMap(formsOf).map((form) => [form, feeling] as const)));
}

/** contento, contenta, contentos, contentas; feliz, felices; triste, tristes. Of several words the first one bends: locas de alegría. */
function spanishForms(words: string): readonly string[] {
  const [first = '', ...rest] = words.split(' ');
  const bend = (): readonly string[] => {
    if (first.endsWith('o')) return ['o', 'a', 'os', 'as'].map((ending) => first.slice(0, -1) + ending);
    if (first.endsWith('z')) return [first, `${first.slice(0, -1)}ces`];
    return /[ae]$/u.test(first) ? [first, `${first}s`] : [first];
  };
  return bend().map((form) => [form, ...rest].join(' '));
}

/** The feeling that a word of a list names, or undefined. Language by its tag: `en`, `es-MX`. */
export function feelingOf(word: string, language: string): Feeling | undefined {
  const plain = plainWord(word.normalize('NFC').trim());
  if (!language.startsWith('en')) return language.startsWith('es') ? byForm.es.get(plain) : undefined;
  const stem = stemsOf(plain).find((each) => (each.ending === 'er' || each.ending === 'est') && byForm.en.has(each.stem));
  return byForm.en.get(plain) ?? (stem && byForm.en.get(stem.stem));
}

const denies: ReadonlySet<string> = new Set(['not', 'no', 'never', 'without', 'nunca', 'jamás', 'sin', 'ni', 'tampoco']);
/** So many words before a feeling word, "not" still speaks of it: "is not at all sad", "no está nada triste". */
const denialReaches = 3;
const sentenceEnd = /[.!?…;:]/u;

/** The feeling words of a text in their order. Words that are denied ("not scared") or often mean something else are left out. */
export function feelingsIn(text: string, language: string): readonly FoundFeeling[] {
  return found(text, (word) => {
    const feeling = passedOver.has(plainWord(word)) ? undefined : feelingOf(word, language);
    return feeling && { word, feeling };
  });
}

/** What `look` finds in a text, the longest words first, and nothing that the text denies. */
export function found<Found extends { readonly word: string }>(text: string, look: (word: string) => Found | undefined): readonly Found[] {
  const tokens = tokensOf(text);
  const all: Found[] = [];
  let denied = 0;
  for (let at = 0; at < tokens.length; at++) {
    const plain = plainWord(tokens[at]?.word ?? '');
    if (denies.has(plain) || plain.endsWith("n't")) denied = denialReaches + 1;
    const lengths = Array.from({ length: Math.min(longestForm, tokens.length - at) }, (_, less) => Math.min(longestForm, tokens.length - at) - less);
    const match = firstOf(lengths, (length) =>
      look(
        tokens
          .slice(at, at + length)
          .map(({ word }) => word)
          .join(' '),
      ),
    );
    if (match && denied === 0) all.push(match);
    if (match) at += match.word.split(' ').length - 1;
    denied = sentenceEnd.test(tokens[at]?.after ?? '') ? 0 : Math.max(0, denied - 1);
  }
  return all;
}

function firstOf<In, Out>(items: readonly In[], of: (item: In) => Out | undefined): Out | undefined {
  for (const item of items) {
    const out = of(item);
    if (out !== undefined) return out;
  }
  return undefined;
}

/** A feeling as a pack means it. */
export interface PackFeeling {
  readonly word: string;
  readonly family: Family;
  readonly strength: number;
  readonly valence: number;
}

/**
 * The feeling that a word has in a pack, or undefined. What its author says of it (family and strength) goes before what our
 * lexicon says; how pleasant it is comes from the lexicon where the two mean the same.
 */
export function feelingInPack(word: string, pack: Pick<PackFields, 'feelings' | 'language'>): PackFeeling | undefined {
  const known = feelingOf(word, pack.language);
  const own = pack.feelings?.find((each) => plainWord(each.word) === plainWord(word) || (known && feelingOf(each.word, pack.language) === known));
  if (!own) return known && { word, family: known.family, strength: known.strength, valence: known.valence };
  const same = known?.family === own.family && known.strength === own.strength;
  return { word, family: own.family, strength: own.strength, valence: same ? known.valence : usualValence(own.family, own.strength) };
}

/**
 * The feelings that a text of a pack speaks of. Words that often mean something else count where the author lists them as a
 * feeling or offers them in `bank`.
 */
export function feelingsOfText(text: string, pack: Pick<PackFields, 'feelings' | 'language'>, bank: readonly string[]): readonly PackFeeling[] {
  const meant = new Set([...(pack.feelings ?? []).map((each) => each.word), ...bank].map(plainWord));
  return found(text, (word) => (passedOver.has(plainWord(word)) && !meant.has(plainWord(word)) ? undefined : feelingInPack(word, pack)));
}
