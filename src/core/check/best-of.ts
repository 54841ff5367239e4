import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { plain } from './plain-words.ts';

/** So few and so many books a child chooses from: one is no choice, and more than six nobody keeps in mind. Common practice, no source. */
export const booksToChooseFrom = { least: 2, most: 6 } as const;

/** A choice among books offers a few, and each of them once. */
export function* bestOf(pack: Pack): Iterable<Finding> {
  const books = pack.bestOf?.books;
  if (!books) return;
  const { least, most } = booksToChooseFrom;
  // Where one of them had to be left out, how many there are is no mistake of its own.
  if (!pack.partial && (books.length < least || books.length > most)) yield finding('best-of/how-many', 'stop', placeOf(pack, 'best of', 'books'), { found: books.length, least, most });
  const before = new Set<string>();
  for (const [index, book] of books.entries()) {
    if (before.has(plain(book))) yield finding('best-of/twice', 'stop', placeOf(pack, 'best of', 'books', index), { book });
    before.add(plain(book));
  }
}
