/** A new site is made in the folders of the site before last. Nothing of that site may come back, and nothing of the published one may change. */
import { link, mkdir, readdir, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { keptSite } from '../../src/build/kept-site.ts';
import { stage } from '../../src/build/publish.ts';
import { writeFiles } from '../../src/build/write-files.ts';
import { filesIn, smallLibrary, textsIn, type SmallLibrary } from './small-library.ts';

type Texts = Readonly<Record<string, string>>;

const spareOf = ({ cache }: SmallLibrary) => join(cache, 'spare', 'of-this-site');

/** Publishes a site of these files. `meanwhile` happens when all is written and nothing is published. */
async function publish(library: SmallLibrary, texts: Texts, meanwhile?: () => Promise<void>): Promise<void> {
  const staging = await stage(library.site, spareOf(library));
  const site = await keptSite(library.cache, staging);
  writeFiles(
    site,
    Object.entries(texts).map(([url, text]) => ({ url, text })),
  );
  await meanwhile?.();
  await site.forget();
  await site.save(await staging.publish(site.notTaken()));
}

const siteOf = async ({ site }: SmallLibrary): Promise<Texts> => Object.fromEntries([...(await textsIn(site))].filter(([file]) => file !== '.gitignore'));

const [first, second, third]: readonly [Texts, Texts, Texts] = [
  { 'index.html': 'hen', 'packs/hen/index.html': 'The hen', 'about/index.html': 'About' },
  { 'index.html': 'hen, owl', 'packs/hen/index.html': 'The hen', 'packs/owl/index.html': 'The owl', 'about/index.html': 'About' },
  { 'index.html': 'owl', 'packs/owl/index.html': 'The owl', 'about/index.html': 'About us' },
];

test('folders are made once, and each site is what was written', async () => {
  const library = await smallLibrary({});
  const folderOfHen = async () => (await stat(join(library.site, 'packs/hen'))).ino;
  await publish(library, first);
  const before = await folderOfHen();
  for (const texts of [second, first]) {
    await publish(library, texts);
    expect(await siteOf(library)).toEqual(texts);
  }
  expect(await folderOfHen()).toBe(before);
  for (const texts of [third, second, second, third]) {
    await publish(library, texts);
    expect(await siteOf(library)).toEqual(texts);
  }
  // A folder that has nothing left goes too.
  expect(await readdir(join(library.site, 'packs'))).toEqual(['owl']);
});

test('what is published does not change while the next site is written', async () => {
  const library = await smallLibrary({});
  for (const texts of [first, second, first]) await publish(library, texts);
  await publish(library, { 'index.html': 'other', 'packs/hen/index.html': 'other', 'about/index.html': 'other' }, async () => {
    expect(await siteOf(library)).toEqual(first);
  });
  expect((await siteOf(library))['packs/hen/index.html']).toBe('other');
});

test('what is kept takes no room: each of its files is one of the published site by a second name', async () => {
  const library = await smallLibrary({});
  for (const texts of [first, second, third, first]) await publish(library, texts);
  const kept = await filesIn(spareOf(library));
  expect(kept.length).toBeLessThan(Object.keys(third).length);
  for (const file of kept) expect((await stat(join(spareOf(library), file))).ino, file).toBe((await stat(join(library.site, file))).ino);
});

test('what somebody put into a site is gone with it and does not come back: files, folders, other names for a page', async () => {
  const library = await smallLibrary({ 'private/roster.txt': 'Wren Okafor' });
  await publish(library, first);
  const at = (path: string) => join(library.site, path);
  await writeFile(at('forgotten.html'), 'a draft');
  await mkdir(at('drafts/old'), { recursive: true });
  await writeFile(at('drafts/old/index.html'), 'a draft');
  await link(at('about/index.html'), at('about/second-name.html'));
  await rm(at('packs/hen'), { recursive: true });
  await symlink(join(library.content, 'private'), at('packs/hen'), 'junction');
  for (const texts of [first, second, first]) {
    await publish(library, texts);
    expect(await siteOf(library)).toEqual(texts);
  }
  expect(await readdir(join(library.content, 'private'))).toEqual(['roster.txt']);
});

test('a folder where a file is to lie gives way, and a file where a folder is to lie', async () => {
  const library = await smallLibrary({});
  const pages: Texts = { 'index.html': 'hen', 'packs/hen': 'a file', 'about/index.html': 'About' };
  const turned: Texts = { 'index.html/index.html': 'in a folder', 'packs/hen/index.html': 'The hen', about: 'a file' };
  for (const texts of [pages, turned, pages, turned, turned]) {
    await publish(library, texts);
    expect(await siteOf(library)).toEqual(texts);
  }
});

test('a file that was changed behind our back is not taken, whichever of the two sites it was changed in', async () => {
  const library = await smallLibrary({});
  for (const texts of [first, second]) await publish(library, texts);
  // Another file in the place of the one that was kept.
  const page = join(spareOf(library), 'packs/hen/index.html');
  await rm(page);
  await writeFile(page, 'by hand');
  await publish(library, second);
  expect(await siteOf(library)).toEqual(second);
  // The same file by both names.
  await writeFile(join(library.site, 'packs/hen/index.html'), 'by hand again');
  await publish(library, second);
  expect(await siteOf(library)).toEqual(second);
});

test.each<[what: string, make: (spare: string) => Promise<void>]>([
  ['a file', (spare) => writeFile(spare, 'no folder')],
  ['a link', (spare) => symlink(join(spare, '../../..', 'content'), spare, 'junction')],
])('where %s lies in the place of what was kept, the site is made without it', async (_, make) => {
  const library = await smallLibrary({ 'notes.txt': 'to be kept' });
  for (const texts of [first, second]) await publish(library, texts);
  await rename(spareOf(library), `${spareOf(library)}.away`);
  await make(spareOf(library));
  await publish(library, third);
  expect(await siteOf(library)).toEqual(third);
  expect(await readFile(join(library.content, 'notes.txt'), 'utf8')).toBe('to be kept');
});
