import { randomBytes } from 'node:crypto';
import { copyFile, lstat, mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve, sep } from 'node:path';
import type { PackFolder } from '../outputs/pack-zip.ts';
import { longestPackText } from '../outputs/pack-text.ts';
import { slugOf } from './slug.ts';

/**
 * Puts a pack that came from the form into the content folder. Nothing is written but files of that one pack's folder, no
 * link is followed, and each file is whole at every moment: the new text is written beside the old one and takes its place
 * by one renaming, after a copy of the old one has been kept in `private/earlier/`, which is never published.
 */

/** Why a pack was not saved. The page has a sentence for each. */
export const refusals = ['method', 'host', 'origin', 'token', 'type', 'too big', 'not a pack', 'folder name', 'file name', 'link', 'disk'] as const;
export type Refusal = (typeof refusals)[number];
export type Saved = { readonly saved: string } | { readonly refused: Refusal };

/** Copies kept of one file. */
const mostEarlier = 20;
const packName = /^pack(?:\.[a-z]{2,3})?\.md$/;
const pictureName = /^[^./\\:*?"<>|\u0000-\u001f][^/\\:*?"<>|\u0000-\u001f]{0,95}\.(?:png|jpe?g|webp)$/i; // eslint-disable-line no-control-regex -- control characters are what is refused

export async function savePack(content: string, pack: PackFolder): Promise<Saved> {
  const { slug, name, text, pictures } = pack;
  if (slug === '' || slugOf(slug) !== slug) return { refused: 'folder name' };
  if (!packName.test(name) || !Object.keys(pictures).every((each) => pictureName.test(each))) return { refused: 'file name' };
  if (Buffer.byteLength(text) > longestPackText) return { refused: 'too big' };
  const packs = resolve(content, 'packs');
  const folder = join(packs, slug);
  // The names have been looked at; this is for the day when somebody changes those rules.
  if (dirname(folder) !== packs || !folder.startsWith(packs + sep)) return { refused: 'folder name' };
  const files = [join(folder, name), ...Object.keys(pictures).map((each) => join(folder, 'pictures', each))];
  const onTheWay = [resolve(content), packs, folder, join(folder, 'pictures'), join(folder, 'private'), join(folder, 'private', 'earlier')];
  for (const path of onTheWay) if (!(await isOrMayBe(path, 'folder'))) return { refused: 'link' };
  for (const path of files) if (!(await isOrMayBe(path, 'file'))) return { refused: 'link' };
  try {
    for (const [picture, bytes] of Object.entries(pictures)) await exchange(folder, join('pictures', picture), bytes);
    await exchange(folder, name, Buffer.from(text));
  } catch {
    return { refused: 'disk' };
  }
  return { saved: `packs/${slug}/${name}` };
}

/** True for what is not there yet, and for what is a plain folder or file; false for a link or anything odd. */
async function isOrMayBe(path: string, kind: 'folder' | 'file'): Promise<boolean> {
  const status = await lstat(path).catch((error: unknown) => error);
  if (status instanceof Error) return 'code' in status && status.code === 'ENOENT';
  const found = status as Awaited<ReturnType<typeof lstat>>;
  return kind === 'folder' ? found.isDirectory() : found.isFile();
}

/** Puts new bytes in a file's place. Whenever this is cut off, the file is the old one or the new one, and the old one is kept. */
async function exchange(folder: string, path: string, bytes: Uint8Array): Promise<void> {
  const place = join(folder, path);
  const old = await readFile(place).catch(() => undefined);
  if (old?.equals(bytes) === true) return;
  const earlier = join(folder, 'private', 'earlier');
  await mkdir(earlier, { recursive: true });
  await mkdir(dirname(place), { recursive: true });
  const mark = randomBytes(6).toString('hex');
  const fresh = join(earlier, `.new-${mark}`);
  await writeWhole(fresh, bytes);
  if (old) {
    const copy = join(earlier, `.copy-${mark}`);
    await copyFile(place, copy);
    await rename(copy, join(earlier, `${new Date().toISOString().replace(/[:.]/g, '-')}-${basename(path)}`));
  }
  await rename(fresh, place);
  await clearAway(earlier, basename(path));
}

/** Writes a file and waits until the disk has it. */
async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Keeps the latest copies of a file, and takes away what a save that was cut off left behind. */
async function clearAway(earlier: string, name: string): Promise<void> {
  const names = (await readdir(earlier)).sort();
  const copies = names.filter((each) => each.endsWith(`Z-${name}`));
  const gone = [...copies.slice(0, Math.max(0, copies.length - mostEarlier)), ...names.filter((each) => /^\.(?:new|copy)-/.test(each))];
  for (const each of gone) await rm(join(earlier, each), { force: true });
}
