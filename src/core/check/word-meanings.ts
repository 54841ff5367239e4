import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { languageOf, timesIn, wordsOf } from './plain-words.ts';

/** Words of an explanation for children. Common practice, no source. */
const longestMeaning = 20;
/** Words taught with one book: two or three in depth, some more in passing. Source: McGee & Schickedanz 2007, five to ten in that method. */
const mostWords = 10;

/**
 * An explanation is short and does not explain a word by itself. From memory: Beck, McKeown & Kucan 2002; the length is common practice.
 * The word may stand once, as what is explained: "If you are generous, you …".
 */
export function* wordMeanings(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  for (const [index, { word, meaning }] of (pack.words ?? []).entries()) {
    const at = placeOf(pack, 'words', index, 'meaning');
    const found = wordsOf(meaning).length;
    if (found > longestMeaning) yield finding('words/long-meaning', 'note', at, { word, found, most: longestMeaning });
    if (language !== undefined && timesIn(meaning, word, language) >= 2) yield finding('words/meaning-uses-word', 'note', at, { word });
  }
  const found = pack.words?.length ?? 0;
  if (found > mostWords) yield finding('words/too-many', 'note', placeOf(pack, 'words'), { found, most: mostWords });
}
