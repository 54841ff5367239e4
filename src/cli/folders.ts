import { stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { WrongUse } from './wrong-use.ts';

/** Where pictures already made are kept, in the checkout; it may be thrown away at any time. */
export const cacheFolder = join(dirname(fileURLToPath(import.meta.url)), '../../.cache');

/** The full path of a folder that a person named; a sentence when there is none. */
export async function folderThatExists(name: string): Promise<string> {
  const path = resolve(name);
  const there = await stat(path).then(
    (status) => status.isDirectory(),
    () => false,
  );
  if (!there) throw new WrongUse(`There is no folder "${name}" here (looked in ${path}).`);
  return path;
}
