import type { PackFields, Stop } from '../pack/pack.ts';
import { feelingInPack, feelingOf, feelingsOfText, type PackFeeling } from './feeling-words.ts';
import { plainWord } from './words.ts';

/** One stop on the path of a character's feelings. */
export interface FeelingStep {
  readonly id: string;
  /** Its place in the pack, from 1. */
  readonly number: number;
  readonly opening: number;
  /** Each feeling once, in the order in which it is named. */
  readonly feelings: readonly PackFeeling[];
  /** The words come from answers that the author foresees, or else from the words that are offered. */
  readonly from: 'answers' | 'word bank';
}

/**
 * The path of a character's feelings through the book: the stops that ask what a character feels or does, with the feeling words
 * that their answers name. Stops about the child are not on it: what a child feels is nobody's figure. Stops without a feeling word are left out.
 */
export function feelingPath(pack: Pick<PackFields, 'stops' | 'feelings' | 'language'>): readonly FeelingStep[] {
  return pack.stops.flatMap((stop, index): readonly FeelingStep[] => {
    if (!isOfCharacter(stop)) return [];
    const bank = stop.words ?? [];
    const answers = [stop.ask, ...(stop.models ?? []).map((model) => model.text)].flatMap((text) => feelingsOfText(text, pack, bank));
    const offered = bank.flatMap((word) => feelingInPack(word, pack) ?? []);
    const feelings = eachOnce(answers.length > 0 ? answers : offered, pack.language);
    if (feelings.length === 0) return [];
    return [{ id: stop.id, number: index + 1, opening: stop.at.opening, feelings, from: answers.length > 0 ? 'answers' : 'word bank' }];
  });
}

const isOfCharacter = (stop: Stop): boolean => (stop.kind === 'feeling' || stop.about === 'character') && stop.about !== 'me' && stop.kind !== 'own life';

/** "cansada" and "cansado" are one feeling. */
function eachOnce(feelings: readonly PackFeeling[], language: string): readonly PackFeeling[] {
  const keyOf = ({ word }: PackFeeling) => feelingOf(word, language)?.name ?? plainWord(word);
  const seen = new Map(feelings.map((feeling) => [keyOf(feeling), feeling]).reverse() as [string, PackFeeling][]);
  return feelings.filter((feeling) => seen.get(keyOf(feeling)) === feeling);
}
