/** `bookfellow measure` tells the person who has a book's text what is counted in it, and gives scripts numbers and single words. */
import { join } from 'node:path';
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { bookfellow, smallLibrary, soundPack } from '../build/small-library.ts';

const passage = await readFile(new URL('../packs/one-mistake/copy-too-much/private/passage.txt', import.meta.url), 'utf8');
const { content } = await smallLibrary({
  'packs/barrow/pack.md': await soundPack(['rights: our own', 'rights: in copyright'], ['word: axle', 'word: hub']),
  'packs/barrow/private/passage.txt': passage,
  'packs/plain/pack.md': await soundPack(),
});

test('for people: openings, taught words, words to teach, quotations', async () => {
  const { code, out } = await bookfellow(['measure', join(content, 'packs/barrow/pack.md')]);
  expect(code).toBe(0);
  expect(out).toContain('Words by opening: 1: 25, 2: 27, 3: 28, 4: 24,');
  expect(out).toContain('Taught, and not in the text: hub.');
  expect(out).toMatch(/Words that might be taught: (?:\w+ \(\d+\), )+/);
  expect(out).toContain('Quoted in the pack: 10 of 320 words (3 %), at most 5 in a row. The limit is 32 in all and 12 in a row.');
});

test('for scripts: the numbers, and no two words of the text beside each other', async () => {
  const { out } = await bookfellow(['measure', '--json', join(content, 'packs/barrow/pack.md')]);
  const { passage: numbers } = JSON.parse(out) as { readonly passage: { readonly words: number; readonly openings: readonly unknown[] } };
  expect([numbers.words, numbers.openings.length]).toEqual([320, 12]);
  const strings = JSON.stringify(numbers).match(/"[^"]*"(?!:)/g) ?? [];
  expect(strings.filter((text) => text.includes(' ') && !['"too short"', '"no formula"'].includes(text))).toEqual([]);
});

test('a pack without a passage is measured as before', async () => {
  const { code, out } = await bookfellow(['measure', join(content, 'packs/plain/pack.md')]);
  expect([code, out.includes('Words by opening')]).toEqual([0, false]);
});
