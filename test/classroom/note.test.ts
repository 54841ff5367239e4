/** What leaves the desk: a note in the pack's file, a table, a page for families. */
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csv } from '../../src/classroom/csv.ts';
import { noteField, withNotes, type Note } from '../../src/classroom/note.ts';
import { stackTable } from '../../src/classroom/stack-table.ts';
import { answersIn } from '../../src/classroom/stack.ts';
import { writeWallFile } from '../../src/classroom/wall-file.ts';
import { wallPage } from '../../src/classroom/wall-page.ts';
import { enBooklet } from '../../src/core/languages/en-booklet.ts';
import { stackInEnglish } from '../../src/core/languages/en-stack.ts';
import { readPack } from '../../src/core/pack/read-pack.ts';
import { wholeBook, type Value } from '../../src/core/booklet/booklet.ts';
import { aClass, booklet, hen, stackOf } from './small-class.ts';

const packs = fileURLToPath(new URL('../../content/packs/', import.meta.url));
const demo = await Promise.all((await readdir(packs)).map(async (slug) => ({ slug, text: await readFile(`${packs}${slug}/pack.md`, 'utf8') })));
const read = (text: string) => readPack({ slug: 'x', file: 'packs/x/pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
const flat = (text: string | undefined) => (text === undefined ? undefined : read(text).value?.whatFellFlat);
const note: Note = { stop: 'fog', note: 'Nobody knew what “uneasy” means: #1 of three', seen: '2026-11-25' };

describe('what fell flat, in the pack’s file', () => {
  test('every demo pack takes notes, keeps every line it had, and means what it meant', () => {
    fc.assert(
      fc.property(
        fc.nat(demo.length - 1),
        fc.array(fc.record({ words: fc.string({ unit: 'grapheme', maxLength: 60 }), place: fc.nat(6) }), { minLength: 1, maxLength: 3 }),
        fc.boolean(),
        (which, drawn, crlf) => {
          const { text } = demo[which] ?? { text: '' };
          const file = crlf ? text.replace(/\r?\n/g, '\r\n') : text;
          const before = read(file).value;
          const notes = drawn.flatMap(({ words, place }) => {
            const clean = words.trim().replace(/\s+/gu, ' ');
            return clean === '' ? [] : [{ stop: before?.stops[place % before.stops.length]?.id ?? '', note: clean, seen: '2026-11-25' }];
          });
          const once = withNotes(file, notes);
          const twice = once === undefined ? undefined : withNotes(once, notes);
          if (notes.length === 0) return once === file;
          const after = once === undefined ? undefined : read(once).value;
          expect(after?.whatFellFlat).toEqual(notes);
          expect(flat(twice)).toEqual([...notes, ...notes]);
          expect({ ...after, whatFellFlat: undefined, places: undefined, body: after?.body.markdown }).toEqual({ ...before, whatFellFlat: undefined, places: undefined, body: before?.body.markdown });
          // Taking the new lines out again leaves the file as it was.
          const rows = file.split('\n');
          let at = 0;
          for (const row of (once ?? '').split('\n')) if (row === rows[at]) at += 1;
          return at === rows.length;
        },
      ),
      { numRuns: Number(process.env['BOOKFELLOW_RUNS'] ?? 25) },
    );
  });

  test.each([
    [
      'behind notes that are there, before a remark on the next field',
      '---\nwhat fell flat:\n  - stop: fog\n    note: "Too long # really" # said Ann\n    seen: 2026-01-01\n\n# The pace\npace: 120\n---\n',
      'what fell flat:\n  - stop: fog\n    note: "Too long # really" # said Ann\n    seen: 2026-01-01\n  - stop: fog\n',
    ],
    ['with dashes at the margin', '---\nwhat fell flat:\n- stop: fog\n  note: Long\npace: 120\n---\n', 'what fell flat:\n- stop: fog\n  note: Long\n- stop: fog\n  note:'],
    ['at the end', '---\npace: 120\n---\nBody\n', 'pace: 120\nwhat fell flat:\n  - stop: fog\n'],
  ])('%s', (_, text, expected) => {
    expect(withNotes(text, [note])).toContain(expected);
    expect(withNotes(text, [note])?.endsWith(text.slice(text.lastIndexOf('---\n')))).toBe(true);
  });

  test('a file it cannot be put into is left alone', () => {
    expect(withNotes('No front matter', [note])).toBeUndefined();
    expect(withNotes('---\nwhat fell flat: [{ stop: fog, note: x }]\n---\n', [note])).toBeUndefined();
    expect(noteField([{ ...note, note: 'Two\n\nlines' }])).toContain('note: Two lines');
  });
});

describe('a table for a table program', () => {
  test.each([
    ['=1+1', `"'=1+1"`],
    ['+SUM(A1)', `"'+SUM(A1)"`],
    ['-2', `"'-2"`],
    ['@cmd', `"'@cmd"`],
    ['  =1', `"'  =1"`],
    ['\t=1', `"'\t=1"`],
    ['＝1', `"'＝1"`],
    ['She said "no", twice', '"She said ""no"", twice"'],
    ['two\nlines', '"two\nlines"'],
    ['plain', 'plain'],
  ])('%j', (value, expected) => {
    expect(csv([[value]])).toBe(`\ufeff${expected}\r\n`);
  });

  test('no cell of text begins a formula, whatever a child or a file holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (value) => {
        const bare = csv([[value]])
          .slice(1, -2)
          .replace(/^"/, '');
        return !/^(?:\s|\p{Cc})*[=+\-@]/u.test(bare);
      }),
      { numRuns: 500 },
    );
    expect(csv([[-2, 1]])).toBe('\ufeff-2,1\r\n');
  });

  test('every answer is in it, and scores only where something is judged', () => {
    const stack = aClass();
    const scores = Object.fromEntries(stack.booklets.flatMap((each) => answersIn(each).map(({ key }) => [key, { 'whole sentence': 1 }] as const)));
    const { colleague, ...heads } = stackInEnglish.take.table;
    const [head, ...rows] = stackTable(stack, hen, scores, [], { heads, colleague, markOf: () => 'a bookmark', file: enBooklet.file });
    expect(head).toHaveLength(8);
    expect(rows).toHaveLength(stack.booklets.reduce((sum, { booklet: { entries } }) => sum + entries.length, 0));
    expect(rows.filter((row) => row[2] === 3 || row[2] === 'The whole book').every((row) => row[6] === '')).toBe(true);
    expect(rows.filter((row) => row[6] === 1)).toHaveLength(7);
  });
});

describe('the page for families', () => {
  const stars = (n: number): Value => ({ kind: 'stars', stars: n, of: 5, words: 'well' });
  const word = (text: string): Value => ({ kind: 'feeling', word: text, family: 'afraid', strength: 1 });
  const classOf = (n: number, starsOf: (child: number) => number, wordOf: (child: number) => string) =>
    stackOf(
      Array.from({ length: n }, (_, child) =>
        booklet(child, [
          ['step', word(wordOf(child))],
          ['you', { kind: 'written', text: `I was scared, child ${String(child)}.`, frames: [] }],
          [wholeBook, stars(starsOf(child))],
        ]),
      ),
    );
  const mixed = (child: number) => (child % 2 === 0 ? 'worried' : 'scared');

  test.each([
    [4, 'nothing', 0, undefined],
    [5, 'only how many', 1, 0],
    [9, 'only how many', 1, 0],
    [10, 'all', 1, 2],
    [22, 'all', 1, 2],
  ])('of %d children', (n, kind, feelings, words) => {
    const page = wallPage(
      classOf(n, (child) => 4 + (child % 2), mixed),
      hen,
      [],
    );
    expect([page.stars.kind, page.feelings.length, page.feelings[0]?.words.length]).toEqual([kind, feelings, words]);
  });

  test('where all said the same, only how many', () => {
    const page = wallPage(
      classOf(
        12,
        () => 5,
        () => 'scared',
      ),
      hen,
      [],
    );
    expect(page.stars.kind).toBe('only how many');
    expect(page.feelings).toMatchObject([{ answered: 12, words: [] }]);
  });

  test('only ticked answers, never one about the child, never a voice or a photo, and no bookmark', () => {
    const photo: Value = { kind: 'photo', about: 'my work', type: 'image/jpeg', width: 4, height: 3, data: 'AAAA' };
    const stack = stackOf([
      booklet(0, [
        ['step', { kind: 'written', text: 'She is <b>scared</b>.', frames: [] }],
        ['step', photo],
      ]),
      booklet(1, [['you', { kind: 'written', text: 'I was scared.', frames: [] }]]),
      booklet(2, [['step', { kind: 'said', text: 'Not ticked.' }]]),
    ]);
    const keys = stack.booklets.slice(0, 2).flatMap((each) => answersIn(each).map(({ key }) => key));
    const page = wallPage(stack, hen, keys);
    expect(page.answers.flatMap(({ entries }) => entries.map(({ value }) => value.kind))).toEqual(['written']);
    const html = writeWallFile(page, stackInEnglish.take.wall, enBooklet.file, 'en');
    expect(html).toContain('She is &lt;b&gt;scared&lt;/b&gt;.');
    expect(html).not.toMatch(/waves|bookmark|I was scared|Not ticked|<script|<img|http:|https:/);
    expect(html).toContain("default-src 'none'");
  });
});
