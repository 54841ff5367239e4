/** The folder of a book, unpacked and opened from the disk as a double click does: no server, no network. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { zipOf } from '../../src/outputs/zip.ts';
import { readBooklet } from '../../src/core/booklet/read-booklet.ts';
import { startBrowser } from '../whole-site/browser.ts';
import { builtSite } from '../whole-site/site.ts';
import { begin, kept, scribble, turnTo } from './booklet-page.ts';

const site = await builtSite();
let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await startBrowser();
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-folder-'));
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
});

async function unpacked(book: string): Promise<{ readonly place: string; readonly files: Readonly<Record<string, Uint8Array>> }> {
  const files = unzipSync(await readFile(join(site, book, 'pack.zip')));
  const place = join(folder, book);
  for (const [name, bytes] of Object.entries(files)) {
    await mkdir(dirname(join(place, name)), { recursive: true });
    await writeFile(join(place, name), bytes);
  }
  return { place, files };
}
const at = (place: string, page: string) => pathToFileURL(join(place, page)).href;

/** A window without a network; what it asks for and does not get, and every error, is gathered. */
async function withoutNetwork(): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const context = await browser.newContext({ offline: true, viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', acceptDownloads: true });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('requestfailed', (request) => {
    // A picture that is still on its way when the page is left is no fault.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') faults.push(`failed: ${request.url()}`);
  });
  page.on('request', (request) => {
    if (!/^(?:file|data|blob):/.test(request.url())) faults.push(`asked: ${request.url()}`);
  });
  return { page, faults };
}

test.each(['packs/the-crow-and-the-tall-jar', 'es/packs/tomato-weather'])('every page of %s opens from the disk with its styles and pictures, and no link leads to nothing', async (book) => {
  const { place, files } = await unpacked(book);
  const { page, faults } = await withoutNetwork();
  const pages = Object.keys(files).filter((name) => name.endsWith('.html'));
  expect(pages).toEqual(expect.arrayContaining(['index.html', 'booklet.html', 'lesson.html', 'privacy.html']));
  for (const name of pages) {
    await page.goto(at(place, name));
    const seen = await page.evaluate(async () => {
      for (const image of document.images) image.loading = 'eager';
      await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
      return {
        titles: document.querySelectorAll('h1').length,
        styled: getComputedStyle(document.body).backgroundColor !== 'rgba(0, 0, 0, 0)',
        broken: [...document.images].filter((image) => image.naturalWidth === 0).map((image) => image.src),
        links: [...document.querySelectorAll<HTMLAnchorElement>('a[href]')].map(({ href }) => href).filter((href) => href.startsWith('file:')),
        wide: document.documentElement.scrollWidth,
      };
    });
    expect(seen, name).toMatchObject({ styled: true, broken: [], wide: 360 });
    expect(seen.titles).toBeGreaterThan(0);
    for (const link of seen.links) {
      const { pathname } = new URL(link);
      expect(decodeURI(pathname).slice(place.length + 1) in files, `${name}: ${link}`).toBe(true);
    }
  }
  expect(faults).toEqual([]);
  await page.context().close();
});

test('the booklet can be answered from the disk, keeps what is answered, and hands it over', async () => {
  const { place } = await unpacked('packs/the-lamp-on-the-jetty');
  const { page, faults } = await withoutNetwork();
  await page.goto(at(place, 'index.html'));
  await page.locator('.onward-list a').first().click();
  await page.waitForSelector('main.on-screen');
  await begin(page);
  await turnTo(page, 'stop-see-the-end');
  await page.locator('.is-open textarea').first().fill('Joss is cold.');
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  await scribble(page, 1, 8);
  await kept(page);
  await page.reload();
  await page.waitForSelector('main.on-screen');
  await turnTo(page, 'stop-see-the-end');
  expect(await page.locator('.is-open textarea').first().inputValue()).toBe('Joss is cold.');
  await turnTo(page, 'my-page');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  const read = readBooklet(await readFile(await (await download).path(), 'utf8'));
  expect(read.booklet?.entries.map(({ value }) => value.kind).sort()).toEqual(['drawing', 'written']);
  // Nothing else than the page of answers is lost when a browser keeps nothing for pages from a disk: words say so.
  await page.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    IDBFactory.prototype.open = refuse;
    for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name, { get: refuse });
  });
  await page.goto(at(place, 'booklet.html'));
  await page.waitForSelector('main.on-screen');
  await begin(page);
  await turnTo(page, 'stop-see-the-end');
  await page.locator('.is-open textarea').first().fill('Joss is cold.');
  await page.locator('.keeping-line.is-failed').waitFor();
  await page.goto(at(place, 'lesson.html'));
  await page.locator('main.live, main .choices').first().waitFor();
  expect(faults).toEqual([]);
  await page.context().close();
});

test('the same files are the same bytes, at any hour', async () => {
  const files = { 'files/a.webp': new Uint8Array([1, 2, 3]), 'index.html': new TextEncoder().encode('<p>Hello</p>'.repeat(50)) };
  const first = zipOf(files);
  // A zip counts time in steps of two seconds.
  await new Promise((done) => setTimeout(done, 2100));
  expect(Buffer.from(zipOf(files)).equals(Buffer.from(first))).toBe(true);
});

test('nothing private is in a folder: no run of eight words of the book’s own text, no file that the site does not show', async () => {
  for (const book of ['packs/the-lamp-on-the-jetty', 'packs/tomato-weather']) {
    const files = unzipSync(await readFile(join(site, book, 'pack.zip')));
    const wordsOf = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}’']+/gu) ?? [];
    const passage = wordsOf(await readFile(fileURLToPath(new URL(`../../content/${book}/private/passage.txt`, import.meta.url)), 'utf8'));
    expect(passage.length).toBeGreaterThan(100);
    const texts = Object.entries(files).flatMap(([name, bytes]) => (name.endsWith('.html') ? [` ${wordsOf(new TextDecoder().decode(bytes)).join(' ')} `] : []));
    const found = passage.map((_, index) => passage.slice(index, index + 8).join(' ')).filter((run) => run.split(' ').length === 8 && texts.some((text) => text.includes(` ${run} `)));
    expect(found).toEqual([]);
    expect(Object.keys(files).filter((name) => !/^(?:[a-z-]+\.(?:html|pdf)|files\/[\w-]+(?:\.[\w-]+)*|files\/fonts\/[\w-]+\.woff2)$/.test(name))).toEqual([]);
  }
});
