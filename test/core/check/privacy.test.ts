/** What of a text is personal, line by line, by the cases of test/core/cases/privacy.txt and roster-names.txt. */
import { describe, expect, test } from 'vitest';
import { emailsIn, phonesIn } from '../../../src/core/check/contacts-in-text.ts';
import { roomsIn } from '../../../src/core/check/rooms-in-text.ts';
import { readRoster, rosterNamesIn, rosterNamesInFileName } from '../../../src/core/check/roster-names.ts';
import { casesIn } from '../cases.ts';

const perLine = (found: readonly string[]) => (found.length === 0 ? 'nothing' : found.join(', '));

describe('addresses, numbers and rooms', () => {
  test.each(casesIn('privacy'))('$title', ({ input, expected }) => {
    const found = input.split('\n').map((line) => `${line}  ->  ${perLine([...emailsIn(line), ...phonesIn(line), ...roomsIn(line)])}`);
    const lines = expected.split('\n');
    expect(found).toEqual(input.split('\n').map((line, index) => `${line}  ->  ${lines[index] ?? '(no line)'}`));
  });

  test('the class of a character belongs to the story', () => {
    expect(roomsIn("Miss Averill's class looked up.", ['Miss Averill'])).toEqual([]);
    expect(roomsIn("Miss Averill's class looked up.", ['Orrin'])).toEqual(["Miss Averill's class"]);
  });

  test.each([
    ['letters', 'a'.repeat(200_000)],
    ['digits', '12 '.repeat(70_000)],
    ['at signs', '@'.repeat(200_000)],
    ['capitals', 'Mr. '.repeat(50_000)],
    ['calls', 'call '.repeat(40_000)],
  ])('a long text of nothing but %s is looked through and holds nothing', (_, text) => {
    expect([...emailsIn(text), ...phonesIn(text), ...roomsIn(text), ...rosterNamesIn(text, readRoster(['Ana', 'Tobias Brask']))]).toEqual([]);
  });
});

describe('names of a class list', () => {
  test.each(casesIn('roster-names'))('$title', ({ input, expected }) => {
    const [list = '', ...rest] = input.split('\n');
    const option = (name: string) =>
      rest
        .find((line) => line.startsWith(`${name}: `))
        ?.slice(name.length + 2)
        .split(name === 'makers' ? '; ' : ', ') ?? [];
    const roster = readRoster(list.replace(/^files: /u, '').split('; '), { words: option('allowed'), makers: option('makers') });
    const lines = rest.filter((line) => !/^(?:allowed|makers): /u.test(line));
    const find = list.startsWith('files: ') ? rosterNamesInFileName : rosterNamesIn;
    const wanted = expected.split('\n');
    expect(lines.map((line) => `${line}  ->  ${perLine(find(line, roster))}`)).toEqual(lines.map((line, index) => `${line}  ->  ${wanted[index] ?? '(no line)'}`));
  });
});
