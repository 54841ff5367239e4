import { wholeBook, type Value } from '../core/booklet/booklet.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { shuffled } from './shuffle.ts';
import { answersTo, type Stack } from './stack.ts';

/**
 * Judging answers with the pack's rubric. A score is 0 to `steps` for one trait of one answer: with one step "not yet" or "it is there",
 * with two also "partly". Spelling and handwriting are no traits, and nothing that a child says of its own life or feelings is scored.
 */
export interface Scoring {
  readonly steps: 1 | 2;
  /** Decides the order in which answers are shown. */
  readonly seed: string;
  /** By the answer's key, then by the trait's name. */
  readonly scores: Scores;
}

export type Scores = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** One answer to be judged: of nobody. */
export interface Judgeable {
  readonly key: string;
  readonly pack: StackPack;
  /** Id of the stop. */
  readonly stop: string;
  readonly values: readonly Value[];
}

type StackStop = StackPack['stops'][number];

/** Stops about a character, a word or the story are judged. What a child says about itself is true, whatever it is. Common practice, no source. */
export function isJudged(stop: Pick<StackStop, 'about' | 'kind'>): boolean {
  return stop.about !== 'me' && stop.kind !== 'own life';
}

/** Something to look at: a child that passed, or could not tell, gave an answer and nothing to judge. */
const canBeJudged = ({ kind }: Value): boolean => kind !== 'passed' && kind !== 'cannot-tell' && kind !== 'stars' && kind !== 'because' && kind !== 'chosen';

/** Every answer of one pack that can be judged: stop by stop, within a stop in the seed's order and not in that of the children. */
export function judgeables(stack: Stack, pack: StackPack, seed: string): readonly Judgeable[] {
  if ((pack.rubric ?? []).length === 0) return [];
  return pack.stops.filter(isJudged).flatMap(({ id }) => {
    const answers = answersTo(stack, pack, id).flatMap(({ key, entries }): readonly Judgeable[] => {
      const values = entries.map(({ value }) => value).filter(canBeJudged);
      return values.length === 0 ? [] : [{ key, pack, stop: id, values }];
    });
    return shuffled(answers, `${seed} ${id}`);
  });
}

/** How many stops are never judged because they are about the child; and answers to the whole book are none. */
export function stopsAboutMe(pack: StackPack): readonly StackStop[] {
  return pack.stops.filter((stop) => !isJudged(stop) && stop.id !== wholeBook);
}

/** With one score more, changed, or (undefined) taken back. */
export function withScore(scores: Scores, key: string, trait: string, score: number | undefined): Scores {
  const rest = Object.entries(scores[key] ?? {}).filter(([name]) => name !== trait);
  const now = score === undefined ? rest : [...rest, [trait, score] as const];
  if (now.length > 0) return { ...scores, [key]: Object.fromEntries(now) };
  return Object.fromEntries(Object.entries(scores).filter(([name]) => name !== key));
}

/** Whether every trait of an answer has its score. */
export function isJudgedWhole(scores: Scores, { key, pack }: Judgeable): boolean {
  return (pack.rubric ?? []).every(({ trait }) => scores[key]?.[trait] !== undefined);
}

/** The scores of an answer's traits added up; undefined while one is missing. */
export function sumOf(scores: Scores, judged: Judgeable): number | undefined {
  if (!isJudgedWhole(scores, judged)) return undefined;
  return (judged.pack.rubric ?? []).reduce((sum, { trait }) => sum + (scores[judged.key]?.[trait] ?? 0), 0);
}

/** How often one trait was scored each step, from 0 to `steps`. */
export interface TraitCounts {
  readonly trait: string;
  readonly counts: readonly number[];
  readonly n: number;
}

export function traitCounts(judged: readonly Judgeable[], { steps, scores }: Scoring): readonly TraitCounts[] {
  const traits = [...new Set(judged.flatMap(({ pack }) => (pack.rubric ?? []).map(({ trait }) => trait)))];
  return traits.map((trait) => {
    const counts = Array.from({ length: steps + 1 }, () => 0);
    for (const { key } of judged) {
      const score = scores[key]?.[trait];
      if (score !== undefined && counts[score] !== undefined) counts[score] += 1;
    }
    return { trait, counts, n: counts.reduce((sum, each) => sum + each, 0) };
  });
}
