import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { blanksIn } from './frame-pattern.ts';
import { languageOf } from './plain-words.ts';

/** Blanks in one frame: more is a puzzle. Common practice, no source. */
const mostBlanks = 3;
/** An article just before a blank settles which words fit. "a/an" and "un/una" leave it open, so they are passed over. */
const article = { en: /(?<![\p{L}/(])(an?) _{2,}/iu, es: /(?<![\p{L}/(])(un|una) _{2,}/iu };
const instead = { en: 'a/an', es: 'un/una' };

/** A frame has three blanks at most, and no article before one that shuts out half of the good words. Common practice, no source. */
export function* frameShape(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  for (const [index, stop] of pack.stops.entries()) {
    for (const [place, frame] of (stop.frames ?? []).entries()) {
      const at = placeOf(pack, 'stops', index, 'frames', place);
      const found = blanksIn(frame);
      if (found > mostBlanks) yield finding('frames/too-many-blanks', 'note', at, { frame, found, most: mostBlanks });
      const fixed = language === undefined ? undefined : article[language].exec(frame)?.[1];
      if (language !== undefined && fixed !== undefined) yield finding('frames/article-before-blank', 'note', at, { frame, article: fixed, instead: instead[language] });
    }
  }
}
