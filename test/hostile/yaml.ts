/** YAML that grows, repeats, has types or is none. After the yaml-test-suite's kinds of cases and the well-known bombs, in our own words. Text stays as it was typed. */
import { many, refused, sound, withPart, type Hostile, type HostileClass } from './hostile-case.ts';

const front = (yaml: string): string => `---\n${yaml}\n---\n\nText.\n`;
const lines = (count: number, line: (index: number) => string): string => Array.from({ length: count }, (_, index) => line(index)).join('\n');
/** Nine levels of nine: 387 million items where somebody follows them. */
const laughs = ['a: &a [x, x, x, x, x, x, x, x, x]', ...'bcdefghi'.split('').map((name, index) => `${name}: &${name} [${lines(9, () => `*${'abcdefgh'.charAt(index)}`).replace(/\n/g, ', ')}]`)].join(
  '\n',
);
/** A text that other readers of YAML take for something else; here the title is what was typed. */
const asTyped = (text: string): Hostile => ({
  name: `the title ${text}`,
  files: { 'pack.md': withPart('title: The Wheelbarrow Goes Home\nlanguage', `title: ${text}\nlanguage`) },
  told: [],
  published: true,
  shows: [text],
});
const field = (name: string, line: string, ...told: readonly string[]): Hostile => ({
  name,
  files: { 'pack.md': withPart('language: en\n', `language: en\n${line}\n`) },
  told,
  published: told.every((each) => each.endsWith('unknown-field')),
});

export const yaml: HostileClass = {
  class: 'YAML',
  cases: [
    refused(
      'aliases that multiply',
      front(laughs),
      ...lines(8, (index) => lines(9, () => `${index + 3} yaml/alias`))
        .split('\n')
        .slice(0, 10),
      '4 more/of-the-same',
    ),
    refused('an alias within itself', front('a: &a [*a]'), '2 yaml/alias'),
    refused('a merge key', front('a: &a { b: 1 }\nc:\n  <<: *a'), '4 yaml/alias'),
    refused('a field twice', withPart('language: en\n', 'language: en\nlanguage: es\n'), '4 yaml/duplicate'),
    refused('a function', front('a: !!js/function "function () { canary() }"'), '2 yaml/tag'),
    refused('a tag of ours, and one of the standard', front('a: !hostile x\nb: !!binary aGVsbG8='), '2 yaml/tag'),
    refused('a tag given to the whole', front('!!python/object:os.system\na: 1'), '2 yaml/tag'),
    refused('brackets within brackets', front(`a: ${'['.repeat(many(100_000))}`), '2 yaml/too-deep'),
    refused('brackets that end in quotes', front(`a: ${'["]",'.repeat(60)}1${']'.repeat(60)}`), '2 yaml/too-deep'),
    refused('lists within lists', front(`${'- '.repeat(many(5000))}a`), '2 yaml/too-deep'),
    refused('groups within groups', front(lines(200, (index) => `${' '.repeat(index)}a:`)), '163 yaml/too-deep'),
    refused('thousands of fields', front(lines(many(40_000), (index) => `k${index}: 1`)), '2001 yaml/too-many'),
    refused(
      'thousands of empty stops',
      withPart('stops:\n', `stops:\n${'  - {}\n'.repeat(1200)}`),
      ...lines(10, (index) => `${22 + Math.floor(index / 6)} pack/missing-field`).split('\n'),
      '23 more/of-the-same',
    ),
    refused('thousands of faults', front('\t a\n'.repeat(many(30_000))), '2 yaml/syntax'),
    refused('tabs', front('book:\n\ttitle: T'), '3 yaml/syntax'),
    refused('a quote that is not closed', front('title: "The hen'), '2 yaml/syntax'),
    refused('two documents', front('a: 1\n...\nb: 2'), '4 yaml/syntax'),
    refused('a directive', front('%YAML 1.1\n%TAG ! tag:hostile.example,2000:\na: !x 1'), '4 yaml/syntax', '4 yaml/tag'),
    refused('a text of a megabyte', front(`title: ${'x'.repeat(1_000_000)}`), '1 file/too-big'),
    refused('a list where the whole should be a group', front('- a\n- b'), '1 front-matter/missing'),
    refused('a text where the whole should be a group', front('Just a text'), '1 front-matter/missing'),
    field('a field named after the first object', '__proto__: { polluted: yes }', '4 pack/unknown-field'),
    field('fields named after its properties', 'constructor: { prototype: { polluted: yes } }\ntoString: x\nhasOwnProperty: x', '4 pack/unknown-field', '5 pack/unknown-field', '6 pack/unknown-field'),
    ...['no', 'yes', '012', '0x1F', '1e3', '12:30:45', '2026-09-01', '~', 'null', 'NaN', '.inf', '1_000', 'on', '=', '1.0', '-0'].map(asTyped),
    refused('a list where a text is meant', withPart('title: The Wheelbarrow Goes Home\nlanguage', 'title: [a, b]\nlanguage'), '2 pack/wrong-type'),
    refused('a group where a text is meant', withPart('title: The Wheelbarrow Goes Home\nlanguage', 'title: { a: b }\nlanguage'), '2 pack/wrong-type'),
    refused('a number in another script', withPart('minutes: 30', 'minutes: ３０'), '17 pack/wrong-type'),
    refused('a number beyond all bounds', withPart('minutes: 30', 'minutes: 1e309'), '17 pack/wrong-type'),
    {
      name: 'a folded text with colons and hashes, which is text',
      files: { 'pack.md': sound.replace(/summary: .*/, 'summary: >-\n  Odile: a wheelbarrow # and\n  --> a stone.') },
      told: [],
      published: true,
      shows: ['Odile: a wheelbarrow # and --> a stone.'],
    },
  ],
};
