/** What the form keeps of a text's earlier versions, and what it tells of the book's own text while somebody writes. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fieldEdits } from '../../../src/browser/maker/edits.ts';
import { mostEarlier, Versions } from '../../../src/browser/maker/versions.ts';
import { work } from '../../../src/browser/maker/work.ts';
import { fieldOrder } from '../../../src/core/pack/form-fields.ts';
import { defaultLibrary } from '../../../src/core/pack/library.ts';
import type { Step } from '../../../src/core/pack/pack.ts';

const folder = 'content/packs/the-cloud-keeper';
const pack = readFileSync(`${folder}/pack.md`, 'utf8');
const passage = readFileSync(`${folder}/private/passage.txt`, 'utf8');

/** The text with one field written anew, as the form does it. */
const written = (text: string, steps: readonly Step[], value: string): string => {
  const made = work.edit(text, fieldEdits(work.fields(text).raw, steps, value), fieldOrder);
  if (!made) throw new Error(`not made: ${steps.join('.')}`);
  return made.text;
};

describe('going back through versions', () => {
  test('gives the very text of each of the last ten steps, and no more', () => {
    const versions = new Versions();
    const texts = [pack];
    for (let step = 0; step < 13; step++) {
      const before = texts.at(-1) ?? '';
      versions.leave(before, `stops.${String(step % 2)}.ask`);
      texts.push(written(before, ['stops', step % 2, 'ask'], `Question number ${String(step)}?`));
    }
    const back = Array.from({ length: 11 }, () => versions.back());
    expect(mostEarlier).toBe(10);
    expect(back).toEqual([...texts.slice(3, 13).reverse(), undefined]);
    expect(new Set(back).size).toBe(11);
  });

  test('takes typing on in one field as one step, and each deed that is about no single field as its own', () => {
    const versions = new Versions();
    for (const [text, field] of [
      ['a', 'title'],
      ['b', 'title'],
      ['c', 'summary'],
      ['d', ''],
      ['e', ''],
      ['f', 'title'],
    ] as const)
      versions.leave(text, field);
    expect(versions.texts).toEqual(['a', 'c', 'd', 'e', 'f']);
    expect(versions.back()).toBe('f');
    // After a step back the same field begins a step of its own.
    versions.leave('g', 'title');
    expect(versions.texts).toEqual(['a', 'c', 'd', 'e', 'g']);
  });

  test('goes on where it was left when a pack is opened again', () => {
    const first = new Versions();
    for (const text of ['a', 'b', 'c']) first.leave(text, '');
    const opened = new Versions(first.texts);
    opened.leave('d', 'title');
    expect([opened.back(), opened.back(), opened.back(), opened.back(), opened.back()]).toEqual(['d', 'c', 'b', 'a', undefined]);
  });
});

describe('the book’s own text', () => {
  const look = (text: string, of: string | undefined) =>
    work.look({ text, slug: 'the-cloud-keeper', passage: of, pictureFiles: [] }, { ...defaultLibrary, languages: ['en', 'es', 'ar'] }, 'en', '2026-11-28');

  test('brings words that could be taught as soon as it is there, without those that are taught already', async () => {
    expect((await look(pack, undefined)).passage).toBeUndefined();
    const candidates = (await look(pack, passage)).passage?.candidates ?? [];
    expect(candidates.length).toBeGreaterThan(2);
    // Each stands in the book, in some form of it.
    for (const word of candidates) expect(passage.toLowerCase()).toContain(word.slice(0, Math.max(4, word.length - 2)));
    const [first = ''] = candidates;
    const count = (work.fields(pack).raw as { readonly words: readonly unknown[] }).words.length;
    const taught = written(written(written(pack, ['words', count, 'word'], first), ['words', count, 'meaning'], 'It is told here.'), ['words', count, 'situation'], 'It is used here.');
    expect((await look(taught, passage)).passage?.candidates).not.toContain(first);
  });

  test('tells while somebody writes how much of it is quoted, and is quiet again when the quotation goes', async () => {
    const quotation = 'Miss Averill kept a cloud the way other people keep a goat. She walked it in the mornings. She combed it in the evenings.';
    const before = await look(pack, passage);
    const longer = written(pack, ['stops', 0, 'ask'], `${quotation} Why?`);
    const quoted = await look(longer, passage);
    const codes = (of: typeof before) => of.advice.filter(({ code }) => code.startsWith('copy/')).map(({ code, path }) => `${code} ${path}`);
    expect(quoted.passage?.copiedPercent).toBeGreaterThan((before.passage?.copiedPercent ?? 100) + 2);
    expect(codes(quoted).length).toBeGreaterThanOrEqual(codes(before).length);
    const after = await look(written(longer, ['stops', 0, 'ask'], String((work.fields(pack).raw as { stops: readonly { ask: string }[] }).stops[0]?.ask)), passage);
    expect(after.passage).toEqual(before.passage);
    expect(codes(after)).toEqual(codes(before));
  });

  test('of a book in copyright brings advice beside the very field that quotes too much of it', async () => {
    const theirs = written(pack, ['book', 'rights'], 'in copyright');
    const quoted = written(theirs, ['stops', 0, 'ask'], 'Miss Averill kept a cloud the way other people keep a goat. She walked it in the mornings. She combed it in the evenings. Why?');
    const copied = async (text: string) => (await look(text, passage)).advice.filter(({ code }) => code === 'copy/long-quote').map(({ path }) => path);
    expect(await copied(theirs)).not.toContain('stops.0.ask');
    expect(await copied(quoted)).toContain('stops.0.ask');
  });
});
