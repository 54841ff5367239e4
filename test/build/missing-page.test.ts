/** The page for an address that is not there is sent at any depth: its links must hold from everywhere. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { buildSmall, smallLibrary, soundPack } from './small-library.ts';

test('a library that says where it lives has links from the root of its host; one that does not has relative ones', async () => {
  const settings = 'name: The test shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: Each names its own.\n';
  const links = async (more: string) => {
    const library = await smallLibrary({ 'library.yaml': settings + more, 'packs/hen/pack.md': await soundPack() });
    await buildSmall(library);
    const html = await readFile(join(library.site, '404.html'), 'utf8');
    return [...html.matchAll(/ (?:href|src)="([^"]*)"/g)].map(([, to]) => to ?? '').filter((to) => !/^(?:#|data:|mailto:)/.test(to));
  };
  const whole = await links('address: https://shelf.example/books\n');
  expect(whole.length).toBeGreaterThan(8);
  expect(whole.filter((to) => !to.startsWith('/books/') && !to.startsWith('https://shelf.example/books/'))).toEqual([]);
  expect((await links('')).filter((to) => to.startsWith('/'))).toEqual([]);
});
