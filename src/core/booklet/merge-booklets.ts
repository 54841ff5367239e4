import { compare, isNamed, put, seenOf, sortedEntries, sortedPrompts, sortedSeen, textOf, type Booklet, type Entry } from './booklet.ts';

/**
 * Two copies of a booklet put together without loss. What both changed is kept twice: a person chooses, never the program.
 * What one copy replaced or took away, after having seen it, is gone from both. The order of
 * putting together does not matter, and doing it again changes nothing.
 */
export function mergeBooklets(a: Booklet, b: Booklet): Booklet {
  const seen = new Map(a.seen);
  for (const [writer, count] of b.seen) seen.set(writer, Math.max(count, seen.get(writer) ?? 0));
  const [first, second] = compare(headText(a), headText(b)) <= 0 ? [a, b] : [b, a];
  return {
    format: first.format,
    version: first.version,
    id: compare(a.id, b.id) <= 0 ? a.id : b.id,
    pack: first.pack,
    bookmark: first.bookmark,
    seen: sortedSeen(seen),
    prompts: sortedPrompts([...first.prompts, ...second.prompts]),
    entries: sortedEntries(unequal([...stillThere(a, b), ...stillThere(b, a)])),
  };
}

/** Entries of one copy that the other has too or has never heard of. */
function stillThere(here: Booklet, there: Booklet): readonly Entry[] {
  const names = new Set(there.entries.map(nameText));
  const heard = new Map(there.seen);
  return here.entries.filter((entry) => names.has(nameText(entry)) || entry.count > (heard.get(entry.writer) ?? 0));
}

/** Each entry once. Contents are compared only where names are equal: that is seldom, and a drawing is long. */
function unequal(entries: readonly Entry[]): readonly Entry[] {
  const byName = new Map<string, Entry[]>();
  for (const entry of entries) {
    const same = byName.get(nameText(entry)) ?? [];
    if (!same.some((each) => each === entry || textOf(each) === textOf(entry))) byName.set(nameText(entry), [...same, entry]);
  }
  return [...byName.values()].flat();
}

const nameText = ({ writer, count }: Entry): string => `${writer} ${String(count)}`;
const headText = ({ pack, bookmark }: Booklet): string => textOf([pack, bookmark]);

/** Whether two booklets belong to one reader of one pack, as far as that can be told: the same random id, or nothing but the same bookmark. */
export function kinship(a: Booklet, b: Booklet): 'copies' | 'same bookmark' | 'strangers' {
  if (a.pack.slug !== b.pack.slug || a.pack.language !== b.pack.language) return 'strangers';
  if (a.id === b.id) return 'copies';
  return a.bookmark.pattern === b.bookmark.pattern && a.bookmark.colour === b.bookmark.colour ? 'same bookmark' : 'strangers';
}

/** Entries of a file that are not in the booklet, because they were replaced or taken away there: somebody may want them back. */
export function leftBehind(booklet: Booklet, file: Booklet): readonly Entry[] {
  return file.entries.filter((entry) => !booklet.entries.some((each) => isNamed(each, entry)) && entry.count <= seenOf(booklet, entry.writer));
}

/** The booklet with such entries written anew beside what is there. */
export function bringBack(booklet: Booklet, writer: string, entries: readonly Entry[]): Booklet {
  return entries.reduce((sofar, { to, value }) => put(sofar, writer, to, value), booklet);
}
