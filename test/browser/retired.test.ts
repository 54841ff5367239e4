/** A companion that a child has answered is taken out of the library: the answers stay on the device, can be saved and erased where the booklet was, and the saved copy goes. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { buildSmall, smallLibrary, soundPack, type SmallLibrary } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { begin, bookletPage, chooseWay, kept, onDevice, turnTo } from './booklet-page.ts';

let library: SmallLibrary;
const here = siteInBrowser({
  site: async () => {
    library = await smallLibrary({ 'packs/barrow/pack.md': await soundPack(), 'packs/tin/pack.md': await soundPack(['title: The Wheelbarrow Goes Home', 'title: The Button Tin']) });
    await buildSmall(library);
    return library.site;
  },
});
const gone = '---\ntitle: The Wheelbarrow Goes Home\nlanguage: en\nretired:\n  on: 2026-03-02\n  because: A newer companion asks better questions.\n  instead: tin\n---\n';
const path = 'packs/barrow/booklet/';

test('the answers are saved as a file and erased on the page that stands there now, and the copy for times without a network is gone', async () => {
  const context = await here.browser.newContext({ viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', acceptDownloads: true });
  const { page, faults } = await bookletPage(context, here.server.address, path);
  await begin(page);
  const stop = (await page.locator('.sheet:has(.ways input[value=write])').first().getAttribute('id')) ?? '';
  await turnTo(page, stop);
  await chooseWay(page, 'write');
  await page.locator('.is-open textarea').first().fill('Because the wheel was sad.');
  await kept(page);
  await page.waitForFunction(async () => (await caches.keys()).length > 0);
  const copies = () => page.evaluate(async () => (await Promise.all((await caches.keys()).map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)))).flat());
  await expect.poll(async () => (await copies()).some((url) => url.includes('/packs/barrow/'))).toBe(true);

  await writeFile(join(library.content, 'packs/barrow/pack.md'), gone);
  await buildSmall(library);
  // The copy on the device is answered first, and sees on the way that there is something new.
  await expect
    .poll(
      async () => {
        await page.goto(here.server.address + path);
        return page.locator('.retired-answers').count();
      },
      { timeout: 20_000, interval: 500 },
    )
    .toBe(1);
  await page.getByText('A newer companion asks better questions.').waitFor();
  await expect.poll(() => page.locator('.kept-booklets > li').count()).toBe(1);
  expect(await axeObjects(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save it as a file' }).click()]);
  expect(await readFile(await file.path(), 'utf8')).toContain('Because the wheel was sad.');
  await expect.poll(async () => (await copies()).filter((url) => url.includes('/packs/barrow/'))).toEqual([]);

  expect((await onDevice(page)).entries.length).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'Erase this booklet' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await page.locator('.kept-booklets').waitFor({ state: 'detached' });
  expect((await onDevice(page)).entries).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
});
