/** The same library gives the same bytes on another machine: other language, other time zone, other date, nothing kept from before. */
import { mkdir, readdir, readFile, rm, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { filesIn } from '../build/small-library.ts';
import { eachCase } from './each-case.ts';
import { buildInChild, type Run } from './in-child.ts';
import { cases } from './moments.ts';
import { twoVersions, type TwoVersions } from './two-versions.ts';

const code = fileURLToPath(new URL('../../.cache/code', import.meta.url));
let two: TwoVersions;
let peak = 0;
beforeAll(async () => {
  two = await twoVersions();
  await two.turnTo(0);
});
afterAll(async () => {
  for (const name of await readdir(two.library.folder)) if (name.includes(' ')) await rm(join(two.library.folder, name), { recursive: true });
});

/** Turkish has an I of its own, Swedish sorts other letters last, Arabic may write other digits; the zones lie a day apart. */
const machines = [
  { LC_ALL: 'tr_TR.UTF-8', TZ: 'Pacific/Kiritimati', days: -400 },
  { LC_ALL: 'ar_EG.UTF-8', TZ: 'America/Los_Angeles', days: 0 },
  { LC_ALL: 'sv_SE.UTF-8', TZ: 'Asia/Kathmandu', days: 2000 },
  { LC_ALL: 'th_TH.UTF-8', TZ: 'Pacific/Pago_Pago', days: -9000 },
  { LC_ALL: 'C', TZ: 'UTC', days: 1 },
] as const;

test('whatever the language, the time zone and the date of the machine', async () => {
  // Sheets and folders take as long as all the rest, and are made when everything is proved.
  const whole = { paper: cases(0, 1) === 1, folders: true, today: '2026-09-01' };
  const made = async (name: string, run: Run) => {
    const cache = join(two.library.folder, `cache ${name}`);
    const site = join(two.library.folder, `site ${name}`);
    await mkdir(cache);
    await symlink(code, join(cache, 'code'), 'junction');
    const ended = await buildInChild(two.library, { ...run, options: { ...whole, cache, site } });
    peak = Math.max(peak, ended.told?.peakMB ?? 0);
    return { ended, site, files: new Map(await Promise.all((await filesIn(site)).map(async (file) => [file, await readFile(join(site, file), 'base64')] as const))) };
  };
  const here = await made('here', { spawn: { env: { ...process.env, LC_ALL: 'en_US.UTF-8', TZ: 'Europe/Rome' } } });
  expect(here.files.size, here.ended.err).toBeGreaterThan(60);
  expect((await readdir(join(here.site, 'packs/hen'))).filter((file) => file.endsWith('.pdf')).length > 3).toBe(whole.paper);
  const faults = await eachCase(
    'another machine',
    machines.slice(0, cases(1, machines.length)),
    async ({ LC_ALL, TZ, days }) => {
      const name = `${LC_ALL}, ${TZ}, ${days} days off`;
      const there = await made(LC_ALL, { fault: { days }, spawn: { env: { ...process.env, LC_ALL, LANG: LC_ALL, TZ } } });
      if (there.ended.code !== 0) return [`${name}: ${there.ended.err}`];
      return [...new Set([...here.files.keys(), ...there.files.keys()])].filter((file) => here.files.get(file) !== there.files.get(file)).map((file) => `${name}: ${file} has other bytes`);
    },
    () => peak,
  );
  expect(faults).toEqual([]);
});
