/** A build that is killed, whenever it is: the site is the old one or the new one, whole, and the next build needs no help. */
import { readdir } from 'node:fs/promises';
import { beforeAll, expect, test } from 'vitest';
import type { Told } from './child.ts';
import { eachCase } from './each-case.ts';
import { buildInChild, type Run } from './in-child.ts';
import { cases, spread } from './moments.ts';
import { sumOfTree, twoVersions, wholeBuild, type TwoVersions } from './two-versions.ts';

let two: TwoVersions;
let whole: Told;
beforeAll(async () => {
  two = await twoVersions();
  whole = await wholeBuild();
});

/** Kills a build of the version that is not there now, and tells what did not hold. */
async function killed(name: string, target: 0 | 1, run: Run, cold: boolean): Promise<readonly string[]> {
  const faults: string[] = [];
  await two.turnTo(target);
  if (cold) await two.forget();
  const ended = await buildInChild(two.library, run);
  const names = ['old', 'new'];
  const found = await sumOfTree(two.library.site);
  if (!two.sums.includes(found)) faults.push(`${name}: the site is neither the old nor the new one`);
  // A build that was done before the signal came has published.
  if (ended.code === 0 && found !== two.sums[target]) faults.push(`${name}: it ended well, and the site is the ${names[target === 1 ? 0 : 1]} one`);
  if (ended.code !== 0 && ended.signal === null) faults.push(`${name}: it was not killed and said ${ended.err}`);
  await two.buildAgain();
  if ((await sumOfTree(two.library.site)) !== two.sums[target]) faults.push(`${name}: the next build did not make the new site`);
  const beside = (await readdir(two.library.folder)).sort().join(' ');
  if (beside !== 'cache content site') faults.push(`${name}: the next build left ${beside}`);
  return faults;
}

const peak = () => whole.peakMB;

test('killed at any of its calls to the disk, from the first look at the content to the last file cleared away', async () => {
  const { calls } = whole;
  expect(calls).toBeGreaterThan(100);
  // A build that finds most of the site made takes other steps. When everything is proved, those have as many cases.
  const warmCalls = cases(0, 1) === 1 ? (await wholeBuild(false)).calls : calls;
  // The last calls are those of putting the new site in the old one's place, so they are all tried when everything is proved.
  const moments = (most: number, cold: boolean) => [...spread(cases(2, 50), most, 1), ...Array.from({ length: cases(cold ? 1 : 0, 10) }, (_, index) => most - index)].map((at) => ({ at, cold }));
  const faults = await eachCase(
    'a build killed at a call to the disk',
    [...moments(calls, true), ...moments(warmCalls, false)],
    ({ at, cold }, index) => {
      const signal = index % 2 === 0 ? 'SIGKILL' : 'SIGTERM';
      return killed(`${signal} at call ${at} of a ${cold ? 'cold' : 'warm'} build`, index % 2 === 0 ? 0 : 1, { fault: { kill: { at, signal } } }, cold);
    },
    peak,
  );
  expect(faults).toEqual([]);
});

test('killed from outside at any time', async () => {
  const faults = await eachCase(
    'a build killed at a time',
    spread(cases(1, 80), Math.ceil(whole.ms), 2),
    (ms, index) => {
      const signal = index % 2 === 0 ? 'SIGKILL' : 'SIGTERM';
      return killed(`${signal} after ${ms} ms`, index % 2 === 0 ? 0 : 1, { killAfter: { ms, signal } }, true);
    },
    peak,
  );
  expect(faults).toEqual([]);
});
