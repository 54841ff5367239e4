import { wholeBook, type Kind } from '../core/booklet/booklet.ts';
import { patternOf } from '../core/check/frame-pattern.ts';
import { plain } from '../core/check/plain-words.ts';
import { feelingInPack, feelingOf, feelingsOfText, type PackFeeling } from '../core/measure/feeling-words.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { isJudged } from './judging.ts';
import { answersTo, type Answer, type Stack } from './stack.ts';
import { starsOf, type Stars } from './stars.ts';

/** What can be counted in a stack. Children are counted, never words: who says "worried" twice at a stop counts once. */

type StackStop = StackPack['stops'][number];

export interface StopCounts {
  readonly stop: StackStop;
  /** Its place in the pack, from 1. */
  readonly number: number;
  /** Children with an answer here, passing included. */
  readonly answered: number;
  readonly kinds: readonly { readonly kind: Kind; readonly children: number }[];
}

/** How many children answered each stop, and how. */
export function stopCounts(stack: Stack, pack: StackPack): readonly StopCounts[] {
  return pack.stops.map((stop, index) => {
    const answers = answersTo(stack, pack, stop.id);
    const kinds = new Map<Kind, number>();
    for (const { entries } of answers) for (const kind of new Set(entries.map(({ value }) => value.kind))) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    return { stop, number: index + 1, answered: answers.length, kinds: [...kinds].map(([kind, children]) => ({ kind, children })) };
  });
}

export interface FeelingCount {
  readonly word: string;
  /** Family, strength and place between hard and good to feel; undefined for a word that neither the pack nor the library knows. */
  readonly feeling: PackFeeling | undefined;
  /** Children whose answer names it, and of these, those who chose it from the booklet's words. */
  readonly children: number;
  readonly chose: number;
}

export interface StopFeelings {
  readonly stop: StackStop;
  readonly number: number;
  readonly answered: number;
  readonly cannotTell: number;
  readonly words: readonly FeelingCount[];
}

/**
 * Feeling words along the story, as children chose, wrote or said them; most children first. Only at stops about the story: what a child
 * feels itself is in nobody's count. A child counts once for each word at each stop.
 */
export function feelingCounts(stack: Stack, pack: StackPack): readonly StopFeelings[] {
  return pack.stops.flatMap((stop, index): readonly StopFeelings[] => {
    if (!isJudged(stop)) return [];
    const answers = answersTo(stack, pack, stop.id);
    const found = new Map<string, { word: string; feeling: PackFeeling | undefined; children: number; chose: number }>();
    for (const answer of answers) {
      const named = feelingsNamed(answer, pack, stop);
      for (const [name, { word, chose }] of named) {
        const known = found.get(name) ?? { word, feeling: feelingInPack(word, pack), children: 0, chose: 0 };
        found.set(name, { ...known, children: known.children + 1, chose: known.chose + (chose ? 1 : 0) });
      }
    }
    const cannotTell = answers.filter(({ entries }) => entries.some(({ value }) => value.kind === 'cannot-tell')).length;
    if (found.size === 0 && cannotTell === 0) return [];
    const words = [...found.values()].sort((a, b) => b.children - a.children || (a.word < b.word ? -1 : 1));
    return [{ stop, number: index + 1, answered: answers.length, cannotTell, words }];
  });
}

/** The feelings that one answer names, by a name that "cansada" and "cansado" share. */
export function feelingsNamed({ entries }: Pick<Answer, 'entries'>, pack: StackPack, stop: StackStop): ReadonlyMap<string, { readonly word: string; readonly chose: boolean }> {
  const named = new Map<string, { word: string; chose: boolean }>();
  const add = (word: string, chose: boolean) => {
    const name = nameOfFeeling(word, pack);
    named.set(name, { word: own(word, pack), chose: chose || (named.get(name)?.chose ?? false) });
  };
  for (const { value } of entries) {
    if (value.kind === 'feeling') add(value.word, true);
    else if (value.kind === 'written' || value.kind === 'said' || value.kind === 'acted') for (const { word } of feelingsOfText(value.text, pack, stop.words ?? [])) add(word, false);
    else if (value.kind === 'drawing' || value.kind === 'photo') for (const { word } of feelingsOfText(value.about, pack, stop.words ?? [])) add(word, false);
  }
  return named;
}

export function nameOfFeeling(word: string, pack: Pick<StackPack, 'language'>): string {
  return feelingOf(word, pack.language)?.name ?? plain(word);
}

/** The pack's own spelling of a feeling word, where it has one. */
function own(word: string, pack: StackPack): string {
  const name = nameOfFeeling(word, pack);
  return pack.feelings?.find((each) => plain(each.word) === plain(word))?.word ?? pack.feelings?.find((each) => nameOfFeeling(each.word, pack) === name)?.word ?? word.toLocaleLowerCase(pack.language);
}

export interface StopFrames {
  readonly stop: StackStop;
  readonly number: number;
  /** Children who wrote here or whose words were written down, and of these, those whose words fit no frame. */
  readonly wrote: number;
  readonly ownWay: number;
  readonly frames: readonly { readonly frame: string; readonly children: number }[];
}

/** Which sentence frame children's words fit, stop by stop: of several that fit, the one with the most words of its own. Each child counts once. */
export function framesUsed(stack: Stack, pack: StackPack): readonly StopFrames[] {
  return pack.stops.flatMap((stop, index): readonly StopFrames[] => {
    const frames = stop.frames ?? [];
    if (frames.length === 0) return [];
    const fullest = [...frames].sort((a, b) => wordsIn(b) - wordsIn(a)).map((frame) => ({ frame, fits: patternOf(frame) }));
    const counts = new Map(frames.map((frame) => [frame, 0]));
    let [wrote, ownWay] = [0, 0];
    for (const { entries } of answersTo(stack, pack, stop.id)) {
      const texts = entries.flatMap(({ value }) => (value.kind === 'written' || value.kind === 'said' ? [value.text] : []));
      if (texts.length === 0) continue;
      wrote += 1;
      const used = fullest.find(({ fits }) => texts.some(fits))?.frame;
      if (used === undefined) ownWay += 1;
      else counts.set(used, (counts.get(used) ?? 0) + 1);
    }
    return [{ stop, number: index + 1, wrote, ownWay, frames: [...counts].map(([frame, children]) => ({ frame, children })) }];
  });
}

const wordsIn = (frame: string): number => frame.split(/\s+/u).filter((word) => !/_{2,}/u.test(word)).length;

/** The stars that children gave the whole book, and the reasons they gave. Two ratings in one booklet are told by the later one. */
export function starsGiven(stack: Stack, pack: StackPack): { readonly stars: Stars; readonly outOf: number; readonly words: readonly string[]; readonly because: readonly string[] } {
  const answers = answersTo(stack, pack, wholeBook);
  const given = answers.flatMap(({ entries }) => entries.flatMap(({ value }) => (value.kind === 'stars' ? [value] : [])).slice(-1));
  const outOf = Math.max(pack.rating?.outOf ?? 1, ...given.map(({ of, stars }) => Math.max(of, stars)));
  const words = Array.from({ length: outOf }, (_, index) => given.find(({ stars, of }) => stars === index + 1 && of === outOf)?.words ?? '');
  const because = answers.flatMap(({ entries }) => entries.flatMap(({ value }) => (value.kind === 'because' ? [value.text] : [])));
  return {
    stars: starsOf(
      given.map(({ stars }) => stars),
      outOf,
    ),
    outOf,
    words,
    because,
  };
}
