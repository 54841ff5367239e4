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

/** The stems a word may have, likeliest first. Whether one is a word at all is for the caller to look up. */
export function stemsOf(word: string): readonly Stem[] {
  const stems: Stem[] = [];
  const add = (ending: Ending, ...found: readonly (string | undefined)[]): void => {
    for (const stem of found) if (stem !== undefined && stem.length > 1 && vowel.test(stem)) stems.push({ stem, ending });
  };
  const without = (ending: string): string | undefined => (word.endsWith(ending) ? word.slice(0, -ending.length) : undefined);

  for (const ending of ['ing', 'ed', 'er', 'est'] as const) {
    const base = without(ending);
    if (base !== undefined) add(ending, ...beforeVowel(base));
  }
  const adverb = without('ly');
  if (adverb !== undefined) add('ly', fromI(adverb), adverb, /[^aeiouy]$/u.test(adverb) ? `${adverb}le` : undefined);
  const plural = without('es');
  if (plural !== undefined && /(?:[sxzo]|[cs]h|[^aeiou]i)$/u.test(plural)) add('es', fromI(plural), plural);
  if (/[^siu]s$/u.test(word)) add('s', without('s'));
  if (/[aeow]n$/u.test(word)) add('n', without('n'));
  return stems;
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
