/** The library is another one while it is read, shrinks to one pack or none, or is very large. */
import { cp, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { filesIn, smallLibrary, soundPack } from '../build/small-library.ts';
import { writePacks } from '../speed/invented-library.ts';
import { eachCase, type Faults } from './each-case.ts';
import { buildInChild } from './in-child.ts';
import { cases, spread } from './moments.ts';
import { sumOfTree, twoVersions, wholeBuild, type TwoVersions } from './two-versions.ts';

let two: TwoVersions;
beforeAll(async () => {
  two = await twoVersions();
});

/** Each book's list of its own files names none that is not there: so a site is seen to be whole without knowing what it should be. */
async function missingIn(site: string): Promise<readonly string[]> {
  const files = new Set(await filesIn(site));
  const missing: string[] = [];
  for (const list of files) {
    if (!list.endsWith('/offline.json')) continue;
    const { files: named } = JSON.parse(await readFile(join(site, list), 'utf8')) as { readonly files: readonly string[] };
    for (const url of named) if (!files.has(url.endsWith('/') || url === '' ? `${url}index.html` : url)) missing.push(`${list} names ${url}`);
  }
  return missing;
}

test('content that is exchanged while it is read gives a whole site or a sentence, and the next build the new site', async () => {
  const { library } = two;
  const { calls, peakMB } = await wholeBuild();
  const next = join(library.folder, 'next');
  let peak = peakMB;
  // After the content has been read and the pictures are made nothing is asked of it: the first half of the calls is what matters.
  const faults = await eachCase(
    'content that changes while it is read',
    spread(cases(1, 40), Math.ceil(calls / 2), 6),
    async (at): Promise<Faults> => {
      await two.turnTo(1);
      await rename(library.content, next);
      await two.turnTo(0);
      await two.buildAgain();
      // Pictures kept from before would hide that a file has gone.
      await two.forget();
      const { code, err, told: end } = await buildInChild(library, { fault: { turn: { at, one: library.content, other: next } } });
      peak = Math.max(peak, end?.peakMB ?? 0);
      await rm(`${library.content}.moved`, { recursive: true });
      const missing = await missingIn(library.site);
      const name = `exchanged at call ${at}`;
      await two.buildAgain();
      return [
        ...(code === 0 || (code === 2 && /went away while|Run it again|run it again/.test(err)) ? [] : [`${name}: ended with ${code} and said ${err}`]),
        ...missing.map((each) => `${name}: ${each}`),
        ...((await sumOfTree(library.site)) === two.sums[1] ? [] : [`${name}: the next build did not make the new site`]),
      ];
    },
    () => peak,
  );
  expect(faults).toEqual([]);
});

test('a library that shrinks to one pack, to none, and grows again is as one that was never larger', async () => {
  const library = await smallLibrary({});
  const pack = await soundPack();
  const cache = two.library.cache;
  const makeSite = async (slugs: readonly string[], site: string) => {
    await rm(join(library.content, 'packs'), { recursive: true });
    await mkdir(join(library.content, 'packs'));
    for (const slug of slugs) {
      await mkdir(join(library.content, 'packs', slug));
      await writeFile(join(library.content, 'packs', slug, 'pack.md'), pack);
    }
    return build({ content: library.content, site, cache, strict: false });
  };
  await makeSite(['hen', 'owl'], library.site);
  const faults = await eachCase('a library that shrinks', [['owl'], [], ['hen', 'owl']], async (slugs): Promise<Faults> => {
    const fresh = join(library.folder, `fresh ${slugs.length}`);
    const { published } = await makeSite(slugs, library.site);
    await makeSite(slugs, fresh);
    const alike = (await sumOfTree(library.site)) === (await sumOfTree(fresh));
    return published === slugs.length && alike && (await missingIn(library.site)).length === 0 ? [] : [`${slugs.length} packs: ${published} published, like a fresh site: ${alike}`];
  });
  expect(faults).toEqual([]);
});

test.skipIf(process.env['BOOKFELLOW_PROVE'] !== '1')('2,000 packs, with folders to take along, in a heap of 512 MB (a minute and more; only with `npm run prove`)', async () => {
  const library = await smallLibrary({});
  writePacks(library.content, 2000);
  await mkdir(library.cache);
  await cp(join(two.library.cache, 'code'), join(library.cache, 'code'), { recursive: true, dereference: true });
  let peak = 0;
  const faults = await eachCase(
    '2,000 packs in a heap of 512 MB',
    [2000],
    async (packs): Promise<Faults> => {
      const { code, told, err } = await buildInChild(library, { node: ['--max-old-space-size=512'], options: { folders: true } });
      peak = told?.peakMB ?? 0;
      return code === 0 && told?.published === packs ? [] : [`ended with ${code}, published ${told?.published}: ${err.slice(-2000)}`];
    },
    () => peak,
  );
  expect(faults).toEqual([]);
});
