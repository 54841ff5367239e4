/** A site changes whole or not at all, and only one build at a time writes it. */
import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CannotPublish } from '../../src/build/cannot-publish.ts';
import { keptSite } from '../../src/build/kept-site.ts';
import { stage } from '../../src/build/publish.ts';
import { writeFiles } from '../../src/build/write-files.ts';
import { bookfellow, buildSmall, filesIn, smallLibrary, soundPack, textsIn } from './small-library.ts';

/** A number that no running process has: of one that has just ended. */
function deadProcess(): number {
  return spawnSync(process.execPath, ['-e', '0']).pid;
}

describe('publishing', () => {
  test('a second build puts its pages in place of the first one’s and leaves nothing else', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    await rename(join(library.content, 'packs/hen'), join(library.content, 'packs/heron'));
    await buildSmall(library);
    const pages = await filesIn(library.site);
    expect(pages.filter((page) => page.startsWith('packs/hen/'))).toEqual([]);
    expect(pages).toContain('packs/heron/index.html');
    expect((await readdir(library.folder)).sort()).toEqual(['cache', 'content', 'site']);
  });

  test('the same library gives the same bytes', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack(), 'packs/owl/pack.md': await soundPack() });
    await buildSmall(library);
    const first = await textsIn(library.site);
    // Made once more, and not taken from what was kept.
    for (const kept of ['packs', 'sites']) await rm(join(library.cache, kept), { recursive: true });
    await buildSmall(library);
    expect(await textsIn(library.site)).toEqual(first);
  });

  test('a file with the same bytes keeps its time, so that an upload sends only what changed', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack(), 'packs/owl/pack.md': await soundPack() });
    await buildSmall(library);
    const files = await filesIn(library.site);
    const long = new Date('2026-09-01T08:00:00Z');
    for (const file of files) await utimes(join(library.site, file), long, long);
    const before = await textsIn(library.site);
    await writeFile(join(library.content, 'packs/owl/pack.md'), await soundPack(['title: The Wheelbarrow Goes Home', 'title: The Wheelbarrow Goes Away']));
    await buildSmall(library);
    const after = await textsIn(library.site);
    const changed = (await filesIn(library.site)).filter((file) => statSync(join(library.site, file)).mtimeMs !== long.getTime());
    expect(changed).toContain('packs/owl/index.html');
    expect(changed).not.toContain('packs/hen/pack.md');
    expect(changed.filter((file) => before.has(file) && before.get(file) === after.get(file))).toEqual([]);
    expect([...after].filter(([file, text]) => before.get(file) !== text && !changed.includes(file))).toEqual([]);
  });

  test('a strict build that finds a fault leaves the old site as it was', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library, true);
    const before = await textsIn(library.site);
    await writeFile(join(library.content, 'packs/hen/pack.md'), await soundPack(['kind: predict', 'kind: prophesy']));
    expect(await buildSmall(library, true)).toMatchObject({ published: 0, pages: 0 });
    expect(await textsIn(library.site)).toEqual(before);
    expect((await readdir(library.folder)).sort()).toEqual(['cache', 'content', 'site']);
  });

  test('a build that fails while it writes leaves the old site, no litter and no lock', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    const before = await textsIn(library.site);
    const staging = await stage(library.site);
    const site = await keptSite(library.cache, staging);
    const twice = [
      { url: 'index.html', text: 'one' },
      { url: 'index.html', text: 'two' },
    ];
    expect(() => {
      writeFiles(site, twice);
    }).toThrow('two files for one address');
    await staging.discard();
    expect(await textsIn(library.site)).toEqual(before);
    expect((await readdir(library.folder)).sort()).toEqual(['cache', 'content', 'site']);
  });

  test('nothing is written outside the site', async () => {
    const { site, folder } = await smallLibrary({});
    const staging = await stage(site);
    const kept = await keptSite(join(folder, 'cache'), staging);
    for (const url of ['../outside.html', 'packs/../../outside.html'])
      expect(() => {
        writeFiles(kept, [{ url, text: 'here' }]);
      }).toThrow('leads out of the site');
    await staging.discard();
    expect((await readdir(folder)).sort()).toEqual(['content']);
  });

  test('what builds that were killed left beside the site is cleared away by the next', async () => {
    const { site, folder } = await smallLibrary({});
    await mkdir(join(folder, '.site.next-abc123', 'packs'), { recursive: true });
    await writeFile(join(folder, 'site.lock.0123456789ab'), 'a mark that never became a lock');
    await mkdir(join(folder, '.sites.next-ours'));
    await (await stage(site)).discard();
    expect((await readdir(folder)).sort()).toEqual(['.sites.next-ours', 'content']);
  });

  test('a build that another one took for dead publishes nothing', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    const before = await textsIn(library.site);
    const staging = await stage(library.site);
    await writeFile(`${library.site}.lock`, 'somebody else');
    await expect(staging.publish()).rejects.toThrow(CannotPublish);
    await staging.discard();
    expect(await textsIn(library.site)).toEqual(before);
    expect(await readFile(`${library.site}.lock`, 'utf8')).toBe('somebody else');
  });

  test('other bytes of the same length never come with the time of the old ones', async () => {
    const { site, folder } = await smallLibrary({});
    const day = new Date('2026-09-01T08:00:00Z');
    for (const text of ['one', 'two']) {
      const staging = await stage(site);
      writeFiles(await keptSite(join(folder, 'cache'), staging), [{ url: 'index.html', text }]);
      await utimes(join(staging.folder, 'index.html'), day, day);
      await staging.publish();
    }
    expect(statSync(join(site, 'index.html')).mtimeMs).toBe(day.getTime() + 1000);
    expect((await readdir(folder)).sort()).toEqual(['content', 'site']);
  });

  test('a site that was moved aside by a build that was killed is put back', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    const before = await textsIn(library.site);
    await rename(library.site, `${library.site}.old`);
    await (await stage(library.site)).discard();
    expect(await textsIn(library.site)).toEqual(before);
  });
});

describe('the place of the site', () => {
  test('a folder that holds something else is refused and left alone', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await mkdir(library.site);
    await writeFile(join(library.site, 'holiday.txt'), 'photos');
    await expect(buildSmall(library)).rejects.toThrow(CannotPublish);
    expect(await readFile(join(library.site, 'holiday.txt'), 'utf8')).toBe('photos');
    const told = await bookfellow(['build', '--content', library.content, '--site', library.site]);
    expect([told.code, told.err]).toEqual([2, expect.stringContaining('Name an empty place for the site')]);
  });

  test.skipIf(process.platform === 'win32')('the site can be read by whoever may read a new folder, such as a web server', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    await mkdir(join(library.folder, 'plain'));
    expect(statSync(library.site).mode).toBe(statSync(join(library.folder, 'plain')).mode);
  });

  test('an empty folder is taken', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await mkdir(library.site);
    expect(await buildSmall(library)).toMatchObject({ published: 1 });
  });

  test('a file of that name is refused', async () => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await writeFile(library.site, 'a text');
    await expect(buildSmall(library)).rejects.toThrow('is a file');
    expect(await readFile(library.site, 'utf8')).toBe('a text');
  });
});

describe('the lock', () => {
  test('keeps a second build out while the first one is writing', async () => {
    const { site } = await smallLibrary({});
    const first = await stage(site);
    await expect(stage(site)).rejects.toThrow(`Another build (process ${String(process.pid)})`);
    await first.discard();
    await (await stage(site)).discard();
  });

  test.each([
    ['a process that has died', () => `${deadProcess()} abc`],
    ['nobody at all', () => ''],
  ])('of %s is taken over', async (_, mark) => {
    const library = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
    await writeFile(`${library.site}.lock`, mark());
    expect(await buildSmall(library)).toMatchObject({ published: 1 });
    expect((await readdir(library.folder)).sort()).toEqual(['cache', 'content', 'site']);
  });
});

test('what is private stays private: the passage, remarks in the YAML, unknown fields and paths of this machine are in no file of the site', async () => {
  const library = await smallLibrary({
    'packs/hen/pack.md': await soundPack(
      ['language: en', 'language: en # canary-remark'],
      ['  minutes: 30', '  minutes: 30\n  canary-field: canary-value'],
      ['## About', '<!-- canary-comment -->\n\n## About'],
    ),
    'packs/hen/private/passage.txt': 'The canary-passage sat on the axle.',
    'packs/hen/private/room.md': 'canary-room',
    'packs/hen/notes.txt': 'canary-notes',
  });
  await buildSmall(library);
  const texts = await textsIn(library.site);
  expect(texts.size).toBeGreaterThan(5);
  // A finding may name an unknown field to whoever runs the build; its value is told to nobody.
  const secrets = ['canary-remark', 'canary-value', 'canary-comment', 'canary-passage', 'canary-room', 'canary-notes', library.folder];
  expect([...texts].flatMap(([name, text]) => secrets.filter((secret) => text.includes(secret)).map((secret) => `${secret} in ${name}`))).toEqual([]);
});
