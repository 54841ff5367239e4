/** A book that was opened once works without a network. The server is stopped, which is the honest test: the worker's own requests fail as well. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startBrowser } from '../whole-site/browser.ts';
import { builtSite, serveBelowRoot } from '../whole-site/site.ts';

const site = await builtSite();
const book = 'packs/the-crow-and-the-tall-jar/';
let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

type Server = Awaited<ReturnType<typeof serveBelowRoot>>;

async function visited(folder = site): Promise<{ server: Server; context: BrowserContext; page: Page }> {
  const server = await serveBelowRoot(folder);
  const context = await browser.newContext({ viewport: { width: 390, height: 800 } });
  const page = await context.newPage();
  await page.goto(server.address + book);
  await page.waitForSelector('[data-part="kept"]:not([hidden])', { timeout: 20_000 });
  return { server, context, page };
}
const heading = (page: Page) => page.textContent('h1');
const copies = (page: Page) => page.evaluate(async () => (await caches.keys()).filter((name) => name.includes(' copy ')));

describe('a book that was opened once', () => {
  test('opens whole with the server stopped, also with a question mark, and other pages say plainly that they are not saved', { timeout: 90_000 }, async () => {
    const { server, context, page } = await visited();
    const told = Number(/[\d.]+/.exec((await page.textContent('.offline-note [data-size]')) ?? '')?.[0]);
    const list = JSON.parse(await readFile(join(site, book, 'offline.json'), 'utf8')) as { bytes: number; files: string[] };
    expect(told).toBeCloseTo(list.bytes / 1024 / 1024, 1);
    expect(list.bytes).toBeLessThan(5 * 1024 * 1024);
    await server.close();
    const opened: string[] = [];
    for (const path of ['', 'booklet/', 'lesson/', 'recording/', 'booklet/?from=home', 'lesson/#stop-kick', 'booklet']) {
      const response = await page.goto(server.address + book + path);
      expect(response?.status(), path).toBe(200);
      expect(await heading(page), path).toBe('The Crow and the Tall Jar');
      const bare = await page.evaluate(
        () => [...document.images].filter((image) => image.loading === 'eager' && image.naturalWidth === 0).length + Number(getComputedStyle(document.body).backgroundColor === 'rgba(0, 0, 0, 0)'),
      );
      expect(bare, path).toBe(0);
      opened.push(path);
    }
    expect(opened).toHaveLength(7);
    for (const path of ['', 'packs/tomato-weather/', 'es/', 'no-such-page/']) {
      const response = await page.goto(server.address + path);
      expect(response?.status()).toBe(503);
      expect(await heading(page)).toBe(path === 'es/' ? 'Esta página no está guardada en este aparato' : 'This page is not saved on this device');
      const links = await page.$$eval('a[href]', (all) => all.map((each) => (each as HTMLAnchorElement).href));
      expect(links.every((link) => link.startsWith(server.address) || link.includes('#') || link.startsWith('mailto:'))).toBe(true);
    }
    await page.goBack();
    await context.close();
  });

  test('can be taken away, stays away, and comes back when asked for', { timeout: 60_000 }, async () => {
    const { server, context, page } = await visited();
    await expect.poll(() => copies(page)).toHaveLength(1);
    await page.click('[data-act="remove"]');
    await page.waitForSelector('[data-part="removed"]:not([hidden])');
    await expect.poll(() => copies(page)).toEqual([]);
    await page.reload();
    await page.waitForSelector('[data-part="removed"]:not([hidden])');
    await expect.poll(() => copies(page)).toEqual([]);
    await page.click('[data-act="keep"]');
    await page.waitForSelector('[data-part="kept"]:not([hidden])');
    await expect.poll(() => copies(page)).toHaveLength(1);
    await context.close();
    await server.close();
  });

  test('when its pages change, says that there is a newer version, shows it when asked, and keeps one copy', { timeout: 90_000 }, async () => {
    const folder = await mkdtemp(join(tmpdir(), 'bookfellow-versions-'));
    await cp(site, folder, { recursive: true });
    const { server, context, page } = await visited(folder);
    const first = await copies(page);
    const file = join(folder, book, 'index.html');
    await writeFile(file, (await readFile(file, 'utf8')).replaceAll('The Crow and the Tall Jar', 'The Crow and the Taller Jar'));
    const list = join(folder, book, 'offline.json');
    await writeFile(list, (await readFile(list, 'utf8')).replace(/"version":"[0-9a-f]{4}/, '"version":"0123'));
    await page.reload();
    // The page that is being read is not exchanged.
    expect(await heading(page)).toBe('The Crow and the Tall Jar');
    await page.waitForSelector('[data-part="newer"]:not([hidden])', { timeout: 20_000 });
    expect(await heading(page)).toBe('The Crow and the Tall Jar');
    await page.click('[data-act="show"]');
    await page.waitForSelector('[data-part="kept"]:not([hidden])', { timeout: 20_000 });
    expect(await heading(page)).toBe('The Crow and the Taller Jar');
    // The browser may take a moment to forget the old one.
    await expect.poll(() => copies(page)).toHaveLength(1);
    expect(await copies(page)).not.toEqual(first);
    await context.close();
    await server.close();
    await rm(folder, { recursive: true });
  });

  test('that cannot be kept because there is no room says so, and works on', { timeout: 60_000 }, async () => {
    const server = await serveBelowRoot(site);
    const context = await browser.newContext();
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Storage.overrideQuotaForOrigin', { origin: new URL(server.address).origin, quotaSize: 300_000 });
    await page.goto(server.address + book);
    await page.waitForSelector('[data-part="no-room"]:not([hidden])', { timeout: 20_000 });
    await expect.poll(() => copies(page)).toEqual([]);
    expect(await heading(page)).toBe('The Crow and the Tall Jar');
    await context.close();
    await server.close();
  });
});

test('the lists of all books name only files that are there', async () => {
  const lists = await Promise.all(
    ['packs/the-crow-and-the-tall-jar/', 'packs/tomato-weather/', 'es/packs/tomato-weather/'].map(
      async (each) => JSON.parse(await readFile(join(site, each, 'offline.json'), 'utf8')) as { files: string[] },
    ),
  );
  for (const { files } of lists) for (const file of files) expect((await readFile(join(site, file.endsWith('/') ? `${file}index.html` : file))).length).toBeGreaterThan(0);
  expect(lists.every(({ files }) => files.some((file) => file.endsWith('.webp')) && files.some((file) => file.endsWith('.woff2')))).toBe(true);
});
