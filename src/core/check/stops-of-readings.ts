import { finding, type Finding } from '../finding.ts';
import { placeOf, stopsOf, type Pack } from '../pack/pack.ts';

/**
 * Planned stops of a first reading when others follow, and of a book's only reading. Common practice, no source. Sources disagree
 * about a first reading: next to no questions (dialogic reading) or a few key ones (McGee & Schickedanz 2007), so this is no more than a note.
 */
const mostOnFirst = 3;
const mostOnOnly = 6;

/** The first reading belongs to the story: few stops, and not more than the second has. */
export function* stopsOfReadings(pack: Pack): Iterable<Finding> {
  const first = pack.readings[0];
  if (first === undefined || pack.partial) return;
  const second = pack.readings[1];
  const found = stopsOf(pack, first.reading).length;
  const most = second === undefined ? mostOnOnly : mostOnFirst;
  const at = placeOf(pack, 'readings', 0);
  if (found > most) yield finding('reading/many-first-stops', 'note', at, { found, most });
  if (second === undefined) return;
  // A second reading without stops is for listening; nothing is to be said about it.
  const later = stopsOf(pack, second.reading).length;
  if (later > 0 && found > later) yield finding('reading/first-has-most', 'note', at, { first: found, second: later });
}
