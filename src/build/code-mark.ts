import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** What was made by other code than this is not taken from the cache: each kept thing has a mark of the code in its own. */

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** Everything that has a say in what a pack is found to be and how its pages look, and the exact versions of all that comes from outside. */
const code = ['src/core', 'src/outputs', 'src/build', 'layouts', 'package-lock.json'];

let made: Promise<string> | undefined;

/** A hash of the code that runs, of the libraries' versions, and of the data about languages that Node brings. Read once a process, since what is loaded does not change. */
export function codeMark(): Promise<string> {
  const { node, icu, unicode, cldr } = process.versions;
  made ??= contentOf(code).then((content) => hashOf(JSON.stringify([content, node, icu, unicode, cldr])));
  return made;
}

/** SHA-256 of a text or of bytes, as 32 hexadecimal digits: enough that two never meet by chance. */
export function hashOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex').slice(0, 32);
}

/** A hash of the files at these places below the project's root, names and bytes. */
export async function contentOf(places: readonly string[]): Promise<string> {
  const hash = createHash('sha256');
  for (const place of places) {
    const below = await readdir(join(root, place), { recursive: true, withFileTypes: true }).catch(() => undefined);
    const files = below?.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)) ?? [join(root, place)];
    for (const path of files.sort())
      hash
        .update(path.slice(root.length).split(sep).join('/'))
        .update('\0')
        .update(await readFile(path))
        .update('\0');
  }
  return hash.digest('hex');
}
