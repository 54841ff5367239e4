/** Files of strangers that somebody opens in the form: what is none is told in a sentence, and nothing of what one holds becomes a part of the page or asks for anything. */
import { zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { everyField } from '../../hostile/every-field.ts';
import { sound } from '../../hostile/hostile-case.ts';
import { siteInBrowser } from '../../whole-site/site-in-browser.ts';

const here = siteInBrowser();
const payload = '<img src=x onerror=canary()>';
const long = `"><script>canary()</script>${payload}{{ canary }}`;
const bytesOf = (text: string) => Buffer.from(text);

async function opened(): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const page = await (await here.browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  const faults: string[] = [];
  await page.addInitScript(() => {
    Object.assign(window, {
      canary: () => {
        throw new Error('the canary was called');
      },
    });
    document.addEventListener('securitypolicyviolation', (event) => reportError(new Error(`against the policy: ${event.violatedDirective} ${event.blockedURI}`)));
  });
  // The page in the preview's frame runs no script on purpose; what a test asks of it counts as one, and the browser says so.
  page.on('console', (message) => message.type() === 'error' && !/about:srcdoc.*allow-scripts/.test(message.text()) && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('dialog', (dialog) => faults.push(`a dialog: ${dialog.message()}`));
  page.on('request', (request) =>
    (!/^(?:blob|data):/.test(request.url()) && !request.url().startsWith(here.server.address)) || request.url().endsWith('/x') ? faults.push(`asked ${request.url()}`) : undefined,
  );
  await page.goto(`${here.server.address}make/`);
  await page.locator('.ways-to-begin').waitFor();
  return { page, faults };
}

test('what is no pack is told in a sentence, and the form stays as it was', async () => {
  const { page, faults } = await opened();
  const files: readonly (readonly [string, Uint8Array])[] = [
    ['a way out.zip', zipSync({ '../../pack.md': bytesOf(sound) })],
    ['a bomb.zip', zipSync({ 'hen/pack.md': bytesOf(sound), 'hen/pictures/a.png': new Uint8Array(21_000_000) })],
    ['a text.zip', bytesOf(sound)],
    ['nothing.zip', new Uint8Array()],
    ['a page.md', bytesOf('<!doctype html><script>canary()</script>')],
    ['no letters.md', new Uint8Array([0x2d, 0x2d, 0x2d, 0xff, 0xfe])],
    ['a giant.md', Buffer.alloc(600_000, '-')],
  ];
  for (const [name, bytes] of files) {
    await page.setInputFiles('#open-file', { name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
    await expect.poll(() => page.locator('.told-status').innerText(), { message: name }).toMatch(/\.$/);
    expect(await page.locator('#field-title').count(), name).toBe(0);
    await page.reload();
    await page.locator('.ways-to-begin').waitFor();
  }
  expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  expect(faults).toEqual([]);
  await page.context().close();
});

test('pictures that are none do not come along with a pack', async () => {
  const { page, faults } = await opened();
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" onload="canary()"><image href="https://elsewhere.example/x"/></svg>';
  const zip = zipSync({ 'hen/pack.md': bytesOf(sound), 'hen/pictures/page.png': bytesOf('<script>canary()</script>'), 'hen/pictures/drawing.jpg': bytesOf(svg) });
  await page.setInputFiles('#open-file', { name: 'hen.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
  await page.locator('#field-title').waitFor();
  await page.locator('.workbook button').nth(7).click();
  await page.locator('#add-pictures').waitFor({ state: 'attached' });
  expect(await page.locator('main img').count()).toBe(0);
  expect(faults).toEqual([]);
  await page.context().close();
});

test('a pack with markup in every field shows it as text, in each chapter and in each page of the preview', async () => {
  const { page, faults } = await opened();
  await page.setInputFiles('#open-file', { name: 'pack.md', mimeType: 'text/markdown', buffer: bytesOf(everyField(payload, long, long)) });
  await page.locator('#field-title').waitFor();
  await expect.poll(() => page.inputValue('#field-title')).toBe(long);
  const strange = () =>
    [...document.querySelectorAll('*')].flatMap((each) =>
      each.localName === 'img' || [...each.attributes].some(({ name, value }) => name.startsWith('on') || /^javascript:/i.test(value)) ? [each.outerHTML] : [],
    );
  const chapters = page.locator('.workbook button');
  for (let chapter = 0; chapter < (await chapters.count()); chapter++) {
    await chapters.nth(chapter).click();
    await page.evaluate(() => {
      for (const each of document.querySelectorAll<HTMLDetailsElement>('main details')) each.open = true;
    });
    expect(await page.evaluate(strange), `chapter ${String(chapter)}`).toEqual([]);
  }
  await page.click('#preview-button');
  const frame = page.frameLocator('.preview-page');
  await page.locator('#preview-which').waitFor();
  const kinds = await page.$$eval('#preview-which option', (all) => all.map((each) => (each as HTMLOptionElement).value));
  expect(kinds.length).toBeGreaterThan(2);
  for (const which of kinds) {
    await page.selectOption('#preview-which', which);
    await frame.getByRole('heading', { level: 1 }).waitFor();
    await expect.poll(() => frame.locator('main').innerText(), { message: which }).toContain(payload);
    expect(await frame.locator('main img[onerror], main script:not([src]):not([type]), main a[href^="javascript"]').count(), which).toBe(0);
  }
  expect(faults).toEqual([]);
  await page.context().close();
});
