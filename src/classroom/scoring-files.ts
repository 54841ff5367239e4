import * as v from 'valibot';
import { limits, valueSchema } from '../core/booklet/booklet-schema.ts';
import { stackPackSchema, type StackPack } from '../core/pack/stack-pack.ts';
import type { Judgeable, Scores } from './judging.ts';
import { hashOf, shuffled } from './shuffle.ts';

/**
 * Two files by which two people judge the same answers without seeing each other's scores. Both are JSON, version 1.
 *
 * - The scoring sheet goes out: `{ format: 'companion scoring sheet', version: 1, id, steps, packs, answers }`. `answers` holds each answer's
 *   key, the place of its pack in `packs`, its stop and its values. There is no bookmark in it and no score, and the order is one that
 *   the sheet's id decides, so that the second scorer meets the answers in another order than the first.
 * - The scores come back: `{ format: 'companion scores', version: 1, sheet, by, scorer, steps, scores }`, with `sheet` the sheet's id or an empty
 *   text, `by` `first` or `second`, `scorer` random letters that tell one
 *   colleague's file from another's (missing in older files), and `scores` a list of `[key, trait, score]`. The first scorer's own scores are kept in the same kind of file.
 *
 * What the limits are: common practice, no source.
 */
export interface ScoringSheet {
  readonly id: string;
  readonly steps: 1 | 2;
  readonly answers: readonly Judgeable[];
}

export interface ScoresFile {
  readonly sheet: string;
  readonly by: 'first' | 'second';
  readonly scorer?: string | undefined;
  readonly steps: 1 | 2;
  readonly scores: Scores;
}

export const sheetFormat = 'companion scoring sheet';
export const scoresFormat = 'companion scores';

const key = v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/));
const id = v.pipe(v.string(), v.regex(/^[a-z0-9]{8,40}$/));
const steps = v.picklist([1, 2]);
const most = 20_000;
const text = (length: number) => v.pipe(v.string(), v.maxLength(length));

const sheetSchema = v.object({
  format: v.literal(sheetFormat),
  version: v.literal(1),
  id,
  steps,
  packs: v.pipe(v.array(stackPackSchema), v.maxLength(200)),
  answers: v.pipe(
    v.array(v.object({ key, pack: v.pipe(v.number(), v.integer(), v.minValue(0)), stop: text(80), values: v.pipe(v.array(valueSchema), v.minLength(1), v.maxLength(limits.entries)) })),
    v.maxLength(most),
  ),
});

const scoresSchema = v.object({
  format: v.literal(scoresFormat),
  version: v.literal(1),
  sheet: v.union([id, v.literal('')]),
  by: v.picklist(['first', 'second']),
  scorer: v.optional(id),
  steps,
  scores: v.pipe(v.array(v.tuple([key, text(200), v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2))])), v.maxLength(most * 10)),
});

/** The sheet for a second scorer as text, and its id. `seed` is any text: the same one gives the same order. */
export function writeSheet(judged: readonly Judgeable[], steps: 1 | 2, seed: string): string {
  const packs = [...new Set(judged.map(({ pack }) => pack))];
  const answers = shuffled(judged, `second ${seed}`).map(({ key, pack, stop, values }) => ({ key, pack: packs.indexOf(pack), stop, values }));
  // Stop by stop here too: whoever judges keeps one question in mind. Only the order within a stop is the seed's.
  const byStop = packs.flatMap((pack, index) => pack.stops.flatMap(({ id: stop }) => answers.filter((each) => each.pack === index && each.stop === stop)));
  return JSON.stringify({ format: sheetFormat, version: 1, id: hashOf(`sheet ${seed} ${judged.map((each) => each.key).join(' ')}`), steps, packs, answers: byStop });
}

export function writeScores({ sheet, by, scorer, steps, scores }: ScoresFile): string {
  const rows = Object.entries(scores).flatMap(([answer, traits]) => Object.entries(traits).map(([trait, score]) => [answer, trait, score] as const));
  return JSON.stringify({ format: scoresFormat, version: 1, sheet, by, scorer, steps, scores: rows });
}

/** Colleagues' scores with one file more; a newer file of the same colleague takes the place of the older. */
export function withColleague(others: readonly ScoresFile[], file: ScoresFile): readonly ScoresFile[] {
  const at = others.findIndex(({ scorer }) => scorer === file.scorer);
  return at < 0 ? [...others, file] : others.with(at, file);
}

/** A sheet from a file's data, or undefined when it is damaged. Answers whose pack or stop is not in it are left out. */
export function readSheet(data: unknown): ScoringSheet | undefined {
  const read = v.safeParse(sheetSchema, data);
  if (!read.success) return undefined;
  const { id, steps, packs, answers } = read.output;
  return {
    id,
    steps,
    answers: answers.flatMap(({ key, pack: place, stop, values }): readonly Judgeable[] => {
      const pack = packs[place] as StackPack | undefined;
      return pack?.stops.some((each) => each.id === stop) === true ? [{ key, pack, stop, values }] : [];
    }),
  };
}

/** Scores from a file's data, or undefined when it is damaged. A score above the steps is left out. */
export function readScores(data: unknown): ScoresFile | undefined {
  const read = v.safeParse(scoresSchema, data);
  if (!read.success) return undefined;
  const { sheet, by, scorer, steps, scores: rows } = read.output;
  const byKey = new Map<string, Map<string, number>>();
  for (const [answer, trait, score] of rows) if (score <= steps) byKey.set(answer, (byKey.get(answer) ?? new Map<string, number>()).set(trait, score));
  // Made of entries, so that a trait called `__proto__` is only a name.
  return { sheet, by, ...(scorer !== undefined && { scorer }), steps, scores: Object.fromEntries([...byKey].map(([answer, traits]) => [answer, Object.fromEntries(traits)])) };
}
