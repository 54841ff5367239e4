import { phrasesFor } from '../../core/languages/pick-language.ts';
import type { Line, Sheet } from './sheet.ts';
import type { SubstituteData } from './substitute.ts';

/**
 * What only one room knows, from a plain text: a line `Label: text` for each thing, and lines below it that go on.
 * Empty lines and lines that begin with `#` are passed over. A text before the first label stands under no label.
 */
export function readLocalDetails(text: string): readonly Line[] {
  const lines: { label: string; text: string }[] = [];
  for (const line of text.replace(/^\ufeff/, '').split(/\r\n?|\n/)) {
    if (line.trim() === '' || line.startsWith('#')) continue;
    const match = /^(\S[^:]{0,59}):\s*(.*)$/.exec(line);
    const last = lines.at(-1);
    if (match) lines.push({ label: (match[1] ?? '').trim(), text: (match[2] ?? '').trim() });
    else if (last) last.text = `${last.text} ${line.trim()}`.trim();
    else lines.push({ label: '', text: line.trim() });
  }
  return lines;
}

/**
 * A substitute's sheet for one room: a detail whose label is that of a blank on the first page fills it in (in the pack's language
 * or in English), and the others stand on a second page that says that it is private.
 */
export function withLocalDetails(sheet: Sheet<SubstituteData>, details: readonly Line[]): Sheet<SubstituteData> {
  const { data } = sheet;
  const { local, localNote, place, seating, quiet } = phrasesFor(data.language).paper.substitute;
  const english = phrasesFor('en').paper.substitute;
  const blanks = [
    [place, english.place],
    [seating, english.seating],
    [quiet, english.quiet],
  ] as const;
  const same = (one: string, other: string) => one.trim().toLowerCase() === other.toLowerCase();
  const textOf = (label: string) => details.find((detail) => blanks.some((names) => names[0] === label && names.some((name) => same(detail.label, name))))?.text ?? '';
  const rest = details.filter((detail) => !blanks.some((names) => names.some((name) => same(detail.label, name))));
  return {
    ...sheet,
    data: {
      ...data,
      versions: data.versions.map((version) => ({ ...version, blanks: version.blanks.map(({ label }) => ({ label, text: textOf(label) })) })),
      local: rest.length === 0 ? undefined : { title: local, note: localNote, lines: rest },
    },
  };
}
