/** What each kind of page weighs, what its policy lets it do, and that its own style sheet lacks nothing. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { builtSite, pagesIn, serveBelowRoot } from './site.ts';

const site = await builtSite();
const browser = await startBrowser();
afterAll(() => browser.close());

/** A page of each kind. */
const ofKind = {
  library: '',
  prose: 'privacy/',
  programs: 'programs/',
  missing: '404.html',
  unsaved: 'not-saved/',
  family: 'packs/the-crow-and-the-tall-jar/',
  booklet: 'packs/the-lamp-on-the-jetty/booklet/',
  lesson: 'packs/the-crow-and-the-tall-jar/lesson/',
  recording: 'packs/the-crow-and-the-tall-jar/recording/',
  quality: 'quality/',
  'same-book': 'quality/same-book/',
  find: 'find/',
  browse: 'index/',
  stack: 'stack/',
  maker: 'make/',
  'hand-over': 'make/hand-over/',
  librarian: 'librarian/',
} as const;
const htmlOf = (path: string) => readFile(join(site, path === '' || path.endsWith('/') ? `${path}index.html` : path), 'utf8');
const attribute = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map(([, value]) => (value ?? '').replaceAll('&#39;', "'"));
/** Bytes on the way to a phone. */
const weight = async (path: string) => gzipSync(await readFile(join(site, path)), { level: 9 }).length;
const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);

test('each kind may do what it needs and no more', async () => {
  const policies: Record<string, string> = {};
  for (const [kind, path] of Object.entries(ofKind)) policies[kind] = attribute(await htmlOf(path), /http-equiv="Content-Security-Policy" content="([^"]*)"/g).join(' | ');
  const read = "default-src 'none'; img-src 'self' data:; style-src 'self'; font-src 'self'";
  const still = "require-trusted-types-for 'script'; trusted-types 'none'; base-uri 'none'; form-action 'none'";
  const end = "require-trusted-types-for 'script'; trusted-types bookfellow; base-uri 'none'; form-action 'none'";
  expect(policies).toEqual({
    library: `${read}; ${still}`,
    prose: `${read}; ${still}`,
    programs: `${read}; ${still}`,
    missing: `${read}; ${still}`,
    unsaved: `${read}; ${still}`,
    browse: `${read}; ${still}`,
    'same-book': `${read}; ${still}`,
    find: `${read}; script-src 'self'; connect-src 'self'; worker-src 'self'; ${end}`,
    family: `${read}; script-src 'self'; worker-src 'self'; ${end}`,
    lesson: `${read}; script-src 'self'; worker-src 'self'; ${end}`,
    booklet: `${read.replace('data:', 'data: blob:')}; script-src 'self'; media-src blob:; worker-src 'self'; ${end}`,
    recording: `${read}; script-src 'self'; media-src 'self'; worker-src 'self'; ${end}`,
    quality: `${read}; script-src 'self'; connect-src 'self'; ${end}`,
    stack: `${read.replace('data:', 'data: blob:')}; script-src 'self'; media-src blob:; ${end}`,
    maker: `${read.replace('data:', 'data: blob:')}; script-src 'self'; connect-src 'self'; worker-src 'self'; ${end}`,
    'hand-over': `${read}; script-src 'self'; ${end}`,
    librarian: `${read}; script-src 'self'; ${end}`,
  });
  // The policy stands before all that it governs.
  for (const path of Object.values(ofKind)) expect(await htmlOf(path)).toMatch(/<head><meta charset="utf-8"\/?><meta http-equiv="Content-Security-Policy"/);
});

test('a family page is at most 14 kB of HTML and 8 kB of styles, screen and paper together; the booklet at most 25 kB of script before the first drawing', async () => {
  const families = (await pagesIn(site)).filter((path) => /^(?:es\/)?packs\/[^/]+\/$/.test(path));
  expect(families.length).toBeGreaterThan(6);
  for (const path of families) {
    const html = await htmlOf(path);
    expect(gzipSync(html, { level: 9 }).length, path).toBeLessThanOrEqual(14_000);
    const styles = attribute(html, /<link rel="stylesheet" href="([^"]*)"/g);
    expect(styles).toHaveLength(2);
    expect(sum(await Promise.all(styles.map((each) => weight(join(path, each))))), path).toBeLessThanOrEqual(8000);
  }
  // The page's scripts, and all that they load at once; nothing of it is found out only on the way.
  const path = ofKind.booklet;
  const html = await htmlOf(path);
  const linked = attribute(html, /<(?:script type="module" src|link rel="modulepreload" href)="([^"]*)"/g).map((each) => join(path, each));
  for (const each of linked) for (const part of attribute(await readFile(join(site, each), 'utf8'), /(?:from|import)\s*"\.\/([^"]*)"/g)) expect(linked).toContain(join('assets', part));
  const script = sum(await Promise.all(linked.map(weight)));
  // eslint-disable-next-line no-console -- the figure is to be read
  console.log(`script of the booklet before the first drawing: ${String(script)} bytes in ${String(linked.length)} files`);
  expect(script).toBeLessThanOrEqual(25_000);
});

test.each(Object.entries(ofKind))('the style sheets of a page of the kind "%s" have every rule of the whole that means something on it, on the screen and on paper', async (_, path) => {
  const server = await serveBelowRoot(site);
  const assets = await readdir(join(site, 'assets'));
  const wholeOf = async (medium: 'screen' | 'print') =>
    [medium, await readFile(join(site, 'assets', assets.find((each) => new RegExp(`^${medium}-[0-9a-f]{10}\\.css$`).test(each)) ?? ''), 'utf8')] as const;
  const wholes = await Promise.all([wholeOf('screen'), wholeOf('print')]);
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(server.address + path);
  const missing = await page.evaluate((sheets) => {
    const rulesIn = (rules: CSSRuleList): CSSStyleRule[] => [...rules].flatMap((rule) => (rule instanceof CSSStyleRule ? [rule] : 'cssRules' in rule ? rulesIn(rule.cssRules as CSSRuleList) : []));
    /** Whether some element is what a selector looks for, whatever state it is in. */
    const applies = (selector: string) => {
      const bare = selector
        .replace(/::[\w-]+(?:\([^)]*\))?/g, '')
        .replace(/:(?:focus-visible|focus-within|focus|hover|active|checked|disabled|first-letter)\b/g, '')
        .trim();
      return document.querySelector(bare === '' ? '*' : bare) !== null;
    };
    return sheets.flatMap(([medium, css]) => {
      const all = new CSSStyleSheet();
      all.replaceSync(css);
      const mine = new Set(
        [...document.styleSheets]
          .filter(({ media }) => media.mediaText === medium)
          .flatMap((sheet) => rulesIn(sheet.cssRules))
          .map(({ cssText }) => cssText),
      );
      return rulesIn(all.cssRules)
        .filter((rule) => !mine.has(rule.cssText) && applies(rule.selectorText))
        .map(({ selectorText }) => `${medium}: ${selectorText}`);
    });
  }, wholes);
  expect(missing).toEqual([]);
  await context.close();
  await server.close();
});
