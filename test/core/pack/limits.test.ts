/** Packs that are larger or deeper than any pack is: a limit that is told, and work that grows with the size and no faster. */
import { expect, test } from 'vitest';
import { readFrontMatter } from '../../../src/core/pack/front-matter.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';

const told = (yaml: string): readonly string[] => readFrontMatter(`---\n${yaml}\n---\n`, 'pack.md').findings.map(({ code, place }) => `${place.line}:${place.column} ${code}`);
const lines = (count: number, line: (index: number) => string): string => Array.from({ length: count }, (_, index) => line(index)).join('\n');
const readBodyOf = (markdown: string) => {
  const text = `---\n${front}\n---\n${markdown}`;
  return readPack({ slug: 'hen', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
};
const front = `title: T
language: en
summary: S
book: { title: T, author: A, openings: 12, words: 300, rights: our own }
by: { name: N, licence: L, reviewed: 2026-03-02 }
for: { grades: [K], minutes: 30 }
readings: [{ reading: 1, purpose: P }]
stops: [{ id: one, at: { opening: 2, cue: C }, ask: A, kind: predict, depth: 2, answer: draw, or: say }]
home: { prompts: [P] }`;

test.each([
  // A field is two values, its name and what it holds; the group around them is one more.
  ['2,000 fields, which is one value too many', lines(2000, (n) => `k${n}: 1`), ['2001:8 yaml/too-many']],
  ['a field twice, and once more in a group', 'a: 1\nb: { c: 1, c: 2 }\na: 3', ['4:1 yaml/duplicate', '3:12 yaml/duplicate']],
  ['brackets in quotes that hide how deep it goes', `a: ${'["]",'.repeat(30)}1${']'.repeat(30)}`, ['2:95 yaml/too-deep']],
  ['keys within keys', `${'? '.repeat(60)}a`, ['2:41 yaml/too-deep']],
])('%s', (_, yaml, expected) => {
  expect(told(yaml).filter((each) => !each.endsWith('yaml/syntax'))).toEqual(expected);
});

test('thousands of stops that hold nothing are each told, at their line', () => {
  const read = readPack({
    slug: 'hen',
    file: 'pack.md',
    text: `---\n${front.replace(/stops:.*/, `stops:\n${'  - {}\n'.repeat(1500)}`)}\n---\n`,
    languageOfFile: undefined,
    pictureFiles: [],
    passage: undefined,
  });
  const missing = read.findings.filter(({ code }) => code === 'pack/missing-field');
  expect(missing).toHaveLength(6 * 1500);
  expect(new Set(missing.map(({ place }) => place.line)).size).toBe(1500);
});

test('a picture is all that a link holds, or one thing of several', () => {
  const body = '[![a](one.png)](x) [![b](two.png) and words](x) ![c](three.png) [![d](four.png)![e](five.png)](x) [words](x)';
  expect(readBodyOf(body).value?.body.pictures.map(({ file, isWholeLink }) => [file, isWholeLink])).toEqual([
    ['one.png', true],
    ['two.png', false],
    ['three.png', false],
    ['four.png', false],
    ['five.png', false],
  ]);
});

test('a paragraph of 40,000 pictures has as many', () => {
  expect(readBodyOf('![](a)'.repeat(40_000)).value?.body.pictures).toHaveLength(40_000);
});
