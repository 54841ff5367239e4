/** How the tests of the booklet open one, turn its pages and look at what a device keeps. */
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Entry } from '../../src/core/booklet/booklet.ts';
import { axeObjects } from '../whole-site/axe.ts';

export const pack = 'packs/the-lamp-on-the-jetty/booklet/';

/** A page of the booklet whose script has begun. Whatever goes wrong in it is gathered in `faults`. */
export async function bookletPage(context: BrowserContext, address: string, path = pack, opened?: Page): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const page = opened ?? (await context.newPage());
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' && !/ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|Failed to load resource|failed to fetch|ServiceWorker|Failed to update/i.test(message.text()))
      faults.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(address)) faults.push(`asked another place: ${request.url()}`);
    if (request.method() !== 'GET') faults.push(`sent something: ${request.method()} ${request.url()}`);
  });
  await page.goto(address + path);
  await page.waitForSelector('main.on-screen');
  return { page, faults };
}

/** Begins a booklet with a bookmark, as far as its first question. */
export async function begin(page: Page, bookmark?: { readonly pattern: string; readonly colour: string }): Promise<void> {
  const another = page.getByRole('button', { name: 'Begin another booklet' });
  await page.locator('.main-button, .readers').first().waitFor();
  if (await another.isVisible()) await another.click();
  if (bookmark) {
    await page.locator(`input[name=pattern][value=${bookmark.pattern}]`).check();
    await page.locator(`input[name=colour][value=${bookmark.colour}]`).check();
  }
  await page.locator('.main-button').click();
  await opened(page);
}

/** Waits until a booklet lies open behind its cover. */
export async function opened(page: Page): Promise<void> {
  await page.locator('.sheet.is-open, .read-first.is-open').first().waitFor();
}

/** Opens a booklet that is on the device already. */
export async function openAgain(page: Page, words: string): Promise<void> {
  await page.getByRole('button', { name: words }).click();
  await opened(page);
}

export async function turnTo(page: Page, name: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, name);
  await page
    .locator(name === 'my-page' ? '.my-page.is-open .hand-over' : `#${name}.is-open, .${name}.is-open`)
    .first()
    .waitFor();
}

export async function chooseWay(page: Page, way: string): Promise<void> {
  await page.locator(`.is-open .ways input[value=${way}]`).check();
}

/** Waits until the page says that all is kept. */
export async function kept(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector('.keeping-line [role=status]')?.textContent === 'Kept on this device.' ||
      document.querySelector('.keeping-line [role=status]')?.textContent === 'Guardado en este aparato.',
  );
}

/** Draws a line over the paper with the mouse. Returns how many movements were made. */
export async function scribble(page: Page, seed: number, points = 24): Promise<void> {
  const paper = page.locator('.is-open canvas').first();
  await paper.scrollIntoViewIfNeeded();
  const box = await paper.boundingBox();
  if (!box) throw new Error('The paper is not there.');
  const at = (step: number): [number, number] => [box.x + box.width * (0.1 + (0.8 * step) / points), box.y + box.height * (0.5 + 0.35 * Math.sin(seed + step / 3))];
  await page.mouse.move(...at(0));
  await page.mouse.down();
  for (let step = 1; step <= points; step++) await page.mouse.move(...at(step));
  await page.mouse.up();
}

/** Everything that the device keeps of booklets: databases, entries, texts. Looking makes nothing. */
export async function onDevice(page: Page): Promise<{ readonly databases: readonly string[]; readonly entries: readonly (Entry & { readonly of: string })[]; readonly texts: readonly string[] }> {
  return page.evaluate(async () => {
    const databases = (await indexedDB.databases()).flatMap(({ name }) => (name?.startsWith('bookfellow') === true ? [name] : []));
    const texts = [localStorage, sessionStorage].flatMap((store) => Array.from({ length: store.length }, (_, index) => store.key(index) ?? '').filter((key) => key.startsWith('booklet')));
    if (!databases.includes('bookfellow-booklets')) return { databases, entries: [], texts };
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('bookfellow-booklets');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(new Error('no database'));
    });
    const store = database.transaction('entries').objectStore('entries');
    const ask = <T>(request: IDBRequest<T>) => new Promise<T>((resolve) => (request.onsuccess = () => resolve(request.result)));
    const [values, keys] = [(await ask(store.getAll())) as Entry[], (await ask(store.getAllKeys())) as [string][]];
    database.close();
    return { databases, entries: values.map((value, index) => ({ ...value, of: keys[index]?.[0] ?? '' })), texts };
  });
}

/** What axe objects to, at the page as it stands. */
export async function axe(page: Page, where: string): Promise<void> {
  expect(await axeObjects(page), where).toEqual([]);
}
