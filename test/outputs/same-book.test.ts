/** The page that shows packs of one book beside each other, on a small library, and what is alike and what differs in three packs. */
import { expect, test } from 'vitest';
import { compared } from '../../src/outputs/same-book.ts';
import { buildSmall, smallLibrary, soundPack, textsIn } from '../build/small-library.ts';

test('what all packs have alike is told once, what differs is told of each, and what nobody gave is left out', () => {
  const packs = [
    [
      ['Grades', 'K'],
      ['Minutes', '20'],
      ['Version', ''],
    ],
    [
      ['Grades', 'K'],
      ['Minutes', '15'],
      ['Version', ''],
    ],
  ] as const;
  expect(compared(packs)).toEqual({ alike: [['Grades', 'K']], differing: [[['Minutes', '20']], [['Minutes', '15']]] });
});

test('two packs of one book stand beside each other; a fork that names its parent and what was said to stay do not', async () => {
  const own = (word: string) => ['ask: ', `ask: ${word} `] as const;
  const library = await smallLibrary({
    'library.yaml': 'name: The shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask.\nrights: Each names its own.\nboth stay: [[barrow-a, barrow-d]]\n',
    'packs/barrow-a/pack.md': await soundPack(['minutes: 30', 'minutes: 40']),
    'packs/barrow-b/pack.md': await soundPack(['name: The test shelf', 'name: The other shelf'], ['  title: The Wheelbarrow Goes Home', '  title: The Wheelbarow goes home']),
    'packs/barrow-c/pack.md': await soundPack(['licence: CC BY 4.0', 'licence: CC BY 4.0\n  based on: barrow-a'], ['  author: Perrin Oake', '  author: Nobody Else'], own('Well,')),
    'packs/barrow-d/pack.md': await soundPack(['  author: Perrin Oake', '  author: Somebody Other'], ['licence: CC BY 4.0', 'licence: CC BY 4.0\n  based on: barrow-b']),
  });
  await buildSmall(library);
  const texts = await textsIn(library.site);
  const text = (path: string) => (texts.get(path) ?? '').replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
  const page = text('quality/same-book/index.html');
  expect(page).toContain('One book has more than one companion in the same language.');
  // Beside each other: the makers and the minutes differ, the grades do not.
  expect(page).toMatch(
    /Alike in all .*Grades kindergarten and grade one .*Where they differ .*Made by The test shelf .*Minutes 40 minutes .*packs\/barrow-a\/pack\.md .*Made by The other shelf .*packs\/barrow-b\/pack\.md/,
  );
  expect(page).toMatch(/packs\/barrow-a\/pack\.md and .*packs\/barrow-c\/pack\.md : one was made from the other/);
  expect(page).toMatch(/packs\/barrow-a\/pack\.md and .*packs\/barrow-d\/pack\.md : somebody looked at both/);
  expect(text('es/quality/same-book/index.html')).toContain('Un libro tiene más de una guía en el mismo idioma.');
  expect(texts.get('quality/index.html')?.includes('href="../quality/same-book/"')).toBe(true);
});
