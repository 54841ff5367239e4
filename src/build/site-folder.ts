import { mkdirSync, readdirSync, rmdirSync, rmSync, statSync, unlinkSync, type Stats } from 'node:fs';
import { dirname, join, sep } from 'node:path';

/**
 * The folder in which a new site is made. It may hold what is left of the site before last, because making and clearing away tens of
 * thousands of folders takes a disk longer than all the rest. Nothing in it is believed: a file of it stays only where it is the
 * published site's own file by a second name, and everything that nobody asked for goes before the site is published. Since a file
 * may be a published one's second name, none is ever written over: it goes before another is written in its place.
 */
export interface SiteFolder {
  /** Where it lies. */
  readonly folder: string;
  /** Makes the folder in which a file is to lie, and takes away what lies there by its name. */
  makeRoom(url: string): string;
  /** True where a file of the published site, by its status, is here already under the same name; then it stays. */
  hasSame(url: string, published: Stats): boolean;
  /** Files that room was made for. */
  readonly made: ReadonlySet<string>;
  /** Takes away whatever was here and was not asked for. */
  clear(): void;
}

export function siteFolder(folder: string): SiteFolder {
  /** What was here before, by its path, and was not asked for yet. */
  const files = new Set<string>();
  const folders = new Set<string>();
  /** Folders that the new site has. */
  const needed = new Set([folder]);
  const made = new Set<string>();

  const walk = (path: string): void => {
    for (const entry of readdirSync(path, { withFileTypes: true })) {
      const below = path + sep + entry.name;
      if (entry.isDirectory()) {
        folders.add(below);
        walk(below);
      } else if (entry.isFile()) files.add(below);
      // A site has no links; behind one lies what is somebody else's.
      else unlinkSync(below);
    }
  };
  walk(folder);

  const pathOf = (url: string): string => {
    const path = join(folder, url);
    if (!path.startsWith(folder + sep)) throw new Error(`"${url}" leads out of the site`);
    return path;
  };
  /** Level by level, because asking for all levels at once costs several times as much. */
  const need = (path: string): void => {
    if (needed.has(path)) return;
    need(dirname(path));
    needed.add(path);
    if (folders.delete(path)) return;
    if (files.delete(path)) unlinkSync(path);
    try {
      mkdirSync(path);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  };

  return {
    folder,
    made,
    makeRoom: (url) => {
      const path = pathOf(url);
      need(dirname(path));
      if (files.delete(path)) unlinkSync(path);
      else if (folders.has(path)) {
        rmSync(path, { recursive: true });
        for (const gone of [files, folders]) for (const each of gone) if (each === path || each.startsWith(path + sep)) gone.delete(each);
      }
      made.add(url);
      return path;
    },
    hasSame: (url, published) => {
      const path = pathOf(url);
      if (!files.has(path)) return false;
      const here = fileAt(path);
      if (here?.ino !== published.ino || here.dev !== published.dev || here.size !== published.size || here.mtimeMs !== published.mtimeMs) return false;
      files.delete(path);
      need(dirname(path));
      return true;
    },
    clear: () => {
      for (const path of files) rmSync(path, { force: true });
      // The deepest first, so that each is empty when its turn comes.
      for (const path of [...folders].reverse()) rmdirSync(path);
      files.clear();
      folders.clear();
    },
  };
}

/** The status of a file; undefined where there is none, or a file where a folder on the way should be. */
export function fileAt(path: string): Stats | undefined {
  try {
    const status = statSync(path, { throwIfNoEntry: false });
    return status?.isFile() === true ? status : undefined;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOTDIR') return undefined;
    throw error;
  }
}
