/** What is kept from earlier builds is damaged, old, from the future or gone: the site is the same to the last byte. */
import { cp, mkdir, readdir, readFile, realpath, rm, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { filesIn } from '../build/small-library.ts';
import { eachCase, type Faults } from './each-case.ts';
import { cases, seeded } from './moments.ts';
import { sumOfTree, twoVersions, type TwoVersions } from './two-versions.ts';

let two: TwoVersions;
let cache: string;
let sum: string;
const random = seeded(5);
const paper = process.env['BOOKFELLOW_PROVE'] === '1';
const makeSite = () => build({ content: two.library.content, site: two.library.site, cache, strict: false, paper });
beforeAll(async () => {
  two = await twoVersions();
  await two.turnTo(0);
  cache = join(two.library.folder, 'own cache');
  await mkdir(cache);
  // A copy, since what other tests share is not to be damaged.
  await cp(await realpath(join(two.library.cache, 'code')), join(cache, 'code'), { recursive: true });
  await makeSite();
  sum = await sumOfTree(two.library.site);
  // Only what this build takes is worth damaging.
  const used = Date.now() - 60_000;
  for (const name of await readdir(join(cache, 'code'))) if ((await stat(join(cache, 'code', name))).mtimeMs < used) await rm(join(cache, 'code', name));
});

afterAll(() => rm(cache, { recursive: true }));

const damages: Readonly<Record<string, (path: string) => Promise<unknown>>> = {
  'a byte turned': async (path) => {
    const bytes = await readFile(path);
    const at = Math.floor(random() * bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
    await writeFile(path, bytes);
  },
  'cut off': async (path) => truncate(path, Math.floor(random() * (await readFile(path)).length)),
  empty: (path) => truncate(path, 0),
  'random bytes': (path) => writeFile(path, Buffer.from(Array.from({ length: 400 }, () => Math.floor(random() * 256)))),
  gone: (path) => rm(path),
  'a folder in its place': async (path) => {
    await rm(path);
    await mkdir(path);
  },
};

test('an entry that is damaged in any way is made anew', async () => {
  const kinds = [/^packs\//, /^sites\//, /^pictures\/.*jpg$/, /^code\//, /sizes\.json$/, /webp$/, ...(paper ? [/^pdf\//] : [])];
  const names = Object.keys(damages);
  const tried = Array.from({ length: cases(4, 60) }, (_, index) => index);
  const faults = await eachCase('a damaged cache', tried, async (index): Promise<Faults> => {
    const files = (await filesIn(cache)).filter((file) => kinds[index % kinds.length]?.test(file));
    const file = files[Math.floor(random() * files.length)] ?? '';
    const damage = names[index % names.length] ?? '';
    await damages[damage]?.(join(cache, file));
    // What the old site has already would not be asked for.
    if (!file.startsWith('sites/')) await rm(join(cache, 'sites'), { recursive: true });
    const built = await makeSite().catch((error: unknown) => String(error));
    const name = `${file}, ${damage}`;
    if (typeof built === 'string') return [`${name}: ${built}`];
    return (await sumOfTree(two.library.site)) === sum ? [] : [`${name}: the site is another one`];
  });
  expect(faults).toEqual([]);
});

test('entries of last year or from the future, and a clock that was set back in between, change nothing', async () => {
  const faults = await eachCase('a cache and a site of another time', [-400, 400], async (days): Promise<Faults> => {
    const then = Date.now() / 1000 + days * 86_400;
    for (const folder of [cache, two.library.site]) for (const file of await filesIn(folder)) await utimes(join(folder, file), then, then);
    await makeSite();
    return (await sumOfTree(two.library.site)) === sum ? [] : [`${days} days: the site is another one`];
  });
  expect(faults).toEqual([]);
});
