/** `bookfellow lesson`: what belongs to one room goes onto its own sheet, and nowhere else. */
import { mkdir, readdir, readFile, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readLocalDetails } from '../../src/outputs/sheets/local-details.ts';
import { bookfellow, buildSmall, filesIn, smallLibrary, soundPack, textsIn } from '../build/small-library.ts';
import { readPdf } from '../paper/read-pdf.ts';

const room = 'It is kept: behind the piano\nSignal for quiet: two claps\n# for me alone\nWho helps: Room 4, next door\n   or the office\n';

test('a text of labels is read line by line, with lines that go on', () => {
  expect(readLocalDetails(`\ufeffBefore all\r\n${room}\nA time: 9:05\n`)).toEqual([
    { label: '', text: 'Before all' },
    { label: 'It is kept', text: 'behind the piano' },
    { label: 'Signal for quiet', text: 'two claps' },
    { label: 'Who helps', text: 'Room 4, next door or the office' },
    { label: 'A time', text: '9:05' },
  ]);
});

describe('the sheet of one room', () => {
  test('fills the blanks, has the rest on a second page, lies in private/ for its owner alone, and is in no file of the site', async () => {
    const library = await smallLibrary({ 'packs/hill/pack.md': await soundPack() });
    const local = join(library.folder, 'room.txt');
    await writeFile(local, room);
    const { code, err } = await bookfellow(['lesson', 'hill', '--content', library.content, '--local', local]);
    expect(err).toBe('');
    expect(code).toBe(0);
    const out = join(library.content, 'packs/hill/private/substitute.pdf');
    const sheet = await readPdf(out);
    expect(sheet.pages).toBe(2);
    expect(sheet.textOfPages[0]).toContain('It is kept behind the piano');
    expect(sheet.textOfPages[0]).toContain('Signal for quiet two claps');
    expect(sheet.textOfPages[0]).not.toContain('Room 4');
    expect(sheet.textOfPages[1]).toContain('Private.');
    expect(sheet.textOfPages[1]).toContain('Room 4, next door or the office');
    expect(sheet.text).not.toContain('for me alone');
    if (process.platform !== 'win32') expect((await stat(out)).mode & 0o077).toBe(0);
    await buildSmall(library);
    expect((await filesIn(library.site)).filter((file) => file.includes('private') || file.endsWith('.pdf'))).toEqual([]);
    for (const text of (await textsIn(library.site)).values()) expect(text).not.toContain('behind the piano');
  });

  test('is refused inside a site, also by way of a link', async () => {
    const library = await smallLibrary({ 'packs/hill/pack.md': await soundPack() });
    await buildSmall(library);
    const local = join(library.folder, 'room.txt');
    await writeFile(local, room);
    await symlink(join(library.site, 'packs'), join(library.folder, 'elsewhere'));
    for (const out of ['site/room.pdf', 'site/packs/hill/room.pdf', 'elsewhere/room.pdf']) {
      const { code, err } = await bookfellow(['lesson', 'hill', '--content', library.content, '--local', local, '--out', join(library.folder, out)]);
      expect(code).toBe(2);
      expect(err).toContain('inside a published site');
    }
    expect((await filesIn(library.site)).filter((file) => file.endsWith('.pdf'))).toEqual([]);
  });

  test('needs a pack and a text that are there', async () => {
    const library = await smallLibrary({ 'packs/hill/pack.md': await soundPack() });
    const asked = (...args: readonly string[]) => bookfellow(['lesson', ...args, '--content', library.content]);
    expect(await asked('hill')).toMatchObject({ code: 2 });
    expect((await asked('hill', '--local', join(library.folder, 'no.txt'))).err).toContain('There is no file');
    const local = join(library.folder, 'room.txt');
    await mkdir(join(library.folder, 'x'));
    await writeFile(local, room);
    expect((await asked('valley', '--local', local)).err).toContain('There is no pack "valley". The packs are: hill.');
    expect((await asked('hill', '--local', local, '--out', join(library.folder, 'x/room.txt'))).err).toContain('names a PDF');
    expect(await readdir(join(library.folder, 'x'))).toEqual([]);
    expect(await readFile(local, 'utf8')).toBe(room);
  });
});
