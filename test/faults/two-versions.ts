/** A small library in two states that differ in every kind of file, and sites compared by the sums of all their files. */
import { createHash } from 'node:crypto';
import { mkdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { build } from '../../src/build/build.ts';
import type { Told } from './child.ts';
import { buildInChild } from './in-child.ts';
import { filesIn, smallLibrary, soundPack, tellsOfBefore, type SmallLibrary } from '../build/small-library.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** One sum for a folder: the names and bytes of everything in it. `none` where there is no folder. */
export async function sumOfTree(folder: string): Promise<string> {
  const files = await filesIn(folder).catch(() => undefined);
  if (!files) return 'none';
  const hash = createHash('sha256');
  for (const file of files)
    hash.update(`${file}\0`).update(
      createHash('sha256')
        .update(tellsOfBefore(file) ? '' : await readFile(join(folder, file)))
        .digest(),
    );
  return hash.digest('hex').slice(0, 16);
}

export interface TwoVersions {
  readonly library: SmallLibrary;
  /** Sums of the two sites, as a build that nothing happens to makes them. */
  readonly sums: readonly [string, string];
  /** Puts the content of a version in place. */
  turnTo(version: 0 | 1): Promise<void>;
  /** Takes away what is kept of packs and of the old site, so that everything is made. */
  forget(): Promise<void>;
  /** Builds in this process, as somebody would the next time. */
  buildAgain(): Promise<void>;
}

const picture = (colour: string) =>
  sharp({ create: { width: 96, height: 64, channels: 3, background: colour } })
    .png()
    .toBuffer();

let made: Promise<TwoVersions> | undefined;

/** The library, made once for all tests of a process: each puts the version in place that it begins with, and leaves nothing beside it. */
export function twoVersions(): Promise<TwoVersions> {
  return (made ??= makeTwo());
}

const whole = new Map<boolean, Promise<Told>>();

/** What a build of version 1 needs that nothing happens to, with nothing known of the old site or with all that is kept. */
export function wholeBuild(cold = true): Promise<Told> {
  const known = whole.get(cold) ?? wholeOnce(cold);
  whole.set(cold, known);
  return known;
}

async function wholeOnce(cold: boolean): Promise<Told> {
  const two = await twoVersions();
  await two.turnTo(0);
  await two.buildAgain();
  await two.turnTo(1);
  if (cold) await two.forget();
  const { told, err } = await buildInChild(two.library);
  if (!told || (await sumOfTree(two.library.site)) !== two.sums[1]) throw new Error(`a build in its own process makes another site than one in this process. ${err}`);
  return told;
}

/** Version 0 has a hen and an owl, version 1 a hen with another title and another picture, and a heron. */
async function makeTwo(): Promise<TwoVersions> {
  const title = 'title: The Wheelbarrow Goes Home';
  const pictures = ['language: en', 'language: en\npictures: [{ file: hill.png, alt: "A wheelbarrow waits on a hill.", rights: our own }]'] as const;
  const library = await smallLibrary({});
  const versions: readonly Readonly<Record<string, string | Buffer>>[] = [
    { 'packs/hen/pack.md': await soundPack(pictures), 'packs/hen/pictures/hill.png': await picture('#996633'), 'packs/owl/pack.md': await soundPack() },
    {
      'packs/hen/pack.md': await soundPack([title, 'title: The Wheelbarrow Goes Away'], pictures),
      'packs/hen/pictures/hill.png': await picture('#336699'),
      'packs/heron/pack.md': await soundPack([title, 'title: The Wheelbarrow Stays']),
    },
  ];
  // The code for browsers is not what is tried here, and costs the most to make.
  await mkdir(library.cache, { recursive: true });
  await mkdir(join(root, '.cache/code'), { recursive: true });
  await symlink(join(root, '.cache/code'), join(library.cache, 'code'), 'junction');
  const two: TwoVersions = {
    library,
    sums: ['', ''],
    turnTo: async (version) => {
      await rm(library.content, { recursive: true, force: true });
      await mkdir(join(library.content, 'packs'), { recursive: true });
      for (const [path, bytes] of Object.entries(versions[version] ?? {})) {
        await mkdir(dirname(join(library.content, path)), { recursive: true });
        await writeFile(join(library.content, path), bytes);
      }
    },
    forget: async () => {
      for (const kind of ['packs', 'sites', 'pictures']) await rm(join(library.cache, kind), { recursive: true, force: true });
    },
    buildAgain: async () => {
      await build({ content: library.content, site: library.site, cache: library.cache, strict: false });
    },
  };
  const sums: [string, string] = ['', ''];
  for (const version of [1, 0] as const) {
    await two.turnTo(version);
    await two.buildAgain();
    sums[version] = await sumOfTree(library.site);
  }
  return { ...two, sums };
}
