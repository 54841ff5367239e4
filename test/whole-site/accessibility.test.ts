/** Each kind of page in each language, wide and narrow, light and dark, looked at by axe. */
import type { BrowserContext } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeObjects, rulesOfColour, rulesOfContent, rulesOfWidth } from './axe.ts';
import { siteInBrowser } from './site-in-browser.ts';
import { builtSite, pagesIn } from './site.ts';

/** Pages that are alike but for their text: in languages other than the library's own one of them stands for all. And pages that show the English words within a frame of another language. */
const likeAnother = /^[a-z]{2,3}\/(?:(?:accessibility|home-reading|privacy|not-saved)\/$|not-saved\.html)|^ar\/(?:stack|make|programs)\/$/;
const site = await builtSite();
const pages = oneOfEachKind(await pagesIn(site));
const here = siteInBrowser();

/** A page of each kind in each language: the pages of one book stand for the pages of all, every other page for itself. */
function oneOfEachKind(all: readonly string[]): readonly string[] {
  const books = new Map<string, Set<string>>();
  return all.filter((page) => {
    if (likeAnother.test(page)) return false;
    const [, language = '', slug] = /^((?:[a-z]{2,3}\/)?)packs\/([^/]+)\//.exec(page) ?? [];
    if (slug === undefined) return true;
    const chosen = books.get(language) ?? new Set<string>();
    books.set(language, chosen);
    if (chosen.size === 0) chosen.add(slug);
    return chosen.has(slug);
  });
}

/** Widths in CSS pixels. One page of a kind is asked everything once, and in another width or other colours, what may differ there; one that is read from the right, what may differ then; each other page of the kind, what depends on what it says. */
const looks = [
  { width: 1280, colours: 'light', rules: undefined },
  { width: 320, colours: 'light', rules: rulesOfWidth },
  { width: 320, colours: 'dark', rules: rulesOfColour },
] as const;

/** All pages share one, since nothing is kept by looking at a page. */
let context: BrowserContext | undefined;

const again = [{ width: 1280, colours: 'light', rules: rulesOfContent }] as const;
/** The same markup and the same colours, from the right to the left. */
const turnedRound = [
  { width: 1280, colours: 'light', rules: [...rulesOfContent, ...rulesOfWidth] },
  { width: 320, colours: 'light', rules: rulesOfWidth },
] as const;

/** Kinds of page, and kinds with their direction, of which one has been looked at. */
const seen = new Set<string>();

const fromTheRight = /^ar\//;
test.each([...pages.filter((page) => !fromTheRight.test(page)), ...pages.filter((page) => fromTheRight.test(page))])('/%s has nothing that axe objects to', async (path) => {
  context ??= await here.browser.newContext({ reducedMotion: 'reduce', serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(here.server.address + path, { waitUntil: 'load' });
  const told = new Map<string, string[]>();
  const [kind, direction] = await page.evaluate(() => [document.body.className, document.documentElement.dir] as const);
  const asked = seen.has(`${kind} ${direction}`) ? again : seen.has(kind) ? turnedRound : looks;
  for (const each of [kind, `${kind} ${direction}`]) seen.add(each);
  for (const { width, colours, rules } of asked) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme: colours });
    for (const fault of await axeObjects(page, rules)) told.set(fault, [...(told.get(fault) ?? []), `${width} ${colours}`]);
  }
  await page.close();
  expect([...told].map(([fault, where]) => `${where.join(', ')}: ${fault}`)).toEqual([]);
});
