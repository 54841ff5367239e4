/** What a child did comes back out of the file letter for letter, whatever it was. */
import { createHash } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { newBooklet, put } from '../../../src/core/booklet/booklet.ts';
import { fileStyle, fileStyleHash } from '../../../src/core/booklet/file-style.ts';
import { readBooklet } from '../../../src/core/booklet/read-booklet.ts';
import { bookletFileName, writeBookletFile } from '../../../src/core/booklet/write-booklet-file.ts';
import { phrasesFor } from '../../../src/core/languages/pick-language.ts';
import { tries } from '../../runs.ts';
import { anyBooklet } from './random-booklets.ts';

const words = phrasesFor('en').booklet.file;

/** As a disk does: to bytes of UTF-8 and back. Halves of surrogate pairs do not live through that outside the data. */
const throughBytes = (text: string): string => new TextDecoder().decode(new TextEncoder().encode(text));

test('random booklets go into a file and come back equal', () => {
  let tried = 0;
  fc.assert(
    fc.property(anyBooklet, (booklet) => {
      tried += 1;
      const file = throughBytes(writeBookletFile(booklet, words));
      const read = readBooklet(file);
      // Told apart in the quick way first: ten thousand are many.
      if (!isDeepStrictEqual(read, { booklet, leftOut: 0 })) expect(read).toEqual({ booklet, leftOut: 0 });
      if (read.booklet && throughBytes(writeBookletFile(read.booklet, words)) !== file) expect.fail('written again, it is another file');
    }),
    { numRuns: tries(10_000), seed: 20_261_125 },
  );
  // eslint-disable-next-line no-console -- the count is to be read
  console.log(`random booklets written into a file and read back equal: ${String(tried)}`);
  expect(tried).toBe(tries(10_000));
});

test('a file that a program saved in another encoding still gives its data back', () => {
  const booklet = put(newBooklet('abcdefgh', { slug: 'rope', language: 'es', title: 'El ñandú' }, { pattern: 'waves', colour: 'red' }, []), 'writer001', 'rope', {
    kind: 'written',
    text: '¿Está asustada? 🐦',
    frames: [],
  });
  const latin1 = Buffer.from(writeBookletFile(booklet, words), 'utf8').toString('latin1');
  expect(readBooklet(latin1)).toEqual({ booklet, leftOut: 0 });
});

test('the page around the data holds no way to run anything', () => {
  fc.assert(
    fc.property(anyBooklet, (booklet) => {
      const html = writeBookletFile(booklet, words);
      expect(html.match(/<script/g)).toHaveLength(1);
      expect(html.match(/<\/script/g)).toHaveLength(1);
      // Every tag is one that the writer writes; no attribute of a tag begins with "on".
      const tags = [...html.matchAll(/<([a-z0-9]+)((?:\s+[a-z-]+(?:="[^"]*")?)*)\s*\/?>/gi)];
      expect(tags.length).toBe((html.match(/<(?![!/])/g) ?? []).length);
      expect(tags.filter(([, , attributes = '']) => /\son\w+=/i.test(attributes.replace(/"[^"]*"/g, '""')))).toEqual([]);
    }),
    { numRuns: tries(300), seed: 7 },
  );
});

test('the policy of the file knows its style by its hash', () => {
  expect(fileStyleHash).toBe(`sha256-${createHash('sha256').update(fileStyle).digest('base64')}`);
});

test('a file is named after the book and the bookmark', () => {
  expect(bookletFileName(newBooklet('abcdefgh', { slug: 'the-lamp', language: 'en', title: 'X' }, { pattern: 'roofs', colour: 'blue' }, []))).toBe('the-lamp-en-blue-roofs.booklet.html');
});
