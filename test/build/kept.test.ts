/**
 * What a build takes from the time before is what it would have made: after each change to a small library, the site
 * that comes of a kept one equals the site that is made from nothing, byte for byte.
 */
import { cp, mkdir, readdir, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { defaultLibrary } from '../../src/core/pack/library.ts';
import { throughStages } from '../../src/outputs/through-stages.ts';
import { packKeeper } from '../../src/build/kept-packs.ts';
import { buildSmall, filesIn, smallLibrary, soundPack, tellsOfBefore, type SmallLibrary } from './small-library.ts';

const shelf = 'test/packs/sound';
const settings = 'name: The Saltmarsh shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: CC BY 4.0\n';

/** Every file of a site with its bytes, so that a difference names the file. */
async function bytesIn(site: string): Promise<ReadonlyMap<string, string>> {
  return new Map(await Promise.all((await filesIn(site)).map(async (file) => [file, await readFile(join(site, file), 'latin1')] as const)));
}

/** The site with everything but sheets. The code for browsers is the same for every library: it is bundled once for all of them. */
async function buildWhole({ content, site, cache }: Pick<SmallLibrary, 'content' | 'site' | 'cache'>): Promise<ReadonlyMap<string, string>> {
  await mkdir(cache, { recursive: true });
  await symlink(resolve('.cache/code'), join(cache, 'code'), 'junction').catch(() => undefined);
  await build({ content, site, cache, strict: false, folders: true });
  return bytesIn(site);
}

test('after every kind of change the site is the one that would be made from nothing', async () => {
  const library = await smallLibrary({ 'library.yaml': settings, 'packs/hen/pack.md': await soundPack(), 'pages/about.md': '---\ntitle: About\ndescription: About us.\n---\n\nA shelf.\n' });
  const at = (path: string) => join(library.content, path);
  const change = async (path: string, part: string, by: string) => {
    const text = await readFile(at(path), 'utf8');
    expect(text).toContain(part);
    await writeFile(at(path), text.replace(part, by));
  };
  const changes: Readonly<Record<string, () => Promise<unknown>>> = {
    'nothing at all': () => Promise.resolve(),
    'a book with pictures, a recording and a translation comes in': () => cp(`${shelf}/every-field`, at('packs/ferry'), { recursive: true }),
    'a title and captions are changed, and a picture is exchanged for another under its name': async () => {
      await change('packs/hen/pack.md', 'title: The Wheelbarrow Goes Home', 'title: The Wheelbarrow Stays');
      await cp(`${shelf}/every-field/pictures/rule.png`, at('packs/ferry/pictures/anchor.png'));
      const [name = ''] = (await readdir(at('packs/ferry/recording'))).filter((each) => each.endsWith('.vtt'));
      await change(`packs/ferry/recording/${name}`, 'WEBVTT', 'WEBVTT - of another day');
    },
    'the library’s line on rights is changed': () => change('library.yaml', 'rights: CC BY 4.0', 'rights: CC0 1.0'),
    'a page of the library’s own is changed, a translation goes, a pack gets a fault, and one moves to another address': async () => {
      await change('pages/about.md', 'A shelf.', 'Two shelves.');
      await rm(at('packs/ferry/pack.es.md'));
      await change('packs/ferry/pack.md', 'language: en', 'language: no language');
      await rename(at('packs/hen'), at('packs/heron'));
    },
  };
  await buildWhole(library);
  for (const [what, make] of Object.entries(changes)) {
    await make();
    const fresh = join(library.folder, 'fresh');
    await rm(fresh, { recursive: true, force: true });
    const [kept, made] = [await buildWhole(library), await buildWhole({ content: library.content, site: join(fresh, 'site'), cache: join(fresh, 'cache') })];
    expect([...kept.keys()], what).toEqual([...made.keys()]);
    // The librarian's page tells what came since the old site, which the other one has not.
    for (const [file, bytes] of made) if (!tellsOfBefore(file)) expect(kept.get(file) === bytes, `${file}, after ${what}`).toBe(true);
  }
}, 240_000);

test('what did not change is not made again: the file of the old site is the file of the new one', async () => {
  const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack(), 'packs/owl/pack.md': await soundPack() });
  await buildSmall(library);
  const placeOf = async (file: string) => (await stat(join(library.site, file))).ino;
  const before = new Map(await Promise.all((await filesIn(library.site)).map(async (file) => [file, await placeOf(file)] as const)));
  await writeFile(join(library.content, 'packs/owl/pack.md'), await soundPack(['title: The Wheelbarrow Goes Home', 'title: The Wheelbarrow Goes Away']));
  await buildSmall(library);
  const made: string[] = [];
  for (const file of await filesIn(library.site)) if (before.get(file) !== (await placeOf(file))) made.push(file);
  expect(made.filter((file) => file.startsWith('packs/hen/'))).toEqual([]);
  expect(made).toEqual(expect.arrayContaining(['index.html', 'packs.json', 'packs/owl/index.html', 'packs/owl/booklet/index.html', 'packs/owl/lesson/index.html', 'packs/owl/pack.md']));
});

test('in the preview the pages of the one pack that changed, and those that list it, are there before the site is, and are the site’s', async () => {
  const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack(), 'packs/owl/pack.md': await soundPack() });
  const built = await buildSmall(library);
  const file = join(library.content, 'packs/owl/pack.md');
  await writeFile(file, await soundPack(['title: The Wheelbarrow Goes Home', 'title: The Wheelbarrow Goes Away']));
  const again = await built.again(file);
  const early = again?.pages ?? new Map<string, string>();
  expect([...early.keys()].sort()).toEqual(['packs/owl/booklet/index.html', 'packs/owl/index.html', 'packs/owl/lesson/index.html'].map((each) => each.split('/').join(sep)));
  // The pages that list it are made when somebody looks.
  const lists = ['index.html', join('index', 'index.html')].map((page) => [page, again?.list(page)] as const);
  for (const [page, html] of lists) expect(html, page).toContain('The Wheelbarrow Goes Away');
  expect(again?.list(join('about', 'index.html'))).toBeUndefined();
  await buildSmall(library);
  for (const [page, html] of [...early, ...lists]) expect(await readFile(join(library.site, page), 'utf8')).toBe(html);
  // The build has the word on all else: faults, new packs, what lies beside them.
  await writeFile(file, await soundPack(['kind: predict', 'kind: prophesy']));
  expect(await built.again(file)).toBeUndefined();
  await cp(join(library.content, 'packs/hen'), join(library.content, 'packs/heron'), { recursive: true });
  expect(await built.again(join(library.content, 'packs/heron/pack.md'))).toBeUndefined();
  expect(await built.again(join(library.content, 'library.yaml'))).toBeUndefined();
});

test('a page that somebody changed by hand, and a kept pack that was damaged, are made again', async () => {
  const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
  await buildSmall(library);
  const sound = await bytesIn(library.site);
  await writeFile(join(library.site, 'packs/hen/index.html'), 'by hand');
  for (const name of await readdir(join(library.cache, 'packs'))) {
    const bytes = await readFile(join(library.cache, 'packs', name));
    bytes.writeUInt8(bytes.readUInt8(bytes.length >> 1) ^ 1, bytes.length >> 1);
    await writeFile(join(library.cache, 'packs', name), bytes);
  }
  for (const name of await readdir(join(library.cache, 'sites'))) await writeFile(join(library.cache, 'sites', name), 'no record');
  expect((await buildSmall(library)).published).toBe(1);
  expect(await bytesIn(library.site)).toEqual(sound);
});

test('what is told of dates is told anew each day, whatever was kept', async () => {
  const { cache } = await smallLibrary({});
  const source = { slug: 'hen', file: 'packs/hen/pack.md', text: await soundPack(), languageOfFile: undefined, pictureFiles: [], passage: undefined };
  const codes = (findings: readonly { readonly code: string }[]) => findings.map(({ code }) => code).sort();
  const told = new Set<string>();
  for (const today of ['2020-01-01', '2026-11-28', '2040-01-01']) {
    for (const [keeper, name] of [await packKeeper(defaultLibrary, undefined), await packKeeper(defaultLibrary, cache)].map((each, index) => [each, index] as const)) {
      const { findings } = await keeper.look(source, today);
      expect(codes(findings), `${today}, keeper ${String(name)}`).toEqual(codes(throughStages(source, defaultLibrary, today).findings));
      told.add(codes(findings).join());
    }
  }
  expect(told.size).toBeGreaterThan(1);
});
