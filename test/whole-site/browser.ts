/** The browser that the whole-site tests look through: nothing of it speaks to the outside. */
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions } from 'playwright-core';
import { findBrowser } from './find-browser.ts';

const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-extensions',
  '--disable-sync',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-features=Translate,OptimizationHints,MediaRouter,AutofillServerCommunication',
];

/** Starts the browser that `findBrowser` finds, without a window. */
export async function startBrowser(more: readonly string[] = []): Promise<Browser> {
  const { path, flags } = await findBrowser();
  return chromium.launch({ executablePath: path, args: [...new Set([...flags, ...quiet, ...more])], headless: true });
}

/** Starts it with a profile of its own in a folder, as a family's browser has: what it keeps is there when it is started again. */
export async function startBrowserIn(profile: string, options: BrowserContextOptions & { readonly acceptDownloads?: boolean } = {}): Promise<BrowserContext> {
  const { path, flags } = await findBrowser();
  return chromium.launchPersistentContext(profile, { ...options, executablePath: path, args: [...new Set([...flags, ...quiet])], headless: true });
}
