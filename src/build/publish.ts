import { randomBytes } from 'node:crypto';
import { chmod, copyFile, mkdir, mkdtemp, open, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { CannotPublish } from './cannot-publish.ts';
import { keepTimes } from './keep-times.ts';

/** Puts a finished site in the old one's place. Nothing of the old site is touched before the new one is whole. */

/** The site's own `.gitignore`, and by its first line the sign that a folder is a site of ours and may be replaced. */
const siteMark = '# A site made by bookfellow: everything here is made anew by each build.\n*\n!.gitignore\n';

export interface Staging {
  /** The folder in which the new site is made, beside the old one and on the same disk. */
  readonly folder: string;
  /** Puts the new site in the old one's place. */
  publish(): Promise<void>;
  /** Throws the unfinished site away. */
  discard(): Promise<void>;
}

/** Begins a new site beside `site`. Only one build at a time may publish to a place; a lock left by a dead process is taken over. */
export async function stage(site: string): Promise<Staging> {
  const place = resolve(site);
  await refuseForeignFolder(place);
  await mkdir(dirname(place), { recursive: true });
  const unlock = await lock(`${place}.lock`);
  const old = `${place}.old`;
  try {
    await putBack(place, old);
    const folder = await mkdtemp(join(dirname(place), `.${basename(place)}.next-`));
    // Such a folder is its owner's alone; a web server is often another user.
    await chmod(folder, 0o777 & ~process.umask());
    return {
      folder,
      publish: async () => {
        await writeFile(join(folder, '.gitignore'), siteMark);
        await keepTimes(folder, place);
        await swap(folder, place, old);
        await unlock();
      },
      discard: async () => {
        await rm(folder, { recursive: true, force: true });
        await unlock();
      },
    };
  } catch (error) {
    await unlock();
    throw error;
  }
}

/** The site of ours that a path lies in, if there is one: the nearest folder above it that bears our mark, or the place where a site goes by default. */
export async function siteAround(path: string): Promise<string | undefined> {
  let start = dirname(resolve(path));
  // A link may lead into a site under another name.
  while (!(await exists(start)) && start !== dirname(start)) start = dirname(start);
  const real = await realpath(start);
  for (let folder = real === start ? dirname(resolve(path)) : real; ; folder = dirname(folder)) {
    const mark = await readFile(join(folder, '.gitignore'), 'utf8').catch(() => undefined);
    if (mark === siteMark || folder === resolve('site')) return folder;
    if (folder === dirname(folder)) return undefined;
  }
}

async function swap(next: string, place: string, old: string): Promise<void> {
  await rm(old, { recursive: true, force: true });
  const had = await exists(place);
  if (had) await rename(place, old);
  try {
    await rename(next, place);
  } catch (error) {
    if (had) await rename(old, place);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

/** A build that was killed between the two renames of a swap left the site under its other name. */
async function putBack(place: string, old: string): Promise<void> {
  if (!(await exists(place)) && (await exists(old))) await rename(old, place);
}

/** A folder that holds something, and nothing that says it is a site of ours, is not replaced. */
async function refuseForeignFolder(place: string): Promise<void> {
  if (!(await exists(place))) return;
  if (!(await stat(place)).isDirectory()) throw new CannotPublish(`"${place}" is a file. Name a folder for the site.`);
  if ((await readdir(place)).length === 0) return;
  const mark = await readFile(join(place, '.gitignore'), 'utf8').catch(() => undefined);
  if (mark !== siteMark) {
    throw new CannotPublish(`"${place}" holds something that is no site made by bookfellow. Name an empty place for the site, so that nothing is lost.`);
  }
}

async function lock(path: string): Promise<() => Promise<void>> {
  const mark = `${String(process.pid)} ${randomBytes(6).toString('hex')}`;
  for (let tries = 0; tries < 3; tries++) {
    try {
      const file = await open(path, 'wx');
      await file.writeFile(mark);
      await file.close();
      return async () => {
        if ((await readFile(path, 'utf8').catch(() => '')) === mark) await rm(path, { force: true });
      };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      const owner = Number.parseInt(await readFile(path, 'utf8').catch(() => ''), 10);
      if (isAlive(owner)) throw new CannotPublish(`Another build (process ${String(owner)}) is writing this site. Wait until it is done.`, { cause: error });
      await rm(path, { force: true });
    }
  }
  throw new CannotPublish('Another build is writing this site. Wait until it is done.');
}

function isAlive(process_: number): boolean {
  if (!Number.isInteger(process_) || process_ <= 0) return false;
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

/** What a site is made of beside its pages: text written as it is, or a file copied. */
export type SiteFile = { readonly url: string; readonly text: string } | { readonly url: string; readonly from: string };

/** Writes files into a staged site. Two for one address, or one that leads outside, is a fault of ours and stops the build. */
export async function writeFiles(folder: string, files: readonly SiteFile[]): Promise<void> {
  const taken = new Set<string>();
  const folders = new Set<string>();
  for (const file of files) {
    const path = join(folder, file.url);
    if (relative(folder, path).startsWith(`..${sep}`)) throw new Error(`"${file.url}" leads out of the site`);
    if (taken.has(file.url)) throw new Error(`two files for one address: ${file.url}`);
    taken.add(file.url);
    if (!folders.has(dirname(path))) {
      await mkdir(dirname(path), { recursive: true });
      folders.add(dirname(path));
    }
    await ('text' in file ? writeFile(path, file.text) : copyFile(file.from, path));
  }
}
