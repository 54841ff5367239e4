import type { AltRule } from './alt-context.ts';

/** "See above" leaves somebody who listens with nothing. "They see above the clouds a kite" is a sentence. Source: W3C failure F30; patterns our own. */
const patterns = [
  /^\(?(?:please )?(?:see|refer to|read)(?: the| our)? (?:above|below|captions?|text|description|next page|previous page|main text|body text|article|page \d+|explanation)(?: (?:above|below))?[).!]*$/iu,
  /\((?:see|as) (?:above|below|caption|text|the text|the caption)\)/iu,
  /\bas (?:described|explained|shown|seen|mentioned|stated)(?: (?:in|by) the (?:text|caption|story|paragraph))?(?: (?:above|below|before|earlier|elsewhere))?(?:[.,;:)]|$)/iu,
  /^(?:described|explained)(?: (?:above|below|elsewhere)| in the (?:text|caption|paragraph)(?: (?:above|below))?)[.!]*$/iu,
  /^(?:the )?same(?: (?:picture|image|photo|illustration|drawing))? (?:as (?:above|below|before|the (?:last|previous|first|other|next) (?:one|picture|image|photo|page|illustration|drawing)|(?:picture|image|figure) \d+)|again)[.!]*$/iu,
  /^(?:ditto|idem|ídem)[.!]*$/iu,
  /^\(?(?:véase|vea|ver|lea|consulte|consultar|ir a)(?: (?:el|la|más))? (?:arriba|abajo|texto|pie(?: de foto)?|leyenda|descripción|página(?: \d+)?|epígrafe|anterior|siguiente)(?: (?:de )?(?:más )?(?:arriba|abajo|anterior|siguiente))?[).!]*$/iu,
  /(?<!\p{L})como (?:se )?(?:describe|explica|muestra|indica|ve|dice|describió|dijo)(?: (?:más )?(?:arriba|abajo|antes)| en (?:el texto|la leyenda|el pie))+(?:[.,;:)]|$)/iu,
  /^(?:(?:la |el |lo )?mism[oa](?: (?:imagen|foto|dibujo|ilustración))?|igual) (?:que|de) (?:(?:la|el|lo|en la) )?(?:(?:imagen|foto|dibujo|figura|ilustración|página) )?(?:de )?(?:anterior|arriba|antes|siguiente|primera?|última|último)[.!]*$/iu,
] as const;

export const pointsElsewhere: AltRule<'alt-text/points-elsewhere'> = {
  code: 'alt-text/points-elsewhere',
  level: 'warn',
  look: (alt) => {
    const found = patterns.map((each) => each.exec(alt.unquoted)?.[0]).find((each) => each !== undefined);
    return found === undefined ? undefined : { found: found.slice(0, 60) };
  },
};
