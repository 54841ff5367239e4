import { stat } from 'node:fs/promises';
import { finding, type Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { Sheet } from '../outputs/sheets/sheet.ts';
import { sheetsOf } from '../outputs/sheets/sheets.ts';
import type { Paper, ShownPack } from '../outputs/views.ts';
import type { SiteFile } from './write-files.ts';
import { makePdfs, unprintable, type PdfJob, type PdfOptions } from './pdf.ts';

export interface MadePapers {
  /** The packs with what they are printed as. */
  readonly packs: readonly ShownPack[];
  readonly files: readonly { readonly url: string; readonly from: string }[];
  readonly findings: readonly Finding[];
}

/** The most that the pictures of one sheet may weigh, in bytes, before smaller ones are taken: a sheet is meant to stay under 500 kB. */
const mostPictureBytes = 400_000;

/** Makes every pack's sheets. What cannot be made is told and left out; the pages do without it. */
export async function makePapers(shown: readonly ShownPack[], library: Library, built: readonly SiteFile[], options: PdfOptions): Promise<MadePapers> {
  const fromOf = new Map(built.flatMap((file) => ('from' in file ? [[file.url, file.from] as const] : [])));
  const findings: Finding[] = [];
  const work: { readonly pack: ShownPack; readonly sheet: Sheet; readonly job: PdfJob }[] = [];
  for (const pack of shown) {
    const lost = new Set<string>();
    for (const sheet of sheetsOf(pack, library)) work.push({ pack, sheet, job: await jobOf(sheet, fromOf, lost) });
    if (lost.size > 0) findings.push(finding('paper/letters', 'note', { file: pack.pack.file, line: 1, column: 1 }, { characters: [...lost].slice(0, 12).join(' ') }));
  }
  const made = await makePdfs(
    work.map(({ job }) => job),
    options,
  );
  if ('cannotStart' in made) {
    const nowhere = finding('paper/no-program', 'warn', { file: 'library.yaml', line: 1, column: 1 }, { machine: `${process.platform} ${process.arch}` });
    return { packs: shown, files: [], findings: [nowhere] };
  }
  const files: { url: string; from: string }[] = [];
  const papersOf = new Map<ShownPack, Paper[]>();
  for (const [index, { pack, sheet }] of work.entries()) {
    const result = made.results[index];
    if (result?.made !== true) {
      findings.push(finding('paper/not-made', 'warn', { file: pack.pack.file, line: 1, column: 1 }, { sheet: sheet.kind, reason: result?.fault ?? '' }));
      continue;
    }
    files.push({ url: sheet.url, from: result.from });
    papersOf.set(pack, [...(papersOf.get(pack) ?? []), { kind: sheet.kind, url: sheet.url, pages: result.pages, bytes: (await stat(result.from)).size }]);
  }
  return { packs: shown.map((pack) => ({ ...pack, papers: papersOf.get(pack) ?? [] })), files, findings };
}

/** A sheet as it is set: only letters that the fonts have, and only pictures that are there. */
export async function jobOf(sheet: Sheet, fromOf: ReadonlyMap<string, string>, lost: Set<string>): Promise<PdfJob> {
  const wanted = new Set<string>();
  const small = new Map<string, string>();
  const clean = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return key === 'svg' ? value : printable(value, lost);
    if (Array.isArray(value)) return value.map((each) => clean(each, key));
    // A template asks for each value by name, so one that is not there has to be told as nothing.
    if (typeof value !== 'object' || value === null) return value ?? null;
    if ('smaller' in value && 'url' in value) {
      wanted.add(String(value.url));
      small.set(String(value.url), String(value.smaller));
    }
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, clean(each, name)]));
  };
  let data = clean(sheet.data, '');
  let names = [...wanted];
  let bytes = 0;
  for (const name of names) bytes += await stat(fromOf.get(name) ?? '').then((status) => status.size);
  if (bytes > mostPictureBytes) {
    data = JSON.parse(JSON.stringify(data), (key, value: unknown) => (key === 'url' && typeof value === 'string' ? (small.get(value) ?? value) : value)) as unknown;
    names = [...new Set(small.values())];
  }
  return { template: sheet.kind, data: data as object, pictures: names.map((name) => ({ name, from: fromOf.get(name) ?? '' })) };
}

/** A text without line ends and without characters that the fonts cannot show; those are noted. */
function printable(text: string, lost: Set<string>): string {
  const line = text.replace(/\s+/gu, ' ');
  const missing = unprintable(line);
  if (missing.length === 0) return line;
  // Signs that only join or turn what stands beside them are no loss.
  for (const character of missing) if (!/\p{Default_Ignorable_Code_Point}/u.test(character)) lost.add(character);
  return [...line]
    .filter((character) => !missing.includes(character))
    .join('')
    .replace(/ {2,}/g, ' ')
    .trim();
}
