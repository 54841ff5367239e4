import { bestOf } from '../core/booklet/booklet.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { shownCounts, type Audience, type Shown } from './small-numbers.ts';
import { answersTo, type Stack } from './stack.ts';

/**
 * Which of a few books children chose, and which one could wait. Five- and six-year-olds tell more by the two ends than by stars: Behavior
 * Research Methods 53:2273-2279, 2021. Each child counts once. It is one class's choice on one day, and orders no books beyond it.
 */
export interface BooksChosen {
  /** In the pack's order; books that only an older booklet offered come last. */
  readonly books: readonly { readonly book: string; readonly best: number; readonly last: number }[];
  /** Children who chose a first one, and children who named one that could wait. */
  readonly n: number;
  readonly nLast: number;
}

/** Two choices in one booklet are told by the later one. */
export function booksChosen(stack: Stack, pack: StackPack): BooksChosen {
  const made = answersTo(stack, pack, bestOf).flatMap(({ entries }) => entries.flatMap(({ value }) => (value.kind === 'chosen' ? [value] : [])).slice(-1));
  const names = [...new Set([...(pack.bestOf?.books ?? []), ...made.flatMap(({ of }) => of)])];
  const books = names.map((book) => ({ book, best: made.filter(({ best }) => best === book).length, last: made.filter(({ last }) => last === book).length }));
  return { books, n: made.filter(({ best }) => best !== undefined).length, nLast: made.filter(({ last }) => last !== undefined).length };
}

/** What of it may be seen. Others are told only of the first choice: no wall needs the book that could wait. */
export function shownChosen(chosen: BooksChosen, audience: Audience): Shown<BooksChosen> {
  return shownCounts(
    chosen,
    chosen.n,
    chosen.books.map(({ best }) => best),
    audience,
  );
}
