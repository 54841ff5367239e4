import { finding, type Finding } from '../finding.ts';
import type { Pack } from '../pack/pack.ts';
import { publishedTexts } from '../pack/published-texts.ts';
import type { ProsePage } from '../pack/read-prose-page.ts';
import { readRoster, rosterNamesIn, rosterNamesInFileName } from './roster-names.ts';
import type { Surroundings } from './surroundings.ts';

/** Fields that hold the name of a file or an id: published as a part of an address. */
const addresses = new Set(['file', 'picture', 'captions', 'id']);
/** Fields in which adults put their names by choice. */
const makers = new Set(['book', 'by']);

/**
 * No child's name stands in what a pack publishes. The names come from a list that stays on the machine; a name that a
 * character of the book has as well passes when it stands under `allow words`.
 * Names of children under 13 are personal information: COPPA rule, 16 CFR 312.2. That names are held against a local list
 * is common practice, no source.
 */
export function* privacyRoster(pack: Pack, { roster: lines }: Surroundings): Iterable<Finding> {
  if (lines === 'unread') {
    yield finding('privacy/roster-unread', 'stop', { file: pack.file, line: 1, column: 1 }, {});
    return;
  }
  if (lines.length === 0) return;
  const roster = readRoster(lines, { words: pack.allowWords ?? [], makers: [pack.book.author, pack.book.illustrator ?? '', pack.by.name] });
  for (const published of publishedTexts(pack)) {
    const { steps, text } = published;
    if (makers.has(String(steps[0]))) continue;
    const names = addresses.has(String(steps.at(-1))) ? rosterNamesInFileName(text, roster) : rosterNamesIn(text, roster);
    for (const name of names) yield finding('privacy/roster-name', 'stop', published.place, { name });
  }
}

/** The same for one of the library's own pages. */
export function* rosterInPage(page: ProsePage, file: string, lines: Surroundings['roster']): Iterable<Finding> {
  const top = { file, line: 1, column: 1 };
  if (lines === 'unread') {
    yield finding('privacy/roster-unread', 'stop', top, {});
    return;
  }
  if (lines.length === 0) return;
  const roster = readRoster(lines);
  const texts = [
    { text: page.title, place: top },
    { text: page.description, place: top },
    ...[...page.body.blocks, ...page.body.asides].map(({ text, line }) => ({ text, place: { file, line, column: 1 } })),
  ];
  for (const { text, place } of texts) for (const name of rosterNamesIn(text, roster)) yield finding('privacy/roster-name', 'stop', place, { name });
}
