/** Which of a few books: counted child by child, and hidden from others by the same rules as stars (NCES 2011-603, SLDS Technical Brief 3). */
import { describe, expect, test } from 'vitest';
import { bestOf, put, type Value } from '../../src/core/booklet/booklet.ts';
import { chosenOf } from '../../src/core/booklet/chosen.ts';
import { readBooklet } from '../../src/core/booklet/read-booklet.ts';
import { enBooklet } from '../../src/core/languages/en-booklet.ts';
import { stackInEnglish } from '../../src/core/languages/en-stack.ts';
import type { StackPack } from '../../src/core/pack/stack-pack.ts';
import { booksChosen } from '../../src/classroom/best-of.ts';
import { stackTable } from '../../src/classroom/stack-table.ts';
import { packBehind, putPack, type Stack } from '../../src/classroom/stack.ts';
import { arBookletFile } from '../../src/core/languages/ar-booklet-file.ts';
import { stackInArabic } from '../../src/core/languages/ar-stack.ts';
import { wallPage } from '../../src/classroom/wall-page.ts';
import { writeWallFile } from '../../src/classroom/wall-file.ts';
import { booklet, hen, stackOf } from './small-class.ts';

const books = ['The Hen', 'The Kettle', 'The Boat'];
const pack: StackPack = { ...hen, bestOf: { ask: 'Which one would you take home?', books, last: 'Which one could wait?' } };

function chose(best: string | undefined, last?: string, of = books): Value {
  const value = chosenOf(of, best, last);
  if (!value) throw new Error('nothing was chosen');
  return value;
}

/** Children who chose so, one after the other. */
const classWho = (choices: readonly Value[]): Stack => putPack(stackOf(choices.map((value, child) => booklet(child, [[bestOf, value]]))), pack);

describe('counting', () => {
  test('each child counts once at each end, and books nobody chose are there with none', () => {
    expect(booksChosen(classWho([chose('The Hen', 'The Boat'), chose('The Hen'), chose('The Boat', 'The Hen'), chose(undefined, 'The Boat')]), pack)).toEqual({
      books: [
        { book: 'The Hen', best: 2, last: 1 },
        { book: 'The Kettle', best: 0, last: 0 },
        { book: 'The Boat', best: 1, last: 2 },
      ],
      n: 3,
      nLast: 3,
    });
  });

  test('who chose on two devices is told by the later choice', () => {
    const stack = stackOf([put(booklet(0, [[bestOf, chose('The Hen')]]), 'otherwriter', bestOf, chose('The Boat'))]);
    expect(booksChosen(stack, pack)).toMatchObject({ n: 1, books: [{ best: 0 }, { best: 0 }, { book: 'The Boat', best: 1 }] });
  });

  test('a book that the pack no longer offers is still counted', () => {
    expect(booksChosen(classWho([chose('The Old Coat', undefined, ['The Old Coat', 'The Hen'])]), pack).books.at(-1)).toEqual({ book: 'The Old Coat', best: 1, last: 0 });
  });

  test('it is at no stop: where the pack is unknown, the choice makes none', () => {
    const stack = { ...stackOf([booklet(0, [[bestOf, chose('The Hen')]])]), packs: [] };
    expect(packBehind(stack, hen).pack.stops.map(({ id }) => id)).toEqual(hen.stops.map(({ id }) => id));
  });

  test('one book cannot be first and last: the first choice stands', () => {
    expect(chosenOf(books, 'The Hen', 'The Hen')).toEqual({ kind: 'chosen', best: 'The Hen', of: books });
    expect(chosenOf(books, undefined, undefined)).toBeUndefined();
  });
});

describe('what others may see', () => {
  const few = (n: number) => Array.from({ length: n }, (_, child) => chose(child % 3 === 0 ? 'The Boat' : 'The Hen', 'The Kettle'));
  const wall = (choices: readonly Value[]) => {
    const page = wallPage(classWho(choices), pack, []);
    return { kind: page.chosen.kind, html: writeWallFile(page, stackInEnglish.take.wall, enBooklet.file, 'en') };
  };
  test('four children: nothing; seven: only how many; twelve: the first choices, and never the book that could wait', () => {
    expect(wall(few(4))).toMatchObject({ kind: 'nothing', html: expect.not.stringContaining('one book') as string });
    expect(wall(few(7))).toMatchObject({ kind: 'only how many', html: expect.stringContaining('<p>7 children answered.</p>') as string });
    const { kind, html } = wall(few(12));
    expect(kind).toBe('all');
    expect(html).toContain('<p>“The Hen”: 8 children</p>\n<p>“The Kettle”: 0 children</p>\n<p>“The Boat”: 4 children</p>');
    expect(html).not.toContain('wait');
  });
  test('in Arabic the page runs from right to left and counts as Arabic does', () => {
    const html = writeWallFile(wallPage(classWho(few(12)), pack, []), stackInArabic.take.wall, arBookletFile.file, 'ar');
    expect(html).toContain('<html lang="ar" dir="rtl">');
    expect(html).toContain('<p>«\u2068The Hen\u2069»: 8 أطفال</p>\n<p>«\u2068The Kettle\u2069»: 0 طفل</p>\n<p>«\u2068The Boat\u2069»: 4 أطفال</p>');
  });
  test('twelve who all chose the same: only how many, or each child’s choice would be known', () => {
    expect(wall(Array.from({ length: 12 }, () => chose('The Hen'))).kind).toBe('only how many');
  });
});

test('in the table for the teacher it stands in words', () => {
  const { colleague, ...heads } = stackInEnglish.take.table;
  const [, row] = stackTable(classWho([chose('The Hen', 'The Boat')]), pack, {}, [], { heads, colleague, markOf: () => 'a bookmark', file: enBooklet.file });
  expect(row?.slice(2, 6)).toEqual(['One of a few books', 'Which one would you take home?', 'One of a few books', 'The Hen; last of all: The Boat']);
});

test('a booklet from before there were choices reads as it did', () => {
  const before = JSON.stringify(booklet(0, [['step', { kind: 'said', text: 'Yes.' }]]));
  expect(readBooklet(before)).toMatchObject({ leftOut: 0, booklet: { version: 1, entries: [{ to: 'step' }] } });
});
