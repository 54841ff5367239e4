/** A disk that is full, broken or not ours: the site stays the old one, a sentence says why, and with room again the next build needs no help. */
import { spawnSync } from 'node:child_process';
import { chmod, chown, cp, mkdir, mkdtemp, readdir, rm, statfs, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { reasonFor } from '../../src/cli/reason-for.ts';
import { bookfellow, type SmallLibrary } from '../build/small-library.ts';
import type { Told } from './child.ts';
import { eachCase, type Faults } from './each-case.ts';
import { buildInChild, type Run } from './in-child.ts';
import { cases, spread } from './moments.ts';
import { sumOfTree, twoVersions, wholeBuild, type TwoVersions } from './two-versions.ts';

let two: TwoVersions;
let whole: Told;
beforeAll(async () => {
  two = await twoVersions();
  whole = await wholeBuild();
  await two.turnTo(0);
  await two.buildAgain();
  await cp(two.library.site, `${two.library.folder} old`, { recursive: true });
  await two.turnTo(1);
});
afterAll(() => rm(`${two.library.folder} old`, { recursive: true }));

const full = /^Something went wrong that is not your fault: the disk is full\. Make some room and try again\.\nNothing was published; the site is as it was\./;

/** What did not hold of a build of version 1 that the disk refused, where version 0 was. */
async function refused(name: string, library: SmallLibrary, run: Run, sentence: RegExp): Promise<Faults> {
  const ended = await buildInChild(library, run);
  const faults: string[] = [];
  if (ended.code !== 2 || !sentence.test(ended.err)) faults.push(`${name}: ended with ${ended.code} and said ${ended.err}`);
  if ((await sumOfTree(library.site)) !== two.sums[0]) faults.push(`${name}: the site is no longer the old one`);
  const beside = (await readdir(library.folder)).filter((each) => !['cache', 'content', 'site'].includes(each));
  if (beside.length > 0) faults.push(`${name}: left ${beside.join(' ')}`);
  return faults;
}

/** With room again the new version is made; then the old one is put back for the next case. */
async function thenBuilds(name: string): Promise<Faults> {
  await two.buildAgain();
  const made = await sumOfTree(two.library.site);
  await rm(two.library.site, { recursive: true });
  await cp(`${two.library.folder} old`, two.library.site, { recursive: true });
  return made === two.sums[1] ? [] : [`${name}: the next build did not make the new site`];
}

test('a disk that is full, broken or has become read-only at any of the calls that write', async () => {
  const codes = [
    ['ENOSPC', full],
    ['EIO', /^Something went wrong that is not your fault: the disk could not be read or written/],
    ['EROFS', /^Something went wrong that is not your fault: this place may not be written to/],
  ] as const;
  const faults = await eachCase('a disk that fails at a call', spread(cases(2, 60), whole.writes, 3), async (at, index) => {
    const [code, sentence] = codes[index % codes.length] ?? codes[0];
    await two.forget();
    const name = `${code} from writing call ${at} of ${whole.writes}`;
    return [...(await refused(name, two.library, { fault: { fail: { at, code } } }, sentence)), ...(await thenBuilds(name))];
  });
  expect(faults).toEqual([]);
});

/** A real disk of a few megabytes, where this user may mount one. */
const place = await mkdtemp(join(tmpdir(), 'bookfellow-disk-'));
const mounted = process.platform === 'linux' && spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=24m', 'tmpfs', place]).status === 0;
afterAll(async () => {
  if (mounted) spawnSync('umount', [place]);
  await rm(place, { recursive: true, force: true });
});

// The sums of the two sites are those of the other disk: what a site holds does not depend on where it is made.
test.skipIf(!mounted)('a real disk with too little room for a new site (skipped where no disk may be mounted)', async () => {
  const { content } = two.library;
  const library: SmallLibrary = { folder: place, content, site: join(place, 'site'), cache: join(place, 'cache') };
  await two.turnTo(0);
  await build({ ...library, strict: false });
  expect(await sumOfTree(library.site)).toBe(two.sums[0]);
  await two.turnTo(1);
  const { bavail, bsize } = await statfs(place);
  // What a new site needs beside the old one, in kilobytes: with any less, it must stay out.
  const needed = Number(spawnSync('du', ['-sk', library.site], { encoding: 'utf8' }).stdout.split('\t')[0]);
  const faults = await eachCase('a real disk that is full', spread(cases(1, 20), needed - 100, 4), async (room) => {
    // With what is known of the old site, a new one needs room only for what is different.
    await rm(join(library.cache, 'sites'), { recursive: true, force: true });
    await writeFile(join(place, 'filling'), Buffer.alloc(bavail * bsize - room * 1024));
    const left = (await refused(`${room} kB of room`, library, { spawn: { env: { ...process.env, TMPDIR: place } } }, full)).filter((fault) => !fault.endsWith('left filling'));
    await rm(join(place, 'filling'));
    return left;
  });
  expect(faults).toEqual([]);
  await build({ ...library, strict: false });
  expect(await sumOfTree(library.site)).toBe(two.sums[1]);
});

test('a place that this user may not write to: the folder of the site, or the one of the cache', async () => {
  const { library } = two;
  await chmod(library.folder, 0o755);
  const asRoot = process.getuid?.() === 0;
  const nobody = { uid: 65534, gid: 65534 };
  const own = join(library.folder, 'own');
  const faults = await eachCase('a place without permission', ['site', 'cache'] as const, async (locked) => {
    await mkdir(own);
    if (asRoot) await chown(own, nobody.uid, nobody.gid);
    else await chmod(library.folder, 0o555);
    const options = locked === 'site' ? { cache: join(own, 'cache') } : { site: join(own, 'site') };
    const ended = await buildInChild(library, { options, ...(asRoot && { spawn: nobody }) });
    if (!asRoot) await chmod(library.folder, 0o755);
    await rm(own, { recursive: true });
    return [
      ...(ended.code === 2 && ended.err.startsWith('Something went wrong that is not your fault: this place may not be written to (/')
        ? []
        : [`${locked}: ended with ${ended.code} and said ${ended.err}`]),
      ...((await sumOfTree(library.site)) === two.sums[0] ? [] : [`${locked}: the site is no longer the old one`]),
      ...(await thenBuilds(locked)),
    ];
  });
  expect(faults).toEqual([]);
});

test('a file where the site should be, on the way to it, or a folder of something else', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'bookfellow-place-'));
  await writeFile(join(folder, 'file'), 'a text');
  await mkdir(join(folder, 'photos'));
  await writeFile(join(folder, 'photos', 'hill.jpg'), 'a photo');
  const before = await sumOfTree(folder);
  const places = [
    ['file', 'is a file. Name a folder for the site.'],
    ['file/site', 'a file stands where a folder is needed'],
    ['photos', 'Name an empty place for the site, so that nothing is lost.'],
  ] as const;
  const faults = await eachCase('a site that has no place', places, async ([site, sentence]) => {
    const { code, err } = await bookfellow(['build', '--no-pdf', '--content', two.library.content, '--site', join(folder, site)]);
    return code === 2 && err.includes(sentence) && (await sumOfTree(folder)) === before ? [] : [`${site}: ended with ${code} and said ${err}`];
  });
  await rm(folder, { recursive: true });
  expect(faults).toEqual([]);
});

test('a full disk is told as that also when the engine has put its own words around it', () => {
  const disk = Object.assign(new Error('no space left'), { code: 'ENOSPC', syscall: 'write' });
  const engine = Object.assign(new Error('Having trouble writing to a page'), { originalError: new Error('again', { cause: disk }) });
  expect(reasonFor(engine).join('\n')).toMatch(full);
});
