import { fileOf } from '../outputs/addresses.ts';
import type { Page } from '../outputs/views.ts';
import type { KeptSite } from './kept-site.ts';
import type { TextThreads } from './text-threads.ts';
import { turns } from './turns.ts';

/** Kinds of pages of which there is one for each pack. */
const ofPacks = new Set<Page['view']['kind']>(['family', 'booklet', 'lesson', 'recording', 'retired']);

interface Means {
  readonly markOf: (page: Page) => string;
  /** The folder of the new site. */
  readonly output: string;
  readonly cache: string;
  readonly threads: TextThreads;
  /** Told after each page of a pack. */
  readonly progress?: ((done: number, all: number) => void) | undefined;
}

/**
 * Writes the pages that the old site does not have already. The engine makes those of the library. Those of packs are made
 * beside it by the same layouts, on threads, which end with it: each page that goes through it stays in its memory, and a large library has tens of thousands.
 */
export async function writePages(pages: readonly Page[], site: KeptSite, { markOf, output, cache, threads, progress }: Means): Promise<void> {
  const forEngine: Page[] = [];
  const beside: { readonly page: Page; readonly file: string; readonly mark: string }[] = [];
  const turn = turns();
  for (const page of pages) {
    await turn();
    const file = fileOf(page.url);
    const mark = markOf(page);
    if (site.take(file, mark)) continue;
    if (ofPacks.has(page.view.kind)) beside.push({ page, file, mark });
    else {
      // The engine writes over what is there.
      site.makeRoom(file);
      forEngine.push(page);
    }
  }
  let made = 0;
  await threads.make(beside, ({ file, mark }, html) => {
    site.write(file, html, mark);
    progress?.(++made, beside.length);
  });
  // The engine needs the room.
  await threads.close();
  if (forEngine.length === 0) return;
  const { makePages } = await import('./eleventy.ts');
  await makePages(forEngine, output, cache, (page, html) => {
    site.note(fileOf(page.url), html, markOf(page));
  });
}
