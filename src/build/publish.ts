import { renameSync, rmSync } from 'node:fs';
import { mkdir, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { CannotPublish } from './cannot-publish.ts';
import { exchange } from './exchange.ts';
import { keepTimes } from './keep-times.ts';
import { takeLock } from './lock.ts';
import type { SiteFolder } from './site-folder.ts';
import { beginSite, setAside } from './spare-folder.ts';

/** Puts a finished site in the old one's place. Nothing of the old site is touched before the new one is whole. */

/** The site's own `.gitignore`, and by its first line the sign that a folder is a site of ours and may be replaced. */
const siteMark = '# A site made by bookfellow: everything here is made anew by each build.\n*\n!.gitignore\n';

export interface Staging {
  /** The folder in which the new site is made, beside the old one and on the same disk. */
  readonly folder: string;
  /** Where the old site lies, if there is one. */
  readonly place: string;
  /** What is in the folder of the new site. */
  readonly site: SiteFolder;
  /**
   * Puts the new site in the old one's place, and tells with what time each new file lies there, in whole seconds.
   *
   * @param gone Files of the old site that the new one has not taken.
   */
  publish(gone?: readonly string[]): Promise<ReadonlyMap<string, number>>;
  /** Throws the unfinished site away. */
  discard(): Promise<void>;
}

/**
 * Begins a new site beside `site`. Only one build at a time may publish to a place; a lock left by a dead process is taken over.
 *
 * @param spare Where the folders of the old site are kept for the next one, if they are; on another disk they are not.
 */
export async function stage(site: string, spare?: string): Promise<Staging> {
  const place = resolve(site);
  await refuseForeignFolder(place);
  await mkdir(dirname(place), { recursive: true });
  const lock = await takeLock(`${place}.lock`);
  const old = `${place}.old`;
  try {
    await putBack(place, old);
    await clearUnfinished(place);
    const made = await beginSite(join(dirname(place), unfinished(place)), spare);
    const { folder } = made;
    return {
      folder,
      place,
      site: made,
      publish: async (gone = []) => {
        await writeFile(made.makeRoom('.gitignore'), siteMark);
        made.clear();
        const times = keepTimes(folder, place, made.made);
        if (!(await lock.isOurs())) throw new CannotPublish('Another build began to write this site. This one has published nothing; run it again.');
        await swap(folder, place, old, (left) => {
          setAside(left, new Set([...gone, ...made.made]), spare);
        });
        await lock.release();
        return times;
      },
      discard: async () => {
        // Writers that were at work beside the one that failed make folders again; what they leave goes when the process ends.
        removedAtExit(folder);
        await rm(folder, { recursive: true, force: true }).catch(() => undefined);
        await lock.release();
      },
    };
  } catch (error) {
    await lock.release();
    throw error;
  }
}

/** How the folders begin in which new sites are made. */
const unfinished = (place: string): string => `.${basename(place)}.next-`;

/** Whoever has the lock is alone here: folders of builds that were killed are nobody's. */
async function clearUnfinished(place: string): Promise<void> {
  const beside = await readdir(dirname(place));
  // So are marks that were about to become a lock.
  const left = (name: string): boolean => name.startsWith(unfinished(place)) || name.startsWith(`${basename(place)}.lock.`);
  for (const name of beside) if (left(name)) await rm(join(dirname(place), name), { recursive: true, force: true }).catch(() => undefined);
}

const discarded = new Set<string>();
function removedAtExit(folder: string): void {
  if (discarded.size === 0) {
    process.once('exit', () => {
      for (const each of discarded) rmSync(each, { recursive: true, force: true });
    });
  }
  discarded.add(folder);
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

/**
 * The new site takes the old one's name. Where the system can exchange two names in one step there is a whole site at every
 * instant, whoever kills us. Elsewhere there is none for the time between two renames, some hundredth of a millisecond.
 */
async function swap(next: string, place: string, old: string, setAside: (left: string) => void): Promise<void> {
  await rm(old, { recursive: true, force: true });
  if (!(await exists(place))) await rename(next, place);
  else if (await exchange(next, place)) setAside(next);
  else {
    renameTwice(next, place, old);
    setAside(old);
  }
}

/** In one go, so that nothing of this process, and no signal that it hears, comes between. */
function renameTwice(next: string, place: string, old: string): void {
  renameSync(place, old);
  try {
    renameSync(next, place);
  } catch (error) {
    renameSync(old, place);
    throw error;
  }
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

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
