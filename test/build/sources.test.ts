/** A library of the folders of several schools: all are read, each pack says whose it is, and nothing of one can hide or replace what another has. */
import { chmod, mkdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { onDisk, readContent } from '../../src/build/read-content.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { slugInSource } from '../../src/build/slug.ts';
import { bookfellow, buildSmall, smallLibrary, textsIn, soundPack, type SmallLibrary } from './small-library.ts';

const settings = (sources: string) => `name: The district\nlanguage: en\nlanguages: [en]\ncontact: library@district.example\nrights: Each its own.\nsources:\n${sources}`;

/** Each pack's address, with whose it is; then what is told, without the settings' own lines. */
async function readTogether({ content }: SmallLibrary): Promise<{ packs: readonly string[]; told: readonly string[] }> {
  const { told, findings } = await readWholeLibrary(content, '2026-11-25');
  return {
    packs: told.map(({ pack }) => `${pack?.slug ?? 'none'} ${pack?.owner?.name ?? 'own'}`),
    told: findings.map(({ place, level, code }) => `${place.file}:${String(place.line)} ${level} ${code}`),
  };
}

test('the folders of two schools and the library’s own make one library', async () => {
  const library = await smallLibrary({
    'library.yaml': settings(
      '  - { folder: ../salt, owner: Saltmarsh School, prefix: salt, contact: reading@saltmarsh.example }\n  - { folder: ../mill, owner: Millrace School, licence: CC BY 4.0, rights: our own }\n',
    ),
    'packs/hen/pack.md': await soundPack(),
    // A checkout with packs/ in it; one's own names that must not be public lie beside it.
    '../salt/packs/hen/pack.md': await soundPack(),
    '../salt/private/roster.txt': 'Quillon\n',
    // A share with the packs themselves in it; this one names neither its licence nor the rights of its book.
    '../mill/snow/pack.md': await soundPack(['  licence: CC BY 4.0\n', ''], ['  rights: our own\n', '']),
  });
  expect(await readTogether(library)).toEqual({ packs: ['hen own', 'salt-hen Saltmarsh School', 'snow Millrace School'], told: [] });
  const { told, content } = await readWholeLibrary(library.content);
  expect((await readContent(library.content)).sources.map(({ roster }) => roster)).toEqual([[], ['Quillon'], []]);
  expect([told[2]?.pack?.by.licence, told[2]?.pack?.book.rights, onDisk(content.roots, told[2]?.source.file ?? '')]).toEqual(['CC BY 4.0', 'our own', join(library.folder, 'mill/snow/pack.md')]);
});

test('a pack that two folders want to publish under one address is published by neither, and both are named', async () => {
  const library = await smallLibrary({
    'library.yaml': settings('  - { folder: ../a, owner: A }\n  - { folder: ../b, owner: B }\n'),
    'packs/crow/pack.md': await soundPack(),
    '../a/hen/pack.md': await soundPack(),
    '../a/crow/pack.md': await soundPack(),
    '../b/hen/pack.md': await soundPack(),
    '../b/goat/pack.md': await soundPack(),
  });
  expect(await readTogether(library)).toEqual({
    packs: ['goat B'],
    told: ['packs/crow:1 stop source/clash', 'sources/a/crow:1 stop source/clash', 'sources/a/hen:1 stop source/clash', 'sources/b/hen:1 stop source/clash'],
  });
  const { findings } = await readWholeLibrary(library.content);
  expect(findings[2]).toMatchObject({ facts: { slug: 'hen', others: ['sources/b/hen'] } });
});

test('folders that are missing, no folder, a link, shut or named twice are told at their line, and the others are read', async () => {
  const library = await smallLibrary({
    'library.yaml': settings(['gone', 'file', 'link', 'good', '.', 'good/packs/../'].map((folder) => `  - { folder: ../${folder}, owner: Owner of ${folder} }\n`).join('')),
    '../file': 'no folder',
    '../good/packs/hen/pack.md': await soundPack(),
  });
  await symlink(join(library.folder, 'good'), join(library.folder, 'link'));
  const { packs, told } = await readTogether(library);
  expect(packs).toEqual(['hen Owner of good']);
  expect(told.filter((line) => line.startsWith('library.yaml'))).toEqual([
    'library.yaml:7 stop source/folder',
    'library.yaml:8 stop source/folder',
    'library.yaml:9 stop source/folder',
    'library.yaml:12 stop source/folder',
  ]);
});

test('a fault in one source’s lines costs that source alone', async () => {
  const library = await smallLibrary({
    'library.yaml': settings('  - { folder: ../a }\n  - { folder: ../b, owner: B }\n'),
    '../a/hen/pack.md': await soundPack(),
    '../b/hen/pack.md': await soundPack(),
  });
  expect(await readTogether(library)).toEqual({ packs: ['hen B'], told: ['library.yaml:7 stop pack/missing-field'] });
});

test.skipIf(process.platform === 'win32' || process.getuid?.() === 0)('a share that may not be read is told', async () => {
  const library = await smallLibrary({ 'library.yaml': settings('  - { folder: ../shut, owner: Shut }\n') });
  await mkdir(join(library.folder, 'shut'));
  await chmod(join(library.folder, 'shut'), 0);
  expect((await readTogether(library)).told).toEqual(['library.yaml:7 stop source/folder']);
});

test.each([
  // However a disk writes the accent: composed as on Linux, taken apart as on some others. Source: Unicode Standard Annex 15.
  ['Ñandú y él', undefined, 'nandu-y-el'],
  ['N\u0303andu\u0301 y e\u0301l', undefined, 'nandu-y-el'],
  ['../../etc', 'salt', 'salt-etc'],
  ['CON', undefined, 'pack-con'],
  ['a'.repeat(90), 'salt', `salt-${'a'.repeat(75)}`],
])('the address of a school’s folder "%s" with the prefix %s is "%s"', (name, prefix, slug) => {
  expect(slugInSource(name, prefix)).toBe(slug);
});

test('names without Latin letters have addresses of their own, the same for each way of writing them', () => {
  const [crow, hen] = ['الغراب', 'الدجاجة'].map((name) => slugInSource(name, undefined));
  expect(crow).toMatch(/^pack-[a-z0-9]+$/);
  expect(crow).not.toBe(hen);
  expect(slugInSource('آ'.normalize('NFD'), undefined)).toBe(slugInSource('آ'.normalize('NFC'), undefined));
});

test('the check names a source’s file, takes its folder as a path, and says where it lies', async () => {
  const library = await smallLibrary({ 'library.yaml': settings('  - { folder: ../salt, owner: Saltmarsh School }\n'), '../salt/hen/pack.md': 'nothing', '../salt/goat/pack.md': await soundPack() });
  const { code, out } = await bookfellow(['check', '--content', library.content, join(library.folder, 'salt/hen')]);
  expect([code, out.match(/^sources\/saltmarsh-school\/hen\/pack\.md:1:1 {2}stop/m)?.length, /^sources\/saltmarsh-school\/ is .*salt$/m.test(out)]).toEqual([1, 1, true]);
  expect((await bookfellow(['check', '--content', library.content, join(library.folder, 'salt/goat')])).code).toBe(0);
});

test('pages and lists say whose a pack is, with pictures from its own folder, and no path of the machine', async () => {
  const picture = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#446688' } })
    .png()
    .toBuffer();
  const library = await smallLibrary({
    'library.yaml': settings('  - { folder: ../salt, owner: Saltmarsh School, contact: reading@saltmarsh.example, prefix: salt }\n'),
    '../salt/hen/pack.md': await soundPack(['words:\n', 'pictures: [{ file: hen.png, alt: A hen looks up at the snow. }]\nwords:\n']),
    '../salt/hen/pictures/hen.png': picture,
  });
  expect(await buildSmall(library)).toMatchObject({ published: 1, leftOut: 0 });
  const texts = await textsIn(library.site);
  const page = texts.get('packs/salt-hen/index.html') ?? '';
  expect(page).toContain('From Saltmarsh School (<a href="mailto:reading@saltmarsh.example">reading@saltmarsh.example</a>).');
  expect(page).toContain('"provider":{"@type":"Organization","name":"Saltmarsh School","email":"reading@saltmarsh.example"}');
  expect(page).toMatch(/<img[^>]+pictures\/hen/);
  expect(JSON.parse(texts.get('packs.json') ?? '')).toMatchObject({ packs: [{ provider: { name: 'Saltmarsh School', contact: 'reading@saltmarsh.example' } }] });
  expect([...texts].filter(([, text]) => text.includes(library.folder)).map(([file]) => file)).toEqual([]);
});
