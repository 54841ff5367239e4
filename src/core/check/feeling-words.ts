import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { holds, keyOf, languageOf, plain } from './plain-words.ts';

/**
 * A feeling word that children may choose has its family, its strength and a one-line situation, and the situation tells the feeling
 * without naming it. Common practice, leaning on a source: a story of cause and result is a stronger cue than a face (Widen & Russell 2010).
 */
export function* feelingWords(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (!pack.partial) {
    const key = (word: string): string => (language === undefined ? plain(word) : keyOf(word, language));
    const explained = new Set([...(pack.feelings ?? []), ...(pack.words ?? [])].map(({ word }) => key(word)));
    for (const [index, stop] of pack.stops.entries()) {
      if (stop.kind !== 'feeling') continue;
      const words = (stop.words ?? []).filter((word) => !explained.has(key(word)));
      if (words.length > 0) yield finding('feelings/no-entry', 'note', placeOf(pack, 'stops', index, 'words'), { stop: stop.id, words });
    }
  }
  if (language === undefined) return;
  for (const [index, { word, situation }] of (pack.feelings ?? []).entries()) {
    if (holds(situation, word, language)) yield finding('feelings/situation-names-word', 'note', placeOf(pack, 'feelings', index, 'situation'), { word });
  }
}
