/** Arabic: how it counts, that every page of a book is whole in it, and that numbers are written one way everywhere. */
import { describe, expect, test } from 'vitest';
import { count, minutesInWords, nouns } from '../../../src/core/languages/arabic-words.ts';
import { ar, inEnglish } from '../../../src/core/languages/ar.ts';
import { localeOf } from '../../../src/core/languages/about-language.ts';
import { en } from '../../../src/core/languages/en.ts';
import { isInEnglish, isPartlyEnglish, phrasesFor } from '../../../src/core/languages/pick-language.ts';
import { filledUp, missingPhrases } from '../../../src/core/languages/unfinished.ts';
import { casesIn } from '../cases.ts';

test.each(casesIn('arabic-counted'))('counting, $title', ({ input, expected }) => {
  expect([nouns.minute, nouns.line, nouns.book].map((noun) => count(Number(input), noun)).join('\n')).toBe(expected);
});

test.each(casesIn('arabic-minutes'))('minutes in words, $title', ({ input, expected }) => {
  expect(
    input
      .split('\n')
      .map((n) => minutesInWords(Number(n)))
      .join('\n'),
  ).toBe(expected);
});

test('a two after a verb or a preposition has its other form', () => {
  expect(count(2, nouns.minute, 'object')).toBe('دقيقتين');
  expect(count(3, nouns.minute, 'object')).toBe('3 دقائق');
});

test('nothing is missing of what families, children, teachers, whoever looks after a library and whoever makes a pack meet', () => {
  expect(missingPhrases(en, ar)).toEqual([]);
});

test('what is counted in the stack is said in the form that its number asks for', () => {
  const { stack } = phrasesFor('ar');
  expect([1, 2, 3, 24, 100].map((n) => stack.bookOf('القارب', n).replace(/[\u2066-\u2069]/g, ''))).toEqual([
    'القارب (كتيّب واحد)',
    'القارب (كتيّبان)',
    'القارب (3 كتيّبات)',
    'القارب (24 كتيّبًا)',
    'القارب (100 كتيّب)',
  ]);
  expect(stack.judge.done(1, 2)).toBe('ما قُيّم: 1 من إجابتين.');
  expect(stack.counts.starsText(3, 12, 4, 5)).toBe('من أصل 12 طفلًا أعطى 3 منهم 4 أو 5 نجوم.');
  expect(stack.pile.read(2, 1, 11)).toBe('ما وُضع على الكومة: كتيّبان. نسخ من كتيّبات كانت هنا من قبل، جُمعت معها: 1. ما نُحّي جانبًا: 11 ملفًا.');
});

test('so no page is called English, and the foot of a page does not speak of English phrases', () => {
  expect(inEnglish).toEqual([]);
  expect([isPartlyEnglish('ar'), isInEnglish('ar-EG', 'maker'), isInEnglish('ar', 'stack')]).toEqual([false, false, false]);
});

test('it says of itself that it awaits a native reader; English and Spanish do not', () => {
  expect(phrasesFor('ar').site.awaiting).not.toBe('');
  expect([phrasesFor('en').site.awaiting, phrasesFor('es').site.awaiting]).toEqual(['', '']);
});

describe('a language under way', () => {
  test('what is missing is said in English, what is there is kept, lists are never mixed', () => {
    const english = { a: 'one', b: { c: 'two', d: () => 'three', e: ['x', 'y'] } };
    const filled = filledUp(english, { b: { c: 'zwei', e: ['z'] } });
    expect(filled).toEqual({ a: 'one', b: { c: 'zwei', d: english.b.d, e: ['z'] } });
    expect(missingPhrases(english, { b: { c: 'zwei' } })).toEqual(['a', 'b.d', 'b.e']);
  });
});

test('numbers, days and shares are written with the digits 0 to 9, as the phrases are', () => {
  const day = new Intl.DateTimeFormat(localeOf('ar-EG'), { dateStyle: 'long', timeZone: 'UTC' }).format(new Date('2026-11-25T00:00:00Z'));
  expect(day).toBe('25 نوفمبر 2026');
  expect(new Intl.NumberFormat(localeOf('ar-EG')).format(1234.5)).toMatch(/^1.234.5$/);
});
