/**
 * A library of 1,000 books of many hands, in three languages, one in a hundred of them broken, as a whole site.
 *
 * Links, what pages tell machines, and the files for other programs: of every page. Links are looked up in the site's own files
 * (`links-in-site.ts`), since a crawler needs a minute for so many. Sound HTML: the rules of `html.test.ts`, over 60 pages. axe: over 60, with the rules that depend on what a pack says.
 * Both samples hold a page of each kind in each language, the second without those that are alike in each library, and else pages of books, evenly over them. The build makes no PDF and no folders, which have tests of their own.
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Ajv } from 'ajv';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { build, type Built } from '../../src/build/build.ts';
import { writeMixedLibrary, type Mixed } from '../speed/mixed-library.ts';
import { axeObjects, rulesOfContent } from './axe.ts';
import { jsonLdFaults, jsonLdIn } from './json-ld.ts';
import { linksInSite } from './links-in-site.ts';
import jsonFeed from './schemas/json-feed.json' with { type: 'json' };
import { siteInBrowser } from './site-in-browser.ts';
import { builtSite, pagesIn } from './site.ts';
import { xmlFaults } from './xml-schemas.ts';

const books = 1000;
let folder: string;
let mixed: Mixed;
let built: Built;
let pages: readonly string[];

const here = siteInBrowser({
  site: async () => {
    folder = await mkdtemp(join(tmpdir(), 'bookfellow-large-'));
    mixed = await writeMixedLibrary(join(folder, 'content'), books);
    const cache = fileURLToPath(new URL('../../.cache', import.meta.url));
    built = await build({ content: join(folder, 'content'), site: join(folder, 'site'), cache, strict: false, today: '2026-11-28' });
    return join(folder, 'site');
  },
});
beforeAll(async () => {
  pages = await pagesIn(here.site);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const htmlOf = (page: string) => readFile(join(here.site, page === '' || page.endsWith('/') ? `${page}index.html` : page), 'utf8');

/** One page of each kind in each language, and then pages of books, evenly over them and over the languages, until there are `most`. `besides` are kinds that are left out. */
function sample(most: number, besides = /^$/): readonly string[] {
  const kinds = new Map<string, string[]>();
  for (const page of pages) {
    const kind = page.replace(/packs\/[^/]+\//, 'packs/*/').replace(/\d+\/$|(?<=index\/[a-z]+\/)[^/]+\/(?:\d+\/)?$/, '#/');
    if (!besides.test(kind)) kinds.set(kind, [...(kinds.get(kind) ?? []), page]);
  }
  const ofBooks = [...kinds].filter(([kind]) => kind.includes('packs/*/')).map(([, list]) => list);
  const chosen = new Set([...kinds.values()].map((list) => list[Math.floor(list.length / 2)] ?? ''));
  const rounds = Math.ceil(most / ofBooks.length);
  for (let round = 0; round < rounds; round++) for (const list of ofBooks) if (chosen.size < most) chosen.add(list[Math.floor((round * list.length) / rounds)] ?? '');
  return [...chosen];
}

/** Kinds whose pages are alike in each library and are asked everything by `accessibility.test.ts`, or weigh as much as twenty others. */
const askedElsewhere = /^(?:[a-z]{2}\/)?(?:quality|make|stack|programs|not-saved|about|privacy|accessibility|home-reading)\/|^404/;

test('every sound pack is published, and each broken one is told and kept back alone', () => {
  expect(mixed.broken).toHaveLength(books / 100);
  expect([built.published, built.leftOut]).toEqual([mixed.sound, mixed.broken.length]);
  expect([...new Set(built.findings.filter(({ level }) => level === 'stop').map(({ place }) => place.file))].sort()).toEqual(mixed.broken);
});

test('no link, picture, script, style or place in a page of the whole site is missing, and every page is reached', async () => {
  const { broken, unreached, strange, links, pages: looked } = await linksInSite(here.site, 'https://shelf.saltmarsh.example/reading/');
  expect(broken.slice(0, 20)).toEqual([]);
  expect(strange).toEqual([]);
  expect(unreached.filter((page) => page !== '404.html' && !page.endsWith('not-saved/index.html'))).toEqual([]);
  expect(looked).toBe(pages.length);
  expect(links).toBeGreaterThan(20 * looked);
});

describe('other programs', () => {
  test('find in each page about a book what the vocabulary allows, and nothing else', async () => {
    const families = pages.filter((page) => /^(?:[a-z]{2}\/)?packs\/[^/]+\/$/.test(page));
    expect(families).toHaveLength(built.published);
    const faults: string[] = [];
    for (const page of families) {
      const blocks = jsonLdIn(await htmlOf(page));
      if (blocks.length !== 1) faults.push(`${page}: ${String(blocks.length)} blocks`);
      for (const block of blocks) faults.push(...jsonLdFaults(block).map((fault) => `${page} ${fault}`));
    }
    expect(faults.slice(0, 20)).toEqual([]);
  });

  test('find the same in the demo library, with aims, a film and books that have an illustrator', async () => {
    const demo = await builtSite();
    const faults: string[] = [];
    let blocks = 0;
    for (const page of await pagesIn(demo)) {
      for (const block of jsonLdIn(await readFile(join(demo, page === '' || page.endsWith('/') ? `${page}index.html` : page), 'utf8'))) {
        blocks += 1;
        faults.push(...jsonLdFaults(block).map((fault) => `${page} ${fault}`));
      }
    }
    expect([faults, blocks > 6]).toEqual([[], true]);
  });

  test.each(['', 'es/', 'ar/'])('get feeds at /%s that hold to Atom and to JSON Feed', async (root) => {
    expect(await xmlFaults(await readFile(join(here.site, `${root}feed.xml`), 'utf8'), 'atom.rng')).toEqual([]);
    const fits = new Ajv({ strict: false, formats: fullFormats }).compile(jsonFeed);
    const feed = JSON.parse(await readFile(join(here.site, `${root}feed.json`), 'utf8')) as { readonly items: readonly object[] };
    expect(fits(feed), JSON.stringify(fits.errors)).toBe(true);
    expect(feed.items).toHaveLength(50);
  });

  test('get a list of all pages that holds to the protocol of sitemaps, and names each once', async () => {
    const text = await readFile(join(here.site, 'sitemap.xml'), 'utf8');
    expect(await xmlFaults(text, 'sitemap.xsd')).toEqual([]);
    const listed = [...text.matchAll(/<loc>https:\/\/shelf\.saltmarsh\.example\/reading\/([^<]*)<\/loc>/g)].map(([, path = '']) => path).sort();
    // The librarian's page is for whoever looks after the library.
    expect(listed).toEqual(pages.filter((page) => page !== '404.html' && !/(?:not-saved|librarian)\/(?:\d+\/)?$/.test(page)));
  });
});

test('60 pages of every kind are sound HTML', async () => {
  const config = JSON.parse(await readFile(new URL('../../.config/html-validate.json', import.meta.url), 'utf8')) as ConfigData;
  const validator = new HtmlValidate(new StaticConfigLoader(config));
  const faults: string[] = [];
  for (const page of sample(60, /^(?:[a-z]{2}\/)?quality\/#/)) {
    const { results } = await validator.validateString(await htmlOf(page), page);
    faults.push(...results.flatMap(({ messages }) => messages.map((each) => `${page}:${String(each.line)} ${each.ruleId} ${each.message}`)));
  }
  expect(faults.slice(0, 20)).toEqual([]);
});

describe('60 pages in three languages', () => {
  const looked: string[] = [];
  // Only the rules that depend on what a pack holds: each kind of page is held to all of them in the demo library. Ten at a time: a crowded machine is given time for each ten.
  test.each([1, 2, 3, 4, 5, 6])('have nothing that axe objects to: ten of them, %i of 6', async (tenth) => {
    const context = await here.browser.newContext({ reducedMotion: 'reduce', serviceWorkers: 'block', viewport: { width: 360, height: 780 } });
    const page = await context.newPage();
    const faults: string[] = [];
    for (const path of sample(60, askedElsewhere).slice(10 * (tenth - 1), 10 * tenth)) {
      await page.goto(here.server.address + path, { waitUntil: 'load' });
      faults.push(...(await axeObjects(page, rulesOfContent)).map((fault) => `${path}: ${fault}`));
      looked.push(path);
    }
    await context.close();
    expect(faults.slice(0, 20)).toEqual([]);
  });

  test('were looked at, ten and more of each language', () => {
    expect(new Set(looked).size).toBe(60);
    expect(['en', 'es', 'ar'].map((language) => looked.filter((path) => (/^(?:es|ar)(?=\/)/.exec(path)?.[0] ?? 'en') === language).length > 10)).toEqual([true, true, true]);
  });
});
