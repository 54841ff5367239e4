/**
 * The pages as a browser prints them, on Letter and on A4, read back by somebody else's reader (pdfjs).
 * Lengths, sizes of text and rulings: our own criteria for print, drawn from what is usual in schools (common practice, no source);
 * tags, titles and alternative texts: PDF/UA-1 (ISO 14289-1). The files that Typst sets have their own test.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPdf, type ReadPdf } from '../paper/read-pdf.ts';
import { rulings } from '../../src/outputs/sheets/ruling.ts';
import { siteInBrowser } from './site-in-browser.ts';

const here = siteInBrowser();
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-print-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true });
});

const papers = ['Letter', 'A4'] as const;

/** The page printed on both papers, and the headings that stand on it. */
async function printed(path: string): Promise<{ readonly sheets: readonly ReadPdf[]; readonly headings: readonly string[] }> {
  const context = await here.browser.newContext({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce', colorScheme: 'dark' });
  const page = await context.newPage();
  await page.goto(here.server.address + path, { waitUntil: 'load' });
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await page.evaluate(() => document.fonts.ready);
  const headings = await page.$$eval('h1, h2, h3, h4', (all) => all.map((each) => each.textContent.replace(/\s+/g, ' ').trim()));
  const sheets: ReadPdf[] = [];
  for (const format of papers) {
    const file = join(folder, 'page.pdf');
    await writeFile(file, await page.pdf({ format, tagged: true, outline: true }));
    sheets.push(await readPdf(file));
  }
  await context.close();
  return { sheets, headings };
}

/** The longest packs of each language, and each other kind of page: sheets of paper at most, smallest text in points. */
const budgets: readonly (readonly [path: string, most: number, smallest: number])[] = [
  ['packs/the-cloud-keeper/', 2, 10.5],
  ['packs/seven-buttons/', 2, 10.5],
  ['es/packs/tomato-weather/', 2, 10.5],
  ['packs/the-cloud-keeper/lesson/', 4, 10.5],
  ['packs/tomato-weather/lesson/', 4, 10.5],
  ['es/packs/tomato-weather/lesson/', 4, 10.5],
  ['packs/the-lamp-on-the-jetty/booklet/', 12, 14],
  ['es/packs/tomato-weather/booklet/', 12, 14],
  ['packs/the-crow-and-the-tall-jar/recording/', 4, 10.5],
  ['', 3, 10.5],
];

describe('a printed page', () => {
  test.each(budgets)('/%s stays within %i sheets, with text of %f points or more', async (path, most, smallest) => {
    const { sheets, headings } = await printed(path);
    const foot = (sheet: ReadPdf, run: ReadPdf['runs'][number]) => run.y > sheet.paper[1] - 12;
    for (const [index, sheet] of sheets.entries()) {
      const where = `/${path} on ${papers[index] ?? ''}`;
      const runs = sheet.runs.filter((run) => !foot(sheet, run));
      expect(sheet.pages, where).toBeLessThanOrEqual(most);
      // The name of the library stands at the head of a child's sheet in smaller letters: it is for the grown-up who gathers the sheets.
      const small = runs.filter((run) => run.size < smallest - 0.05).map((run) => run.text);
      expect(smallest === 14 ? small.filter((text) => !text.includes('Read-Aloud Library') && !text.includes('biblioteca de lectura')) : small, where).toEqual([]);
      expect(Math.min(...runs.map((run) => run.from)), where).toBeGreaterThan(9);
      expect(Math.max(...runs.map((run) => run.to)), where).toBeLessThan(sheet.paper[0] - 9);
      const lastOfEach = Array.from(
        { length: sheet.pages },
        (_, page) =>
          runs
            .filter((run) => run.page === page + 1)
            .at(-1)
            ?.text.trim() ?? '(nothing)',
      );
      expect(
        lastOfEach.filter((text) => text === '(nothing)' || headings.includes(text)),
        where,
      ).toEqual([]);
      expect([sheet.tagged, sheet.language, sheet.title === '', sheet.fontsMissing, sheet.figures.filter((alt) => alt === undefined || alt === '')], where).toEqual([
        true,
        path.startsWith('es/') ? 'es' : 'en',
        false,
        [],
        [],
      ]);
    }
    expect(Math.abs((sheets[0]?.pages ?? 0) - (sheets[1]?.pages ?? 0))).toBeLessThanOrEqual(1);
  });

  test('lines to write on are true to size within 0.3 mm, a drawing box is 90 mm high or more, nothing to click is left', async () => {
    const context = await here.browser.newContext({ viewport: { width: 700, height: 900 } });
    const page = await context.newPage();
    await page.emulateMedia({ media: 'print' });
    const heights = async (path: string, selector: string) => {
      await page.goto(here.server.address + path, { waitUntil: 'load' });
      return page.$$eval(selector, (all) => all.map((each) => (each.getBoundingClientRect().height * 25.4) / 96));
    };
    for (const [path, size] of [
      ['packs/the-lion-and-the-mouse/booklet/', 'large'],
      ['packs/the-cloud-keeper/booklet/', 'small'],
    ] as const) {
      const found = await heights(path, `.ruled-${size} .ruled-line`);
      expect(found.length).toBeGreaterThan(0);
      for (const height of found) expect(Math.abs(height - rulings[size].height)).toBeLessThan(0.3);
      expect(Math.min(...(await heights(path, '.drawing-box')))).toBeGreaterThan(90);
      expect(await page.$$eval('button, input, video, audio, nav, summary', (all) => all.filter((each) => each.getBoundingClientRect().height > 1).map((each) => each.outerHTML.slice(0, 80)))).toEqual(
        [],
      );
    }
    await context.close();
  });
});
