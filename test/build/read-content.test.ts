/** What can lie in a content folder beside sound packs: each is told, none stops the others, links are never followed. */
import { spawnSync } from 'node:child_process';
import { chmod, mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readContent } from '../../src/build/read-content.ts';
import { slugOf } from '../../src/build/slug.ts';
import type { Code } from '../../src/core/finding.ts';
import { smallLibrary, soundPack } from './small-library.ts';

async function told(content: string): Promise<readonly (readonly [string, Code])[]> {
  return (await readContent(content)).findings.map((found) => [found.place.file, found.code] as const);
}

test('a folder whose name cannot be an address is told with a name that can', async () => {
  const { content } = await smallLibrary({ 'packs/The Lamp!/pack.md': await soundPack(), 'packs/hen/pack.md': await soundPack() });
  const read = await readContent(content);
  expect(read.findings).toMatchObject([{ code: 'folder/name', place: { file: 'packs/The Lamp!' }, facts: { suggestion: 'the-lamp' } }]);
  expect(read.sources.map((source) => source.slug)).toEqual(['hen']);
});

test('a folder without a pack is told, and so is a folder that is called pack.md', async () => {
  const { content } = await smallLibrary({ 'packs/bare/notes.txt': 'nothing yet' });
  await mkdir(join(content, 'packs/odd/pack.md'), { recursive: true });
  expect(await told(content)).toEqual([
    ['packs/bare', 'folder/no-pack'],
    ['packs/odd/pack.md', 'file/not-a-file'],
  ]);
});

test('a pack of more than 512 kB is not read', async () => {
  const { content } = await smallLibrary({ 'packs/long/pack.md': `${await soundPack()}${'wheel '.repeat(100_000)}` });
  expect(await told(content)).toEqual([['packs/long/pack.md', 'file/too-big']]);
});

test.skipIf(process.platform === 'win32')('links are told and not followed: a pack, its folder, a picture, and a link to itself', async () => {
  const { content, folder } = await smallLibrary({ 'packs/linked/notes.txt': '', 'packs/pictured/pack.md': await soundPack(), 'packs/pictured/pictures/readme.txt': '' });
  await writeFile(join(folder, 'outside.md'), await soundPack());
  await symlink(join(folder, 'outside.md'), join(content, 'packs/linked/pack.md'));
  await symlink(folder, join(content, 'packs/everything'));
  await symlink('/etc/hostname', join(content, 'packs/pictured/pictures/host.png'));
  await symlink('round', join(content, 'packs/round'));
  expect((await told(content)).map(([file, code]) => `${file} ${code}`).sort()).toEqual([
    'packs/everything file/link',
    'packs/linked/pack.md file/link',
    'packs/pictured/pictures/host.png file/link',
    'packs/round file/link',
  ]);
});

test.skipIf(process.platform === 'win32')('a pipe in place of a pack is told and not waited for', async () => {
  const { content } = await smallLibrary({ 'packs/pipe/notes.txt': '' });
  expect(spawnSync('mkfifo', [join(content, 'packs/pipe/pack.md')]).status).toBe(0);
  expect(await told(content)).toEqual([['packs/pipe/pack.md', 'file/not-a-file']]);
});

test.skipIf(process.platform === 'win32' || process.getuid?.() === 0)('a pack that may not be read is told', async () => {
  const { content } = await smallLibrary({ 'packs/shut/pack.md': await soundPack() });
  await chmod(join(content, 'packs/shut/pack.md'), 0);
  expect(await told(content)).toEqual([['packs/shut/pack.md', 'file/unreadable']]);
});

test('a content folder without packs/ is told', async () => {
  const { folder } = await smallLibrary({});
  expect(await told(join(folder, 'nowhere'))).toEqual([['packs', 'file/unreadable']]);
});

test.each([
  ['The Lamp on the Jetty', 'the-lamp-on-the-jetty'],
  ['Ñandú y él', 'nandu-y-el'],
  ['../../etc', 'etc'],
  ['CON', 'pack-con'],
  ['🐢', 'pack'],
  ['a'.repeat(300), 'a'.repeat(80)],
  ['hen. ', 'hen'],
])('the address of a folder called "%s" is "%s"', (name, slug) => {
  expect(slugOf(name)).toBe(slug);
});
