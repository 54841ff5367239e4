import { zipSync, type Zippable } from 'fflate';

/** The only door to fflate. */

/** Files that are pressed already; pressing them again costs time and gains nothing. */
const pressed = /\.(?:webp|jpe?g|png|woff2|pdf|webm|mp4)$/;

/** A zip of files by name. The same files give the same bytes, in whatever order, at whatever hour and in whatever time zone. */
export function zipOf(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const names = [...files.keys()].sort((a, b) => (a < b ? -1 : 1));
  const entries: Zippable = Object.fromEntries(names.map((name) => [name, [files.get(name) ?? new Uint8Array(), { level: pressed.test(name) ? 0 : 6 }]]));
  // The format keeps a local time without a zone, and the first day of 1980 is the first it knows.
  return zipSync(entries, { mtime: new Date(1980, 0, 1), os: 3 });
}
