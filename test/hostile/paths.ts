/** Names and ways that lead out of the pack, are reserved, or look like another's. Two packs never share an address; what a link points at is never read. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { png } from './pictures.ts';
import { sound, withPart, type Hostile, type HostileClass } from './hostile-case.ts';

const named = (name: string, folder: string | Buffer): Hostile => ({ name, folder, files: { 'pack.md': sound }, told: ['folder folder/name'], published: false });
/** A pack that names a picture in another place. */
const picture = (name: string, file: string, told: string): Hostile => ({
  name,
  files: { 'pack.md': withPart('home:\n', `pictures:\n  - file: ${JSON.stringify(file)}\n    alt: A hill with a path.\nhome:\n`), 'pictures/hill.png': png },
  told: [`54 picture/${told}`],
  published: false,
});
const badName = (name: string, file: string): Hostile => ({ ...picture(name, file, ''), told: ['54 pack/bad-format'] });
const linked = (name: string, make: Hostile['make'], ...told: readonly string[]): Hostile => ({ name, files: { 'notes.txt': 'A note.' }, ...(make && { make }), told, published: false });

export const paths: HostileClass = {
  class: 'paths and slugs',
  cases: [
    named('capitals', 'Hostile-Hen'),
    { ...named('dots that climb, which are passed over like all hidden names', '..hostile'), told: [] },
    named('a dot at the end', 'hostile-hen.'),
    named('a space at the end', 'hostile-hen '),
    named('signs for dots', '%2e%2e%2fhostile'),
    named('backslashes', 'hostile\\..\\hen'),
    named('a drive', 'C:hostile'),
    named('a scheme', 'file:hostile'),
    named('a device of Windows', 'con'),
    named('another device', 'com1'),
    named('text turned round', 'hostile-\u202ehen'),
    named('a letter from another alphabet that looks alike', 'h\u043estile-hen'),
    named('an accent, in one character', 'hostil\u00e9'),
    named('the same accent, in two', 'hostile\u0301'),
    named('wide letters', '\uff48ostile'),
    named('an animal', '\u{1F422}'),
    named('Arabic letters', 'كتاب'),
    named('a name of 250 letters', 'hostile'.repeat(35)),
    named('a quote and a tag', `hostile'"><b>`),
    named('a line break', 'hostile\nhen'),
    named('signs that steer a terminal', 'hostile\u001b[31m'),
    named('bytes that are no text', Buffer.from([0x68, 0xff, 0xfe, 0x6e])),
    badName('a picture outside the pack', '../../private/hill.png'),
    badName('a picture by its whole path', '/etc/hostname'),
    badName('a picture on a drive', 'C:\\hill.png'),
    badName('a picture with backslashes', '..\\hill.png'),
    badName('a picture by its scheme', 'file:hill.png'),
    picture('a picture in signs', '%2e%2e%2fhill.png', 'missing-file'),
    picture('a picture called two dots', '..', 'missing-file'),
    picture('a picture that is a folder', '.', 'missing-file'),
    linked(
      'a link to a pack outside',
      (folder, outside) => {
        symlinkSync(join(outside, 'pack.md'), join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a link to a secret of the machine',
      (folder) => {
        symlinkSync('/etc/passwd', join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a link to a device without end',
      (folder) => {
        symlinkSync('/dev/zero', join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a link to itself',
      (folder) => {
        symlinkSync('pack.md', join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a chain of links',
      (folder, outside) => {
        symlinkSync(join(outside, 'pack.md'), join(folder, 'b.md'));
        symlinkSync('b.md', join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a link to nothing',
      (folder) => {
        symlinkSync('nothing', join(folder, 'pack.md'));
      },
      '1 file/link',
    ),
    linked(
      'a pipe, which would never end',
      (folder) => {
        spawnSync('mkfifo', [join(folder, 'pack.md')]);
      },
      '1 file/not-a-file',
    ),
    linked(
      'a folder called pack.md',
      (folder) => {
        mkdirSync(join(folder, 'pack.md'));
      },
      '1 file/not-a-file',
    ),
    {
      name: 'a folder of pictures that is a link',
      files: { 'pack.md': sound },
      make: (folder, outside) => {
        symlinkSync(outside, join(folder, 'pictures'));
      },
      told: ['pictures:1 file/link'],
      published: true,
    },
    {
      name: 'a private folder that is a link',
      files: { 'pack.md': sound },
      make: (folder, outside) => {
        symlinkSync(outside, join(folder, 'private'));
      },
      told: ['private:1 file/link'],
      published: true,
    },
    {
      name: 'a recording that is a link',
      files: { 'pack.md': sound },
      make: (folder, outside) => {
        symlinkSync(outside, join(folder, 'recording'));
      },
      told: ['recording:1 file/link'],
      published: true,
    },
    {
      name: 'a picture that is a link',
      files: { 'pack.md': withPart('home:\n', 'pictures:\n  - file: hill.png\n    alt: A hill with a path.\nhome:\n'), 'pictures/readme.txt': '' },
      make: (folder, outside) => {
        writeFileSync(join(outside, 'hill.png'), png);
        symlinkSync(join(outside, 'hill.png'), join(folder, 'pictures/hill.png'));
      },
      told: ['54 picture/missing-file', 'pictures/hill.png:1 file/link'],
      published: false,
    },
    {
      name: 'a picture that is a pipe',
      files: { 'pack.md': withPart('home:\n', 'pictures:\n  - file: hill.png\n    alt: A hill with a path.\nhome:\n'), 'pictures/readme.txt': '' },
      make: (folder) => {
        spawnSync('mkfifo', [join(folder, 'pictures/hill.png')]);
      },
      told: ['54 picture/missing-file'],
      published: false,
    },
  ],
};
