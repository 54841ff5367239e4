import * as v from 'valibot';
import { entrySchema, headSchema, limits, promptSchema } from './booklet-schema.ts';
import { sortedEntries, sortedPrompts, sortedSeen, textOf, type Booklet, type Entry } from './booklet.ts';
import { dataBegin, dataEnd } from './data-block.ts';

/** Why a file is no booklet that can be read. The words for each are in the catalogue: `booklet.unreadable`. */
export type Unreadable = 'empty' | 'too-big' | 'not-a-booklet' | 'cut-short' | 'newer' | 'damaged';

export type ReadBooklet =
  | {
      readonly booklet: Booklet;
      /** Entries and questions that could not be read; the others were. */
      readonly leftOut: number;
    }
  | { readonly booklet: undefined; readonly reason: Unreadable };

/**
 * Reads a handed-over file, or its data alone, from any text. Nothing in the text is run, and nothing of it reaches a page but by way of this type.
 * One damaged answer costs that answer, not the booklet.
 */
export function readBooklet(text: string): ReadBooklet {
  if (text.length > limits.file) return unreadable('too-big');
  const found = dataIn(text);
  if (typeof found !== 'object') return unreadable(found);
  const { data } = found;
  if (!isObject(data) || data['format'] !== 'companion booklet') return unreadable('not-a-booklet');
  if (typeof data['version'] === 'number' && data['version'] > 1) return unreadable('newer');
  const head = v.safeParse(headSchema, data);
  if (!head.success) return unreadable('damaged');
  const entries = readable(entrySchema, data['entries'], limits.entries);
  const prompts = readable(promptSchema, data['prompts'], limits.entries);
  const kept = unequal(entries.good);
  return {
    booklet: { ...head.output, seen: seenWith(head.output.seen, kept), prompts: sortedPrompts(prompts.good), entries: sortedEntries(kept) },
    leftOut: entries.bad + prompts.bad,
  };
}

function unreadable(reason: Unreadable): ReadBooklet {
  return { booklet: undefined, reason };
}

/** The data in a text: between its marks in a page, or the whole text. */
function dataIn(text: string): { readonly data: unknown } | Unreadable {
  const bare = text.replace(/^\uFEFF/, '').trim();
  if (bare === '') return 'empty';
  const begin = bare.indexOf(dataBegin);
  if (begin === -1 && !bare.startsWith('{')) return bare.includes('<') && /bookfellow|companion booklet/i.test(bare) ? 'cut-short' : 'not-a-booklet';
  const from = begin === -1 ? 0 : begin + dataBegin.length;
  const to = begin === -1 ? bare.length : bare.indexOf(dataEnd, from);
  if (to === -1) return 'cut-short';
  try {
    return { data: JSON.parse(bare.slice(from, to)) as unknown };
  } catch {
    return begin === -1 && !bare.endsWith('}') ? (bare.includes('"companion booklet"') ? 'cut-short' : 'not-a-booklet') : 'damaged';
  }
}

function isObject(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function readable<S extends v.GenericSchema>(schema: S, list: unknown, most: number): { readonly good: readonly v.InferOutput<S>[]; readonly bad: number } {
  if (!Array.isArray(list)) return { good: [], bad: list === undefined ? 0 : 1 };
  const good: v.InferOutput<S>[] = [];
  for (const each of list.slice(0, most) as readonly unknown[]) {
    const read = v.safeParse(schema, each);
    if (read.success) good.push(read.output);
  }
  return { good, bad: list.length - good.length };
}

function unequal(entries: readonly Entry[]): readonly Entry[] {
  return [...new Map(entries.map((each) => [textOf(each), each])).values()];
}

/** What was seen counts at least what is there, whatever a file says. */
function seenWith(seen: readonly (readonly [string, number])[], entries: readonly Entry[]): [string, number][] {
  const most = new Map<string, number>();
  for (const [writer, count] of [...seen, ...entries.map((each) => [each.writer, each.count] as const)]) most.set(writer, Math.max(count, most.get(writer) ?? 0));
  return sortedSeen(most);
}
