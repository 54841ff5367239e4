import { describe, expect, test } from 'vitest';
import { agreementOf, type TwiceScored } from '../../src/classroom/agreement.ts';
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
