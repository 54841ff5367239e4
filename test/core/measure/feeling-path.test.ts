/** The path of a character's feelings, by the cases of test/core/cases. */
import { expect, test } from 'vitest';
import { feelingPath } from '../../../src/core/measure/feeling-path.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

const front = (fields: string) => `---
title: The Gate
language: en
summary: A dog and a gate.
book: {title: The Gate, author: Odile Warrender, openings: 10, words: 300, rights: our own}
by: {name: P. Quillfeather, licence: CC BY 4.0}
for: {grades: [K], minutes: 20}
readings: [{reading: 1, purpose: Meet the dog.}]
${fields}
---
`;

test.each(casesIn('feeling-path'))('$title', ({ input, expected }) => {
  const read = readPack({ slug: 'the-gate', file: 'packs/the-gate/pack.md', text: front(input), languageOfFile: undefined, pictureFiles: [], passage: undefined });
  if (!read.value) throw new Error(JSON.stringify(read.findings));
  const told = feelingPath(read.value).map(({ number, opening, from, feelings }) => {
    const words = feelings.map(({ word, family, strength, valence }) => `${word} (${family} ${String(strength)}, ${String(Math.round(valence * 100) / 100)})`);
    return `stop ${String(number)}, opening ${String(opening)}, ${from}: ${words.join('; ')}`;
  });
  expect(told.join('\n')).toBe(expected);
});
