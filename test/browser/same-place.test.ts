/** Changing to another language keeps the place: the part of the page, the stop of the booklet. */
import { expect, test } from 'vitest';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { begin, bookletPage, turnTo } from './booklet-page.ts';

const here = siteInBrowser();
const phone = { viewport: { width: 360, height: 640 }, serviceWorkers: 'block', reducedMotion: 'reduce' } as const;

test('on a family page the same part, there and back', async () => {
  const context = await here.browser.newContext(phone);
  const page = await context.newPage();
  await page.goto(`${here.server.address}packs/tomato-weather/#words`);
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
  await page.goto(`${here.server.address}packs/seven-buttons/#words`);
  await spanish.evaluate((link: HTMLAnchorElement) => link.click());
  await page.waitForURL('**/library/es/');
  await context.close();
});

test('in a booklet the same stop', async () => {
  const context = await here.browser.newContext(phone);
  const { page } = await bookletPage(context, here.server.address, 'packs/tomato-weather/booklet/');
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
