import type { AltRule } from './alt-context.ts';

/**
 * An end that sounds as if something were missing: a comma or a dash, piled marks, or a word that waits for another ("with a"). A phrase
 * needs no full stop, and a quotation may end as it likes. Common practice, no source.
 */
const openEnd = /(?:[,;:/&+]|(?:^| )[-–—]|[–—])$/u;
const piled = /!!|\?\?|(?:\.{2,}|…)$/u;
const waiting = new Map<string, RegExp>([
  ['en', /(?<!\p{L})(?:an?|the|of|with|and|or|their|his|my|its)$/u],
  ['es', /(?<!\p{L})(?:una?|el|l[ao]s?|del?|al|con|y|o|en|que|por|para|su|sus)$/u],
]);
/** "The letter a", "the word the". */
const namedSign = /(?<!\p{L})(?:letters?|words?|letras?|palabras?|notas?|vowels?|vocal(?:es)?) (?:\p{L}{1,4} (?:and|y) )?\S+$/iu;

export const ending: AltRule<'alt-text/ending'> = {
  code: 'alt-text/ending',
  level: 'note',
  look: (alt) => {
    const bare = alt.text;
    const found = openEnd.exec(bare)?.[0] ?? piled.exec(alt.unquoted)?.[0] ?? (alt.words.length > 2 && !namedSign.test(bare) ? waiting.get(alt.baseLanguage)?.exec(bare)?.[0] : undefined);
    // A text that ends inside a quotation has its end there.
    return found === undefined || /["”»]$/u.test(bare) ? undefined : { found: found.trim() };
  },
};
