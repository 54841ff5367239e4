/** Files that are no booklets, or no longer, or pretend to be: each gets a plain reason, and what can be read is read. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { limits } from '../../../src/core/booklet/booklet-schema.ts';
import { newBooklet, put, type Booklet } from '../../../src/core/booklet/booklet.ts';
import { readBooklet, type Unreadable } from '../../../src/core/booklet/read-booklet.ts';
import { writeBookletFile } from '../../../src/core/booklet/write-booklet-file.ts';
import { phrasesFor } from '../../../src/core/languages/pick-language.ts';
import { tries } from '../../runs.ts';
import { anyBooklet } from './random-booklets.ts';

const words = phrasesFor('en').booklet.file;
const booklet = put(
  newBooklet('abcdefgh', { slug: 'rope', language: 'en', title: 'The Rope' }, { pattern: 'waves', colour: 'red' }, [{ of: 'rope', number: 1, opening: 4, ask: 'How does she feel?' }]),
  'writer001',
  'rope',
  { kind: 'written', text: 'cold', frames: [] },
);
const html = writeBookletFile(booklet, words);
const changed = (change: (data: Record<string, unknown>) => void): string => {
  const data = JSON.parse(JSON.stringify(booklet)) as Record<string, unknown>;
  change(data);
  return JSON.stringify(data);
};

const cases: readonly (readonly [title: string, text: string, reason: Unreadable])[] = [
  ['an empty file', '', 'empty'],
  ['a file of spaces', ' \n\t\uFEFF ', 'empty'],
  ['a picture', '\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR', 'not-a-booklet'],
  ['a letter', 'Dear teacher, here is the booklet.', 'not-a-booklet'],
  ['another page', '<!DOCTYPE html><title>Hello</title><script>alert(1)</script>', 'not-a-booklet'],
  ['other data', '{"format":"something else","version":1}', 'not-a-booklet'],
  ['a list', '[1,2,3]', 'not-a-booklet'],
  ['a booklet cut short in its data', html.slice(0, html.indexOf('"entries"')), 'cut-short'],
  ['a booklet cut short before its data', html.slice(0, 1200), 'cut-short'],
  ['data cut short', JSON.stringify(booklet).slice(0, -20), 'cut-short'],
  ['a later version', changed((data) => (data['version'] = 2)), 'newer'],
  ['a version that is none', changed((data) => (data['version'] = 'one')), 'damaged'],
  ['data with a hole', html.replace('"entries":', '"entries"'), 'damaged'],
  ['an address that climbs', changed((data) => (data['pack'] = { slug: '../../x', language: 'en', title: 'x' })), 'damaged'],
  ['a bookmark with markup', changed((data) => (data['bookmark'] = { pattern: '<b>', colour: 'red' })), 'damaged'],
  ['brackets without end', `{"format":${'['.repeat(200_000)}`, 'not-a-booklet'],
];

test.each(cases)('%s is told as it is', (_, text, reason) => {
  expect(readBooklet(text)).toEqual({ booklet: undefined, reason });
});

test('every reason has its words in both languages', () => {
  for (const language of ['en', 'es']) {
    for (const [, , reason] of cases) expect(phrasesFor(language).booklet.unreadable[reason].length).toBeGreaterThan(20);
    expect(phrasesFor(language).booklet.unreadable['too-big'].length).toBeGreaterThan(20);
  }
});

test('a huge file is refused before it is looked into', () => {
  expect(readBooklet(' '.repeat(limits.file + 1))).toEqual({ booklet: undefined, reason: 'too-big' });
});

test.each([
  ['a script for a picture', { kind: 'photo', about: '', type: 'text/html', width: 1, height: 1, data: 'PHNjcmlwdD4=' }],
  ['an SVG for a picture', { kind: 'photo', about: '', type: 'image/svg+xml', width: 1, height: 1, data: 'PHN2Zz4=' }],
  ['data that closes its attribute', { kind: 'photo', about: '', type: 'image/png', width: 1, height: 1, data: 'AAAA" onerror="alert(1)' }],
  ['a line that is no numbers', { kind: 'drawing', about: '', marks: [{ do: 'line', ink: 'red', width: 3, points: ['1"/><script>', 2, 3] }] }],
  ['a line without a whole point', { kind: 'drawing', about: '', marks: [{ do: 'line', ink: 'red', width: 3, points: [1, 2, 3, 4] }] }],
  ['an ink that is no ink', { kind: 'drawing', about: '', marks: [{ do: 'stamp', shape: 'sun', ink: 'url(x)', x: 1, y: 1, size: 5 }] }],
  ['a shape from the chain of prototypes', { kind: 'drawing', about: '', marks: [{ do: 'stamp', shape: 'constructor', ink: 'red', x: 1, y: 1, size: 5 }] }],
  ['a kind that nobody knows', { kind: 'telepathy', text: 'x' }],
  ['a text beyond all bounds', { kind: 'written', text: 'x'.repeat(limits.text + 1), frames: [] }],
  ['a book that could not be chosen', { kind: 'chosen', best: 'Another', of: ['This', 'That'] }],
  ['a book chosen first and last', { kind: 'chosen', best: 'This', last: 'This', of: ['This', 'That'] }],
  ['a choice of nothing', { kind: 'chosen', of: ['This', 'That'] }],
  ['more books than a shelf holds', { kind: 'chosen', best: 'This', of: Array.from({ length: 21 }, (_, n) => (n === 0 ? 'This' : String(n))) }],
  ['a score', { kind: 'stars', stars: 6, of: 5, words: '' }],
])('%s is left out and counted; the rest is read', (_, value) => {
  const text = changed((data) => (data['entries'] = [...(data['entries'] as unknown[]), { to: 'rope', value, writer: 'writer002', count: 1, order: 2 }]));
  expect(readBooklet(text)).toEqual({ booklet, leftOut: 1 });
});

test('fields that a later program added, and fields named after prototypes, are passed over', () => {
  const text = changed((data) => (data['later'] = { a: 1 })).replace('{"format"', '{"__proto__":{"polluted":true},"constructor":1,"format"');
  const read = readBooklet(text);
  expect(read).toEqual({ booklet, leftOut: 0 });
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
});

test('what was seen counts at least what is there, so that a careless file loses nothing', () => {
  const read = readBooklet(changed((data) => (data['seen'] = [])));
  expect(read.booklet?.seen).toEqual([['writer001', 1]]);
});

test('no text at all throws: random ones, cut ones, ones with letters changed', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => void readBooklet(text)),
    { numRuns: tries(500), seed: 3 },
  );
  fc.assert(
    fc.property(anyBooklet, fc.double({ min: 0, max: 1, noNaN: true }), fc.string({ unit: 'binary', maxLength: 3 }), (any: Booklet, where, what) => {
      const whole = writeBookletFile(any, words);
      const at = Math.floor(where * whole.length);
      for (const text of [whole.slice(0, at), whole.slice(0, at) + what + whole.slice(at + 1)]) {
        const read = readBooklet(text);
        // Whatever came out can be written and read again.
        if (read.booklet) expect(readBooklet(writeBookletFile(read.booklet, words))).toEqual({ booklet: read.booklet, leftOut: 0 });
      }
    }),
    { numRuns: tries(500), seed: 4 },
  );
});
