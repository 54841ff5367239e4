/** Every page of the built site in a browser: nothing goes wrong, nothing is asked of another host, nothing is kept before somebody acts, text becomes no script, nothing is cut off on a small screen. */
import type { BrowserContext } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { siteInBrowser } from './site-in-browser.ts';
import { builtSite, pagesIn } from './site.ts';

const site = await builtSite();
const pages = await pagesIn(site);
let context: BrowserContext;
const here = siteInBrowser();

beforeAll(async () => {
  // 320 CSS pixels: WCAG 2.2, success criterion 1.4.10 Reflow.
  context = await here.browser.newContext({ viewport: { width: 320, height: 640 } });
});

test.each(pages)('/%s loads without an error, stays at home and fits 320 pixels', async (path) => {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(here.server.address)) faults.push(`asked another place: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()}: ${response.url()}`);
  });
  await page.goto(here.server.address + path, { waitUntil: 'load' });
  const [wide, cookies, kept] = await page.evaluate(async () => {
    // The copy of a book for times without a network holds published pages alone, and is told on the page and under privacy.
    const other = (await caches.keys()).filter((name) => !/^bookfellow \S+ (?:shell|copy) /.test(name));
    const stored = localStorage.length + sessionStorage.length + (await indexedDB.databases()).length + other.length;
    return [document.documentElement.scrollWidth, document.cookie, stored] as const;
  });
  if (wide > 320) faults.push(`the page is ${wide} pixels wide`);
  if (cookies !== '') faults.push(`a cookie: ${cookies}`);
  const beforeTrying = [...faults];
  const ways = await page.evaluate(() => {
    const throws = (work: () => void) => {
      try {
        work();
        return false;
      } catch {
        return true;
      }
    };
    const place = document.createElement('div');
    return {
      'markup from text': throws(() => (place.innerHTML = '<b>x</b>')),
      'a script from text': throws(() => (document.createElement('script').text = 'x')),
      'a handler from text': throws(() => {
        place.setAttribute('onclick', 'x');
      }),
      'a program from an address': throws(() => (document.createElement('script').src = 'x.js')),
    };
  });
  faults.splice(0, faults.length, ...beforeTrying);
  for (const [way, shut] of Object.entries(ways)) if (!shut) faults.push(`the page's policy lets through ${way}`);
  if (kept > 0) faults.push(`${kept} things stored before anybody did anything`);
  await page.close();
  expect(faults).toEqual([]);
});
