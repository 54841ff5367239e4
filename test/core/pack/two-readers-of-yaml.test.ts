/**
 * YAML has two readers: a fast one for what is plain and sound, a careful one for all the rest. Where the fast one answers,
 * both say the same values at the same places and nothing is told. More random texts with `BOOKFELLOW_RUNS=200000`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCarefully } from '../../../src/core/pack/careful-yaml.ts';
import { readPlainYaml } from '../../../src/core/pack/fast-yaml.ts';
import type { ReadYaml } from '../../../src/core/pack/raw.ts';
import { anySigns, anySlip, anyYaml } from './yaml-texts.ts';

const numRuns = Number(process.env['BOOKFELLOW_RUNS'] ?? 300);

const carefully = (yaml: string) => readCarefully(yaml, (line, column) => ({ file: 'pack.md', line, column }));
/** Everything that was read, in its order. */
const said = ({ raw, places, findings }: ReadYaml) => JSON.stringify([raw, Object.entries(places), findings]);
const front = (file: string) => /^---[^]*?(?=\n---)/.exec(readFileSync(file, 'utf8').replace(/\r\n?/g, '\n'))?.[0].slice(3) ?? '';
const packsIn = (folder: string) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).flatMap((file) => (/pack[^/\\]*\.md$/.test(file) ? [front(`${folder}/${file}`)] : []));
const [demo, sound, mistaken] = ['content/packs', 'test/packs/sound', 'test/packs/one-mistake'].map(packsIn) as [string[], string[], string[]];

test('the packs of the demo and those without a mistake are read fast, and all that are read fast are read the same', () => {
  expect([...demo, ...sound].filter((yaml) => readPlainYaml(yaml) === undefined)).toEqual([]);
  expect(mistaken.length).toBeGreaterThan(100);
  for (const yaml of [...demo, ...sound, ...mistaken]) {
    const fast = readPlainYaml(yaml);
    if (fast) expect(said(fast)).toBe(said(carefully(yaml)));
  }
});

describe('of random texts', () => {
  /** How many texts were sound, and how many of these were read fast. */
  const tried = (texts: fc.Arbitrary<string>) => {
    const count = { sound: 0, fast: 0 };
    fc.assert(
      fc.property(texts, (yaml) => {
        const [fast, careful] = [readPlainYaml(yaml), carefully(yaml)];
        if (careful.findings.length === 0) count.sound += 1;
        if (fast === undefined) return;
        count.fast += 1;
        expect(said(fast)).toBe(said(careful));
      }),
      { numRuns },
    );
    return count;
  };

  test('in every style, both read the same', () => {
    const { sound: ofAll, fast } = tried(anyYaml);
    expect(ofAll).toBeGreaterThan(numRuns / 3);
    expect(fast).toBeGreaterThan(ofAll / 3);
  });

  test('with slips of the hand in lines of real packs, both read the same', () => {
    expect(tried(anySlip([...demo, ...sound])).fast).toBeGreaterThan(numRuns / 20);
  });

  test('of signs in a row, both read the same', () => {
    expect(tried(anySigns).fast).toBeGreaterThan(0);
  });
});

/** Values after the rules of YAML 1.2.2, by section; the wording of the texts is ours. */
const standard: readonly (readonly [section: string, yaml: string, value: unknown])[] = [
  ['6.5 line folding: one break is a space, more are one less', 'a: one\n  two\n\n\n  three', { a: 'one two\n\nthree' }],
  ['6.6 a remark has a space before it', 'a: hen#1 # and this is one', { a: 'hen#1' }],
  ['7.3.1 double quotes: signs for characters', String.raw`a: "say \"hen\"\nand \\"`, { a: 'say "hen"\nand \\' }],
  ['7.3.2 single quotes: only the quote itself is doubled', String.raw`a: 'it''s \n'`, { a: String.raw`it's \n` }],
  ['7.3.3 plain: colons and hashes within words', 'a: x:y#z', { a: 'x:y#z' }],
  ['7.4.1 a list in brackets, over lines, with a comma at its end', 'a: [one,\n  two,\n  ]', { a: ['one', 'two'] }],
  ['7.4.2 a group in braces; a name in quotes needs no space behind its colon', 'a: {b: 1, "c":2, d: }', { a: { b: '1', c: '2', d: '' } }],
  ['8.1.1.2 chomping: one break is kept', 'a: |\n  one\n\n\nb: c', { a: 'one\n', b: 'c' }],
  ['8.1.1.2 chomping: none is kept', 'a: |-\n  one\n\n\nb: c', { a: 'one', b: 'c' }],
  ['8.1.1.2 chomping: all are kept', 'a: |+\n  one\n\n\nb: c', { a: 'one\n\n\n', b: 'c' }],
  ['8.1.2 literal: breaks and deeper spaces stay', 'a: |\n  one\n    two\n  three', { a: 'one\n  two\nthree\n' }],
  ['8.1.3 folded: lines are joined, deeper ones are not', 'a: >\n  one\n  two\n    deep\n  three\n', { a: 'one two\n  deep\nthree\n' }],
  ['8.2.1 a list may stand below its name without more spaces', 'a:\n- one\n- two\nb: c', { a: ['one', 'two'], b: 'c' }],
  ['8.2.1 a list whose items are groups and lists on the same line', 'a:\n  - b: 1\n    c: 2\n  - - d', { a: [{ b: '1', c: '2' }, ['d']] }],
  ['10.1 failsafe: everything is text', 'a: 012\nb: no\nc: 2026-09-01\nd: ~\ne:', { a: '012', b: 'no', c: '2026-09-01', d: '~', e: '' }],
];
test.each(standard)('%s', (_, yaml, value) => {
  const fast = readPlainYaml(`\n${yaml}`);
  expect(fast && JSON.parse(JSON.stringify(fast.raw))).toEqual(value);
  expect(said(carefully(`\n${yaml}`))).toBe(fast && said(fast));
});

/** What the fast reader would take, or read otherwise, were it not left to the careful one. */
test.each([
  ['a remark without a space', 'a: []#', 'yaml/syntax'],
  ['a sign for a character that may not be there', String.raw`a: "\x1b"`, 'file/control-character'],
  ['tabs before a field', 'a:\n\tb: 1', 'yaml/syntax'],
  ['two documents', 'a: 1\n...\nb: 2', 'yaml/syntax'],
  ['a field twice', 'a: 1\na: 2', 'yaml/duplicate'],
  ['an alias', 'a: &x 1\nb: *x', 'yaml/alias'],
  ['a mark of a type', 'a: !hen 1', 'yaml/tag'],
  ['a mark before a block', 'a: !\n    |', 'yaml/tag'],
  ['lists within lists', `a: ${'['.repeat(20)}${']'.repeat(20)}`, 'yaml/too-deep'],
  ['an escaped line break', 'a: "one\\\n  two"', undefined],
  ['a pair in a list', 'a: [b: c]', undefined],
  ['a name that is asked for in a list', 'a: [? b]', undefined],
  ['an item without a value', 'a:\n  -\n  - b', undefined],
  ['a block that ends in spaces', 'a: |+\n\n ', undefined],
  ['a list at the top', '- a', 'front-matter/missing'],
])('%s is left to the careful reader', (_, yaml, told) => {
  expect(readPlainYaml(`\n${yaml}`)).toBeUndefined();
  expect(carefully(`\n${yaml}`).findings[0]?.code).toBe(told);
});

test('a field called __proto__ is only a name', () => {
  const read = readPlainYaml('\n__proto__: { polluted: yes }\nb: [{ __proto__: x }]');
  expect(Object.entries(read?.raw ?? {}).map(([name]) => name)).toEqual(['__proto__', 'b']);
  expect([Object.getPrototypeOf(read?.raw), Object.getPrototypeOf(read?.places), (Object.prototype as { polluted?: unknown }).polluted]).toEqual([null, null, undefined]);
  expect(read && said(read)).toBe(said(carefully('\n__proto__: { polluted: yes }\nb: [{ __proto__: x }]')));
});
