/**
 * Each kind of page in each language, wide and narrow, light and dark, looked at by axe.
 * Source: WCAG 2.2, levels A and AA, and axe's best practices. A machine finds a part of what keeps people out, never all of it.
 */
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { builtSite, pagesIn, serveBelowRoot } from './site.ts';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice'];
const site = await builtSite();
const pages = oneOfEachKind(await pagesIn(site));
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

/** A page of each kind in each language: the pages of two books stand for the pages of all, every other page for itself. */
function oneOfEachKind(all: readonly string[]): readonly string[] {
  const books = new Map<string, Set<string>>();
  return all.filter((page) => {
    const [, language = '', slug] = /^((?:[a-z]{2,3}\/)?)packs\/([^/]+)\//.exec(page) ?? [];
    if (slug === undefined) return true;
    const chosen = books.get(language) ?? new Set<string>();
    books.set(language, chosen);
    if (chosen.size < 2) chosen.add(slug);
    return chosen.has(slug);
  });
}

/** Widths in CSS pixels. Between light and dark only colours change, so dark is asked about colours alone. */
const looks = ([1280, 320] as const).flatMap((width) => (['light', 'dark'] as const).map((colours) => ({ width, colours })));
const rulesOfColour = ['color-contrast', 'link-in-text-block'];

test.each(pages)('/%s has nothing that axe objects to', async (path) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  await page.goto(server.address + path, { waitUntil: 'load' });
  const told = new Map<string, string[]>();
  for (const { width, colours } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme: colours });
    const axe = new AxeBuilder({ page }).setLegacyMode(true);
    const { violations } = await (colours === 'dark' ? axe.withRules(rulesOfColour) : axe.withTags(tags)).analyze();
    for (const { id, help, nodes } of violations) {
      for (const node of nodes) {
        const fault = `${id} (${help}) at ${node.target.join(' ')}: ${node.any[0]?.message ?? node.all[0]?.message ?? node.none[0]?.message ?? ''} ${node.html.slice(0, 120)}`;
        told.set(fault, [...(told.get(fault) ?? []), `${width} ${colours}`]);
      }
    }
  }
  await context.close();
  expect([...told].map(([fault, where]) => `${where.join(', ')}: ${fault}`)).toEqual([]);
});
