import { foldedWords } from './fold.ts';
import { forgiven, slipsBetween } from './slips.ts';

/** Articles that a title is told without, in the languages of the interface. */
const articles = new Set(['the', 'a', 'an', 'el', 'la', 'los', 'las', 'un', 'una']);

/** A title as it is compared: folded, without the article in front and without signs. */
export function titleOf(title: string): string {
  const words = foldedWords(title);
  return (words.length > 1 && articles.has(words[0] ?? '') ? words.slice(1) : words).join(' ');
}

/** The same title, or one slip of the pen away from it; a slip in a number or in a short title makes another title. */
export function sameTitle(first: string, second: string): boolean {
  const [a, b] = [titleOf(first), titleOf(second)];
  if (a === b) return a !== '';
  if (a.replace(/\D/g, '') !== b.replace(/\D/g, '')) return false;
  return Math.min(a.length, b.length) >= 8 && slipsBetween(a, b, 1) !== undefined;
}

/** Whether two lines about who wrote a book name somebody in common: "Mina Alder" and "Alder, M." do. */
export function sameAuthor(first: string, second: string): boolean {
  const [a, b] = [namesIn(first), namesIn(second)];
  return a.some((name) => b.some((other) => name === other || slipsBetween(name, other, Math.min(1, forgiven(name))) !== undefined));
}

/** Words that stand beside a name and are none. */
const noNames = new Set(['and', 'retold', 'told', 'adapted', 'illustrated', 'written', 'anonymous', 'unknown', 'various', 'por', 'contado', 'adaptado', 'version', 'anonimo']);
const namesIn = (line: string) => foldedWords(line).filter((word) => word.length > 2 && !noNames.has(word));
