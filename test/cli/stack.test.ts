/** `bookfellow stack`: a folder of booklets, counted as a person would call it. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bestOf, put } from '../../src/core/booklet/booklet.ts';
import { chosenOf } from '../../src/core/booklet/chosen.ts';
import { answersIn } from '../../src/classroom/stack.ts';
import { writeScores } from '../../src/classroom/scoring-files.ts';
import { stackFile } from '../../src/core/pack/stack-pack.ts';
import { aClass, hen } from '../classroom/small-class.ts';
import { bookfellow } from '../build/small-library.ts';

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-handed-in-'));
  const stack = aClass();
  await mkdir(join(folder, 'monday'));
  for (const [child, { booklet }] of stack.booklets.entries()) {
    const chosen = child < 2 ? chosenOf(['The Hen', 'The Boat'], 'The Hen', child === 0 ? undefined : 'The Boat') : undefined;
    await writeFile(join(folder, 'monday', `${booklet.id}.booklet.html`), JSON.stringify(chosen ? put(booklet, 'writerfriday', bestOf, chosen) : booklet));
  }
  await writeFile(join(folder, 'again.html'), JSON.stringify(stack.booklets[0]?.booklet));
  await writeFile(join(folder, 'letter.html'), '<p>Dear teacher</p>');
  await writeFile(join(folder, 'hen.stack.json'), stackFile(hen));
  const scores = Object.fromEntries(stack.booklets.flatMap((each) => answersIn(each).map(({ key }) => [key, { 'whole sentence': 1, 'gives a reason': 0 }] as const)));
  await writeFile(join(folder, 'mine.json'), writeScores({ sheet: '', by: 'first', steps: 1, scores }));
  await writeFile(join(folder, 'theirs.json'), writeScores({ sheet: '', by: 'second', steps: 1, scores }));
});
afterAll(() => rm(folder, { recursive: true }));

describe('bookfellow stack', () => {
  test('tells in words what came back', async () => {
    const { code, out } = await bookfellow(['stack', folder]);
    expect(code).toBe(0);
    expect(out).toContain('6 booklets were put on the pile. One was a copy of a booklet already here, and the two were put together. One file is set aside.');
    expect(out).toContain('letter.html: This file is not a booklet.');
    expect(out).toContain('At stop 1, of 5 children: scared 2 and worried 1.');
    expect(out).toContain('whole sentence: 5 of 5');
    expect(out).toContain('kappa not told: 5 scored by both');
    expect(out).toContain('Of 2 children these chose first: The Hen 2 and The Boat 0. Of 1 child these said it could wait: The Hen 0 and The Boat 1.');
    expect(out).not.toMatch(/She feels scared, so scared|%/);
  });

  test('as data, without a word of a child', async () => {
    const { code, out } = await bookfellow(['stack', folder, '--json']);
    expect(code).toBe(0);
    const data = JSON.parse(out) as { merged: number; setAside: unknown[]; books: { booklets: number; judgeable: number; stars: { counts: number[] }; bestOf: object }[] };
    expect(data).toMatchObject({ merged: 1, setAside: [{ file: 'letter.html' }], books: [{ booklets: 6, judgeable: 5, stars: { counts: [0, 0, 1, 0, 3] } }] });
    expect(out).not.toContain('so scared');
    expect(data.books[0]?.bestOf).toMatchObject({
      books: [
        { book: 'The Hen', best: 2, last: 0 },
        { book: 'The Boat', best: 0, last: 1 },
      ],
      n: 2,
      nLast: 1,
    });
  });

  test('as a table', async () => {
    const { code, out } = await bookfellow(['stack', folder, '--csv']);
    expect(code).toBe(0);
    expect(out.startsWith('\ufeffBookmark,Book,Stop,Question,How,Words,whole sentence,gives a reason')).toBe(true);
    expect(out).toContain('"She feels scared, so scared."');
  });

  test('a folder without booklets, and wrong words, are told', async () => {
    expect((await bookfellow(['stack'])).code).toBe(2);
    expect((await bookfellow(['stack', join(folder, 'nowhere')])).code).toBe(2);
    expect((await bookfellow(['stack', folder, '--json', '--csv'])).code).toBe(2);
  });
});
