/** Finding a book in a library of 130, as a teacher does on a phone: write, narrow, go back, send the address on; and without a script. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { buildSmall, smallLibrary, soundPack } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { serveBelowRoot } from '../whole-site/site.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';

/** Book n is about the n-th thing; every second one is for grade 3, every tenth from the same school. */
const things = ['anchor', 'basket', 'candle', 'dragon', 'engine', 'feather', 'garden', 'hammer', 'island', 'jacket', 'kitchen', 'ladder', 'marble'];
const places = ['bridge', 'cellar', 'desert', 'forest', 'harbor', 'meadow', 'market', 'station', 'tunnel', 'village'];
const files: Record<string, string> = {
  'library.yaml': 'name: The test shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: "Each names its own, <as> it should & must."\naddress: https://shelf.example/books\n',
};
for (const [row, thing] of things.entries()) {
  for (const [column, place] of places.entries()) {
    const text = await soundPack(
      ['title: The Wheelbarrow Goes Home', `title: The ${thing} in the ${place}`],
      ['grades: [K, 1]', column % 2 === 0 ? 'grades: [3]' : 'grades: [K, 1]'],
      ['language: en', row === 12 && column === 9 ? 'language: es' : 'language: en'],
      ['  openings: ', `  kinds: [${column === 0 ? 'fable' : 'story, counting'}]\n  openings: `],
    );
    files[`packs/${thing}-${place}/pack.md`] = text;
  }
}
const library = await smallLibrary(files);
const here = siteInBrowser({
  site: async () => {
    await buildSmall(library);
    return library.site;
  },
});

async function opened(path: string, options: { width?: number; javaScriptEnabled?: boolean } = {}): Promise<{ readonly page: Page; readonly requests: string[] }> {
  const context = await here.browser.newContext({ viewport: { width: options.width ?? 1280, height: 900 }, javaScriptEnabled: options.javaScriptEnabled ?? true, reducedMotion: 'reduce' });
  const page = await context.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(here.server.address + path);
  return { page, requests };
}
const told = (page: Page, sentence: string) => page.waitForFunction((wanted) => document.querySelector('[role="status"]')?.textContent === wanted, sentence, { timeout: 20_000 });
const titles = (page: Page) => page.locator('.found h3').allTextContents();
const search = (page: Page) => new URL(page.url()).search;

test('nothing is fetched before somebody asks; a slip of the pen is forgiven, and a result leads to its book', async () => {
  const { page, requests } = await opened('find/', { width: 360 });
  expect(requests.filter((url) => url.endsWith('.json'))).toEqual([]);
  await page.getByLabel('Words to look for').fill('dragn in the tunel');
  await page.keyboard.press('Enter');
  await told(page, 'One book.');
  expect([await titles(page), search(page)]).toEqual([['The dragon in the tunnel'], '?words=dragn%20in%20the%20tunel']);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('results');
  expect(requests.every((url) => url.startsWith(here.server.address))).toBe(true);
  expect(await axeObjects(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await page.locator('.found a').click();
  expect(await page.locator('h1').textContent()).toBe('The dragon in the tunnel');
  await page.context().close();
});

test('choices combine, stand in the address, open again from it, and are undone one by one by the way back', async () => {
  const { page } = await opened('find/');
  await page.getByText('And only').click();
  await page.getByLabel('Grade', { exact: true }).selectOption('3');
  await told(page, '65 books.');
  await page.getByLabel('Words to look for').fill('garden');
  await page.getByRole('button', { name: 'Look' }).click();
  await told(page, '5 books.');
  expect(search(page)).toBe('?words=garden&grade=3');
  await page.getByLabel('Minutes at most').selectOption('10');
  await told(page, 'No book answers this. Take a word away, or choose less.');
  await page.goBack();
  await told(page, '5 books.');
  await page.goBack();
  await told(page, '65 books.');
  expect([await page.getByLabel('Words to look for').inputValue(), await page.getByLabel('Grade', { exact: true }).inputValue()]).toEqual(['', '3']);
  await page.goForward();
  await told(page, '5 books.');
  await page.reload();
  await told(page, '5 books.');
  expect(await page.getByLabel('Grade', { exact: true }).inputValue()).toBe('3');
  expect(await axeObjects(page)).toEqual([]);
  await page.getByLabel('Kind of book').selectOption('fable');
  await told(page, 'One book.');
  expect([await titles(page), search(page)]).toEqual([['The garden in the bridge'], '?words=garden&grade=3&book=fable']);
  await page.getByRole('button', { name: 'Start again' }).click();
  expect(await page.locator('.find-results').isVisible()).toBe(false);
  await page.context().close();
});

test('a long list is turned page by page, in the order that was asked for, and a book of another language says so', async () => {
  const { page } = await opened('find/?grade=3&order=title');
  await told(page, '65 books.');
  const first = await titles(page);
  expect([first.length, first[0]]).toEqual([12, 'The anchor in the bridge']);
  await page.getByRole('link', { name: 'Page 6' }).click();
  await page.waitForFunction(() => document.querySelectorAll('.found h3').length === 5);
  expect([search(page), await page.locator('.numbered-pages [aria-current]').textContent()]).toEqual(['?grade=3&order=title&page=6', '6']);
  await page.goto(`${here.server.address}find/?words=marble&language=any`);
  await told(page, '10 books.');
  expect(await page.locator('.found li[lang="es"] h3').allTextContents()).toEqual(['The marble in the village']);
  await page.context().close();
});

test('when the index cannot be fetched, that is said, and the way to the books stays', async () => {
  const { page } = await opened('find/');
  await page.route('**/*.json', (route) => route.abort());
  await page.getByLabel('Words to look for').fill('garden');
  await page.keyboard.press('Enter');
  await told(page, 'The list could not be fetched. The index below works without it.');
  await page.unroute('**/*.json');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Look' }).click();
  await told(page, '10 books.');
  await page.context().close();
});

test('nothing is kept before somebody asks for it; then the search, the index and what was looked up work with the server stopped, until all of it is taken away', async () => {
  // The server is stopped, which is the honest test: the worker's own requests fail as well. So it is one of its own.
  const server = await serveBelowRoot(library.site);
  const context = await here.browser.newContext({ viewport: { width: 390, height: 800 } });
  const page = await context.newPage();
  const kept = () => page.evaluate(async () => [await caches.keys(), (await navigator.serviceWorker.getRegistrations()).length, localStorage.length]);
  await page.goto(`${server.address}find/?words=anchor`);
  await told(page, '10 books.');
  await page.waitForSelector('[data-part="removed"]:not([hidden])');
  expect(await kept()).toEqual([[], 0, 0]);
  await page.click('[data-act="keep"]');
  await page.waitForSelector('[data-part="kept"]:not([hidden])', { timeout: 20_000 });
  expect(Number(/[\d.]+/.exec((await page.textContent('.offline-note [data-size]')) ?? '')?.[0])).toBeGreaterThan(0);
  // A page of the index that is visited is kept with it; another one is not.
  await page.goto(`${server.address}index/`);
  const [first = '', other = ''] = await page.$$eval('.index-grade a', (links) => links.map((link) => (link as HTMLAnchorElement).href));
  await page.goto(first);
  await page.waitForFunction(async (address) => (await caches.match(address)) !== undefined, first);
  await server.close();
  await page.goto(`${server.address}find/?words=dragn+in+the+tunel`);
  await told(page, 'One book.');
  expect(await titles(page)).toEqual(['The dragon in the tunnel']);
  expect((await page.goto(first))?.status()).toBe(200);
  expect((await page.goto(other === first ? `${server.address}es/index/` : other))?.status()).toBe(503);
  await page.goto(`${server.address}find/`);
  await page.click('[data-act="remove"]');
  await page.waitForSelector('[data-part="removed"]:not([hidden])');
  await expect.poll(async () => ((await kept())[0] as string[]).filter((name) => name.includes(' copy '))).toEqual([]);
  expect((await page.goto(`${server.address}find/`))?.status()).toBe(503);
  await context.close();
});

test('without a script every book is reached by the index, sixty to a page', async () => {
  const { page } = await opened('', { javaScriptEnabled: false, width: 320 });
  expect(await page.locator('.entry').count()).toBe(25);
  await page.getByRole('link', { name: 'All 129 books in the index' }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await page.locator('.index-grade a', { hasText: '64' }).first().click();
  const seen = await page.locator('.found h2').count();
  await page.getByRole('link', { name: 'Page 2' }).click();
  expect([seen, await page.locator('.found h2').count()]).toEqual([60, 4]);
  await page.goto(`${here.server.address}index/`);
  expect(await page.locator('.index-book dt').allTextContents()).toEqual(['story', 'fable', 'counting book']);
  await page.locator('.index-book div', { hasText: 'fable' }).getByRole('link').click();
  expect([await page.locator('h1').textContent(), await page.locator('.found h2').count()]).toEqual(['fable', 13]);
  await page.goto(`${here.server.address}find/`);
  expect([await page.locator('#find').isVisible(), await page.getByText('The search needs a script').isVisible()]).toEqual([false, true]);
  await page.context().close();
});

test('feeds, the description of the search and the list of pages are sound XML with what their standards ask for, and whole addresses', async () => {
  const { page } = await opened('');
  expect(await page.$$eval('head link[type]', (links) => links.map((link) => link.getAttribute('href')))).toEqual(['feed.xml', 'feed.json', 'opensearch.xml']);
  // A page of the site may not turn text into a document, so an empty one does.
  const empty = await page.context().newPage();
  const read = async (path: string) =>
    empty.evaluate(
      (text) => {
        const document = new DOMParser().parseFromString(text, 'text/xml');
        const root = document.documentElement;
        const texts = (name: string) => [...document.getElementsByTagName(name)].map((each) => each.textContent);
        return {
          faults: document.getElementsByTagName('parsererror').length,
          root: `${root.namespaceURI ?? ''} ${root.localName}`,
          children: [...new Set([...root.children].map((child) => child.localName))],
          of: Object.fromEntries(['entry', 'id', 'updated', 'rights', 'loc', 'ShortName'].map((name) => [name, texts(name)])),
          template: document.querySelector('Url')?.getAttribute('template') ?? '',
        };
      },
      await (await fetch(here.server.address + path)).text(),
    );
  // The page itself may fetch nothing, so what is read is read from one that may.
  await page.goto(`${here.server.address}find/`);
  const feed = await read('feed.xml');
  expect([feed.faults, feed.root]).toEqual([0, 'http://www.w3.org/2005/Atom feed']);
  // RFC 4287, 4.1.1: a feed has exactly one id, title and updated; 4.1.2: so has each entry.
  expect(feed.children).toEqual(expect.arrayContaining(['id', 'title', 'updated', 'author', 'link', 'entry']));
  const entries = feed.of['entry']?.length ?? 0;
  expect(entries).toBe(50);
  expect([feed.of['id']?.length, feed.of['updated']?.length, new Set(feed.of['id']).size]).toEqual([entries + 1, entries + 1, entries + 1]);
  expect(feed.of['id']?.every((id) => id.startsWith('https://shelf.example/books/'))).toBe(true);
  expect(feed.of['updated']?.every((day) => !Number.isNaN(Date.parse(day)))).toBe(true);
  expect(feed.of['rights']?.[0]).toBe('Each names its own, <as> it should & must.');
  const search = await read('opensearch.xml');
  expect([search.faults, search.root, search.template]).toEqual([0, 'http://a9.com/-/spec/opensearch/1.1/ OpenSearchDescription', 'https://shelf.example/books/find/?words={searchTerms}']);
  expect((search.of['ShortName']?.[0] ?? '').length).toBeLessThanOrEqual(16);
  const list = await read('sitemap.xml');
  expect([list.faults, list.root]).toEqual([0, 'http://www.sitemaps.org/schemas/sitemap/0.9 urlset']);
  expect(list.of['loc']?.length ?? 0).toBeGreaterThan(390);
  const json = await page.evaluate(async (address) => (await (await fetch(address)).json()) as { version: string; items: { id: string; date_modified: string }[] }, `${here.server.address}feed.json`);
  expect([json.version, json.items.length, json.items.every((item) => item.id.startsWith('https://shelf.example/books/packs/'))]).toEqual(['https://jsonfeed.org/version/1.1', 50, true]);
  expect(await page.evaluate(async (address) => (await fetch(address)).text(), `${here.server.address}robots.txt`)).toContain('Sitemap: https://shelf.example/books/sitemap.xml');
  await page.context().close();
});
