import { isEmpty, textOf, type Booklet, type Bookmark, type Entry } from '../core/booklet/booklet.ts';
import { isAtNoStop } from '../core/booklet/chosen.ts';
import { mergeBooklets } from '../core/booklet/merge-booklets.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { hashOf } from './shuffle.ts';

/**
 * The stack: the booklets that a class handed in, on the teacher's own device. Booklets of any packs and languages may lie in it.
 * Copies of one booklet are one; two booklets with the same bookmark may be one child's or two children's, so a person says which.
 */
export interface Stack {
  readonly packs: readonly StackPack[];
  /** In the order in which they came. */
  readonly booklets: readonly StackBooklet[];
}

export interface StackBooklet {
  readonly booklet: Booklet;
  /** Names of the files it came in; none for one that was typed from paper. */
  readonly files: readonly string[];
  /** Answers that could not be read in them. */
  readonly leftOut: number;
  /** From 1: which one it is of those with its bookmark and pack. */
  readonly copy: number;
}

export const emptyStack: Stack = { packs: [], booklets: [] };

/** What became of a file that was put on the stack. */
export type Put = 'new' | 'merged' | 'same bookmark';

export function putBooklet(stack: Stack, booklet: Booklet, file: string | undefined, leftOut = 0): { readonly stack: Stack; readonly put: Put } {
  const files = file === undefined ? [] : [file];
  const copy = stack.booklets.find((each) => isOfPack(each.booklet, booklet.pack) && each.booklet.id === booklet.id);
  if (copy) {
    const merged: StackBooklet = { ...copy, booklet: mergeBooklets(copy.booklet, booklet), files: [...new Set([...copy.files, ...files])], leftOut: Math.max(copy.leftOut, leftOut) };
    return { stack: { ...stack, booklets: stack.booklets.map((each) => (each === copy ? merged : each)) }, put: 'merged' };
  }
  const twins = twinsOf(stack, booklet);
  const added: StackBooklet = { booklet, files, leftOut, copy: 1 + Math.max(0, ...twins.map((each) => each.copy)) };
  return { stack: { ...stack, booklets: [...stack.booklets, added] }, put: twins.length > 0 ? 'same bookmark' : 'new' };
}

/** Booklets of the same pack with the same bookmark. */
export function twinsOf(stack: Stack, { pack, bookmark }: Booklet): readonly StackBooklet[] {
  return stack.booklets.filter(({ booklet }) => isOfPack(booklet, pack) && sameMark(booklet.bookmark, bookmark));
}

/** Two booklets of one child put together: the first keeps its id, so that what was scored of it stays scored. */
export function joinTwins(stack: Stack, first: StackBooklet, second: StackBooklet): Stack {
  const merged = mergeBooklets(first.booklet, { ...second.booklet, id: first.booklet.id });
  const one: StackBooklet = { ...first, booklet: merged, files: [...first.files, ...second.files], leftOut: first.leftOut + second.leftOut };
  return { ...stack, booklets: stack.booklets.flatMap((each) => (each === first ? [one] : each === second ? [] : [each])) };
}

export function withoutBooklet(stack: Stack, gone: StackBooklet): Stack {
  return { ...stack, booklets: stack.booklets.filter((each) => each !== gone) };
}

/** A pack's questions, rubric and models; a newer file of the same pack takes the place of the older. */
export function putPack(stack: Stack, pack: StackPack): Stack {
  return { ...stack, packs: [...stack.packs.filter((each) => !isSamePack(each, pack)), pack] };
}

type PackName = Pick<StackPack, 'slug' | 'language'>;
export const isSamePack = (a: PackName, b: PackName): boolean => a.slug === b.slug && a.language === b.language;
const isOfPack = (booklet: Booklet, pack: PackName): boolean => isSamePack(booklet.pack, pack);
const sameMark = (a: Bookmark, b: Bookmark): boolean => a.pattern === b.pattern && a.colour === b.colour;

/** Which pack of the stack's packs a booklet answers; a booklet may answer one that the stack does not know. */
export function packOf(stack: Stack, name: PackName): StackPack | undefined {
  return stack.packs.find((each) => isSamePack(each, name));
}

/** All that one booklet says to one stop, to the whole book, or of a few books. */
export interface Answer {
  /** Names this answer as it is now: of whose booklet, to what, with which content. Sixteen letters that tell nobody anything. */
  readonly key: string;
  readonly from: StackBooklet;
  /** Id of the stop, `whole book` or `best of`. */
  readonly to: string;
  /** What was kept, empty things left out; at least one. */
  readonly entries: readonly Entry[];
}

const entryTexts = new WeakMap<Entry, string>();

/** A drawing is long, and is asked for again and again. */
function entryText(entry: Entry): string {
  const known = entryTexts.get(entry);
  if (known !== undefined) return known;
  const text = hashOf(textOf(entry.value));
  entryTexts.set(entry, text);
  return text;
}

const answersOf = new WeakMap<StackBooklet, readonly Answer[]>();

/** Every answer of one booklet, in the order of its questions. */
export function answersIn(from: StackBooklet): readonly Answer[] {
  const known = answersOf.get(from);
  if (known) return known;
  const { booklet } = from;
  const names = [...new Set([...booklet.prompts.map(({ of }) => of), ...booklet.entries.map(({ to }) => to)])];
  const answers = names.flatMap((to): readonly Answer[] => {
    const entries = booklet.entries.filter((entry) => entry.to === to && !isEmpty(entry.value));
    if (entries.length === 0) return [];
    return [{ key: hashOf([booklet.pack.slug, booklet.pack.language, booklet.id, to, ...entries.map(entryText)].join(' ')), from, to, entries }];
  });
  answersOf.set(from, answers);
  return answers;
}

/** Every answer to one stop of one pack, booklet by booklet. */
export function answersTo(stack: Stack, pack: PackName, to: string): readonly Answer[] {
  return stack.booklets.filter(({ booklet }) => isOfPack(booklet, pack)).flatMap((each) => answersIn(each).filter((answer) => answer.to === to));
}

/** Packs that the booklets answer, in the order of the first booklet of each; known ones and others. */
export function packsAnswered(stack: Stack): readonly (PackName & { readonly title: string; readonly booklets: number })[] {
  const found = new Map<string, { slug: string; language: string; title: string; booklets: number }>();
  for (const { booklet } of stack.booklets) {
    const { slug, language, title } = booklet.pack;
    const known = found.get(`${slug} ${language}`) ?? { slug, language, title: packOf(stack, booklet.pack)?.title ?? title, booklets: 0 };
    found.set(`${slug} ${language}`, { ...known, booklets: known.booklets + 1 });
  }
  return [...found.values()];
}

/** The pack of some booklets: the one that the stack knows, or as much of it as the booklets' own questions tell. */
export function packBehind(stack: Stack, name: PackName): { readonly pack: StackPack; readonly known: boolean } {
  const known = packOf(stack, name);
  if (known) return { pack: known, known: true };
  const booklets = stack.booklets.filter(({ booklet }) => isOfPack(booklet, name)).map(({ booklet }) => booklet);
  const prompts = new Map(booklets.flatMap((booklet) => booklet.prompts.filter(({ of }) => !isAtNoStop(of)).map((prompt) => [prompt.of, prompt] as const)));
  const missing = [...new Set(booklets.flatMap(({ entries }) => entries.map(({ to }) => to)))].filter((to) => !isAtNoStop(to) && !prompts.has(to));
  const stops = [...prompts.values()].sort((a, b) => a.number - b.number).map(({ of, opening, ask, about }) => bareStop(of, opening ?? 1, ask, about));
  return { pack: { slug: name.slug, language: name.language, title: booklets[0]?.pack.title ?? name.slug, stops: [...stops, ...missing.map((to) => bareStop(to, 1, to, undefined))] }, known: false };
}

function bareStop(id: string, opening: number, ask: string, about: 'character' | 'me' | undefined): StackPack['stops'][number] {
  return { id, at: { opening, cue: '', picture: 'shown' }, ask, kind: 'recall', depth: 1, answer: 'say', about };
}
