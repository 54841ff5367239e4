/** The choice on the page about quality, and the file beside it. */
import { describe, expect, test } from 'vitest';
import { choiceFrom, isChosen, queryOf } from '../../src/outputs/quality-choice.ts';
import { buildSmall, smallLibrary, soundPack, textsIn } from '../build/small-library.ts';

describe('a choice', () => {
  const lamp = { language: 'en', grades: ['K', '1'], levels: ['warn'], kinds: ['frames'] };
  const quiet = { language: 'es', grades: ['2'], levels: [], kinds: [] };

  test.each([
    ['', true, true],
    ['?language=es', false, true],
    ['?grade=1', true, false],
    ['?level=warn', true, false],
    ['?kind=frames', true, false],
    ['?findings=1', true, false],
    ['?language=es&findings=1', false, false],
    ['?language=en&grade=K&level=warn&kind=frames&findings=1', true, false],
  ])('%s', (query, first, second) => {
    const choice = choiceFrom(new URLSearchParams(query));
    expect([isChosen(lamp, choice), isChosen(quiet, choice)]).toEqual([first, second]);
    expect(queryOf(choice)).toBe(query);
  });

  test('what an address holds beside it is passed over', () => {
    expect(queryOf(choiceFrom(new URLSearchParams('?utm=1&level=&grade=2')))).toBe('?grade=2');
  });
});

interface Json {
  readonly format: number;
  readonly totals: { readonly packs: number; readonly keptOff: number; readonly withFindings: number; readonly byLevel: object; readonly byCode: readonly { readonly code: string }[] };
  readonly packs: readonly { readonly slug: string; readonly findings: readonly { readonly code: string; readonly file: string; readonly line: number }[] }[];
}

test('quality.json holds what the page shows, says of packs that are kept off only how many, and names no place on the machine', async () => {
  const library = await smallLibrary({
    'packs/hen/pack.md': await soundPack(),
    'packs/fox/pack.md': await soundPack(['    frames:\n      - Odile feels ___.\n      - Odile feels ___ because ___.\n', '']),
    'packs/owl/pack.md': await soundPack(['kind: predict', 'kind: secret of the owl']),
  });
  await buildSmall(library);
  const text = (await textsIn(library.site)).get('quality.json') ?? '';
  const json = JSON.parse(text) as Json;
  expect(json).toMatchObject({ format: 1, totals: { packs: 2, keptOff: 1, withFindings: 1, byLevel: { stop: 0, warn: 1, note: 0 } } });
  expect(json.totals.byCode.map(({ code }) => code)).toEqual(['frames/missing']);
  expect(json.packs.map(({ slug }) => slug).sort()).toEqual(['fox', 'hen']);
  expect(json.packs.find(({ slug }) => slug === 'fox')?.findings).toMatchObject([{ code: 'frames/missing', level: 'warn', file: 'packs/fox/pack.md', facts: { stop: 'the-long-hill' } }]);
  expect(text).not.toContain('secret of the owl');
  expect(text).not.toContain(library.folder);
});
