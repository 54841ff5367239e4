/** Shared runs of words, held against a plain comparison of every place with every place, and the number of steps against the length. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runFinder } from '../../../src/core/measure/shared-runs.ts';

/** Length of the longest run that ends at each word of `words`, found by trying every place. */
function longestEndingAt(source: readonly string[], words: readonly string[]): readonly number[] {
  return words.map((_, end) => {
    let longest = 0;
    for (let from = 0; from < source.length; from++) {
      let length = 0;
      while (length <= end && from - length >= 0 && source[from - length] === words[end - length]) length++;
      longest = Math.max(longest, length);
    }
    return longest;
  });
}

const words = fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 24 });

test('every run stands in both texts, none can be made longer, and none is missing', () => {
  fc.assert(
    fc.property(words, words, (source, other) => {
      const runs = runFinder(source).runsIn(other);
      for (const { from, words: length, source: at } of runs) expect(other.slice(from, from + length)).toEqual(source.slice(at, at + length));
      const ending = longestEndingAt(source, other);
      // A run ends where the next word cannot make it longer.
      const wanted = ending.flatMap((length, end) => (length > 0 && ending[end + 1] !== length + 1 ? [`${end - length + 1}+${length}`] : []));
      expect(runs.map((run) => `${run.from}+${run.words}`)).toEqual(wanted);
    }),
    { numRuns: 2000, seed: 20261125 },
  );
});

test('the place named is the first one', () => {
  expect(runFinder('the cat sat and the cat ran'.split(' ')).runsIn(['the', 'cat'])).toEqual([{ from: 0, words: 2, source: 0 }]);
});

describe('steps grow as the texts do, and no faster', () => {
  const shapes: readonly [string, (length: number) => readonly string[]][] = [
    ['one word over and over', (length) => Array.from({ length }, () => 'a')],
    ['two words in turn', (length) => Array.from({ length }, (_, index) => 'ab'.charAt(index % 2))],
    ['a verse with a refrain', (length) => Array.from({ length }, (_, index) => (index % 7 === 6 ? `w${index}` : `r${index % 7}`))],
    ['ever longer repeats', (length) => Array.from({ length }, (_, index) => (Math.sqrt(index) % 1 === 0 ? 'b' : 'a'))],
    ['all different', (length) => Array.from({ length }, (_, index) => `w${index}`)],
  ];
  const stepsFor = (text: readonly string[]): number => {
    const finder = runFinder(text);
    finder.runsIn(text);
    finder.runsIn([...text].reverse());
    return finder.steps();
  };

  test.each(shapes)('%s: 100,000 words', (_, make) => {
    const [half, whole] = [stepsFor(make(50_000)), stepsFor(make(100_000))];
    expect(whole / 100_000).toBeLessThan(10);
    expect(whole / half).toBeLessThan(2.1);
  });
});
