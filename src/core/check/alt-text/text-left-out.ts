import { folded, wordsOf } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/**
 * What can be read in a picture stands in its alt text, or in the text beside it. Source: WCAG 2.2, 1.4.5 Images of Text; W3C, "An alt
 * Decision Tree"; ACT rule 0va7u6. One word of five may differ ("six", "6"): our own mark.
 */
const shareThatMayDiffer = 0.2;

export const textLeftOut: AltRule<'alt-text/text-left-out'> = {
  code: 'alt-text/text-left-out',
  level: 'warn',
  look: (alt) => {
    const inPicture = wordsOf(alt.textInPicture ?? '').map(folded);
    if (inPicture.length === 0) return undefined;
    const told = new Set([alt.text, ...(alt.beside ?? [])].flatMap((text) => wordsOf(text).map(folded)));
    const missing = inPicture.filter((word) => !told.has(word));
    return missing.length > inPicture.length * shareThatMayDiffer ? { found: (alt.textInPicture ?? '').trim().slice(0, 80) } : undefined;
  },
};
