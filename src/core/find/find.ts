import { isChosen, type Choice } from './choice.ts';
import type { Where, Words } from './find-index.ts';
import { foldedWords } from './fold.ts';
import { forgiven, slipsBetween } from './slips.ts';

/** A word of the index that may be meant by a word of the question, and how near it is: 1 for the word itself. */
export interface Meant {
  readonly place: number;
  readonly near: number;
}

/** So many words of the index are looked up for one word of the question at most: each may cost a part to fetch. */
const mostMeant = 8;

/**
 * Which words of the index each word of a question may mean: the word itself, words that begin with it, and words a slip away. Two slips are
 * forgiven only where nothing is nearer, so that "marble" is no question about fables.
 */
export function meantBy(question: string, words: readonly string[]): readonly (readonly Meant[])[] {
  return foldedWords(question).map((asked) => {
    const slips = forgiven(asked);
    const found: Meant[] = [];
    const far: Meant[] = [];
    for (const [place, word] of words.entries()) {
      if (word === asked) found.push({ place, near: 1 });
      else if (asked.length > 1 && word.startsWith(asked)) found.push({ place, near: 0.5 + (0.4 * asked.length) / word.length });
      else if (slips > 0) {
        const between = slipsBetween(asked, word, slips);
        // A slip in the first letter is rare.
        if (between !== undefined) (between === 1 ? found : far).push({ place, near: (between === 1 ? 0.5 : 0.3) * (word[0] === asked[0] ? 1 : 0.6) });
      }
    }
    return (found.length > 0 ? found : far).sort((a, b) => b.near - a.near || a.place - b.place).slice(0, mostMeant);
  });
}

/** Which parts of `Where` a search has to fetch. */
export function partsFor(meant: readonly (readonly Meant[])[], { parts }: Pick<Words, 'parts'>): readonly number[] {
  return [...new Set(meant.flat().map(({ place }) => partWith(parts, place)))].sort((a, b) => a - b);
}

/** The part that a word stands in. */
function partWith(parts: readonly number[], place: number): number {
  let [low, high] = [0, parts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((parts[middle] ?? 0) <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Numbers of the packs that answer a choice, the best first.
 *
 * With words: a pack with more of the words comes first, then the one for which they say more; a rare word says more than a frequent one
 * (the logarithm of how few packs have it, after K. Spärck Jones 1972, from memory). Packs with none of the words are left out, and packs that
 * have only some are shown only when none has them all.
 */
export function findPacks(index: Words, choice: Choice, meant: readonly (readonly Meant[])[], partOf: (part: number) => Where): readonly number[] {
  const chosen = (number: number) => isChosen(index, number, choice);
  if (foldedWords(choice.words).length === 0) return ordered(index, Array.from({ length: index.packs }, (_, number) => number).filter(chosen), choice.order);
  const scores = new Map<number, { words: number; score: number }>();
  for (const each of meant) {
    const best = new Map<number, number>();
    for (const { place, near } of each) {
      const part = partWith(index.parts, place);
      const where = partOf(part)[place - (index.parts[part] ?? 0)] ?? [];
      const rare = Math.log(1 + (2 * index.packs) / Math.max(1, where.length));
      let number = 0;
      for (let at = 0; at < where.length; at += 2) {
        number += where[at] ?? 0;
        best.set(number, Math.max(best.get(number) ?? 0, near * rare * (where[at + 1] ?? 0)));
      }
    }
    for (const [number, score] of best) {
      const before = scores.get(number) ?? { words: 0, score: 0 };
      scores.set(number, { words: before.words + 1, score: before.score + score });
    }
  }
  const found = [...scores].filter(([number]) => chosen(number));
  const most = found.reduce((all, [, { words }]) => Math.max(all, words), 0);
  const numbers = found
    .filter(([, { words }]) => words === most)
    .sort(([a, first], [b, second]) => second.score - first.score || a - b)
    .map(([number]) => number);
  return choice.order === '' ? numbers : ordered(index, numbers, choice.order);
}

/** In the order that was asked for; by title where none was. Numbers stand in the order of titles already. */
function ordered({ facets }: Words, numbers: readonly number[], order: string): readonly number[] {
  const byTitle = [...numbers].sort((a, b) => a - b);
  if (order === 'minutes') return byTitle.sort((a, b) => (facets.minutes[a] ?? 0) - (facets.minutes[b] ?? 0));
  if (order === 'reviewed') return byTitle.sort((a, b) => (facets.reviewed[b] ?? 0) - (facets.reviewed[a] ?? 0));
  return byTitle;
}
