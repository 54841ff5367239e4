import { describe, expect, test } from 'vitest';
import { agreementOf, alphaOfAll, type TwiceScored } from '../../src/classroom/agreement.ts';
import { readScores, withColleague, writeScores, type ScoresFile } from '../../src/classroom/scoring-files.ts';
import { shownStars, starsOf } from '../../src/classroom/stars.ts';

const twice = (first: string, second: string): readonly TwiceScored[] =>
  [...first].map((score, index) => {
    const other = second[index] ?? '-';
    return { answer: `answer ${index + 1}`, first: score === '-' ? undefined : Number(score), second: other === '-' ? undefined : Number(other) };
  });

describe('two teachers score the same answers', () => {
  const twenty = agreementOf(twice('22102112012210122102', '21102122012200121112'), 2);

  test('of twenty answers fifteen are scored alike, and none is more than a step apart', () => {
    expect(twenty).toMatchObject({ n: 20, exact: 15, withinOne: 20, kappa: { kind: 'value', n: 20 } });
    expect(twenty.talkAbout.map((each) => each.answer)).toEqual(['answer 2', 'answer 7', 'answer 13', 'answer 17', 'answer 19']);
  });
  test('nine answers are too few for a coefficient; the count is told all the same', () => {
    expect(agreementOf(twice('212021021', '212021021'), 2)).toMatchObject({ n: 9, exact: 9, kappa: { kind: 'too few', n: 9, least: 10 }, alpha: { kind: 'too few' } });
  });
  test('when both give 2 to everything the coefficient cannot be computed, and is not 1', () => {
    expect(agreementOf(twice('222222222222', '222222222222'), 2)).toMatchObject({ exact: 12, kappa: { kind: 'cannot be computed', n: 12 }, alpha: { kind: 'cannot be computed' } });
  });
  test('answers that only one of them scored do not count', () => {
    expect(agreementOf(twice('2-10212012101', '21-0212012101'), 2).n).toBe(11);
  });
  test('what is furthest apart is talked about first', () => {
    expect(agreementOf(twice('120', '100'), 2).talkAbout.map((each) => each.answer)).toEqual(['answer 2']);
    expect(agreementOf(twice('1202', '2022'), 2).talkAbout.map((each) => each.answer)).toEqual(['answer 2', 'answer 3', 'answer 1']);
  });
});

describe('three people and more', () => {
  const rows = (...scorers: readonly string[]) => scorers.map((scores) => scores.split(' ').map((score) => (score === '-' ? undefined : Number(score))));

  test('alpha of four scorers with gaps is the published one, told with the answers that two or more of them scored', () => {
    // Krippendorff's data of four coders and twelve units: ordinal alpha .815; one unit was scored by a single coder.
    const alpha = alphaOfAll(rows('1 2 3 3 2 1 4 1 2 - - -', '1 2 3 3 2 2 4 1 2 5 - 3', '- 3 3 3 2 3 4 2 2 5 1 -', '1 2 3 3 2 4 4 1 2 5 1 -'));
    expect(alpha).toEqual({ kind: 'value', value: expect.closeTo(0.8153875037548813, 9) as number, n: 11 });
  });
  test('nine answers are too few, whoever scored them', () => {
    expect(alphaOfAll(rows('0 1 0 1 0 1 0 1 0 -', '0 1 0 1 0 1 0 1 0 1', '0 1 0 1 0 1 0 1 0 -'))).toEqual({ kind: 'too few', n: 9, least: 10 });
  });
  test('a colleague’s newer file takes the place of the older one; another colleague’s stands beside it', () => {
    const file = (scorer: string | undefined, score: number): ScoresFile => ({
      sheet: 'sheet0000001',
      by: 'second',
      ...(scorer !== undefined && { scorer }),
      steps: 1,
      scores: { '0123456789abcdef': { reason: score } },
    });
    const two = [file('first0colleague', 0), file('other0colleague', 1), file('first0colleague', 1)].reduce<readonly ScoresFile[]>(withColleague, []);
    expect(two).toEqual([file('first0colleague', 1), file('other0colleague', 1)]);
    expect(two.map((each) => readScores(JSON.parse(writeScores(each))))).toEqual(two);
    // Files from before say nothing of who scored.
    expect(readScores(JSON.parse(writeScores(file(undefined, 1))))).toEqual(file(undefined, 1));
  });
});

describe('stars before anybody else sees them', () => {
  const shown = (...ratings: readonly number[]) => shownStars(starsOf(ratings, 5), 'anybody');

  test('four ratings: nothing is told', () => {
    expect(shown(5, 4, 5, 3)).toEqual({ kind: 'nothing', why: 'too few' });
  });
  test('seven ratings: only that seven children rated', () => {
    expect(shown(5, 4, 5, 3, 4, 4, 1)).toEqual({ kind: 'only how many', n: 7, why: 'few' });
  });
  test('twelve ratings, all the same: only how many, or each child’s would be known', () => {
    expect(shown(...Array.from({ length: 12 }, () => 5))).toEqual({ kind: 'only how many', n: 12, why: 'all alike' });
  });
  test('twelve ratings that differ may be shown', () => {
    expect(shown(5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 4).kind).toBe('all');
  });
  test('the teacher sees them all', () => {
    expect(shownStars(starsOf([5, 4], 5), 'teacher').kind).toBe('all');
    expect(shownStars(starsOf([], 5), 'teacher')).toEqual({ kind: 'nothing', why: 'nobody' });
  });
  test('two in the middle are both told, and never their mean', () => {
    expect(starsOf([1, 2, 4, 5], 5).middle).toEqual([2, 4]);
    expect(starsOf([1, 2, 4], 5).middle).toEqual([2, 2]);
  });
});
