/**
 * A pack whose every text tries to be something else: markup, script, template code, a way out of an attribute or of a script block.
 * The same pack in plain words is built beside it: what a browser makes of the two may differ in nothing but text.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { everyField } from '../hostile/every-field.ts';
import { startBrowser } from '../whole-site/browser.ts';
import { pagesIn, serveBelowRoot } from '../whole-site/site.ts';
import { buildSmall, smallLibrary, textsIn } from './small-library.ts';

/** What a template engine would make of the sums in the texts below. It stands nowhere else by chance. */
const sum = String(7919 * 7907);
const short = `"'><b onclick=x>{{7919*7907}}`;
const long = `</script><script>hostile()</script>"'><i onload=x>{{ 7919*7907 }}{% x %}\u2028&lt;`;

const hostileBody = `## <script>hostile()</script> {{ 7919*7907 }}

<img src=x onerror=hostile()> <svg/onload=hostile()> <a href="javascript:hostile()">press</a> <style>body{display:none}</style>

[one](javascript:hostile()) [two](JaVaScRiPt:hostile()) [three](java&#115;cript:hostile()) [four](data:text/html,hostile) [five](//elsewhere.example) [six]

<vbscript:hostile> {% include "x" %} <%= 7919*7907 %> #{7919*7907} \${7919*7907} {onclick=hostile()}

[six]: javascript:hostile()
`;
const plainBody = `## A heading

One paragraph.

Two paragraphs.

Three paragraphs, with *these words* between two of the stars that sums are written with.

Four paragraphs.
`;

const plainShort = 'plain words';
const plainLong = 'Some plain words that are about as long as the others are';
const library = await smallLibrary({
  'library.yaml': `name: ${JSON.stringify(long.slice(0, 80))}\nlanguage: en\nlanguages: [en]\ncontact: ${JSON.stringify(long)}\nrights: ${JSON.stringify(long)}\naddress: https://library.example/library/\n`,
  'packs/hostile/pack.md': everyField(short, long, hostileBody),
  'packs/plain/pack.md': everyField(plainShort, plainLong, plainBody),
});
const built = await buildSmall(library);
const pages = await pagesIn(library.site);
let browser: Browser;
let page: Page;
let server: Awaited<ReturnType<typeof serveBelowRoot>>;

beforeAll(async () => {
  server = await serveBelowRoot(library.site);
  browser = await startBrowser();
  page = await browser.newPage();
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

test('both packs are published, and the refused links are told', () => {
  expect(built.findings.filter((found) => found.level === 'stop')).toEqual([]);
  expect(built.published).toBe(2);
  expect(built.findings.filter((found) => found.code === 'body/link-refused').length).toBeGreaterThanOrEqual(5);
});

test.each(pages)('/%s holds no script but ours, no handler, no address that runs', async (path) => {
  const outside: string[] = [];
  page.removeAllListeners('request');
  page.on('request', (request) => {
    if (!request.url().startsWith(server.address)) outside.push(request.url());
  });
  await page.goto(server.address + path);
  const faults = await page.evaluate(() => {
    const found: string[] = [];
    for (const element of document.querySelectorAll('*')) {
      if (element instanceof HTMLScriptElement && !/^application\/(?:ld\+)?json$/.test(element.type) && !element.src.includes('/assets/')) found.push(`a script: ${element.outerHTML.slice(0, 200)}`);
      if (['B', 'I', 'IFRAME', 'OBJECT', 'EMBED', 'BASE'].includes(element.tagName) && element.outerHTML.includes('hostile')) found.push(`an element: ${element.outerHTML.slice(0, 200)}`);
      for (const { name, value } of element.attributes) {
        if (/^on/i.test(name)) found.push(`a handler: ${name}=${value}`);
        if (['href', 'src', 'action', 'formaction', 'data'].includes(name) && /^\s*(?:javascript|vbscript|data:text)/i.test(value)) found.push(`an address: ${value}`);
      }
    }
    return found;
  });
  expect([...faults, ...outside]).toEqual([]);
});

test.each(['', 'booklet/', 'lesson/'])('the page packs/hostile/%s has the elements of the plain one, one for one', async (path) => {
  // As built: what a script adds comes when it comes, and the test above looks at it.
  const context = await browser.newContext({ javaScriptEnabled: false });
  const still = await context.newPage();
  const shapeOf = async (slug: string) => {
    await still.goto(`${server.address}packs/${slug}/${path}`);
    return still.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((element) => element.tagName !== 'BR' && element.tagName !== 'WBR')
        .map(
          (element) =>
            `${element.tagName.toLowerCase()} ${[...element.attributes]
              .map((each) => each.name)
              .sort()
              .join(' ')}`,
        ),
    );
  };
  expect(await shapeOf('hostile')).toEqual(await shapeOf('plain'));
  await context.close();
});

test('the title is shown as it was typed', async () => {
  await page.goto(`${server.address}packs/hostile/`);
  expect(await page.evaluate(() => document.querySelector('h1')?.textContent.includes('</script><script>hostile()</script>'))).toBe(true);
  expect(await page.title()).toContain('</script><script>hostile()</script>');
});

test('data about a pack holds the exact text again once it is parsed', async () => {
  await page.goto(`${server.address}packs/hostile/`);
  const blocks = await page.evaluate(() => [...document.querySelectorAll('script[type="application/ld+json"]')].map((each) => each.textContent));
  expect(blocks.length).toBeGreaterThan(0);
  const strings = blocks.flatMap((block) => stringsIn(JSON.parse(block)));
  expect(strings).toContain(long);
  const list = JSON.parse(await readFile(join(library.site, 'packs.json'), 'utf8')) as unknown;
  expect(stringsIn(list)).toContain(long);
});

test('every XML file of the site is well formed', async () => {
  const files = [...(await textsIn(library.site))].filter(([name]) => name.endsWith('.xml'));
  expect(files.map(([name]) => name)).toContain('sitemap.xml');
  // The site's own pages may not make documents of text.
  await page.goto('about:blank');
  for (const [name, text] of files) {
    const fault = await page.evaluate((xml) => new DOMParser().parseFromString(xml, 'application/xml').querySelector('parsererror')?.textContent, text);
    expect([name, fault]).toEqual([name, undefined]);
  }
});

test('no file of the site holds the sum that a template engine would have worked out', async () => {
  const texts = await textsIn(library.site);
  expect(texts.size).toBeGreaterThan(8);
  expect([...texts].filter(([, text]) => text.includes(sum)).map(([name]) => name)).toEqual([]);
});

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : [];
}
