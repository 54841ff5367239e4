import { readdir, readFile, stat, utimes } from 'node:fs/promises';
import { join, relative } from 'node:path';

/**
 * Gives each file of a new site that has the bytes of the old one's the old one's time of change, so that whatever uploads
 * a site by times and sizes sends only what is different.
 *
 * @returns How many files were the same.
 */
export async function keepTimes(next: string, place: string): Promise<number> {
  const entries = await readdir(next, { recursive: true, withFileTypes: true });
  let same = 0;
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const before = join(place, relative(next, path));
    const [now, then] = await Promise.all([stat(path), stat(before).catch(() => undefined)]);
    const alike = then?.isFile() === true && now.size === then.size && (await readFile(path)).equals(await readFile(before));
    // Whole seconds: finer ones are lost on the way to many places, and then look like a change.
    const of = (ms: number): number => Math.floor(ms / 1000);
    const fresh = of(now.mtimeMs);
    // Other bytes never come with the size and the time of the old ones, not even from a clock that was set back.
    const seconds = alike ? of(then.mtimeMs) : then?.size === now.size && of(then.mtimeMs) === fresh ? fresh + 1 : fresh;
    await utimes(path, seconds, seconds).catch(() => undefined);
    if (alike) same += 1;
  }
  return same;
}
