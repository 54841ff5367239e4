/** Files that are empty, missing, half there, or of the wrong kind. */
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { refused, sound, type HostileClass } from './hostile-case.ts';

const frontOnly = sound.slice(0, sound.indexOf('\n---\n', 4) + 5);

export const files: HostileClass = {
  class: 'files',
  cases: [
    refused('an empty file', '', '1 file/empty'),
    refused('nothing but spaces and lines', ' \n\t\n \n', '1 file/empty'),
    refused('nothing but a byte order mark', '\ufeff', '1 file/empty'),
    refused('a body without front matter', 'Just a text about a hill.\n', '1 front-matter/missing'),
    refused('one line of hyphens', '---', '1 front-matter/unclosed'),
    refused('front matter that does not end', '---\ntitle: T\n', '1 front-matter/unclosed'),
    refused('an empty front matter', '---\n---\n\nText.\n', ...['title', 'language', 'summary', 'book', 'by', 'for', 'readings', 'stops', 'x'].slice(1).map(() => '1 pack/missing-field')),
    refused('a page of the web', '<!DOCTYPE html><title>T</title>', '1 front-matter/missing'),
    refused('a file of another kind', Buffer.from([0x25, 0x50, 0x44, 0x46, 0x2d, 0xc4, 0xe5, 0xf2]), '1 file/encoding'),
    { name: 'front matter without a body', files: { 'pack.md': frontOnly }, told: [], published: true },
    { name: 'a folder without a pack', files: { 'notes.txt': 'Later.' }, told: ['folder folder/no-pack'], published: false },
    { name: 'a pack under another name', files: { 'pack-old.md': sound, 'Pack.md': sound, 'pack.md.bak': sound, '.pack.md': sound }, told: ['folder folder/no-pack'], published: false },
    { name: 'two packs of one language', files: { 'pack.md': sound, 'pack.en.md': sound }, told: ['pack.en.md:3 pack/two-of-a-language'], published: true },
    { name: 'another language in the file than in its name', files: { 'pack.es.md': sound }, told: ['pack.es.md:3 pack/language-of-file'], published: false },
    ...(process.getuid?.() === 0
      ? []
      : [
          {
            name: 'a file that may not be read',
            files: { 'pack.md': sound },
            make: (folder: string) => {
              chmodSync(join(folder, 'pack.md'), 0);
            },
            told: ['1 file/unreadable'],
            published: false,
          },
        ]),
  ],
};
