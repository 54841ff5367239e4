/** Finding a book in a library of 130, as a teacher does on a phone: write, narrow, go back, send the address on; and without a script. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildSmall, smallLibrary, soundPack } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { startBrowser } from '../whole-site/browser.ts';
import { serveBelowRoot } from '../whole-site/site.ts';

/** Book n is about the n-th thing; every second one is for grade 3, every tenth from the same school. */
const things = ['anchor', 'basket', 'candle', 'dragon', 'engine', 'feather', 'garden', 'hammer', 'island', 'jacket', 'kitchen', 'ladder', 'marble'];
const places = ['bridge', 'cellar', 'desert', 'forest', 'harbor', 'meadow', 'market', 'station', 'tunnel', 'village'];
const files: Record<string, string> = { 'library.yaml': 'name: The test shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: Each names its own.\n' };
for (const [row, thing] of things.entries()) {
  for (const [column, place] of places.entries()) {
    const text = await soundPack(
      ['title: The Wheelbarrow Goes Home', `title: The ${thing} in the ${place}`],
      ['grades: [K, 1]', column % 2 === 0 ? 'grades: [3]' : 'grades: [K, 1]'],
      ['language: en', row === 12 && column === 9 ? 'language: es' : 'language: en'],
    );
    files[`packs/${thing}-${place}/pack.md`] = text;
  }
}
const library = await smallLibrary(files);
let browser: Browser;
let server: Awaited<ReturnType<typeof serveBelowRoot>>;
beforeAll(async () => {
  await buildSmall(library);
  server = await serveBelowRoot(library.site);
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

async function opened(path: string, options: { width?: number; javaScriptEnabled?: boolean } = {}): Promise<{ readonly page: Page; readonly requests: string[] }> {
  const context = await browser.newContext({ viewport: { width: options.width ?? 1280, height: 900 }, javaScriptEnabled: options.javaScriptEnabled ?? true, reducedMotion: 'reduce' });
  const page = await context.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(server.address + path);
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
  expect(requests.every((url) => url.startsWith(server.address))).toBe(true);
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
  await page.goto(`${server.address}find/?words=marble&language=any`);
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

test('without a script every book is reached by the index, sixty to a page', async () => {
  const { page } = await opened('', { javaScriptEnabled: false, width: 320 });
  expect(await page.locator('.entry').count()).toBe(25);
  await page.getByRole('link', { name: 'All 129 books in the index' }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await page.locator('.index-grade a', { hasText: '64' }).first().click();
  const seen = await page.locator('.found h2').count();
  await page.getByRole('link', { name: 'Page 2' }).click();
  expect([seen, await page.locator('.found h2').count()]).toEqual([60, 4]);
  await page.goto(`${server.address}find/`);
  expect([await page.locator('#find').isVisible(), await page.getByText('The search needs a script').isVisible()]).toEqual([false, true]);
  await page.context().close();
});
