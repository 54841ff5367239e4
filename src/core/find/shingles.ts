import { foldedWords } from './fold.ts';

/**
 * How alike two texts are, by the runs of words that they share.
 *
 * Source: A. Z. Broder 1997, "On the resemblance and containment of documents", SEQUENCES '97, 21-29: a text is the set of its
 * shingles (runs of w words), and the resemblance of two sets is what they share over what they have together, from 0 to 1.
 */

/** Words in a run: three of a prompt's dozen are a phrase and not yet chance. Our own choice. */
export const wordsInShingle = 3;

/** The shingles of some texts as a set of numbers. A run never reaches from one text into the next; a text shorter than a run is one shingle. */
export function shinglesOf(texts: readonly string[], length = wordsInShingle): ReadonlySet<number> {
  const shingles = new Set<number>();
  for (const text of texts) {
    const words = foldedWords(text);
    for (let at = 0; at <= Math.max(0, words.length - length); at++) if (words.length > 0) shingles.add(fingerprint(words.slice(at, at + length).join(' ')));
  }
  return shingles;
}

/** Shared shingles over all shingles of both; 0 for two empty sets. */
export function resemblance(a: ReadonlySet<number>, b: ReadonlySet<number>): number {
  const shared = sharedBy(a, b);
  return shared === 0 ? 0 : shared / (a.size + b.size - shared);
}

/** How much of the first stands in the second too, from 0 to 1. */
export function containment(a: ReadonlySet<number>, b: ReadonlySet<number>): number {
  return a.size === 0 ? 0 : sharedBy(a, b) / a.size;
}

function sharedBy(a: ReadonlySet<number>, b: ReadonlySet<number>): number {
  const [small, large] = a.size < b.size ? [a, b] : [b, a];
  let shared = 0;
  for (const each of small) if (large.has(each)) shared++;
  return shared;
}

/** A number of 53 bits for a text: among a million shingles two meet by chance once in ten thousand libraries. FNV-1a, twice (Fowler, Noll and Vo, from memory). */
function fingerprint(text: string): number {
  let [low, high] = [0x811c9dc5, 0x01000193];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    low = Math.imul(low ^ code, 0x01000193);
    high = Math.imul(high ^ code, 0x85ebca6b);
  }
  return (high >>> 11) * 0x100000000 + (low >>> 0);
}
