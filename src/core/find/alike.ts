import { isbn13 } from '../pack/isbn.ts';
import { candidates, fewestShared, tellingOf } from './alike-candidates.ts';
import { promptsOf, type Compared } from './compared.ts';
import { resemblance, shinglesOf } from './shingles.ts';
import { sameAuthor, sameTitle } from './same-book.ts';

/** What two packs have in common: the book's number, its title and author, or their own prompts. */
export type Ground = 'isbn' | 'title' | 'prompts';

/** Two packs of one book, by their places in the list. */
export interface Pair {
  readonly a: number;
  readonly b: number;
  readonly grounds: readonly Ground[];
  /** How alike their prompts are without stock phrases, from 0 to 1. */
  readonly resemblance: number;
  /** Why nobody has to settle it; undefined where somebody should. */
  readonly related: Related | undefined;
}

/** One was made from the other or both from a third; somebody said that both stay; or they are in two languages. */
export type Related = 'fork' | 'both stay' | 'language';

/** Packs of one book that nobody has said are related, by their places, with the pairs among them. */
export interface SameBook {
  readonly packs: readonly number[];
  readonly pairs: readonly Pair[];
}

export interface Alike {
  readonly unsettled: readonly SameBook[];
  /** What people have said of pairs: forks that name their parent, and what stays; and packs of one book in two languages and two folders. */
  readonly related: readonly Pair[];
}

/** From here on prompts are taken for one text in two hands. Our own choice, between two packs of one book by two teachers (near 0) and a copy with changes. */
export const sameResemblance = 0.4;

/**
 * Packs of one book, to be shown beside each other. The translations of one pack share its folder and are never a pair. `said` is what
 * people have said of two packs already.
 */
export function alike(packs: readonly Compared[], said: (a: Compared, b: Compared) => Exclude<Related, 'language'> | undefined): Alike {
  const telling = tellingOf(packs.map((pack) => shinglesOf(promptsOf(pack))));
  const isbns = packs.map(({ book }) => (book.isbn === undefined ? undefined : isbn13(book.isbn)));
  const unsettled: Pair[] = [];
  const related: Pair[] = [];
  for (const [a, b] of candidates(packs, isbns, telling)) {
    const [first, second] = [packs[a], packs[b]];
    if (!first || !second || first.slug === second.slug) continue;
    const one = first.language === second.language;
    const [runs, others] = [telling[a] ?? none, telling[b] ?? none];
    const alikeness = one && Math.min(runs.size, others.size) >= fewestShared ? resemblance(runs, others) : 0;
    const grounds: Ground[] = [];
    if (isbns[a] !== undefined && isbns[a] === isbns[b]) grounds.push('isbn');
    if (one && sameTitle(first.book.title, second.book.title) && sameAuthor(first.book.author, second.book.author)) grounds.push('title');
    if (alikeness >= sameResemblance) grounds.push('prompts');
    if (grounds.length === 0) continue;
    const pair: Pair = { a, b, grounds, resemblance: alikeness, related: said(first, second) ?? (one ? undefined : 'language') };
    (pair.related ? related : unsettled).push(pair);
  }
  return { unsettled: together(unsettled), related };
}

const none: ReadonlySet<number> = new Set();

/** Pairs that hang together are one book. Books in the order of their first pack; packs and pairs in the order of the list. */
function together(pairs: readonly Pair[]): readonly SameBook[] {
  const above = new Map<number, number>();
  const top = (place: number): number => {
    let at = place;
    for (let up = above.get(at); up !== undefined; up = above.get(at)) at = up;
    return at;
  };
  for (const { a, b } of pairs) {
    const [first, second] = [top(a), top(b)];
    if (first !== second) above.set(Math.max(first, second), Math.min(first, second));
  }
  const books = new Map<number, Pair[]>();
  for (const pair of pairs) {
    const of = books.get(top(pair.a));
    if (of) of.push(pair);
    else books.set(top(pair.a), [pair]);
  }
  const upwards = (x: number, y: number) => x - y;
  return [...books.entries()]
    .sort(([x], [y]) => upwards(x, y))
    .map(([, of]) => ({ packs: [...new Set(of.flatMap(({ a, b }) => [a, b]))].sort(upwards), pairs: [...of].sort((x, y) => upwards(x.a, y.a) || upwards(x.b, y.b)) }));
}
