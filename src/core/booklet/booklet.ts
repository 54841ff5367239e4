import type { Entry, Head, Prompt, Value } from './booklet-schema.ts';

/**
 * A child's booklet: what one reader answered to one pack. It lives on the reader's device
 * and leaves it only as a file (`write-booklet-file.ts`) that a family chooses to hand over. Version 1:
 *
 * - `id`: random letters; they say nothing about anybody. Two booklets with one id are copies of one booklet.
 * - `pack`: slug, language and title. `prompts` are the questions as they were shown, so that a
 *   file can be read without the pack. When a pack is reworded, both wordings are kept.
 * - `bookmark`: the pattern and colour that the reader picked in place of a name.
 * - `entries`: each is one thing kept: a text, a drawing, a recording. `to` names the stop, or `whole book`, or `best of`: what of a
 *   few books was chosen. The last came later; a reader from before leaves it out, says so, and reads the rest.
 *   A stop may have many: a child may write and draw, and two devices may each have written.
 * - `writer` and `count` name an entry for good. A writer is one opening of the booklet on one device (random letters);
 *   it numbers what it writes from 1. Changing an answer is a new entry in place of the old one.
 * - `seen`: the highest count of each writer that this copy has had. So an entry that is missing here although its count
 *   was seen has been replaced or taken away, and one whose count is higher is news. This is what makes
 *   putting two copies together lossless (`merge-booklets.ts`).
 *   source: version vectors, D. S. Parker et al. 1983, IEEE Transactions on Software Engineering SE-9(3), from memory.
 * - `order` puts entries in the order in which they were made. There is no clock in a booklet: when a child worked is nobody's business.
 *
 * Drawings are kept as their marks on a paper of 1200 by 900 units; `drawing.ts` shows them. Photos and voices are base64.
 */
export interface Booklet extends Readonly<Head> {
  readonly prompts: readonly Prompt[];
  readonly entries: readonly Entry[];
}

export type { Entry, Prompt, Value } from './booklet-schema.ts';
export type Kind = Value['kind'];
export type ValueOf<K extends Kind> = Extract<Value, { kind: K }>;
export type Bookmark = Booklet['bookmark'];

/** What an entry or a prompt is about when it is about no stop but about all of the book. */
export const wholeBook = 'whole book';
/** Which of a few books a child would choose. */
export const bestOf = 'best of';

/** Patterns and colours of bookmarks; both are said in words wherever one is shown. */
export const bookmarkPatterns = ['waves', 'leaves', 'stitches', 'roofs', 'rain'] as const;
export const bookmarkColours = ['red', 'blue', 'green', 'yellow', 'brown'] as const;

export function newBooklet(id: string, pack: Booklet['pack'], bookmark: Bookmark, prompts: readonly Prompt[]): Booklet {
  return { format: 'companion booklet', version: 1, id, pack, bookmark, seen: [], prompts: sortedPrompts(prompts), entries: [] };
}

/** Which entry: the writer and its count. */
export type Name = Pick<Entry, 'writer' | 'count'>;

export const isNamed = (entry: Name, name: Name): boolean => entry.writer === name.writer && entry.count === name.count;

/** How far a copy has heard a writer. */
export function seenOf(booklet: Pick<Booklet, 'seen'>, writer: string): number {
  return booklet.seen.find(([each]) => each === writer)?.[1] ?? 0;
}

/** The booklet with one more entry, which takes the place of `insteadOf` when there is such. */
export function put(booklet: Booklet, writer: string, to: string, value: Value, insteadOf?: Name): Booklet {
  const count = seenOf(booklet, writer) + 1;
  const order = 1 + booklet.entries.reduce((most, each) => Math.max(most, each.order), 0);
  const left = insteadOf ? takeAway(booklet, insteadOf) : booklet;
  const entry: Entry = { to, value, writer, count, order };
  return { ...left, seen: sortedSeen([...left.seen.filter(([each]) => each !== writer), [writer, count]]), entries: sortedEntries([...left.entries, entry]) };
}

/** The booklet without one entry. */
export function takeAway(booklet: Booklet, name: Name): Booklet {
  return { ...booklet, entries: booklet.entries.filter((each) => !isNamed(each, name)) };
}

/** What was answered to a stop, or to the whole book, in the order in which it was made. */
export function entriesOf(booklet: Booklet, to: string): readonly Entry[] {
  return booklet.entries.filter((each) => each.to === to);
}

/** Whether a value holds nothing yet: an empty text, a blank paper. */
export function isEmpty(value: Value): boolean {
  switch (value.kind) {
    case 'written':
    case 'said':
    case 'acted':
    case 'because':
      return value.text === '';
    case 'drawing':
      return value.marks.length === 0 && value.about === '';
    case 'feeling':
    case 'cannot-tell':
    case 'voice':
    case 'photo':
    case 'passed':
    case 'stars':
    case 'chosen':
      return false;
  }
}

/** One order for entries, so that equal booklets are equal texts: as made, then by name, then by content. */
export function sortedEntries(entries: readonly Entry[]): readonly Entry[] {
  return [...entries].sort((a, b) => a.order - b.order || compare(a.writer, b.writer) || a.count - b.count || compare(textOf(a), textOf(b)));
}

export function sortedPrompts(prompts: readonly Prompt[]): readonly Prompt[] {
  const byText = new Map(prompts.map((each) => [textOf(each), each]));
  return [...byText].sort(([a, { number: first }], [b, { number: second }]) => first - second || compare(a, b)).map(([, prompt]) => prompt);
}

export function sortedSeen(seen: Iterable<readonly [string, number]>): [string, number][] {
  return [...seen].map(([writer, count]): [string, number] => [writer, count]).sort(([a], [b]) => compare(a, b));
}

export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** A value as text in which the order of its fields does not matter. */
export function textOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((each) => textOf(each)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).filter(([, each]) => each !== undefined);
  return `{${fields
    .sort(([a], [b]) => compare(a, b))
    .map(([name, each]) => `${JSON.stringify(name)}:${textOf(each)}`)
    .join(',')}}`;
}
