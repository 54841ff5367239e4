import * as v from 'valibot';
import type { PackFields } from './pack.ts';
import { families, kinds, longestList, longestText, ways } from './choices.ts';

/**
 * Of a pack what the stack of booklets needs: its stops with frames and model answers, its feeling words, its rubric, how stars and a choice among books were asked for.
 * The page of the stack carries it for small libraries; for large ones each pack has it as a file, `stack.json` beside its lesson. Version 1:
 * `{ format: 'companion pack for the stack', version: 1, slug, title, language, stops, feelings, words, rubric, rating, bestOf }`, fields as in
 * the pack, with `listen for` and its like in camel case.
 */
export type StackPack = Pick<PackFields, 'title' | 'language' | 'stops' | 'feelings' | 'words' | 'rubric' | 'rating' | 'bestOf'> & { readonly slug: string };

export const stackFormat = 'companion pack for the stack';

const text = v.pipe(v.string(), v.maxLength(longestText));
const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
const list = <S extends v.GenericSchema>(of: S) => v.pipe(v.array(of), v.maxLength(longestList));
const some = <S extends v.GenericSchema>(of: S) => v.optional(of);
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), v.maxLength(80));

export const stackPackSchema = v.object({
  slug,
  title: text,
  language: v.pipe(v.string(), v.regex(/^[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*$/), v.maxLength(40)),
  stops: list(
    v.object({
      id: slug,
      at: v.object({ opening: whole(1, 200), cue: text, picture: v.optional(v.picklist(['shown', 'hidden']), 'shown') }),
      ask: text,
      kind: v.picklist(kinds),
      depth: whole(1, 4),
      about: some(v.picklist(['character', 'me'])),
      answer: v.picklist(ways),
      or: some(v.picklist(ways)),
      frames: some(list(text)),
      words: some(list(text)),
      models: some(list(v.object({ text, shows: some(list(text)) }))),
      listenFor: some(text),
    }),
  ),
  feelings: some(list(v.object({ word: text, family: v.picklist(families), strength: whole(1, 3), situation: text }))),
  words: some(list(v.object({ word: text, meaning: text, situation: text }))),
  rubric: some(list(v.object({ trait: text, meets: text, notYet: text, example: some(text) }))),
  rating: some(v.object({ ask: text, outOf: whole(3, 5), reasons: some(list(text)) })),
  bestOf: some(v.object({ ask: text, books: list(text), last: some(text) })),
});

/** Takes that part out of a pack. */
export function stackPackOf(pack: PackFields & { readonly slug: string }): StackPack {
  return v.parse(stackPackSchema, pack);
}

export function stackFile(pack: StackPack): string {
  return `${JSON.stringify({ format: stackFormat, version: 1, ...pack })}\n`;
}

/** A pack from such a file's data, or undefined when it is none. Never throws. */
export function readStackPack(data: unknown): StackPack | undefined {
  const read = v.safeParse(v.intersect([v.object({ format: v.literal(stackFormat), version: v.literal(1) }), stackPackSchema]), data);
  if (!read.success) return undefined;
  const { slug, title, language, stops, feelings, words, rubric, rating, bestOf } = read.output;
  return { slug, title, language, stops, feelings, words, rubric, rating, bestOf };
}
