/** The preview on the own machine, as `npm start` runs it: the form saves into the library's folder, and the page beside it loads again. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { preview } from '../../src/build/preview.ts';
import { smallLibrary, soundPack } from '../build/small-library.ts';
import { startBrowser } from '../whole-site/browser.ts';

test('a pack saved from the form is in the folder, the library beside it shows it, and what was there before is kept', async () => {
  const library = await smallLibrary({ 'library.yaml': 'name: The test shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask at the desk.\nrights: Each names its own.\n' });
  const { content, site, cache, folder } = library;
  const shown = await preview({ content, site, cache, paper: false, port: 0, tell: () => undefined });
  const browser = await startBrowser();
  try {
    const context = await browser.newContext();
    const beside = await context.newPage();
    await beside.goto(shown.address);
    const form = await context.newPage();
    const refused: string[] = [];
    form.on('response', (response) => response.status() >= 400 && !response.url().endsWith('/offline-worker.js') && refused.push(`${response.status()} ${response.url()}`));
    await form.goto(`${shown.address}/make/`);
    const file = join(folder, 'pack.md');
    await writeFile(file, await soundPack());
    await form.setInputFiles('#open-file', file);
    const save = async () => {
      await form.locator('.workbook button').nth(9).click();
      await form.getByRole('button', { name: 'Save into the library’s folder' }).click();
      await form.getByText('Saved as packs/the-wheelbarrow-goes-home/pack.md').waitFor();
    };
    await save();
    const saved = join(content, 'packs/the-wheelbarrow-goes-home');
    expect(await readFile(join(saved, 'pack.md'), 'utf8')).toBe(await soundPack());
    // Nobody loads this page: it does so itself.
    await beside.getByRole('link', { name: 'The Wheelbarrow Goes Home' }).first().click();
    await beside.getByText('Odile').first().waitFor();

    await form.locator('.workbook button').nth(0).click();
    await form.fill('#field-book-author', 'Somebody Else');
    await save();
    await beside.getByText('Somebody Else').first().waitFor();
    expect(await readFile(join(saved, 'pack.md'), 'utf8')).toBe((await soundPack()).replace(/\n {2}author: .*/, '\n  author: Somebody Else'));
    const earlier = await readdir(join(saved, 'private/earlier'));
    expect(earlier).toHaveLength(1);
    expect(await readFile(join(saved, 'private/earlier', earlier[0] ?? ''), 'utf8')).toBe(await soundPack());
    // The form was not loaded again under the hands of the one who writes in it.
    expect(await form.locator('.desk-title').innerText()).toBe('The Wheelbarrow Goes Home');
    expect(refused).toEqual([]);
    await context.close();
  } finally {
    await browser.close();
    await shown.close();
  }
});
