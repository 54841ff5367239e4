import { isKnown, type AltRule, type ReadAlt } from './alt-context.ts';
import { folded, wordsOf } from './alt-words.ts';

/**
 * Who made a picture belongs into the field `credit`, which is shown below it. Somebody of the book may have drawn something too:
 * "a kite drawn by Nell". Source: W3C, "Tips and Tricks" of the Images Tutorial; patterns our own.
 */
const work = '(?:photos?|photographs?|photography|pictures?|images?|illustrations?|illustrated|drawings?|artwork|art|painting|drawn|painted|photographed)';
const workInSpanish = '(?:fotos?|fotografías?|fotografiad[oa]s?|imagen|imágenes|ilustración|ilustraciones|ilustrad[oa]s?|dibujos?|dibujad[oa]s?|pintad[oa]s?|arte)';
const name = "\\p{Lu}[\\p{L}'’-]*\\.?";

/** Always a credit. */
const always = [
  /©|\([cC]\) ?(?:\d{4}|\p{Lu})/u,
  /\b(?:[Cc]opyright|COPYRIGHT)(?: by| of| held by)? ?(?:the |©|\([cC]\)|\d{4}|\p{Lu})/u,
  /\b(?:photo|image|picture|illustration|art) credits?\b|(?<!\p{L})cr[eé]ditos?:/iu,
  /\bcourtesy of\b|\bcortesía de(?!\p{L})/iu,
  /\bused (?:with|by)(?: \p{L}+)? permission\b|\bby (?:kind )?permission of\b|\bcon (?:el )?(?:amable )?permiso de(?:l| la| el| los) (?:editorial|autora?|ilustradora?|artista)/iu,
  /\ball rights reserved\b|\btodos los derechos reservados\b/iu,
  /\bCC(?:0|[ -]BY(?:[ -](?:SA|NC|ND))*)\b|\bcreative commons\b|\bpublic domain\b|\bdominio público\b/iu,
  /(?<!\p{L})(?:[Oo]bra|[Aa]utoría|[Aa]rte|[Ii]lustraciones) de \p{Lu}[\p{L}.]* \p{Lu}\p{L}+/u,
  /(?<!\p{L})(?:artist|illustrator|photographer|author|artista|autora?|ilustradora?)(?: is)? (?:unknown|anonymous|desconocid[oa]|anónim[oa])(?!\p{L})/iu,
  /^(?:source|fuente): ?\S/iu,
  /(?<!\p{L})(?:[Aa]rtist|[Ii]llustrator|[Aa]uthor|[Pp]hotographer|[Aa]utora?|[Ii]lustradora?|[Ff]otógraf[oa]|[Dd]ibujante): ?\p{Lu}/u,
  /\((?:\p{Lu}[\p{L}.]* ){0,2}\p{Lu}[\p{L}-]*, (?:1[89]|20)\d\d\)/u,
  new RegExp(`(?<!\\p{L})(?:[Pp]hoto|[Ii]mage|[Aa]rt|[Aa]rtwork|[Ii]llustrations?|[Dd]rawings?|[Ff]otos?|[Ff]otografías?|[Ii]lustraci(?:ón|ones)|[Dd]ibujos?): ?${name}(?: de(?: la)?)? ${name}`, 'u'),
] as const;
/** A credit unless the name is somebody's in the book. */
const unlessKnown = [
  /,? by (?:\p{Lu}\. ?){1,3}(\p{Lu}\p{L}+)/u,
  /, (?:by|por) (\p{Lu}\p{L}+ \p{Lu}[\p{L}-]+)\.?$/u,
  new RegExp(`(?<!\\p{L})(?:${bothCases(work)}) by (?:the (?:artist|illustrator|author) )?(${name})(?: ${name}){0,3}`, 'u'),
  new RegExp(`(?<!\\p{L})(?:${bothCases(workInSpanish)}) por (${name})(?: ${name}){0,3}`, 'u'),
] as const;
/** How children call the people at home: written with a capital, and no maker's name. */
const family = new Set('grandma grandpa granny nana mom mum dad mama papa mommy daddy aunt uncle abuela abuelo abuelita abuelito mamá papá tía tío'.split(' '));

export const credit: AltRule<'alt-text/credit'> = {
  code: 'alt-text/credit',
  level: 'warn',
  look: (alt) => {
    const found = creditIn(alt);
    return found === undefined ? undefined : { found: found.slice(0, 60) };
  },
};

function creditIn(alt: ReadAlt): string | undefined {
  const text = alt.unquoted;
  const sure = always.map((each) => each.exec(text)?.[0]).find((each) => each !== undefined);
  if (sure !== undefined) return sure;
  for (const pattern of unlessKnown) {
    const hit = pattern.exec(text);
    const who = hit?.[1] ?? '';
    if (hit && !isKnown(alt, who) && !family.has(who.toLowerCase())) return hit[0];
  }
  const plain = ` ${wordsOf(text).map(folded).join(' ')} `;
  // One word could be anybody's.
  return [...(alt.makers ?? []), alt.credit ?? ''].find((each) => {
    const words = wordsOf(each).map(folded);
    return words.length > 1 && plain.includes(` ${words.join(' ')} `) && !isKnown(alt, each);
  });
}

/** Each alternative with a small and with a capital first letter. A flag for capitals would take every letter for a name's. */
function bothCases(pattern: string): string {
  return `${pattern}|${pattern.replace(/(^\(\?:|\|)(\p{Ll})/gu, (_, before: string, letter: string) => before + letter.toUpperCase())}`;
}
