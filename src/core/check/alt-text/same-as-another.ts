import { sameWords, wordsOf } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/** Two pictures with the same words cannot be told apart by ear. The same file may be shown twice. Common practice, no source. */
export const sameAsAnother: AltRule<'alt-text/same-as-another'> = {
  code: 'alt-text/same-as-another',
  level: 'warn',
  look: (alt) => {
    const other = (alt.others ?? []).find((each) => each.file !== alt.file && sameWords(wordsOf(each.alt ?? ''), alt.words));
    return other && alt.words.length > 0 ? { other: other.file } : undefined;
  },
};
