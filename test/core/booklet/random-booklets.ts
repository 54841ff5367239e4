/** Booklets made up at random, for tests: any text in any script, halves of surrogate pairs, ends of scripts, drawings, photos. */
import fc from 'fast-check';
import { brows, eyes, inks, mouths, stamps, type Entry, type Mark, type Prompt, type Value } from '../../../src/core/booklet/booklet-schema.ts';
import { newBooklet, put, type Booklet } from '../../../src/core/booklet/booklet.ts';

/** What has broken files before: in HTML, in JSON, in scripts, in UTF-8, in Windows, in right-to-left text. */
const nasty = [
  '</script><script>alert(1)</script>',
  '<!--',
  ']]>',
  '\u2028\u2029',
  '\uD83D',
  '\uDE00x',
  '\uFEFF',
  '\u0000\u0001\u001f',
  '\r\n\r',
  'مرحبا، أنا خائف',
  '‮abc‬',
  '👩🏽‍🚀👨‍👩‍👧‍👦🏴󠁧󠁢󠁳󠁣󠁴󠁿',
  'Ñandú, ¿qué?',
  'é vs é',
  '"\\u003c"',
  '&lt;&amp;',
  '__proto__',
  '猫が こわがっている',
  "'; DROP",
];

const anyText = fc.oneof(
  { weight: 3, arbitrary: fc.string({ unit: 'binary', maxLength: 40 }) },
  { weight: 2, arbitrary: fc.constantFrom(...nasty) },
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.constant(''),
  fc.array(fc.constantFrom(...nasty), { maxLength: 4 }).map((parts) => parts.join('')),
);
const slug = fc.constantFrom('rope', 'not-home', 'see-the-end', 'constructor', 'a1', 'tostring');
const base64 = fc.uint8Array({ minLength: 1, maxLength: 60 }).map((bytes) => Buffer.from(bytes).toString('base64'));
const random = fc.constantFrom('abcdefgh', 'constructor', 'zzzzzzzz0', '0123456789', 'tostring1');
const at = { ink: fc.constantFrom(...inks), x: fc.integer({ min: -100, max: 1300 }), y: fc.integer({ min: -100, max: 1000 }), size: fc.integer({ min: 1, max: 900 }) };
const point = fc.tuple(fc.integer({ min: -50, max: 1250 }), fc.integer({ min: -50, max: 950 }), fc.integer({ min: 0, max: 100 }));
const mark: fc.Arbitrary<Mark> = fc.oneof(
  fc.record({ do: fc.constant('line' as const), ink: at.ink, width: fc.integer({ min: 1, max: 60 }), points: fc.array(point, { minLength: 1, maxLength: 8 }).map((points) => points.flat()) }),
  fc.record({ do: fc.constant('stamp' as const), shape: fc.constantFrom(...stamps), ...at }),
  fc.record({ do: fc.constant('face' as const), eyes: fc.constantFrom(...eyes), brows: fc.constantFrom(...brows), mouth: fc.constantFrom(...mouths), ...at }),
);

export const anyValue: fc.Arbitrary<Value> = fc.oneof(
  fc.record({ kind: fc.constant('written' as const), text: anyText, frames: fc.array(anyText, { maxLength: 2 }) }),
  fc.record({ kind: fc.constantFrom('said' as const, 'acted' as const, 'because' as const), text: anyText }),
  fc.record({ kind: fc.constant('feeling' as const), word: anyText, family: slug, strength: fc.integer({ min: 1, max: 3 }) }, { requiredKeys: ['kind', 'word'] }),
  fc.record({ kind: fc.constantFrom('cannot-tell' as const, 'passed' as const) }),
  fc.record({ kind: fc.constant('voice' as const), type: fc.constantFrom('audio/webm' as const, 'audio/ogg' as const, 'audio/mp4' as const), seconds: fc.nat(100), data: base64 }),
  fc.record({ kind: fc.constant('drawing' as const), about: anyText, marks: fc.array(mark, { maxLength: 4 }) }),
  fc.record({
    kind: fc.constant('photo' as const),
    about: anyText,
    type: fc.constantFrom('image/jpeg' as const, 'image/png' as const, 'image/webp' as const),
    width: fc.integer({ min: 1, max: 1280 }),
    height: fc.integer({ min: 1, max: 1280 }),
    data: base64,
  }),
  fc.record({ kind: fc.constant('stars' as const), stars: fc.integer({ min: 1, max: 5 }), of: fc.integer({ min: 3, max: 5 }), words: anyText }),
  fc
    .record({ of: fc.uniqueArray(anyText, { minLength: 2, maxLength: 6 }), ends: fc.subarray(['best', 'last'] as const, { minLength: 1 }) })
    .map(({ of, ends }) => ({ kind: 'chosen' as const, ...(ends.includes('best') && { best: of[0] ?? '' }), ...(ends.includes('last') && { last: of.at(-1) ?? '' }), of })),
);

const whereTo = fc.oneof({ weight: 5, arbitrary: slug }, { weight: 1, arbitrary: fc.constantFrom('whole book' as const, 'best of' as const) });
const prompt: fc.Arbitrary<Prompt> = fc.record(
  { of: whereTo, number: fc.integer({ min: 1, max: 20 }), opening: fc.integer({ min: 1, max: 40 }), ask: anyText, about: fc.constantFrom('character' as const, 'me' as const) },
  { requiredKeys: ['of', 'number', 'ask'] },
);

export const anyBooklet: fc.Arbitrary<Booklet> = fc
  .record({
    id: random,
    pack: fc.record({ slug, language: fc.constantFrom('en', 'es', 'ar', 'zh-Hant-TW'), title: anyText }),
    bookmark: fc.record({ pattern: fc.constantFrom('waves', 'later-one', 'constructor'), colour: fc.constantFrom('red', 'blue') }),
    prompts: fc.array(prompt, { maxLength: 4 }),
    deeds: fc.array(fc.record({ writer: random, to: whereTo, value: anyValue, instead: fc.option(fc.nat(9)) }), { maxLength: 7 }),
  })
  .map(({ id, pack, bookmark, prompts, deeds }) =>
    deeds.reduce((booklet, { writer, to, value, instead }) => put(booklet, writer, to, value, instead === null ? undefined : booklet.entries[instead]), newBooklet(id, pack, bookmark, prompts)),
  );

export const nameOf = ({ writer, count }: Pick<Entry, 'writer' | 'count'>): string => `${writer} ${count}`;
