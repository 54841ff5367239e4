import type { Value } from '../core/booklet/booklet.ts';
import { bookPointers, reasonIn } from '../core/check/models-show.ts';
import { holds, languageOf } from '../core/check/plain-words.ts';
import { feelingsOfText } from '../core/measure/feeling-words.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';

/**
 * What a program can see in an answer, said to the teacher while judging. A hint is no score and becomes none: "because" may give no
 * reason, and a reason may need no "because". It looks at no spelling and at no handwriting. Common practice, no source.
 */
export type Hint =
  /** The written words end with an end mark. */
  | { readonly kind: 'end mark' }
  | { readonly kind: 'reason'; readonly word: string }
  /** Words that say where it was seen or heard, or three words of a cue. */
  | { readonly kind: 'book' }
  | { readonly kind: 'feeling'; readonly words: readonly string[] }
  /** Words that the pack teaches or offers at the stop. */
  | { readonly kind: 'offered'; readonly words: readonly string[] };

/** The hints for one answer; none for what was only drawn, spoken or acted without words. In languages other than English and Spanish, fewer. */
export function hintsFor(values: readonly Value[], stop: StackPack['stops'][number], pack: StackPack): readonly Hint[] {
  const text = textsOf(values).join(' ');
  const language = languageOf(pack);
  const hints: Hint[] = [];
  // Where a grown-up wrote down what was said, the marks are the grown-up's.
  if (values.some((value) => value.kind === 'written' && /[.!?…]["”’»)]*$/u.test(value.text.trim()))) hints.push({ kind: 'end mark' });
  const reason = language === undefined ? undefined : reasonIn(text, language);
  if (reason !== undefined) hints.push({ kind: 'reason', word: reason });
  if (language !== undefined && text !== '' && bookPointers(pack, language)(text)) hints.push({ kind: 'book' });
  const chosen = values.flatMap((value) => (value.kind === 'feeling' ? [value.word] : []));
  const feelings = [...new Set([...chosen, ...feelingsOfText(text, pack, stop.words ?? []).map(({ word }) => word)])];
  if (feelings.length > 0) hints.push({ kind: 'feeling', words: feelings });
  const taught = [...new Set([...(stop.words ?? []), ...(pack.words ?? []).map(({ word }) => word)])];
  const offered = language === undefined ? [] : taught.filter((word) => !feelings.some((feeling) => feeling.toLowerCase() === word.toLowerCase()) && holds(text, word, language));
  if (offered.length > 0) hints.push({ kind: 'offered', words: offered });
  return hints;
}

/** The words of an answer: written, said, acted, or told about a picture. */
export function textsOf(values: readonly Value[]): readonly string[] {
  return values.flatMap((value) => {
    if (value.kind === 'written' || value.kind === 'said' || value.kind === 'acted') return [value.text];
    return (value.kind === 'drawing' || value.kind === 'photo') && value.about !== '' ? [value.about] : [];
  });
}
