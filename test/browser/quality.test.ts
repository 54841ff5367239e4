/** The page about quality as a visitor uses it: choose, go back, send the address to somebody; and without scripts. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { buildSmall, smallLibrary, soundPack } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';

/** 62 packs make two pages of the list; numbers 1 and 61 have a remark about frames, and every second one is for grade 3. */
const files: Record<string, string> = {
  'library.yaml': 'name: The test shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: Each names its own.\nfiles: "https://code.example/{file}#L{line}"\n',
};
for (let number = 1; number <= 62; number++) {
  const two = String(number).padStart(2, '0');
  const text = await soundPack(
    ['title: The Wheelbarrow Goes Home', `title: Wheelbarrow ${two}`],
    ['grades: [K, 1]', number % 2 === 0 ? 'grades: [3]' : 'grades: [K, 1]'],
    ...(number === 1 || number === 61 ? ([['    frames:\n      - Odile feels ___.\n      - Odile feels ___ because ___.\n', '']] as const) : []),
  );
  files[`packs/wheelbarrow-${two}/pack.md`] = text;
}
const library = await smallLibrary(files);
const here = siteInBrowser({
  site: async () => {
    await buildSmall(library);
    return library.site;
  },
});

async function opened(path: string, options: { width?: number; javaScriptEnabled?: boolean; colorScheme?: 'light' | 'dark' } = {}): Promise<Page> {
  const { width = 1280, javaScriptEnabled = true, colorScheme = 'light' } = options;
  const context = await here.browser.newContext({ viewport: { width, height: 900 }, javaScriptEnabled, colorScheme, reducedMotion: 'reduce' });
  const page = await context.newPage();
  await page.goto(here.server.address + path);
  return page;
}
const seen = (page: Page) => page.$$eval('.ledger-entry', (entries) => entries.filter((entry) => entry.checkVisibility()).length);
const waitFor = (page: Page, sentence: string) => page.waitForFunction((wanted) => document.querySelector('[role="status"]')?.textContent === wanted, sentence, { timeout: 20_000 });

describe('a choice', () => {
  test('narrows the list, says how many, stands in the address, and is undone by the way back', async () => {
    const page = await opened('quality/');
    await waitFor(page, 'All companions are shown.');
    expect(await seen(page)).toBe(60);
    await page.selectOption('#choice-kind', 'frames');
    await waitFor(page, '2 companions of 62.');
    expect([await seen(page), new URL(page.url()).search]).toEqual([1, '?kind=frames']);
    await page.selectOption('#choice-grade', '3');
    await waitFor(page, 'No companion is like that.');
    expect([await seen(page), new URL(page.url()).search]).toEqual([0, '?grade=3&kind=frames']);
    await page.goBack();
    await waitFor(page, '2 companions of 62.');
    expect([await page.inputValue('#choice-grade'), await page.inputValue('#choice-kind'), await seen(page)]).toEqual(['', 'frames', 1]);
    await page.goBack();
    await waitFor(page, 'All companions are shown.');
    expect([await page.inputValue('#choice-kind'), await seen(page)]).toEqual(['', 60]);
    await page.context().close();
  });

  test('finds packs on the other pages of a long list, and leads to their place there with the same choice', async () => {
    const page = await opened('quality/?findings=1');
    await waitFor(page, '2 companions of 62.');
    expect(await page.isChecked('#choice-findings')).toBe(true);
    expect(await page.$$eval('.elsewhere li', (items) => items.map((item) => item.textContent))).toEqual(['Wheelbarrow 61, page 2']);
    await page.click('.elsewhere a');
    await page.waitForURL(/quality\/2\/\?findings=1#pack-wheelbarrow-61-en$/);
    await waitFor(page, '2 companions of 62.');
    expect(await page.$$eval('.ledger-entry', (entries) => entries.filter((entry) => entry.checkVisibility()).map((entry) => entry.id))).toEqual(['pack-wheelbarrow-61-en']);
    await page.context().close();
  });

  test('is taken back by one button, and goes along to the other numbers of the list', async () => {
    const page = await opened('es/quality/2/?grade=3');
    await waitFor(page, '31 guías de 62.');
    expect(await page.getAttribute('.numbered-pages a', 'href')).toContain('grade=3');
    await page.click('.choice button');
    await waitFor(page, 'Se ven todas las guías.');
    expect(new URL(page.url()).search).toBe('');
    expect(await page.getAttribute('.numbered-pages a', 'href')).not.toContain('?');
    await page.context().close();
  });

  test('that names what there is not shows everything', async () => {
    const page = await opened('quality/?language=tlh&kind=%22%3E');
    await waitFor(page, 'All companions are shown.');
    expect(await seen(page)).toBe(60);
    await page.context().close();
  });

  test('can be made with keys alone', async () => {
    const page = await opened('quality/');
    await page.focus('#choice-findings');
    await page.keyboard.press('Space');
    await waitFor(page, '2 companions of 62.');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await waitFor(page, 'All companions are shown.');
    await page.context().close();
  });

  test('still works on its own page when the rest cannot be loaded, and says so', async () => {
    const page = await opened('quality/');
    await page.route('**/quality.json', (route) => route.abort());
    await page.selectOption('#choice-kind', 'frames');
    await waitFor(page, 'Only this page could be searched; the rest did not load. One companion of 62.');
    await page.context().close();
  });
});

test('without scripts the whole list is there and no form that does nothing', async () => {
  const page = await opened('quality/', { javaScriptEnabled: false });
  expect(await page.locator('.ledger-entry:visible').count()).toBe(60);
  expect(await page.locator('form:visible, [role="status"]:visible').count()).toBe(0);
  expect(await page.locator('.numbered-pages a').allTextContents()).toEqual(['page 1', 'page 2']);
  await page.context().close();
});

test('a line of a pack leads to the file, where the library says where its files are', async () => {
  const page = await opened('quality/');
  const [text, href] = await page.$eval('.remarks a.place', (link) => [link.textContent, link.getAttribute('href')]);
  const line = /:(\d+)$/.exec(text)?.[1] ?? '';
  expect([text, href]).toEqual([`packs/wheelbarrow-01/pack.md:${line}`, `https://code.example/packs/wheelbarrow-01/pack.md#L${line}`]);
  await page.context().close();
});

test.each([
  [320, 'light'],
  [1280, 'light'],
  [1280, 'dark'],
] as const)('axe has nothing to say at %i pixels, %s, with a choice made; nothing is wider than the screen', async (width, colorScheme) => {
  const page = await opened('quality/?findings=1', { width, colorScheme });
  await waitFor(page, '2 companions of 62.');
  expect(await axeObjects(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  const small = await page.$$eval('form select, form button, .numbered-pages a, .shortcuts a, .elsewhere a, h3 a', (fields) =>
    fields.map((field) => field.getBoundingClientRect().height).filter((height) => height > 0 && height < 44),
  );
  expect(small).toEqual([]);
  await page.context().close();
});
