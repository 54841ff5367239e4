import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { newPack } from '../core/pack/new-pack.ts';
import { slugOf } from '../build/slug.ts';
import { readArguments } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow new`: a pack to fill in, with a remark at every field. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, rest } = readArguments(args, ['content'], []);
  const [slug, second] = rest;
  if (slug === undefined || second !== undefined) throw new WrongUse('Name the new pack with one word of small letters, digits and dashes: bookfellow new the-paper-boat');
  if (slugOf(slug) !== slug) throw new WrongUse(`"${slug}" cannot become a web address. "${slugOf(slug)}" can.`);
  const content = await folderThatExists(values.content ?? 'content');
  const folder = join(content, 'packs', slug);
  await mkdir(join(folder, 'pictures'), { recursive: true });
  await mkdir(join(folder, 'private'), { recursive: true });
  const file = join(folder, 'pack.md');
  try {
    await writeFile(file, newPack(slug), { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw new WrongUse(`There is already a pack at ${file}; it was left as it is.`, { cause: error });
    throw error;
  }
  console.log(`Made ${file}\nOpen it in any text editor, fill in what stands between « and », and see it with: npm start`);
  return 0;
}
