import { isKnown, type AltRule } from './alt-context.ts';

/** "Beautiful" and "cute" say what somebody thinks of a picture. Whoever listens would like to think so too: so say what makes it so. Common practice, no source. */
const praise = new Map<string, RegExp>([
  [
    'en',
    /(?<!\p{L})(?:beautiful|cute|lovely|adorable|gorgeous|nice|wonderful|amazing|awesome|charming|delightful|stunning|fantastic|best (?:\p{L}+ )?ever|(?:very|so|really) pretty|pretty (?:picture|girl|flower|dress|butterfly|bird|house|garden|princess|face|ribbon|colou?r)s?)(?!\p{L})/giu,
  ],
  [
    'es',
    /(?<!\p{L})(?:bonit[oa]s?|lind[oa]s?|hermos[oa]s?|adorables?|maravillos[oa]s?|encantador(?:a|es|as)?|bell[oa]s?|(?<!(?:piedras?|metal|metales) )precios(?:ísim)?[oa]s?|simpátic[oa]s?|el mejor (?:\p{L}+ )?del mundo)(?!\p{L})/giu,
  ],
]);

export const opinion: AltRule<'alt-text/opinion'> = {
  code: 'alt-text/opinion',
  level: 'note',
  look: (alt) => {
    for (const match of alt.unquoted.matchAll(praise.get(alt.baseLanguage) ?? /(?!)/gu)) {
      // With a capital inside the text it is a name.
      const isName = match.index > 0 && /^\p{Lu}/u.test(match[0]);
      if (!isName && !isKnown(alt, match[0])) return { found: match[0] };
    }
    return undefined;
  },
};
