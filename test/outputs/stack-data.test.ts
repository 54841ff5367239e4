/** What the page of the stack carries of a library, and what it leaves to files. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readPack } from '../../src/core/pack/read-pack.ts';
import { readStackPack, stackPackOf } from '../../src/core/pack/stack-pack.ts';
import { mostCarried, packsCarried, stackFiles } from '../../src/outputs/stack-data.ts';
import type { ShownPack } from '../../src/outputs/views.ts';

const text = await readFile(fileURLToPath(new URL('../packs/sound/every-field/pack.md', import.meta.url)), 'utf8');
const pack = readPack({ slug: 'every-field', file: 'packs/every-field/pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined }).value;
if (!pack) throw new Error('The pack cannot be read.');
const shown = (times: number) =>
  Array.from({ length: times }, (_, n) => ({ pack: { ...pack, slug: `book-${String(n)}` }, urls: { family: `packs/book-${String(n)}/` } })) as unknown as readonly ShownPack[];

test('a small library is carried whole, a large one comes as files', () => {
  expect(packsCarried(shown(3))).toHaveLength(3);
  const many = Math.ceil(mostCarried / JSON.stringify(stackPackOf(pack)).length) + 1;
  expect(packsCarried(shown(many))).toBeUndefined();
  expect(stackFiles({ shown: shown(many) })).toHaveLength(many);
});

test('a file holds what the stack needs and comes back as the same', () => {
  const [file] = stackFiles({ shown: shown(1) });
  expect(file?.url).toBe('packs/book-0/stack.json');
  expect(readStackPack(JSON.parse(file?.text ?? ''))).toEqual({ ...stackPackOf(pack), slug: 'book-0' });
  expect(Object.keys(JSON.parse(file?.text ?? '') as object).sort()).toEqual(['bestOf', 'feelings', 'format', 'language', 'rating', 'rubric', 'slug', 'stops', 'title', 'version', 'words']);
});
