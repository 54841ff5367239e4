import { statSync } from 'node:fs';
import { readdir, rm, stat, utimes } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

/** Days that a kept file stays after the last build that used it: a month, so that a branch or another library can come back to it. */
const days = 30;
const day = 24 * 60 * 60 * 1000;
/** The parts of the cache whose entries each have a name by content and can be made again at any time. */
const kinds = ['pictures', 'pdf', 'code', 'packs', 'spare'] as const;

/**
 * Takes out of the cache what no build has used for a month, and notes what this one used.
 * An entry is a file or folder right below `pictures/`, `pdf/`, `code/`, `packs/` or `spare/`; its time of change says when it was last used.
 * A file that cannot be touched or taken away is left: the cache is a convenience, and a build never fails for it.
 *
 * @param used Paths of files of the cache that this build took.
 * @returns How many entries were taken out.
 */
export async function tidyCache(cache: string, used: Iterable<string>, now = Date.now()): Promise<number> {
  const inUse = new Set([...used].map((path) => relative(cache, path).split(sep).slice(0, 2).join('/')));
  let removed = 0;
  for (const kind of kinds) {
    for (const name of await readdir(join(cache, kind)).catch((): string[] => [])) {
      const path = join(cache, kind, name);
      const age = now - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? now);
      // A time that is in the future comes from a clock that was set back; it is set right as well.
      if (inUse.has(`${kind}/${name}`)) {
        if (Math.abs(age) > day) await utimes(path, now / 1000, now / 1000).catch(() => undefined);
      } else if (age > days * day) {
        removed += await rm(path, { recursive: true, force: true }).then(
          () => 1,
          () => 0,
        );
      }
    }
  }
  // Empty folders for the engine, left by builds that were killed; one of today may be in use.
  for (const name of await readdir(cache).catch((): string[] => [])) {
    const path = join(cache, name);
    if (
      !name.startsWith('no-input-') ||
      now -
        (await stat(path).then(
          ({ mtimeMs }) => mtimeMs,
          () => now,
        )) <
        day
    )
      continue;
    await rm(path, { recursive: true, force: true }).catch(() => undefined);
  }
  return removed;
}
