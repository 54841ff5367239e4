/**
 * The whole of a tiny site as a list that a reviewer can read: every path, and the text of every file that is no page.
 * After a wanted change: npx vitest run --config .config/vitest.config.js test/trees -u
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { buildSmall, filesIn, smallLibrary, textsIn } from '../build/small-library.ts';

const packs = fileURLToPath(new URL('../packs/', import.meta.url));
/** Hashes change with every style and script, and with nothing that this test is about. */
const withoutHash = (text: string) =>
  text
    .replace(/-(?:[0-9a-f]{8,16}|[0-9A-Z]{8})(?=[-.])/g, '-HASH')
    .replace(/(?:"assets\/part-HASH\.js",?)+/g, '"assets/part-HASH.js",')
    .replace(/"version":"[0-9a-f]{16}","bytes":\d+/, '"version":"HASH","bytes":BYTES');

test('a library of two books, one in two languages, makes these files', async () => {
  const files: Record<string, Buffer> = { 'library.yaml': await readFile(join(packs, 'library.yaml')) };
  for (const slug of ['every-field', 'the-wheelbarrow-goes-home']) {
    for (const file of await filesIn(join(packs, 'sound', slug))) files[`packs/${slug}/${file}`] = await readFile(join(packs, 'sound', slug, file));
  }
  files['library.yaml'] = Buffer.from(`${files['library.yaml']?.toString().replace(', ar]', ']') ?? ''}address: https://shelf.example/\n`);
  const library = await smallLibrary(files);
  await buildSmall(library);
  const texts = await textsIn(library.site);
  const shown = [...texts].filter(([name]) => /\.(?:json|xml|txt|vtt|ics|csv)$/.test(name) && !/^(?:schema|assets)\//.test(name));
  const tree = [...[...new Set((await filesIn(library.site)).map(withoutHash))].sort(), ...shown.map(([name, text]) => `\n---------- ${name} ----------\n${withoutHash(text.trimEnd())}`)];
  await expect(`${tree.join('\n')}\n`).toMatchFileSnapshot('two-books.txt');
});
