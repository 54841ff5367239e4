/** Changing to another language keeps the place: the part of the page, the stop of the booklet. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowser } from '../whole-site/browser.ts';
import { builtSite, serveBelowRoot } from '../whole-site/site.ts';
import { begin, bookletPage, turnTo } from './booklet-page.ts';

const site = await builtSite();
let browser: Browser;
let server: Awaited<ReturnType<typeof serveBelowRoot>>;
beforeAll(async () => {
  server = await serveBelowRoot(site);
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  await server.close();
});
const phone = { viewport: { width: 360, height: 640 }, serviceWorkers: 'block', reducedMotion: 'reduce' } as const;

test('on a family page the same part, there and back', async () => {
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  await page.goto(`${server.address}packs/tomato-weather/#words`);
  const spanish = page.locator('.languages a[hreflang=es]');
  await page.waitForLoadState('networkidle');
  await spanish.focus();
  await page.evaluate(() => document.getElementById('words')?.scrollIntoView());
  await spanish.evaluate((link: HTMLAnchorElement) => link.click());
  await page.waitForURL('**/es/packs/tomato-weather/#words');
  await page.waitForLoadState('networkidle');
  await page.evaluate(() => document.getElementById('prompts')?.scrollIntoView());
  await page.locator('.languages a[hreflang=en]').evaluate((link: HTMLAnchorElement) => link.click());
  await page.waitForURL('**/library/packs/tomato-weather/#prompts');
  // A book without a page in that language leads to the library's first page, at its beginning.
  await page.goto(`${server.address}packs/seven-buttons/#words`);
  await spanish.evaluate((link: HTMLAnchorElement) => link.click());
  await page.waitForURL('**/library/es/');
  await context.close();
});

test('in a booklet the same stop', async () => {
  const context = await browser.newContext(phone);
  const { page } = await bookletPage(context, server.address, 'packs/tomato-weather/booklet/');
  await begin(page);
  const stop = (await page.locator('.sheet').nth(2).getAttribute('id')) ?? '';
  await turnTo(page, stop);
  await page.locator('.languages a[hreflang=es]').evaluate((link: HTMLAnchorElement) => link.click());
  await page.waitForURL(`**/es/packs/tomato-weather/booklet/#${stop}`);
  await page.waitForSelector('main.on-screen');
  await page.locator('.main-button').click();
  await page.locator(`#${stop}.is-open`).waitFor();
  expect(stop).toMatch(/^stop-/);
  await context.close();
});
