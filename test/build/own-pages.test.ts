/** Pages of the library's own, from `content/pages/`: which names they can have. */
import { readdir } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { takenNames } from '../../src/outputs/pages.ts';
import { buildSmall, smallLibrary, soundPack } from './small-library.ts';

const page = (title: string) => `---\ntitle: ${title}\ndescription: About us.\n---\n\nA shelf.\n`;
const settings = 'name: The Saltmarsh shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: CC BY 4.0\n';

test('two of one address, and one that the site has itself, are told with file and address; the rest is published', async () => {
  const library = await smallLibrary({
    'library.yaml': settings,
    'packs/hen/pack.md': await soundPack(),
    'pages/about.md': page('About'),
    'pages/about.en.md': page('About once more'),
    'pages/about.es.md': page('Sobre la biblioteca'),
    // A language that the library does not have is not published, so it asks for nothing.
    'pages/find.ar.md': page('Find'),
    'pages/find.md': page('Find'),
    'pages/es.md': page('Spanish'),
  });
  const { findings, published } = await buildSmall(library);
  const taken = findings.flatMap((found) => (found.code === 'page/address-taken' ? [[found.place.file, found.facts]] : []));
  expect(taken).toEqual([
    ['pages/about.md', { address: 'about/', by: 'pages/about.en.md' }],
    ['pages/es.md', { address: 'es/' }],
    ['pages/find.md', { address: 'find/' }],
  ]);
  expect(published).toBe(1);
  // Every folder that the site has by itself is among the names that are taken.
  const folders = async (root: string) => (await readdir(`${library.site}/${root}`, { withFileTypes: true })).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));
  const own = [...(await folders('')), ...(await folders('es'))].filter((name) => name !== 'about' && name !== 'es');
  expect(own.filter((name) => !takenNames.has(name))).toEqual([]);
  expect(own.length).toBeGreaterThan(10);
});
