/** The stage that adds the lesson, and the one thing it tells. */
import { expect, test } from 'vitest';
import { checkPack } from '../../../src/core/check/check-pack.ts';
import { measurePack } from '../../../src/core/measure/measure-pack.ts';
import { planLesson } from '../../../src/core/plan/plan-lesson.ts';
import { samplePack } from './sample-pack.ts';

const planned = (minutes: number, pace?: number) => planLesson(measurePack(checkPack(samplePack(minutes)).value).value, pace === undefined ? {} : { pace });

// 520 words at 130 a minute are 240 seconds, 10 turns 20, opening and closing 150, stops 33 + 93 + 78: 614 seconds.
test('the first reading with a class is worked out from its own stops', () => {
  const { value } = planned(20);
  expect(value.plan.lesson.stops.map(({ id, total }) => [id, total])).toEqual([
    ['guess', 33],
    ['tall', 93],
    ['ask-back', 78],
  ]);
  expect(value.plan.lesson.total).toBe(614);
  expect(value.plan.pace).toBe(130);
});

test('what fits to the second is not told', () => {
  expect(planned(11).findings).toEqual([]);
  expect(planned(11).value.plan.left).toEqual([]);
});

test('where a stop has to be left for another day, that is told, and the plan is what the short lesson chooses', () => {
  const { value, findings } = planned(10);
  expect(findings.map(({ code, facts }) => [code, facts])).toEqual([['plan/over-minutes', { planned: 11, minutes: 10 }]]);
  expect(value.plan.stops.map(({ id }) => id)).toEqual(['tall', 'ask-back']);
  expect(value.plan.left.map(({ id }) => id)).toEqual(['guess']);
  expect(value.plan.lesson.total).toBe(614 - 33);
});

test('where even the musts do not fit, the whole reading is planned and the plan says what would help', () => {
  const { plan } = planned(7).value;
  expect(plan.stops.map(({ id }) => id)).toEqual(['guess', 'tall', 'ask-back']);
  expect(plan.fit).toMatchObject({ fits: false, choice: { why: 'musts too long' } });
});

test('a lesson that is too long is told in whole minutes, at the minutes of the pack', () => {
  const { findings } = planned(9);
  expect(findings).toEqual([{ code: 'plan/over-minutes', level: 'warn', place: { file: 'packs/the-borrowed-ladder/pack.md', line: 7, column: 34 }, facts: { planned: 11, minutes: 9 } }]);
});

test('a slower pace makes a longer lesson', () => {
  expect(planned(20, 65).value.plan.lesson.total).toBe(614 + 240);
});
