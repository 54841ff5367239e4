/** Rights, translations and reviews, by the cases of test/core/cases/rights.txt: lines of a pack, then what is told. */
import { describe, expect, test } from 'vitest';
import { reviewDate } from '../../../src/core/check/review-date.ts';
import { rights } from '../../../src/core/check/rights.ts';
import { nothingAround } from '../../../src/core/check/surroundings.ts';
import { translation } from '../../../src/core/check/translation.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

function packOf(lines: readonly string[]): string {
  const one = (field: string) => lines.find((line) => line.startsWith(`${field}: `))?.slice(field.length + 2);
  const pictures = lines.filter((line) => line.startsWith('picture: ')).map((line) => line.slice(9).split(' | '));
  return `---
title: Uphill
language: en
summary: Someone borrows something.
book:
  title: Uphill
  author: Perrin Oake
  openings: 12
  words: 300
  rights: ${one('rights') ?? 'our own'}
${one('rights note') === undefined ? '' : `  rights note: ${one('rights note') ?? ''}\n`}by:
  name: The test shelf
  licence: CC BY 4.0
${one('reviewed') === undefined ? '' : `  reviewed: ${one('reviewed') ?? ''}\n`}for: { grades: [K], minutes: 60 }
readings: [{ reading: 1, purpose: Listen. }]
stops: []
${one('translation') === undefined ? '' : `translation: ${one('translation') ?? ''}\n`}${one('care') === undefined ? '' : `care: [${one('care') ?? ''}]\n`}${pictures.length === 0 ? '' : 'pictures:\n'}${pictures
    .map(([file = '', more = '']) => `  - file: ${file}\n    alt: A hill.\n${more === '' ? '' : `    ${more}\n`}`)
    .join('')}---
`;
}

describe('rights, translations and reviews', () => {
  test.each(casesIn('rights'))('$title', ({ input, expected }) => {
    const lines = input.split('\n');
    const read = readPack({ slug: 'uphill', file: 'pack.md', text: packOf(lines), languageOfFile: undefined, pictureFiles: [], passage: undefined });
    expect(read.findings).toEqual([]);
    const around = { ...nothingAround, today: lines.find((line) => line.startsWith('today: '))?.slice(7) };
    const told = read.value ? [...rights(read.value), ...translation(read.value), ...reviewDate(read.value, around)] : [];
    expect(told.map(({ level, code, facts }) => `${level} ${code} ${Object.values(facts).join(', ')}`).join('\n')).toBe(expected);
  });
});
