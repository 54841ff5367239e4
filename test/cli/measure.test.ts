/** `bookfellow measure`: what a person reads, and what a script gets. */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bookfellow, smallLibrary, soundPack } from '../build/small-library.ts';

const letter = `# A letter home\n\n${'We read about a hen. She runs to the gate. '.repeat(9)}\nThen, unexpectedly, an extraordinarily inquisitive neighbour investigates the unfamiliar commotion.\n\n- one thing\n- another\n`;

test('a letter home: counts, a band with the formula and what it cannot see, what was left out, and three lines to begin with', async () => {
  const { content } = await smallLibrary({ 'letter.md': letter });
  const file = join(content, 'letter.md');
  const { code, out } = await bookfellow(['measure', file]);
  expect(code).toBe(0);
  expect(out).toContain('100 words in 19 sentences; 5 words in the average sentence, 10 in the longest.');
  expect(out).toMatch(/About grade \d or below, an estimate by the Flesch-Kincaid formula, which sees length alone\. The aim is grade 6 or below\./);
  expect(out).toContain('Left out, because they are no running prose: 1 heading and 2 list items.');
  expect(out).toContain(`${file}:4  Then, unexpectedly, an extraordinarily`);
  expect(out).toContain('Length is all a formula sees');
  expect(out).not.toMatch(/grades? -|\d\.\d/);
});

test('a short text: counts and no grade', async () => {
  const { content } = await smallLibrary({ 'note.txt': 'We read about a hen.\n' });
  const { out } = await bookfellow(['measure', join(content, 'note.txt')]);
  expect(out).toContain('5 words in 1 sentence');
  expect(out).toContain('Too short for a grade estimate: that takes 100 words and 10 sentences.');
  expect(out).not.toContain('Length is all');
});

test('a pack: each part by its own readers, the private passage too', async () => {
  const { content } = await smallLibrary({ 'packs/hen/pack.md': await soundPack(), 'packs/hen/private/passage.txt': '[opening 1]\nA hen runs.\n' });
  const { out } = await bookfellow(['measure', join(content, 'packs/hen/pack.md')]);
  const parts = ['For families', 'What children read', 'The book’s own text'].map((part) => out.indexOf(part));
  expect(parts).toEqual([...parts].sort((a, b) => a - b));
  expect(parts[0]).toBeGreaterThan(0);
  expect(out).toContain('3 words in 1 sentence');
});

test('--json: one object for one file, a list for several or a folder, always the same fields', async () => {
  const { content } = await smallLibrary({ 'letter.md': letter, 'carta.es.txt': 'Leemos un libro de una gallina.\n' });
  const one = JSON.parse((await bookfellow(['measure', join(content, 'letter.md'), '--json'])).out) as object;
  expect(Object.keys(one)).toEqual(['file', 'language', 'counts', 'scores']);
  expect(one).toMatchObject({ language: 'en', counts: { words: 100, sentences: 19 }, scores: { fleschKincaid: expect.any(Number) as unknown, spache1974: expect.any(Number) as unknown } });
  const folder = JSON.parse((await bookfellow(['measure', content, '--json'])).out) as readonly object[];
  expect(folder.map((each) => Object.keys(each))).toEqual([Object.keys(one), Object.keys(one)]);
  expect(folder).toMatchObject([{ language: 'es', scores: { crawford: expect.any(Number) as unknown } }, { language: 'en' }]);
});
