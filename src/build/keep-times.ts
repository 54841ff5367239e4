import { statSync } from 'node:fs';
import { readdir, readFile, utimes } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

/**
 * Gives each file of a new site that has the bytes of the old one's the old one's time of change, so that whatever uploads
 * a site by times and sizes sends only what is different.
 *
 * @returns The time of each file by its address below the site, in whole seconds.
 */
export async function keepTimes(next: string, place: string): Promise<ReadonlyMap<string, number>> {
  const entries = await readdir(next, { recursive: true, withFileTypes: true });
  const times = new Map<string, number>();
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const below = relative(next, path);
    const before = join(place, below);
    const [now, then] = [statSync(path), statSync(before, { throwIfNoEntry: false })];
    const isSame = then?.ino === now.ino && then.dev === now.dev;
    const alike = isSame || (then?.isFile() === true && now.size === then.size && (await readFile(path)).equals(await readFile(before)));
    // Whole seconds: finer ones are lost on the way to many places, and then look like a change.
    const of = (ms: number): number => Math.floor(ms / 1000);
    const fresh = of(now.mtimeMs);
    // Other bytes never come with the size and the time of the old ones, not even from a clock that was set back.
    const seconds = alike ? of(then.mtimeMs) : then?.size === now.size && of(then.mtimeMs) === fresh ? fresh + 1 : fresh;
    if (now.mtimeMs !== seconds * 1000) await utimes(path, seconds, seconds).catch(() => undefined);
    times.set(below.split(sep).join('/'), seconds);
  }
  return times;
}
