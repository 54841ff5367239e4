import { randomBytes } from 'node:crypto';
import { mkdirSync, readdirSync, renameSync, rmdirSync, statSync, unlinkSync } from 'node:fs';
import { chmod, lstat, mkdtemp, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { siteFolder, type SiteFolder } from './site-folder.ts';

/** The folders of an old site are kept, and the next one is made in them: half of the time that a large library took was to make and clear away folders. */

/**
 * The folder for a new site: the one that was kept for it, or an empty one.
 *
 * @param name Path and beginning of the name that it gets.
 * @param spare Where the folders of an old site are kept, if they are.
 */
export async function beginSite(name: string, spare: string | undefined): Promise<SiteFolder> {
  const kept = spare === undefined ? undefined : await takeSpare(spare, name + randomBytes(3).toString('hex'));
  if (kept) return kept;
  const folder = await mkdtemp(name);
  // Such a folder is its owner's alone; a web server is often another user.
  await chmod(folder, 0o777 & ~process.umask());
  return siteFolder(folder);
}

/** What cannot be used for whatever reason is taken away, and the site is made in an empty folder. */
async function takeSpare(spare: string, folder: string): Promise<SiteFolder | undefined> {
  try {
    if (!(await lstat(spare)).isDirectory()) throw new Error('no folder');
    await rename(spare, folder);
    return siteFolder(folder);
  } catch {
    for (const each of [spare, folder]) await rm(each, { recursive: true, force: true }).catch(() => undefined);
    return undefined;
  }
}

/**
 * Keeps the folders of an old site for the next, with those of its files that the new site has too: they are the same files by a
 * second name, and take no room on the disk.
 *
 * @param left Where the old site lies.
 * @param perhapsGone Files that the new site may have let go.
 */
export function setAside(left: string, perhapsGone: Iterable<string>, spare: string | undefined): void {
  if (spare === undefined) {
    remove(left);
    return;
  }
  try {
    for (const url of perhapsGone) if (statSync(join(left, url), { throwIfNoEntry: false })?.nlink === 1) unlinkSync(join(left, url));
    mkdirSync(dirname(spare), { recursive: true });
    renameSync(left, spare);
  } catch {
    remove(left);
  }
}

/** What is left of an old site is cleared away by the next build. By hand, because Node's own way asks three times for each of tens of thousands of folders. */
function remove(folder: string): void {
  const empty = (path: string): void => {
    for (const entry of readdirSync(path, { withFileTypes: true })) {
      const below = `${path}/${entry.name}`;
      if (entry.isDirectory()) empty(below);
      else unlinkSync(below);
    }
    rmdirSync(path);
  };
  try {
    empty(folder);
  } catch {
    return;
  }
}
