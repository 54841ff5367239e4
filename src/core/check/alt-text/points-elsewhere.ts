import { folded, phrase } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/** "See above" leaves somebody who listens with nothing. "They see above the clouds a kite" is a sentence. Source: W3C failure F30; patterns our own. */
const patterns = (
  [
    /^\(?(?:please )?(?:see|refer to|read|check|look at)(?: the| our)?(?: (?:story|page|picture|lesson))? (?:story|above|below|captions?|text|description|next page|previous page|main text|body text|article|page \d+|explanation|picture|image|photo|illustration)(?: (?:above|below|on the (?:left|right|next page|last page|cover)|\d+))?[).!]*$/iu,
    /(?:^|[,;.(–—-] ?)(?:see|véase|ver|vea) (?:the |la |el )?(?:page|p\.|página|pág\.?|caption|text|texto|leyenda)(?: \d{1,3})?[).!]*$/iu,
    /^(?:like|as in) the (?:picture|image|photo|one|illustration) (?:before|above|below|on the (?:last|next) page)(?!\p{L})/iu,
    /\((?:see|as) (?:above|below|caption|text|the text|the caption)\)/iu,
    /\bas (?:described|explained|shown|seen|mentioned|stated)(?: (?:in|by) the (?:text|caption|story|paragraph))?(?: (?:above|below|before|earlier|elsewhere))?(?:[.,;:)]|$)/iu,
    /^(?:described|explained|shown|told)(?: (?:above|below|elsewhere)| (?:in|by) the (?:text|caption|paragraph|story)(?: .{0,30})?)[.!]*$/iu,
    /^(?:the |la |una )?(?:full |longer )?(?:description|explanation|caption|descripción|explicación|leyenda) (?:is |está )?(?:in|below|above|next|see|en|abajo|arriba|ver)(?!\p{L})/iu,
    /^(?:what|as) (?:the (?:text|caption|story|paragraph) (?:says|tells|describes|explains)|is (?:described|told|said|explained) (?:above|below|in the (?:text|story|caption)))[^.]{0,30}[.!]*$/iu,
    /^(?:lo (?:que )?|como )(?:se )?(?:cuenta|dice|explica|describe|descrito|explicado|contado)(?: (?:en )?el (?:texto|cuento|párrafo|pie)| (?:más )?(?:arriba|abajo))[^.]{0,30}[.!]*$/iu,
    /^(?:the )?same(?: (?:picture|image|photo|illustration|drawing))? (?:as (?:above|below|before|the (?:last|previous|first|other|next) (?:one|picture|image|photo|page|illustration|drawing)|(?:picture|image|figure) \d+)|again)[.!]*$/iu,
    /^(?:ditto|idem|ídem)[.!]*$/iu,
    /^\(?(?:véase|vea|ver|lea|consulte|consultar|ir a)(?: (?:el|la|más))? (?:arriba|abajo|texto|pie(?: de foto)?|leyenda|descripción|página(?: \d+)?|epígrafe|anterior|siguiente)(?: (?:de )?(?:más )?(?:arriba|abajo|anterior|siguiente))?[).!]*$/iu,
    /(?<!\p{L})como (?:se )?(?:describe|explica|muestra|indica|ve|dice|describió|dijo)(?: (?:más )?(?:arriba|abajo|antes)| en (?:el texto|la leyenda|el pie))+(?:[.,;:)]|$)/iu,
    /^(?:(?:la |el |lo )?mism[oa](?: (?:imagen|foto|dibujo|ilustración))?|igual) (?:que|de) (?:(?:la|el|lo|en la) )?(?:(?:imagen|foto|dibujo|figura|ilustración|página) )?(?:de )?(?:anterior|arriba|antes|siguiente|primera?|última|último)(?:[.!]*$|,)/iu,
  ] as const
).map((each) => phrase(each));

export const pointsElsewhere: AltRule<'alt-text/points-elsewhere'> = {
  code: 'alt-text/points-elsewhere',
  level: 'warn',
  look: (alt) => {
    const text = folded(alt.unquoted);
    const found = patterns.map((each) => each.exec(text)?.[0]).find((each) => each !== undefined);
    return found === undefined ? undefined : { found: found.slice(0, 60) };
  },
};
