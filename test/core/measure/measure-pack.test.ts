/** What is counted in a pack, for whom, and where it stands in the file. */
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../../src/core/check/check-pack.ts';
import { measurePack } from '../../../src/core/measure/measure-pack.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { soundPack } from '../../build/small-library.ts';

async function measured(...change: readonly (readonly [string, string])[]) {
  const text = await soundPack(...change);
  const read = readPack({ slug: 'hen', file: 'packs/hen/pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
  if (!read.value) throw new Error(JSON.stringify(read.findings));
  const { value, findings } = measurePack(checkPack(read.value).value);
  return { ...value.measures, findings, lines: text.split('\n') };
}

const body = (text: string) => ['## About this book\n', `## About this book\n\n${text}\n\n## More\n`] as const;
const easy = 'The hen runs to the gate. '.repeat(30);

describe('what children read', () => {
  test('is the questions; frames are said to be left out', async () => {
    const { children } = await measured();
    expect(children).toMatchObject({ words: 23, sentences: 4, estimate: { kind: 'too short' }, costliest: [], leftOut: { frames: 2, bankWords: 0 } });
  });

  test('the question of the stars and the word bank count where they belong', async () => {
    const { children } = await measured(['words:\n  - word: axle', 'rating: { ask: How did you like it?, out of: 5, reasons: [the hill, the stone] }\nwords:\n  - word: axle']);
    expect(children).toMatchObject({ words: 28, sentences: 5, leftOut: { frames: 2, bankWords: 2 } });
  });
});

describe('what families read', () => {
  test('headings, lists and the word list are left out and said to be', async () => {
    const { family } = await measured(body('- one\n- two'));
    expect(family.leftOut).toEqual({ headings: 2, listItems: 2, meanings: 1 });
  });

  test('the costliest sentence is named with its own line, inside a paragraph of several', async () => {
    const hard = 'Consequently an extraordinary responsibility accompanies everybody who considers borrowing agricultural machinery.';
    const { family, lines } = await measured(body(`${easy}\nAnd then it stops.\n${hard}\nThe end.`));
    const [first] = family.costliest;
    expect(first?.text).toBe(hard);
    expect(lines[(first?.line ?? 0) - 1]).toBe(hard);
    expect(family.longest).toMatchObject({ text: expect.any(String) as unknown, words: 13 });
  });

  test('a text of easy words gets a band that ends at the floor of the formula, and no finding', async () => {
    const { family, findings } = await measured(body(easy));
    expect(family.estimate).toMatchObject({ kind: 'grades', formula: 'Flesch-Kincaid', low: 1, belowFloor: true });
    expect(findings).toEqual([]);
  });

  test('a short text gets counts, its longest sentence and no estimate', async () => {
    const { family } = await measured();
    expect(family.estimate).toEqual({ kind: 'too short' });
    expect(family.words).toBeGreaterThan(0);
    expect(family.costliest).toEqual([]);
  });

  test('long words: names and allow words are passed over, those with most syllables come first', async () => {
    const { family } = await measured(body('We met Oleander by the umbrella. There Oleander had an elephant and an unbelievable caterpillar.'), [
      'title: The',
      'allow words: [caterpillar]\ntitle: The',
    ]);
    expect(family.longWords.slice(0, 1)).toEqual(['unbelievable']);
    expect(family.longWords).toEqual(expect.arrayContaining(['umbrella', 'elephant']));
    expect(family.longWords).not.toEqual(expect.arrayContaining(['caterpillar']));
    expect(family.longWords).not.toEqual(expect.arrayContaining(['oleander']));
  });

  test('above grade 8 there is a finding that gives the band and the lines', async () => {
    const hard = 'Consequently an extraordinary responsibility accompanies everybody who considers borrowing agricultural machinery. ';
    const { findings } = await measured(body(hard.repeat(12)));
    expect(findings).toMatchObject([{ code: 'text/too-hard', level: 'warn', facts: { low: 12, high: 12, most: 8 } }]);
  });
});

test('in Spanish families get the INFLESZ band and children Crawford', async () => {
  const { family, children } = await measured(['language: en', 'language: es'], body('El gato corre por el patio. '.repeat(40)), [
    'ask: What will Odile do with the stone?',
    `ask: ${'¿Qué hará Odile con la piedra? '.repeat(9)}`,
  ]);
  expect(family.estimate).toMatchObject({ kind: 'ease', formula: 'Szigriszt-Pazos', shortSample: true });
  expect(children.estimate.kind).toBe('too short');
});
