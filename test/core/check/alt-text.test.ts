/** What `checkAlt` promises for any text, and what the check of a pack makes of it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import type { AltContext } from '../../../src/core/check/alt-text/alt-context.ts';
import { checkAlt } from '../../../src/core/check/alt-text/check-alt.ts';
import { altText } from '../../../src/core/check/alt-text.ts';
import type { Finding } from '../../../src/core/finding.ts';
import { sayFinding } from '../../../src/core/languages/say-finding.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';

const sound = readFileSync(new URL('../../packs/sound/the-wheelbarrow-goes-home/pack.md', import.meta.url), 'utf8');

function told(pictures: string, body = ''): readonly string[] {
  const text = sound.replace(/^pictures:\n[^]*?(?=^---$)/mu, '').replace('home:\n', `pictures:\n${pictures}home:\n`) + body;
  const { value } = readPack({ slug: 'barrow', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
  if (!value) throw new Error('not readable');
  return [...altText(value)].map(({ level, code, place }) => `${level} ${code} ${text.split('\n')[place.line - 1]?.trim() ?? ''}`);
}

/** Texts of the kind that trip rules: signs, quotation marks, digits, capitals, mixed scripts, and anything at all. */
const awkward = fc.array(
  fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.constantFrom(
      'A picture of ',
      'Imagen de ',
      '"',
      '“',
      '«',
      '(',
      '[',
      '](',
      '<b',
      '&amp;',
      '**',
      '@',
      'a@b.',
      '1 ',
      '555-',
      'Room ',
      'PHOTO BY ',
      ' \n',
      '…',
      'Ã',
      '%C3',
      '\\u00',
      'see above',
      '\ud800',
      'ñ',
      'él',
      '图',
      '👩‍👩‍👧',
    ),
  ),
  { maxLength: 40 },
);

const anyContext = fc.record({
  file: fc.string(),
  alt: fc.option(
    awkward.map((parts) => parts.join('')),
    { nil: undefined },
  ),
  language: fc.oneof(fc.constantFrom('en', 'es', 'ar', 'zh', 'constructor', '__proto__', ''), fc.string()),
  decorative: fc.boolean(),
  use: fc.constantFrom('illustration', 'word picture', 'link') satisfies fc.Arbitrary<NonNullable<AltContext['use']>>,
  credit: fc.option(fc.string(), { nil: undefined }),
  textInPicture: fc.option(fc.string(), { nil: undefined }),
  stop: fc.option(
    fc.record({
      ask: fc.string(),
      kind: fc.constantFrom('feeling', 'predict', 'recall') satisfies fc.Arbitrary<NonNullable<AltContext['stop']>['kind']>,
      models: fc.array(fc.string().map((text) => ({ text }))),
    }),
    { nil: undefined },
  ),
  beside: fc.array(fc.string()),
  others: fc.array(fc.record({ file: fc.string(), alt: fc.string() })),
  known: fc.array(fc.string()),
  makers: fc.array(fc.string()),
});

describe('any alt text', () => {
  test('is looked at without an exception, and what is told can be said in each language', () => {
    fc.assert(
      fc.property(anyContext, (context) => {
        const problem = checkAlt(context);
        if (!problem) return;
        const finding = { ...problem, place: { file: 'pack.md', line: 1, column: 1 } } as Finding;
        for (const language of ['en', 'es', 'ar']) expect(sayFinding(finding, language)).not.toMatch(/undefined|NaN|\[object/u);
      }),
      { numRuns: 500 },
    );
  });

  test('gets the same answer twice', () => {
    fc.assert(
      fc.property(anyContext, (context) => {
        expect(checkAlt(context)).toEqual(checkAlt(context));
      }),
    );
  });

  // No clock here: a rule that looked again and again at one long text would keep this test from ending.
  test.each(['a', ' ', '"', '“', '<', '[', '*', '1', '1 ', '555-', '@', 'a@', '.', 'A ', 'photo by ', 'see ', 'como ', 'Ã', '%C3', '-', 'Room ', 'who ', '(', '\n'])(
    'of two million times %j is no trouble',
    (piece) => {
      expect(() => checkAlt({ file: 'a.png', language: 'en', alt: piece.repeat(2_000_000 / piece.length), beside: [piece.repeat(100_000)], textInPicture: piece.repeat(100_000) })).not.toThrow();
    },
  );
});

describe('the alt texts of a pack', () => {
  const fine = 'A child in a blue coat pushes a wheelbarrow up a steep path.';

  test('the one in the list is told at its own line', () => {
    expect(told(`  - file: barrow.png\n    alt: Picture 1\n`)).toEqual(['stop alt-text/placeholder alt: Picture 1']);
  });

  test('one alt text is told about once, the gravest first', () => {
    expect(told(`  - file: barrow.png\n    alt: "  A cute PICTURE OF Room 12, "\n`)).toEqual(['stop alt-text/personal-data alt: "  A cute PICTURE OF Room 12, "']);
  });

  test('the one that the text gives to a picture is looked at as well', () => {
    expect(told(`  - file: barrow.png\n    alt: ${fine}\n`, '\n![A picture of a barrow on a hill](barrow.png)\n')).toEqual(['warn alt-text/image-of ![A picture of a barrow on a hill](barrow.png)']);
  });

  test('an ornament that the text describes is no ornament', () => {
    expect(told(`  - file: rule.png\n    decorative: true\n`, '\n![A row of stones](rule.png)\n')).toEqual(['stop alt-text/decorative-with-alt ![A row of stones](rule.png)']);
  });

  test('a picture beside words in a link needs none of its own', () => {
    expect(told(`  - file: rule.png\n    decorative: true\n`, '\n[![](rule.png) The first page](../../)\n')).toEqual([]);
  });

  test('a picture with an alt text is a link’s words', () => {
    expect(told(`  - file: barrow.png\n    alt: ${fine}\n`, '\n[![To the first page](barrow.png)](../../)\n')).toEqual([]);
  });

  test('a picture of a taught word may be one word long', () => {
    const pictures = '  - file: axle.png\n    alt: Axle\n';
    expect(told(pictures)).toEqual(['warn alt-text/too-vague alt: Axle']);
    const { value } = readPack({
      slug: 'barrow',
      file: 'pack.md',
      text: sound.replace('home:\n', `    picture: axle.png\npictures:\n${pictures}home:\n`),
      languageOfFile: undefined,
      pictureFiles: [],
      passage: undefined,
    });
    expect(value && [...altText(value)]).toEqual([]);
  });

  test('a room that is in the book is put among the allowed words', () => {
    const pictures = '  - file: room.png\n    alt: A mouse sweeps the step of Room 12.\n';
    expect(told(pictures)).toEqual(['stop alt-text/personal-data alt: A mouse sweeps the step of Room 12.']);
    expect(told(`${pictures}allow words: [Room 12]\n`)).toEqual([]);
  });

  test('the second of two that are the same is told', () => {
    expect(told(`  - file: one.png\n    alt: ${fine}\n  - file: two.png\n    alt: ${fine}\n`)).toEqual([`warn alt-text/same-as-another alt: ${fine}`]);
  });
});
