/** Durations that a library or a pack sets: read as its author wrote them, and told when they make no sense. */
import { expect, test } from 'vitest';
import { readLibrary } from '../../../src/core/pack/library.ts';
import { defaults, durationsOf } from '../../../src/core/plan/seconds.ts';

const library = (durations: string) =>
  readLibrary(`name: The test shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask at the desk.\nrights: Each names its own.\ndurations:\n${durations}`, 'library.yaml');

test('a library may set some and leave the others as they are', () => {
  const { value, findings } = library('  page turn: 3\n  write a sentence: 150\n  second wait: 4\n');
  expect(findings).toEqual([]);
  expect(durationsOf(value ?? {})).toEqual({ ...defaults, pageTurn: 3, writeASentence: 150, secondWait: 4 });
});

test.each([
  ['a wait below three seconds', '  wait: 2\n', { code: 'pack/out-of-range', facts: { field: 'durations: wait', found: '2', least: 3 } }],
  ['a page turn of a minute', '  page turn: 60\n', { code: 'pack/out-of-range', facts: { field: 'durations: page turn', found: '60', most: 30 } }],
  ['words in place of a number', '  ask: a while\n', { code: 'pack/wrong-type', facts: { field: 'durations: ask', expected: 'whole number', found: 'a while' } }],
  ['a name that is misspelt', '  openning: 40\n', { code: 'pack/misspelt-field', facts: { field: 'openning', within: 'durations', suggestion: 'opening' } }],
])('%s is told at its line, and costs no other setting', (_, durations, told) => {
  const { value, findings } = library(`  draw: 200\n${durations}`);
  expect(findings).toEqual([expect.objectContaining({ ...told, level: 'stop', place: expect.objectContaining({ file: 'library.yaml', line: 8 }) as unknown })]);
  expect(value?.durations?.draw).toBe(200);
});
