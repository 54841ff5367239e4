/** The demo site, served, with a browser that looks at it: begun before the tests of a file and ended after them. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { startBrowser } from './browser.ts';
import { builtSite, serveBelowRoot } from './site.ts';

export interface SiteInBrowser {
  /** The folder of the built site. */
  readonly site: string;
  readonly browser: Browser;
  readonly server: Awaited<ReturnType<typeof serveBelowRoot>>;
}

/**
 * Called at the top of a file of tests; what it gives can be used in tests and hooks.
 *
 * @param from.site Makes the site that is served; the demo library where nobody says.
 * @param from.flags More flags for the browser.
 */
export function siteInBrowser(from: { readonly site?: () => Promise<string>; readonly flags?: readonly string[] } = {}): SiteInBrowser {
  let made: SiteInBrowser | undefined;
  const now = (): SiteInBrowser => {
    if (!made) throw new Error('the site is there only while tests run');
    return made;
  };
  beforeAll(async () => {
    const site = await (from.site ?? builtSite)();
    made = { site, server: await serveBelowRoot(site), browser: await startBrowser(from.flags) };
  });
  afterAll(async () => {
    await made?.browser.close();
    await made?.server.close();
  });
  return {
    get site() {
      return now().site;
    },
    get browser() {
      return now().browser;
    },
    get server() {
      return now().server;
    },
  };
}
