/** Two builds of one place at once, and somebody who reads the site all the while. */
import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { exchange } from '../../src/build/exchange.ts';
import { stage } from '../../src/build/publish.ts';
import { smallLibrary } from '../build/small-library.ts';
import { eachCase, type Faults } from './each-case.ts';
import { buildInChild } from './in-child.ts';
import { cases } from './moments.ts';
import { sumOfTree, twoVersions } from './two-versions.ts';

test('of two builds at once each publishes or says that another one is at it, and the site is whole', async () => {
  const two = await twoVersions();
  let peak = 0;
  const faults = await eachCase(
    'two builds at once',
    Array.from({ length: cases(1, 12) }, (_, index) => index),
    async (index): Promise<Faults> => {
      const target = index % 2 === 0 ? 1 : 0;
      await two.turnTo(target);
      const both = await Promise.all([buildInChild(two.library), buildInChild(two.library)]);
      peak = Math.max(peak, ...both.map(({ told }) => told?.peakMB ?? 0));
      const wrong = both.filter(({ code, err }) => code !== 0 && !(code === 2 && /^Another build(?: \(process \d+\))? is writing this site\. Wait until it is done\.$/.test(err)));
      const beside = (await readdir(two.library.folder)).sort().join(' ');
      return [
        ...wrong.map(({ code, err }) => `pair ${index}: one ended with ${code} and said ${err}`),
        ...(both.some(({ code }) => code === 0) ? [] : [`pair ${index}: nobody published`]),
        ...((await sumOfTree(two.library.site)) === two.sums[target] ? [] : [`pair ${index}: the site is not the new one`]),
        ...(beside === 'cache content site' ? [] : [`pair ${index}: left ${beside}`]),
      ];
    },
    () => peak,
  );
  expect(faults).toEqual([]);
});

/** Looks at a page as often as it can, and counts how often it was not there or was half a page. */
const reader = `
const { readFileSync } = require('node:fs');
const { parentPort, workerData } = require('node:worker_threads');
let looks = 0, missed = 0;
parentPort.on('message', () => { parentPort.postMessage({ looks, missed }); looks = missed = 0; });
setInterval(() => {
  for (let times = 0; times < 200; times++) {
    looks++;
    try { if (!/^version \\d+ whole$/.test(readFileSync(workerData, 'utf8'))) missed++; } catch { missed++; }
  }
}, 0);
parentPort.postMessage('begun');
`;

const { folder } = await smallLibrary({});
await mkdir(join(folder, 'one'));
await mkdir(join(folder, 'other'));
const inOneStep = await exchange(join(folder, 'one'), join(folder, 'other'));
await rm(join(folder, 'one'), { recursive: true });
await rm(join(folder, 'other'), { recursive: true });

test.skipIf(!inOneStep)('somebody who reads a page without a pause never misses it (skipped where the system cannot exchange two folders)', async () => {
  const { site } = await smallLibrary({});
  const publish = async (version: number) => {
    const staging = await stage(site);
    await writeFile(join(staging.folder, 'index.html'), `version ${version} whole`);
    await staging.publish();
  };
  await publish(0);
  const thread = new Worker(reader, { eval: true, workerData: join(site, 'index.html') });
  const heard = () => new Promise<{ readonly looks: number; readonly missed: number }>((done) => thread.once('message', done));
  await heard();
  let all = 0;
  const faults = await eachCase(
    'a reader while sites are exchanged',
    Array.from({ length: cases(20, 500) }, (_, index) => index + 1),
    async (version): Promise<Faults> => {
      await publish(version);
      const answer = heard();
      thread.postMessage('told');
      const { looks, missed } = await answer;
      all += looks;
      return missed === 0 ? [] : [`exchange ${version}: missed ${missed} of ${looks} looks`];
    },
  );
  await thread.terminate();
  expect(faults).toEqual([]);
  expect(all).toBeGreaterThan(100);
});

test('where two names cannot be exchanged, a build that was killed between the two renames is helped by the next', async () => {
  const library = await smallLibrary({});
  const staging = await stage(library.site);
  await writeFile(join(staging.folder, 'index.html'), 'old');
  await staging.publish();
  const before = await sumOfTree(library.site);
  const next = join(library.folder, '.site.next-abc123');
  await mkdir(next);
  await writeFile(join(next, 'index.html'), 'new');
  await rename(library.site, `${library.site}.old`);
  await (await stage(library.site)).discard();
  expect(await sumOfTree(library.site)).toBe(before);
  expect((await readdir(library.folder)).sort()).toEqual(['content', 'site']);
});
