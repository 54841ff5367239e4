/** What a rule stands on, as it is shown beside a finding. */
import { expect, test } from 'vitest';
import { balanceInEnglish } from '../../../src/core/languages/en-findings-balance.ts';
import { groundInWords, groundsOf } from '../../../src/core/check/grounds.ts';

test('a ground says its mark, and its source when it has one', () => {
  expect(groundInWords({ mark: 'source', source: 'Rowe 1986', row: 'T1' }, 'en')).toBe('Source: Rowe 1986');
  expect(groundInWords({ mark: 'source', source: 'Rowe 1986', row: 'T1' }, 'es-MX')).toBe('Fuente: Rowe 1986');
  expect(groundInWords({ mark: 'common practice', row: 'M6' }, 'en')).toBe('Common practice, no source');
  expect(groundInWords({ mark: 'common practice', source: 'Webb 1997' }, 'es')).toBe('Práctica común; compárese Webb 1997');
  expect(groundInWords({ mark: 'common practice', row: 'M6' }, 'ar')).toBe('ممارسة شائعة، بلا مصدر');
  expect(groundInWords({ mark: 'source', source: 'Rowe 1986', row: 'T1' }, 'ar')).toBe('المصدر: \u2068Rowe 1986\u2069');
});

test('nothing is called a source or from memory without naming what', () => {
  for (const [code, ground] of Object.entries(groundsOf)) {
    if (ground.mark !== 'common practice') expect(ground.source, code).toBeTruthy();
  }
});

test('every piece of advice about balance and fit says what it stands on', () => {
  const without = Object.keys(balanceInEnglish).filter((code) => !(code in groundsOf));
  expect(without).toEqual([]);
});
