import type { Phrases } from '../core/languages/en.ts';
import { sayFinding } from '../core/languages/say-finding.ts';
import type { Library } from '../core/pack/library.ts';
import { isWithheld } from './quality-figures.ts';
import type { OwnerRow } from './views.ts';

/** The text that a librarian may send to an owner: plain, with the place of each finding, and nothing that the page about quality would not say. */
export function letterTo(row: OwnerRow, libraryName: string, { contact }: Pick<Library, 'contact'>, say: Phrases, language: string): string {
  const { librarian } = say;
  const lines = ({ pack, finding }: OwnerRow['told'][number]) => {
    const said = isWithheld(finding.code) ? say.quality.withheld : sayFinding(finding, language);
    return `- ${pack.title} (${finding.place.file}:${String(finding.place.line)})\n  ${said}`;
  };
  const part = (heading: string, told: OwnerRow['told']) => (told.length === 0 ? [] : ['', heading, '', ...told.map(lines)]);
  return [
    librarian.opening(libraryName, row.packs + row.keptOff),
    ...(row.keptOff === 0 ? [] : ['', librarian.letterOff(row.keptOff)]),
    ...part(
      librarian.letterLook,
      row.told.filter(({ finding }) => finding.level !== 'note'),
    ),
    ...part(
      librarian.letterNotes,
      row.told.filter(({ finding }) => finding.level === 'note'),
    ),
    ...(row.more === 0 ? [] : ['', librarian.letterMore(row.more)]),
    '',
    `${librarian.closing} ${contact}`,
  ].join('\n');
}

/** Letters in an address that mail programs and browsers take without cutting it. Common practice, no source. */
const longestAddress = 1800;

/** The letter as an address that opens a mail program; its end is left out where it would be too long. Source: RFC 6068. */
export function mailTo(contact: string | undefined, subject: string, text: string): string | undefined {
  if (contact === undefined || !/^[^\s@<>"?&]+@[^\s@<>"?&]+$/.test(contact)) return undefined;
  const address = (body: string) => `mailto:${encodeURIComponent(contact).replace('%40', '@')}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(body.replaceAll('\n', '\r\n'))}`;
  let lines = text.split('\n');
  while (lines.length > 1 && address([...lines, '…'].join('\n')).length > longestAddress) lines = lines.slice(0, -1);
  return address(lines.length === text.split('\n').length ? text : [...lines, '…'].join('\n'));
}
