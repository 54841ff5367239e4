/** Packs of one book: what two texts share, when two titles, authors and numbers are the same, and which packs are shown beside each other. */
import { describe, expect, test } from 'vitest';
import { alike } from '../../../src/core/find/alike.ts';
import type { Compared } from '../../../src/core/find/compared.ts';
import { sameAuthor, sameTitle } from '../../../src/core/find/same-book.ts';
import { containment, resemblance, shinglesOf } from '../../../src/core/find/shingles.ts';
import { isbn13 } from '../../../src/core/pack/isbn.ts';

describe('runs of words', () => {
  // The example of A. Z. Broder 1997, "On the resemblance and containment of documents" (from memory), and each share counted by hand.
  const [rose, flower] = ['a rose is a rose is a rose', 'a rose is a flower which is a rose'];

  test('a rose is a rose is a rose has three different runs of four words', () => {
    expect(shinglesOf([rose], 4).size).toBe(3);
  });

  test.each([
    // Of one word: a, rose, is; beside a, rose, is, flower, which.
    [1, 3 / 5, 1],
    // Of two: a rose, rose is, is a; and a flower, flower which, which is.
    [2, 3 / 6, 1],
    // Of three: a rose is, rose is a, is a rose; and is a flower, a flower which, flower which is, which is a.
    [3, 3 / 7, 1],
    // Of four: rose is a rose and is a rose is are not in the second.
    [4, 1 / 8, 1 / 3],
  ])('in runs of %i the rose and the flower resemble each other %f, and the second holds %f of the first', (length, alikeness, held) => {
    const [a, b] = [shinglesOf([rose], length), shinglesOf([flower], length)];
    expect(resemblance(a, b)).toBeCloseTo(alikeness, 10);
    expect(resemblance(b, a)).toBeCloseTo(alikeness, 10);
    expect(containment(a, b)).toBeCloseTo(held, 10);
  });

  test('capitals, signs and accents make no difference; no run reaches from one question into the next; a short text is one run', () => {
    expect(resemblance(shinglesOf(['¿Qué hará el corazón?']), shinglesOf(['que hara EL corazon']))).toBe(1);
    expect(shinglesOf(['one two three', 'four five six']).size).toBe(2);
    expect(shinglesOf(['Why?']).size).toBe(1);
    expect(resemblance(shinglesOf(['!']), shinglesOf(['']))).toBe(0);
  });
});

describe('the same number', () => {
  test.each([
    // ISO 2108: the two forms of one number, as printed in books.
    ['0-306-40615-2', '9780306406157'],
    ['978-0-306-40615-7', '9780306406157'],
    ['080442957X', '9780804429573'],
    // A check digit that is wrong is no other book.
    ['978-0-306-40615-1', '9780306406157'],
    // The sample number that a form shows says nothing about a book.
    ['978-0-00-000000-2', undefined],
    ['12345', undefined],
  ])('%s is %s', (isbn, digits) => {
    expect(isbn13(isbn)).toBe(digits);
  });
});

describe('the same book by its cover', () => {
  test.each([
    ['The Lamp on the Jetty', 'Lamp on the jetty!', true],
    ['The Lamp on the Jetty', 'The Lamp on the Jety', true],
    ['Tiempo de tomates', 'TIEMPO DE TOMATÉS', true],
    ['The Lamp on the Jetty', 'The Lamb on the Jelly', false],
    // In a short title a letter makes another book, and so does a number in any.
    ['Moon', 'Noon', false],
    ['Ferry Stories 1', 'Ferry Stories 2', false],
  ])('%s and %s: %s', (a, b, same) => {
    expect([sameTitle(a, b), sameTitle(b, a)]).toEqual([same, same]);
  });

  test.each([
    ['Mina Alder', 'Alder, M.', true],
    ['Corrie Vanterpool-Ash', 'C. Vanterpol Ash', true],
    ['Aesop, retold by Bettina Quarles', 'Aesop', true],
    ['retold by Linnet Obrey', 'retold by Bettina Quarles', false],
    ['Mina Alder', 'Ossian Reed', false],
  ])('%s and %s: %s', (a, b, same) => {
    expect([sameAuthor(a, b), sameAuthor(b, a)]).toEqual([same, same]);
  });
});

/** A pack with three questions of its own, named after its folder. */
function pack(slug: string, change: { language?: string; title?: string; author?: string; isbn?: string; asks?: readonly string[] } = {}): Compared {
  const {
    language = 'en',
    title = `Book ${slug}`,
    author = 'Mina Alder',
    isbn,
    asks = [`Where would ${slug} go if the wind came?`, `How does ${slug} feel at the gate now?`, `Why did nobody tell ${slug} about the bridge?`],
  } = change;
  return {
    slug,
    language,
    title,
    book: { title, author, openings: 12, words: 300, rights: 'our own', ...(isbn !== undefined && { isbn }) },
    by: { name: 'Somebody', licence: 'CC0 1.0' },
    stops: asks.map((ask, index) => ({ id: `s-${index}`, at: { opening: 1 + index, cue: 'x', picture: 'shown' as const }, ask, kind: 'predict' as const, depth: 1, answer: 'say' as const })),
  };
}
const none = () => undefined;
const shown = (packs: readonly Compared[], said: Parameters<typeof alike>[1] = none) => alike(packs, said).unsettled.map((book) => book.packs.map((place) => packs[place]?.slug));

describe('packs beside each other', () => {
  test('the same number, the same title and author with a slip, and copied questions each bring two packs together; other packs stay alone', () => {
    const copied = ['What will the goat do with the hat now?', 'Why does the goat hide behind the shed today?', 'Which hat would you knit for a goat like that?'];
    const packs = [
      pack('north', { title: 'The Ferry Bell', isbn: '0-306-40615-2' }),
      pack('south', { title: 'A Bell for the Ferry', author: 'M. A.', isbn: '978-0-306-40615-7' }),
      pack('east', { title: 'Under the Long Bridge' }),
      pack('west', { title: 'Under the Long Brigde', author: 'Alder' }),
      pack('goat', { title: 'A Hat for the Goat', asks: copied }),
      pack('hat', { title: 'The Goat and I', author: 'Nobody', asks: [copied[0] ?? '', copied[1] ?? '', 'Who knits at your home, and what do they make?'] }),
      // The same title by somebody else is another book.
      pack('other', { title: 'A Hat for the Goat', author: 'Ossian Reed' }),
    ];
    expect(shown(packs)).toEqual([
      ['north', 'south'],
      ['east', 'west'],
      ['goat', 'hat'],
    ]);
    expect(alike(packs, none).unsettled.map(({ pairs }) => pairs.map(({ grounds }) => grounds))).toEqual([[['isbn']], [['title']], [['prompts']]]);
  });

  test('three packs of one book are one case with the pairs in it', () => {
    const packs = ['one', 'two', 'three'].map((slug) => pack(slug, { title: 'The Ferry Bell' }));
    const [book] = alike(packs, none).unsettled;
    expect([book?.packs, book?.pairs.map(({ a, b }) => [a, b])]).toEqual([
      [0, 1, 2],
      [
        [0, 1],
        [0, 2],
        [1, 2],
      ],
    ]);
  });

  test('the languages of one pack are no pair; another language in another folder, a declared fork and what was said to stay are relatives', () => {
    const isbn = '0-306-40615-2';
    const packs = [
      pack('bell', { title: 'The Ferry Bell', isbn }),
      pack('bell', { language: 'es', title: 'La campana', isbn }),
      pack('campana', { language: 'es', title: 'La campana', isbn }),
      pack('own-bell', { title: 'The Ferry Bell' }),
    ];
    const said = (a: Compared, b: Compared) => ([a.slug, b.slug].includes('own-bell') ? ('fork' as const) : undefined);
    const { unsettled, related } = alike(packs, said);
    expect(unsettled.map((book) => book.packs)).toEqual([[1, 2]]);
    expect(related.map(({ a, b, related: how }) => [a, b, how])).toEqual([
      [0, 2, 'language'],
      [0, 3, 'fork'],
    ]);
    expect(alike(packs, () => 'both stay').unsettled).toEqual([]);
  });

  test('a phrase that dozens of packs ask says nothing about where a pack came from', () => {
    const stock = ['What do you think will happen next?', 'How does that make you feel inside?', 'What was your favorite part of the story?'];
    expect(shown(Array.from({ length: 40 }, (_, number) => pack(`p${number}`, { author: `Writer ${number}`, asks: stock })))).toEqual([]);
    // Two packs alone that share them are worth a look.
    expect(shown([pack('a', { author: 'Reed', asks: stock }), pack('b', { asks: stock })])).toEqual([['a', 'b']]);
  });
});
