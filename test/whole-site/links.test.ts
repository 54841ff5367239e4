/** Every link of the built site leads somewhere, and every page can be reached by links. */
import { LinkChecker, LinkState } from 'linkinator';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { builtSite, pagesIn, serveBelowRoot } from './site.ts';

let server: Awaited<ReturnType<typeof serveBelowRoot>>;
let pages: readonly string[];
let links: Awaited<ReturnType<LinkChecker['check']>>['links'];

beforeAll(async () => {
  const site = await builtSite();
  server = await serveBelowRoot(site);
  pages = await pagesIn(site);
  // Other hosts are not asked: a test of ours must not fail because somebody else's server is down.
  const elsewhere = (link: string) => Promise.resolve(!link.startsWith(server.address));
  links = (await new LinkChecker().check({ path: server.address, recurse: true, checkFragments: true, concurrency: 20, linksToSkip: elsewhere })).links;
});
afterAll(() => server.close());

test('no link, picture, script, style or fragment of the site is broken', () => {
  const broken = links.filter((link) => link.state === LinkState.BROKEN).map((link) => `${link.parent ?? ''} -> ${link.url} (${link.status ?? 'no answer'})`);
  expect(broken).toEqual([]);
  expect(links.length).toBeGreaterThan(pages.length);
});

test('every page but those for missing pages and for pages that are not saved is reached from the first one', () => {
  const reached = new Set(links.filter((link) => link.state === LinkState.OK).map((link) => link.url.slice(server.address.length).split('#', 1)[0]));
  expect(pages.filter((page) => page !== '404.html' && !page.endsWith('not-saved/') && !reached.has(page))).toEqual([]);
});

test('links that leave the site begin with https:, mailto: or tel:, and a picture in the page itself is one', () => {
  const strange = links.filter((link) => !link.url.startsWith(server.address) && !/^(?:https:|mailto:|tel:|data:image\/)/.test(link.url)).map((link) => `${link.parent ?? ''} -> ${link.url}`);
  expect(strange).toEqual([]);
});
