/**
 * The regular inflections of English: from a word as it stands to the words it may have been made from.
 * Syllables and familiar words both look a word up by these stems.
 */

export type Ending = 's' | 'es' | 'ed' | 'ing' | 'er' | 'est' | 'ly' | 'n';

export interface Stem {
  readonly stem: string;
  readonly ending: Ending;
}

const vowel = /[aeiouy]/u;

const beforeVowels = ['ing', 'ed', 'er', 'est'] as const;

/** The stems a word may have, likeliest first. Whether one is a word at all is for the caller to look up. */
export function stemsOf(word: string): readonly Stem[] {
  const stems: Stem[] = [];
  for (const ending of beforeVowels) if (word.endsWith(ending)) add(stems, ending, beforeVowel(word.slice(0, -ending.length)));
  if (word.endsWith('ly')) {
    const base = word.slice(0, -2);
    add(stems, 'ly', [fromI(base), base, /[^aeiouy]$/u.test(base) ? `${base}le` : undefined]);
  }
  if (/(?:[sxzo]|[cs]h|[^aeiou]i)es$/u.test(word)) add(stems, 'es', [fromI(word.slice(0, -2)), word.slice(0, -2)]);
  if (/[^siu]s$/u.test(word)) add(stems, 's', [word.slice(0, -1)]);
  if (/[aeow]n$/u.test(word)) add(stems, 'n', [word.slice(0, -1)]);
  return stems;
}

function add(stems: Stem[], ending: Ending, found: readonly (string | undefined)[]): void {
  for (const stem of found) if (stem !== undefined && stem.length > 1 && vowel.test(stem)) stems.push({ stem, ending });
}

/** A stem before an ending that begins with a vowel: happi-er, settl-ed, stopp-ed, walk-ed, lik-ed. */
function beforeVowel(base: string): readonly (string | undefined)[] {
  const settled = /[^aeiourwly]l$/u.test(base) ? `${base}e` : undefined;
  const stopped = /([bdfgklmnprstz])\1$/u.test(base) ? base.slice(0, -1) : undefined;
  return [fromI(base), settled, base, stopped, settled === undefined ? `${base}e` : undefined];
}

/** happi- was happy. */
function fromI(base: string): string | undefined {
  return /[^aeiou]i$/u.test(base) ? `${base.slice(0, -1)}y` : undefined;
}
