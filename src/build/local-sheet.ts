import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Library } from '../core/pack/library.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { packUrls } from '../outputs/addresses.ts';
import { readLocalDetails, withLocalDetails } from '../outputs/sheets/local-details.ts';
import { sheetInput } from '../outputs/sheets/sheet.ts';
import { substituteSheet } from '../outputs/sheets/substitute.ts';
import { jobOf } from './papers.ts';
import { makePdfs } from './pdf.ts';

export type LocalSheet = { readonly made: true; readonly pages: number; readonly lost: readonly string[] } | { readonly made: false; readonly fault: string };

/**
 * Writes the substitute's sheet of one room, with its private details, to `out`. Only its owner may read the file.
 * Nothing of it is kept anywhere else: it is set in a folder of its own, which is gone afterwards.
 */
export async function makeLocalSheet(pack: PlannedPack, library: Library, details: string, out: string): Promise<LocalSheet> {
  const urls = packUrls(pack.slug, pack.language, library.language);
  const shown = { pack, pictures: [], recording: undefined, bodyHtml: '', urls, papers: [], versions: [] };
  const sheet = withLocalDetails(substituteSheet(sheetInput(shown, library)), readLocalDetails(details));
  const lost = new Set<string>();
  const cache = await mkdtemp(join(tmpdir(), 'bookfellow-local-'));
  try {
    const made = await makePdfs([await jobOf(sheet, new Map(), lost)], { cache });
    if ('cannotStart' in made) return { made: false, fault: made.cannotStart };
    const [result] = made.results;
    if (result?.made !== true) return { made: false, fault: result?.fault ?? '' };
    await mkdir(dirname(out), { recursive: true });
    await writeFile(out, await readFile(result.from), { mode: 0o600 });
    return { made: true, pages: result.pages, lost: [...lost] };
  } finally {
    await rm(cache, { recursive: true, force: true });
  }
}
