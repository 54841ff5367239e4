/** What the form keeps on the device and how it is kept safe: two windows, a full device, a browser that keeps nothing, no network, and a translation that is left and gone on with. */
import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { soundPack } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { serveBelowRoot } from '../whole-site/site.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';

const its = siteInBrowser();
const file = { name: 'pack.md', mimeType: 'text/markdown', buffer: Buffer.from(await soundPack()) };

async function opened(context: BrowserContext, address = its.server.address): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${address}make/`);
  await page.setInputFiles('#open-file', file);
  await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#field-title')?.value === 'The Wheelbarrow Goes Home');
  return page;
}
const status = (page: Page) => page.locator('.desk-kept').innerText();
const kept = (page: Page) => page.locator('.desk-kept.is-kept').waitFor();
const fileOf = async (page: Page) => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Take the file' }).click()]);
  return readFile(await download.path(), 'utf8');
};
/** The texts that are kept, as the device has them. */
const texts = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<string[]>((done) => {
        const request = indexedDB.open('bookfellow-packs');
        request.onsuccess = () => {
          const all = request.result.transaction('packs').objectStore('packs').getAll() as IDBRequest<{ text: string }[]>;
          all.onsuccess = () => {
            request.result.close();
            done(all.result.map(({ text }) => text));
          };
        };
      }),
  );

const records = async (page: Page) => (await texts(page)).map((text) => /\n {2}author: (.*)/.exec(text)?.[1] ?? '');

test('two windows with the same companion say so, and when both change it, both are kept', async () => {
  const context = await its.browser.newContext();
  const first = await opened(context);
  await first.fill('#field-book-author', 'From the first');
  await kept(first);
  const second = await context.newPage();
  await second.goto(first.url());
  await second.waitForFunction(() => document.querySelector<HTMLInputElement>('#field-book-author')?.value === 'From the first');
  for (const page of [first, second]) await expect.poll(() => status(page)).toContain('open in another window');
  await first.fill('#field-book-author', 'From the first, again');
  await expect.poll(() => records(first)).toEqual(['From the first, again']);
  await second.fill('#field-book-author', 'From the second');
  await expect.poll(() => status(second)).toContain('Nothing is lost');
  await expect.poll(async () => [...(await records(second))].sort()).toEqual(['From the first, again', 'From the second']);
  // Each goes on with its own, also after loading again.
  expect(second.url()).not.toBe(first.url());
  await second.reload();
  await second.waitForFunction(() => document.querySelector<HTMLInputElement>('#field-book-author')?.value === 'From the second');
  await context.close();
});

test('on a device without room it is said, nothing goes from the page, and once there is room it is kept', async () => {
  const context = await its.browser.newContext({ acceptDownloads: true });
  const page = await opened(context);
  const origin = new URL(its.server.address).origin;
  const session = await context.newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  await page.fill('#field-book-author', 'Nowhere but here');
  await page.locator('.desk-kept.is-full').waitFor();
  expect(await status(page)).toContain('no room');
  // Who wants to leave is asked, and may stay.
  await page.getByRole('button', { name: 'Another companion' }).click();
  await page.getByRole('button', { name: 'Stay' }).click();
  expect(await page.inputValue('#field-book-author')).toBe('Nowhere but here');
  expect(await fileOf(page)).toContain('author: Nowhere but here');
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await page.fill('#field-book-author', 'Here again');
  await kept(page);
  expect(await records(page)).toEqual(['Here again']);
  await context.close();
});

test('in a browser that keeps nothing it is said, and the file can be taken away', async () => {
  const context = await its.browser.newContext({ acceptDownloads: true });
  await context.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  const page = await opened(context);
  await page.fill('#field-book-author', 'Not kept');
  await page.locator('.desk-kept.is-refused').waitFor();
  expect(await status(page)).toContain('keeps nothing');
  await page.getByRole('button', { name: 'Another companion' }).click();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Take the file and leave' }).click()]);
  expect(await readFile(await download.path(), 'utf8')).toContain('author: Not kept');
  await page.locator('.ways-to-begin').waitFor();
  await context.close();
});

test('who visited the form once can make a companion without a network', async () => {
  const server = await serveBelowRoot(its.site);
  const context = await its.browser.newContext({ acceptDownloads: true });
  const first = await context.newPage();
  await first.goto(`${server.address}make/`);
  await first.waitForSelector('[data-part="kept"]:not([hidden])');
  expect(await first.locator('.offline-note').innerText()).toMatch(/^This form is saved on this device \(\d\.\d MB\)/);
  await first.close();
  await server.close();
  const page = await opened(context, server.address);
  await page.fill('#field-title', 'Without a Wire');
  await page.click('#preview-button');
  await page.frameLocator('.preview-page').getByRole('heading', { name: 'Without a Wire', level: 1 }).waitFor();
  await page.locator('.workbook button').nth(9).click();
  await page.locator('.ready').waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: /\.zip/ }).first().click()]);
  expect(download.suggestedFilename()).toBe('without-a-wire.zip');
  await page.goto(`${server.address}make/hand-over/`);
  expect(await page.locator('h1').innerText()).toBe('How to hand it over');
  await context.close();
});

test('a translation has both languages beside each other, counts what is left, and goes on where it was left', async () => {
  const context = await its.browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await opened(context);
  await page.locator('.workbook button').nth(8).click();
  await page.locator('summary', { hasText: 'Translate' }).click();
  await page.selectOption('#beside-into', 'es');
  await page.getByRole('button', { name: 'Begin a translation of this companion' }).click();
  await page.locator('.pair').first().waitFor();
  const left = async () => Number(/\d+/.exec(await page.locator('.how-much-left strong').innerText())?.[0]);
  const all = await left();
  expect(all).toBe(await page.locator('.pair .untranslated').count());
  expect(all).toBeGreaterThan(10);
  expect(await axeObjects(page)).toEqual([]);
  // The next one that is left, and the original beside it: at the same height, and below it on a phone.
  await page.getByRole('button', { name: 'Go to the next one' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('field-title');
  const pair = page.locator('.pair', { has: page.locator('#field-title') });
  const places = async () => [await pair.locator('.pair-from').boundingBox(), await pair.locator('#field-title').boundingBox()] as const;
  const [from, to] = await places();
  expect(to?.x).toBeGreaterThan((from?.x ?? 0) + (from?.width ?? 0));
  expect(Math.abs((to?.y ?? 0) - (from?.y ?? 99))).toBeLessThan(12);
  await page.fill('#field-title', 'La carretilla vuelve a casa');
  await expect.poll(left).toBe(all - 1);
  expect(await pair.locator('.untranslated').count()).toBe(0);
  await page.fill('#field-translation-checked_by', 'Ana Quillón');
  await expect.poll(async () => (await texts(page)).join()).toContain('Ana Quillón');
  await page.reload();
  await page.locator('.pair').first().waitFor();
  await expect
    .poll(async () => [await left(), await page.inputValue('#field-title'), await page.inputValue('#field-translation-checked_by')])
    .toEqual([all - 1, 'La carretilla vuelve a casa', 'Ana Quillón']);
  await page.setViewportSize({ width: 360, height: 800 });
  const [above, below] = await places();
  expect(below?.y).toBeGreaterThan((above?.y ?? 0) + (above?.height ?? 0) - 1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  await context.close();
});
