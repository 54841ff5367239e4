/** The stack: putting booklets on it, counting in them, and files that go wrong. Small classes that a teacher could check by hand. */
import { describe, expect, test } from 'vitest';
import { newBooklet, put, wholeBook, type Booklet, type Value } from '../../src/core/booklet/booklet.ts';
import { dataText } from '../../src/core/booklet/data-block.ts';
import { readStackPack, stackFile, type StackPack } from '../../src/core/pack/stack-pack.ts';
import { feelingCounts, framesUsed, starsGiven, stopCounts } from '../../src/classroom/counts.ts';
import { readStackFile } from '../../src/classroom/read-stack-file.ts';
import { hashOf, shuffled } from '../../src/classroom/shuffle.ts';
import { answersIn, emptyStack, joinTwins, packBehind, packsAnswered, putBooklet, putPack, twinsOf, type Stack, type StackBooklet } from '../../src/classroom/stack.ts';
import { aClass, booklet, hen, stackOf } from './small-class.ts';

function first({ booklets: [one] }: Stack): StackBooklet {
  if (!one) throw new Error('nothing on the pile');
  return one;
}

describe('putting booklets on the pile', () => {
  test('two copies of one booklet are one, whichever comes first', () => {
    const home = booklet(0, [['step', { kind: 'written', text: 'She is scared.', frames: [] }]]);
    const school = put(home, 'writerschool', 'snow', { kind: 'said', text: 'It is cold.' });
    for (const order of [
      [home, school],
      [school, home],
    ]) {
      const stack = order.reduce<Stack>((sofar, each) => putBooklet(sofar, each, `${each.entries.length}.booklet.html`).stack, emptyStack);
      expect(stack.booklets).toHaveLength(1);
      expect(answersIn(first(stack)).map(({ to }) => to)).toEqual(['step', 'snow']);
      expect(stack.booklets[0]?.files).toHaveLength(2);
    }
  });

  test('the same bookmark in two booklets is told, and a person can say it is one child', () => {
    const mine = booklet(1, [['step', { kind: 'written', text: 'One.', frames: [] }]]);
    const second = { ...booklet(1, [['snow', { kind: 'written', text: 'Two.', frames: [] }]]), id: 'otherdevice1' };
    const { stack } = putBooklet(putBooklet(emptyStack, mine, 'a').stack, second, 'b');
    expect(putBooklet(putBooklet(emptyStack, mine, 'a').stack, second, 'b').put).toBe('same bookmark');
    const [one, two] = twinsOf(stack, mine);
    if (!one || !two) throw new Error('not both are there');
    const joined = joinTwins(stack, one, two);
    expect(joined.booklets).toHaveLength(1);
    expect(answersIn(first(joined))).toHaveLength(2);
    // What was scored of the first stays scored: its key is the same.
    expect(answersIn(first(joined))[0]?.key).toBe(answersIn(one)[0]?.key);
  });

  test('books and languages may be mixed', () => {
    const spanish: Booklet = { ...booklet(2, []), id: 'spanish00001', pack: { slug: 'hen', language: 'es', title: 'La gallina' } };
    const stack = [booklet(0, []), booklet(1, []), spanish].reduce<Stack>((sofar, each) => putBooklet(sofar, each, 'x').stack, emptyStack);
    expect(packsAnswered(stack).map(({ language, booklets }) => [language, booklets])).toEqual([
      ['en', 2],
      ['es', 1],
    ]);
  });

  test('a book that the page does not know is read by the questions in its booklets', () => {
    const stack = putBooklet(emptyStack, booklet(0, [['step', { kind: 'said', text: 'Yes.' }]]), 'x').stack;
    const { pack, known } = packBehind(stack, hen);
    expect(known).toBe(false);
    expect(pack.stops.map(({ id, ask }) => [id, ask])).toEqual(hen.stops.map(({ id, ask }) => [id, ask]));
  });
});

describe('what a file may be', () => {
  const cases: readonly (readonly [string, string, object])[] = [
    ['an empty file', '', { kind: 'unreadable', reason: 'empty' }],
    ['a letter', 'Dear families,', { kind: 'unreadable', reason: 'not-a-booklet' }],
    ['a booklet', JSON.stringify(booklet(0, [])), { kind: 'booklet' }],
    ['a booklet of a later version', JSON.stringify({ ...booklet(0, []), version: 2 }), { kind: 'unreadable', reason: 'newer' }],
    ['half a booklet', JSON.stringify(booklet(0, [])).slice(0, 60), { kind: 'unreadable', reason: 'cut-short' }],
    ['a pack for the stack', stackFile(hen), { kind: 'pack' }],
    ['half a pack', stackFile(hen).slice(0, 300), { kind: 'unreadable', reason: 'cut-short' }],
    ['a damaged pack', stackFile(hen).replace('"stops"', '"stop"'), { kind: 'unreadable', reason: 'damaged' }],
    ['a later pack', stackFile(hen).replace('"version":1', '"version":3'), { kind: 'unreadable', reason: 'newer' }],
    ['scores from nowhere', '{"format":"companion scores","version":1,"scores":7}', { kind: 'unreadable', reason: 'damaged' }],
    ['a list', '[1, 2]', { kind: 'unreadable', reason: 'not-a-booklet' }],
    ['null with a name', '{"format":"companion scoring sheet"', { kind: 'unreadable', reason: 'cut-short' }],
  ];
  test.each(cases)('%s', (_, text, expected) => {
    expect(readStackFile(text)).toMatchObject(expected);
  });

  test('a pack comes back as it went', () => {
    expect(readStackPack(JSON.parse(stackFile(hen)))).toEqual({ ...hen, words: undefined });
    expect(dataText(hen)).not.toContain('<');
  });
});

describe('counting', () => {
  const stack = aClass();
  test('who answered, and how', () => {
    const [step, snow, own] = stopCounts(stack, hen);
    expect(step?.answered).toBe(5);
    expect(Object.fromEntries(step?.kinds.map(({ kind, children }) => [kind, children]) ?? [])).toEqual({ written: 3, feeling: 2, 'cannot-tell': 1 });
    expect(snow?.answered).toBe(2);
    expect(own?.answered).toBe(1);
  });

  test('feeling words count children, not words, and leave out what a child says of itself', () => {
    const counted = feelingCounts(stack, hen);
    // "Not scared" says nothing of being scared; "scared, so scared" is one child; a word chosen and written is one child.
    expect(counted.map(({ number, words, cannotTell }) => [number, words.map(({ word, children, chose }) => `${word} ${String(children)} ${String(chose)}`), cannotTell])).toEqual([
      [1, ['scared 2 1', 'worried 1 1'], 1],
    ]);
  });

  test('the fullest frame that fits counts, and a way of their own is one too', () => {
    expect(framesUsed(stack, hen)).toMatchObject([
      {
        number: 1,
        wrote: 3,
        ownWay: 1,
        frames: [
          { frame: 'She feels ___.', children: 1 },
          { frame: 'She feels ___ because ___.', children: 1 },
        ],
      },
    ]);
  });

  test('stars with their reasons', () => {
    expect(starsGiven(stack, hen)).toMatchObject({ stars: { counts: [0, 0, 1, 0, 3], n: 4 }, outOf: 5, because: ['of the snow'] });
  });

  test('a booklet that rated twice counts once', () => {
    const twice = [
      [wholeBook, { kind: 'stars', stars: 1, of: 5, words: 'no' }],
      [wholeBook, { kind: 'stars', stars: 4, of: 5, words: 'yes' }],
    ] as const satisfies readonly (readonly [string, Value])[];
    expect(starsGiven(stackOf([booklet(0, twice)]), hen).stars.counts).toEqual([0, 0, 0, 1, 0]);
  });
});

describe('an order by a seed', () => {
  const letters = 'a b c d e f g h i j k l m n o p q r s t u v w x y z'.split(' ');
  test('is the same for the same seed, another for another, and loses nothing', () => {
    expect(shuffled(letters, 'one')).toEqual(shuffled(letters, 'one'));
    expect(shuffled(letters, 'one')).not.toEqual(shuffled(letters, 'two'));
    expect([...shuffled(letters, 'one')].sort()).toEqual(letters);
  });

  test('puts each of six orders of three about as often', () => {
    const seen = new Map<string, number>();
    for (let seed = 0; seed < 6000; seed++) {
      const order = shuffled(['a', 'b', 'c'], String(seed)).join('');
      seen.set(order, (seen.get(order) ?? 0) + 1);
    }
    expect(seen.size).toBe(6);
    // Chi squared with five degrees of freedom stays below 25 in all but one of several thousand fair tries.
    expect([...seen.values()].reduce((sum, each) => sum + (each - 1000) ** 2 / 1000, 0)).toBeLessThan(25);
  });

  test('names of 20,000 answers are all different', () => {
    expect(new Set(Array.from({ length: 20_000 }, (_, n) => hashOf(`hen en booklet${String(n % 300)} stop-${String(n)}`))).size).toBe(20_000);
  });
});

test('the same answer has the same name, another one another', () => {
  const nameOf = (one: Booklet) => answersIn(first(stackOf([one])))[0]?.key;
  const there = booklet(0, [['step', { kind: 'said', text: 'Yes.' }]]);
  expect(nameOf(there)).toBe(nameOf(structuredClone(there)));
  expect(nameOf(there)).not.toBe(nameOf(booklet(0, [['step', { kind: 'said', text: 'No.' }]])));
  expect(nameOf(there)).not.toBe(nameOf({ ...there, id: 'anotherchild' }));
  expect(nameOf(there)).toMatch(/^[0-9a-f]{16}$/);
});

test('a pack put twice is there once', () => {
  const newer: StackPack = { ...hen, title: 'The hen again' };
  expect(putPack(putPack(emptyStack, hen), newer).packs).toEqual([newer]);
  expect(newBooklet('abcdefgh1234', { slug: 'hen', language: 'en', title: '' }, { pattern: 'waves', colour: 'red' }, []).entries).toEqual([]);
});
