import { readFileSync, statSync, utimesSync } from 'node:fs';
import { fileAt } from './site-folder.ts';

/**
 * Gives each file of a new site that has the bytes of the old one's the old one's time of change, so that whatever uploads
 * a site by times and sizes sends only what is different.
 *
 * @param files Addresses of files below the site.
 * @returns The time of each file, in whole seconds.
 */
export function keepTimes(next: string, place: string, files: Iterable<string>): ReadonlyMap<string, number> {
  return new Map(Array.from(files, (file) => [file, keepTime(`${next}/${file}`, `${place}/${file}`)]));
}

/** Whole seconds: finer ones are lost on the way to many places, and then look like a change. */
const wholeSeconds = (ms: number): number => Math.floor(ms / 1000);

function keepTime(path: string, before: string): number {
  const [now, then] = [statSync(path), fileAt(before)];
  const isSame = then?.ino === now.ino && then.dev === now.dev;
  const alike = isSame || (then?.size === now.size && readFileSync(path).equals(readFileSync(before)));
  const fresh = wholeSeconds(now.mtimeMs);
  // Other bytes never come with the size and the time of the old ones, not even from a clock that was set back.
  const seconds = alike ? wholeSeconds(then.mtimeMs) : then?.size === now.size && wholeSeconds(then.mtimeMs) === fresh ? fresh + 1 : fresh;
  if (now.mtimeMs !== seconds * 1000) setTime(path, seconds);
  return seconds;
}

/** Some disks take no times; then the file is only sent once more. */
function setTime(path: string, seconds: number): void {
  try {
    utimesSync(path, seconds, seconds);
  } catch {
    return;
  }
}
