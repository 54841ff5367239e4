import { stemsOf } from './inflections-en.ts';
import { doubleMeaning, feelings, type Feeling } from './feelings-lexicon.ts';
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
  const tokens = tokensOf(text);
  const found: FoundFeeling[] = [];
  let denied = 0;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (!token) break;
    const plain = plainWord(token.word);
    if (denies.has(plain) || plain.endsWith("n't")) denied = denialReaches + 1;
    const match = longestMatch(
      tokens.slice(at, at + longestForm).map(({ word }) => word),
      language,
    );
    if (match && denied === 0 && !passedOver.has(plainWord(match.word))) found.push(match);
    if (match) at += match.word.split(' ').length - 1;
    denied = sentenceEnd.test(tokens[at]?.after ?? '') ? 0 : Math.max(0, denied - 1);
  }
  return found;
}

function longestMatch(words: readonly string[], language: string): FoundFeeling | undefined {
  for (let length = words.length; length > 0; length--) {
    const word = words.slice(0, length).join(' ');
    const feeling = feelingOf(word, language);
    if (feeling) return { word, feeling };
  }
  return undefined;
}
