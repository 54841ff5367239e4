/** What the form's page says of numbers, by the phrases of its language. */
import { expect, test } from 'vitest';
import { counted } from '../../../src/browser/maker/words.ts';
import { phrasesFor } from '../../../src/core/languages/pick-language.ts';

test('English and Spanish have a phrase for one and one for several', () => {
  const { advice } = phrasesFor('en').maker.desk;
  expect([1, 2, 11].map((n) => counted(advice, n))).toEqual(['1 thing to look at', '2 things to look at', '11 things to look at']);
});

// The forms of a counted noun in Arabic: alone, dual, plural of 3 to 10, singular in the accusative from 11, singular after a hundred. Source: Unicode CLDR, plural rules for "ar".
test('Arabic has one for each sort of number', () => {
  const { advice } = phrasesFor('ar').maker.desk;
  expect([1, 2, 3, 10, 11, 99, 100].map((n) => counted(advice, n))).toEqual(['ملاحظة واحدة', 'ملاحظتان', '3 ملاحظات', '10 ملاحظات', '11 ملاحظة', '99 ملاحظة', '100 ملاحظة']);
  const { left } = phrasesFor('ar').maker.beside;
  expect([1, 2, 12, 100].map((n) => counted(left, n))).toEqual(['لم يُترجم بعد: حقل واحد.', 'لم يُترجم بعد: حقلان.', 'لم يُترجم بعد: 12 حقلًا.', 'لم يُترجم بعد: 100 حقل.']);
});
