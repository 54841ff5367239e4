/** Files in other encodings, with marks and signs that are not seen. After the Unicode standard's own notes on marks and ends of lines. */
import { bodyLine, refused, sound, withBody, type Hostile, type HostileClass } from './hostile-case.ts';

const fine = (name: string, text: string | Buffer, shows: readonly string[] = []): Hostile => ({ name, files: { 'pack.md': text }, told: [], published: true, shows });
const faulty = sound.replace('language: en\n', 'language: en\ncolour: blue\n');

export const encodings: HostileClass = {
  class: 'encodings',
  cases: [
    fine('a byte order mark', `\ufeff${sound}`),
    fine('ends of lines of Windows', sound.replace(/\n/g, '\r\n')),
    fine('ends of lines of a Mac of old', sound.replace(/\n/g, '\r')),
    fine(
      'ends of lines of all kinds',
      sound
        .split('\n')
        .map((line, index) => line + (['\n', '\r\n', '\r'][index % 3] ?? '\n'))
        .join(''),
    ),
    ...['\n', '\r\n', '\r'].map((end): Hostile => ({
      name: `lines are counted right with ${JSON.stringify(end)}`,
      files: { 'pack.md': faulty.replace(/\n/g, end) },
      told: ['4 pack/unknown-field'],
      published: true,
    })),
    fine('zero-width joiners and spaces', withBody('A\u200bB\u200cC\u200dD\u2060E'), ['A\u200bB\u200cC\u200dD\u2060E']),
    fine('letters of many scripts', withBody('Пример, 例え, उदाहरण, ตัวอย่าง, مثال, דוגמה, 🐢'), ['Пример, 例え, उदाहरण, ตัวอย่าง, مثال, דוגמה, 🐢']),
    refused('UTF-16, small end first', Buffer.from(`\ufeff${sound}`, 'utf16le'), '1 file/encoding'),
    refused('UTF-16, big end first', Buffer.from(`\ufeff${sound}`, 'utf16le').swap16(), '1 file/encoding'),
    refused('UTF-16 without a mark', Buffer.from(sound, 'utf16le'), '1 file/encoding'),
    refused('Latin-1', Buffer.from(sound.replace('stone', 'piedra de España'), 'latin1'), '1 file/encoding'),
    refused('a letter cut in two', Buffer.concat([Buffer.from(sound), Buffer.from([0xc3])]), '1 file/encoding'),
    refused('a letter written longer than it is', Buffer.concat([Buffer.from(sound), Buffer.from([0xc0, 0xaf])]), '1 file/encoding'),
    refused('half of a pair in bytes', Buffer.concat([Buffer.from(sound), Buffer.from([0xed, 0xa0, 0x80])]), '1 file/encoding'),
    refused('the null sign', `${sound}\0`, '1 file/encoding'),
    refused('the sign for a letter that was lost', withBody('A \ufffd B'), `${bodyLine} file/control-character`),
    refused('text turned round in the body', withBody('One\n\nTwo \u202e eerht'), `${bodyLine + 2} file/control-character`),
    refused('the same behind a sign', withBody('One\n\nTwo &#x202e; eerht'), `${bodyLine + 2} file/control-character`),
    fine('a byte order mark before the first field', `${sound.slice(0, 4)}\ufeff${sound.slice(4)}`),
  ],
};
