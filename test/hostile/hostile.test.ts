/**
 * The hostile library: every class of faults that can lie in packs, built in one library with two good packs.
 * Each case is told at its line; the good packs' files are those of a library without the others, byte for byte; nothing runs, and nothing is asked of another place.
 * An ordinary run has giants at a twentieth of their size, and opens few pages; BOOKFELLOW_WHOLE=1 takes the full sizes, opens every page, and builds each class by itself.
 */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import type { Built } from '../../src/build/build.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { buildSmall, filesIn, type SmallLibrary } from '../build/small-library.ts';
import { startBrowser } from '../whole-site/browser.ts';
import { serveBelowRoot } from '../whole-site/site.ts';
import { classes } from './classes.ts';
import { whole } from './hostile-case.ts';
import { goodPacks, layOut, toldAbout, type Laid } from './lay-out.ts';
import { faultsIn, faultsWhenOpened, marksOf, type BuiltPage } from './look-through.ts';
import { measured } from './peak.ts';
import { record } from './record.ts';

/** Most megabytes that a class may need beyond what the process holds already. */
const mostMegabytes = 700;
/** What a template engine would make of the sums in the texts. */
const sum = String(7919 * 7907);

let library: SmallLibrary;
let laid: readonly Laid[];
let built: Built;
let files: readonly string[];
let page: Page;
let browser: Browser;
let server: Awaited<ReturnType<typeof serveBelowRoot>>;
let known: ReadonlySet<string>;
let goodFiles: ReadonlyMap<string, Buffer>;
/** What did not hold, by class: a sentence each. */
const broken = new Map<string, string[]>();
const spent = new Map<string, { readonly ms: number; readonly peakMB: number }>();

beforeAll(async () => {
  const good = await layOut([]);
  await buildSmall(good.library);
  goodFiles = await goodFilesOf(good.library.site);
  ({ library, laid } = await layOut(classes));
  built = await buildSmall(library);
  files = await filesIn(library.site);
  server = await serveBelowRoot(library.site);
  browser = await startBrowser();
  page = await browser.newPage();
  known = await marksOf(page, await pagesOf(good.library.site, [...goodFiles.keys()], []));
});
afterAll(async () => {
  for (const { class: name } of classes) {
    const cases = laid.filter((each) => each.class === name);
    const faulty = new Set(broken.get(name));
    record({ class: name, cases: cases.length, held: cases.length - faulty.size, ms: spent.get(name)?.ms ?? 0, peakMB: spent.get(name)?.peakMB ?? 0 });
  }
  await browser.close();
  await server.close();
});

async function goodFilesOf(site: string): Promise<ReadonlyMap<string, Buffer>> {
  const names = (await filesIn(site)).filter((file) => goodPacks.some((slug) => file.startsWith(`packs/${slug}/`) || file.startsWith(`es/packs/${slug}/`)));
  return new Map(await Promise.all(names.map(async (name) => [name, await readFile(join(site, name))] as const)));
}

async function pagesOf(site: string, names: readonly string[], shows: readonly string[]): Promise<readonly BuiltPage[]> {
  const pages = names.filter((name) => name.endsWith('.html'));
  return Promise.all(
    pages.map(async (name) => ({ url: name.replace(/index\.html$/, ''), html: await readFile(join(site, name), 'utf8'), shows: /^packs\/[^/]+\/index\.html$/.test(name) ? shows : [] })),
  );
}

describe.each(classes)('$class', ({ class: name }) => {
  const holds = (hostile: string, wrong: unknown, right: unknown = []) => {
    const same = JSON.stringify(wrong) === JSON.stringify(right);
    if (!same) broken.set(name, [...(broken.get(name) ?? []), hostile]);
    expect([hostile, wrong]).toEqual([hostile, right]);
  };

  test('each case is told at its line, and published or not', () => {
    for (const each of laid.filter((one) => one.class === name)) {
      const { hostile, folder } = each;
      const told = toldAbout(each, built.findings);
      if (hostile.told[0] !== '*') holds(hostile.name, told, hostile.told);
      holds(hostile.name, files.includes(`packs/${String(folder)}/index.html`) || files.includes(`es/packs/${String(folder)}/index.html`), hostile.published);
    }
  });

  test('its pages have the marks of good pages and no others, and show what was typed', async () => {
    const looked: { readonly hostile: string; readonly page: BuiltPage }[] = [];
    for (const { hostile, folder } of laid.filter((one) => one.class === name && one.hostile.published)) {
      const below = files.filter((file) => file.startsWith(`packs/${String(folder)}/`));
      // The body is on the family page alone.
      const pages = await pagesOf(library.site, hostile.body === undefined || whole ? below : below.filter((file) => file.split('/').length === 3), hostile.shows ?? []);
      looked.push(...pages.map((each) => ({ hostile: hostile.name, page: each })));
    }
    const faults = await faultsIn(
      page,
      looked.map((each) => each.page),
      known,
    );
    for (const [index, { hostile }] of looked.entries()) holds(hostile, faults[index]);
  });

  test('opened in a browser, nothing of it runs, and nothing is asked of another place', async () => {
    const published = laid.filter((one) => one.class === name && one.hostile.published);
    const gathered = published.filter(({ folder }) => String(folder).startsWith('all-of-'));
    const chosen = whole ? published : gathered.length > 0 ? gathered : published.slice(0, 1);
    const urls = chosen.flatMap(({ folder }) => files.filter((file) => file.startsWith(`packs/${String(folder)}/`) && file.endsWith('.html')).map((file) => file.replace(/index\.html$/, '')));
    holds('opened', await faultsWhenOpened(browser, server.address, whole ? urls : urls.slice(0, name === 'front-matter strings' ? 3 : 1)));
  });

  test('its time and memory are bounded', async () => {
    const alone = await layOut(classes.filter((each) => each.class === name));
    const before = process.memoryUsage().rss / 1e6;
    const { ms, peakMB } = await measured<unknown>(() => (whole ? buildSmall(alone.library) : readWholeLibrary(alone.library.content)));
    spent.set(name, { ms, peakMB });
    expect(peakMB - before).toBeLessThan(mostMegabytes);
  });
});

test('the good packs are built, and their files are the same bytes as without the others', async () => {
  expect(goodFiles.size).toBeGreaterThan(15);
  const now = await goodFilesOf(library.site);
  expect([...now.keys()]).toEqual([...goodFiles.keys()]);
  for (const [name, bytes] of goodFiles) expect([name, now.get(name)?.equals(bytes)]).toEqual([name, true]);
});

test('no pack has run anything, no file of the site holds what lay outside or hidden, nor what an engine would have worked out', async () => {
  expect((globalThis as { canaryRan?: unknown }).canaryRan).toBeUndefined();
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  const strangers: string[] = [];
  for (const file of files) {
    const bytes = await readFile(join(library.site, file));
    for (const word of ['canary-outside', 'canary-hidden', 'canary-rendered', sum, 'root:x:0']) if (bytes.includes(word)) strangers.push(`${word} in ${file}`);
  }
  expect(strangers).toEqual([]);
  const ran = laid.map(({ folder }) => join(library.content, 'packs', String(folder), 'was-run'));
  expect([...ran, 'was-run'].filter((file) => existsSync(file))).toEqual([]);
});
