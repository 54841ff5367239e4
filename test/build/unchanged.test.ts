/** A build that would make the very site that is there is not begun; whatever was touched, it is. */
import { cp, mkdir, readFile, rename, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { unchangedSince, watchOver, type Asked } from '../../src/build/unchanged.ts';
import { bookfellowAlone, filesIn, smallLibrary, soundPack, type SmallLibrary } from './small-library.ts';

/** Longer than the disk's clock ticks, so that what was written before is older than what begins now. */
const tick = 120;

async function library(): Promise<{ readonly library: SmallLibrary; readonly asked: Asked; readonly neighbour: string }> {
  const made = await smallLibrary({ 'library.yaml': 'name: The shelf\n', 'packs/hen/pack.md': await soundPack(), 'packs/hen/pictures/hen.png': Buffer.from('not looked at') });
  const neighbour = join(made.folder, 'neighbour');
  await mkdir(join(made.site, 'packs/hen'), { recursive: true });
  await writeFile(join(made.site, 'packs/hen/index.html'), '<p>The hen</p>');
  await pause(tick);
  return { library: made, asked: { content: made.content, site: made.site, cache: made.cache, today: '2026-09-01', how: { strict: false } }, neighbour };
}

/** Writes other letters of the same number, and gives the file its old times back. */
async function changedInSecret(path: string): Promise<void> {
  const { atime, mtime } = await stat(path);
  const text = await readFile(path, 'utf8');
  await writeFile(path, text.replace('The', 'Thy'));
  await utimes(path, atime, mtime);
}

test('of the same there is nothing to do, and what was told is told again', async () => {
  const { asked, neighbour } = await library();
  expect(unchangedSince(asked)).toBeUndefined();
  watchOver(asked)([neighbour], { published: 1 });
  expect(unchangedSince(asked)).toEqual({ told: { published: 1 } });
});

test.each<readonly [string, (made: Awaited<ReturnType<typeof library>>) => Promise<unknown>]>([
  ['a pack that is as long as before and has its old time', ({ library: { content } }) => changedInSecret(join(content, 'packs/hen/pack.md'))],
  ['a page of the site that is as long as before and has its old time', ({ library: { site } }) => changedInSecret(join(site, 'packs/hen/index.html'))],
  ['a page of the site that is gone', ({ library: { site } }) => rm(join(site, 'packs/hen/index.html'))],
  ['a site that is gone', ({ library: { site } }) => rm(site, { recursive: true })],
  ['a file more', ({ library: { content } }) => writeFile(join(content, 'packs/hen/pack.es.md'), '')],
  ['a file less', ({ library: { content } }) => rm(join(content, 'packs/hen/pictures/hen.png'))],
  ['another name', ({ library: { content } }) => rename(join(content, 'packs/hen'), join(content, 'packs/cock'))],
  [
    'a file that has become a link',
    async ({ library: { content, folder } }) => {
      await rename(join(content, 'library.yaml'), join(folder, 'elsewhere.yaml'));
      await symlink(join(folder, 'elsewhere.yaml'), join(content, 'library.yaml'));
    },
  ],
  ['a neighbour’s folder that was not there and has come', ({ neighbour }) => mkdir(neighbour)],
])('%s is seen', async (_, change) => {
  const made = await library();
  watchOver(made.asked)([made.neighbour], {});
  expect(unchangedSince(made.asked)).toBeDefined();
  await change(made);
  expect(unchangedSince(made.asked)).toBeUndefined();
});

test('a pack in a neighbour’s folder is seen, and what begins with a dot is not', async () => {
  const { library: made, asked, neighbour } = await library();
  await cp(join(made.content, 'packs'), neighbour, { recursive: true });
  await mkdir(join(neighbour, '.git'));
  await pause(tick);
  watchOver(asked)([neighbour], {});
  await writeFile(join(neighbour, '.git/index'), 'of others');
  expect(unchangedSince(asked)).toBeDefined();
  await changedInSecret(join(neighbour, 'hen/pack.md'));
  expect(unchangedSince(asked)).toBeUndefined();
});

test.each<readonly [string, Partial<Asked>]>([
  ['another day', { today: '2026-09-02' }],
  ['another wish', { how: { strict: true } }],
  ['another library', { content: resolve('content') }],
])('%s is another build', async (_, other) => {
  const { asked } = await library();
  watchOver(asked)([], {});
  expect(unchangedSince({ ...asked, ...other })).toBeUndefined();
});

test('what is touched while a build reads, or just before, is no witness', async () => {
  const { library: made, asked } = await library();
  const published = watchOver(asked);
  await writeFile(join(made.content, 'packs/hen/pack.md'), await soundPack(['title: The', 'title: One']));
  published([], {});
  expect(unchangedSince(asked)).toBeUndefined();
  watchOver(asked)([], {});
  expect(unchangedSince(asked)).toBeUndefined();
  await pause(tick);
  watchOver(asked)([], {});
  expect(unchangedSince(asked)).toBeDefined();
});

test('a record that is damaged is none', async () => {
  const { library: made, asked } = await library();
  watchOver(asked)([], { published: 1 });
  const [record = ''] = await filesIn(join(made.cache, 'unchanged'));
  const path = join(made.cache, 'unchanged', record);
  await writeFile(path, (await readFile(path, 'utf8')).replace('"published":1', '"published":2'));
  expect(unchangedSince(asked)).toBeUndefined();
});

test('`bookfellow build` says that nothing has changed, with the same findings, and makes a page again that somebody wrote into', async () => {
  const made = await smallLibrary({ 'packs/hen/pack.md': await soundPack(['\nfor:', '\nmood board: on the wall\nfor:']) });
  await pause(tick);
  const build = () => bookfellowAlone(['build', '--content', made.content, '--site', made.site, '--no-pdf']);
  const first = await build();
  const page = join(made.site, 'packs/hen/index.html');
  const html = await readFile(page, 'utf8');
  const again = await build();
  expect(first.out).not.toContain('Nothing has changed');
  expect(again).toEqual({ ...first, out: first.out.replace(/(\d+ packs? on)/, 'Nothing has changed since the last build. $1'), err: again.err });
  await writeFile(page, 'somebody else’s');
  expect((await build()).out).toBe(first.out);
  expect(await readFile(page, 'utf8')).toBe(html);
});
