/** Packs that are larger or deeper than any pack is: a limit that is told, and work that grows with the size and no faster. */
import { describe, expect, test } from 'vitest';
import { readFrontMatter } from '../../../src/core/pack/front-matter.ts';
import { readLibrary } from '../../../src/core/pack/library.ts';
import { readBody } from '../../../src/core/pack/markdown.ts';
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

test('a paragraph of 10,000 pictures has as many', () => {
  expect(readBodyOf('![](a)'.repeat(10_000)).value?.body.pictures).toHaveLength(10_000);
});

test('a body of 60,000 characters is read, and of one more it is told that it is too long', () => {
  const longest = 'word '.repeat(12_000);
  expect(readBodyOf(longest).findings).toEqual([]);
  expect(readBodyOf(`${longest}.`).findings).toEqual([{ code: 'body/too-long', level: 'stop', place: { file: 'pack.md', line: 12, column: 1 }, facts: { most: 60_000, found: 60_001 } }]);
});

describe('characters that may not be there', () => {
  test.each([
    ['an escape in YAML', [String.raw`title: "a\x1b[31mb"`, ''], ['2:8 file/control-character']],
    ['text turned round by an escape', [String.raw`title: "a\u202eb"`, ''], ['2:8 file/control-character']],
    ['half of a pair', [String.raw`title: "\ud800"`, ''], ['2:8 file/control-character']],
    ['the same as it is, told once', ['title: "a\u202eb"', ''], ['2:10 file/control-character']],
    ['an entity in the body', ['title: T', 'One.\n\nTwo &#x202e; three.'], ['14:1 file/control-character']],
    ['an entity in the title of a link', ['title: T', '[a](x "t&#x202e;")'], ['12:1 file/control-character']],
  ] as const)('%s', (_, [title, body], expected) => {
    const read = readPack({ slug: 'hen', file: 'pack.md', text: `---\n${front.replace('title: T', title)}\n---\n${body}`, languageOfFile: undefined, pictureFiles: [], passage: undefined });
    expect(read.findings.map(({ code, place }) => `${place.line}:${place.column} ${code}`)).toEqual(expected);
  });

  test('in library.yaml they are told, and the library is built with the usual words', () => {
    for (const name of ['"A \\x0b shelf"', 'A \u000b shelf']) {
      expect(readLibrary(`name: ${name}\nlanguage: en\nlanguages: [en]\ncontact: C\nrights: R\n`, 'library.yaml')).toMatchObject({
        value: undefined,
        findings: [{ code: 'file/control-character', place: { line: 1 } }],
      });
    }
  });
});

describe('a link that is refused is told on its line, however it is written', () => {
  test.each([
    ['with an entity, by its paragraph', 'One\n[two](java&#115;cript:x)', ['11 javascript:x']],
    ['over two lines', 'One\n[two](\njavascript:x)', ['13 javascript:x']],
    ['by reference, over two lines', '[two]\n\n[two]:\njavascript:x', ['14 javascript:x']],
    ['within brackets and quotes', '<javascript:x>', ['11 javascript:x']],
    ['as a picture', '![two](//elsewhere.example/x.png)', ['11 //elsewhere.example/x.png']],
    ['in code, where it is no link', '`[two](javascript:x)`\n\n    [two](javascript:x)', []],
  ])('%s', (_, body, expected) => {
    expect(readBody(body, 11, 'pack.md', []).findings.map((found) => `${found.place.line} ${'link' in found.facts ? found.facts.link : found.code}`)).toEqual(expected);
  });
});
