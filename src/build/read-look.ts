import { join, relative, sep } from 'node:path';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { OwnPart } from '../core/pack/own-parts.ts';
import type { PictureFile } from '../core/pack/pack.ts';
import { namesIn, readText, statusOf, type Root } from './disk.ts';
import { inspectPicture } from './pictures.ts';

/** What a library brings for its own look: pictures beside its `library.yaml`, and layouts in `layouts/`. No folder of a pack or a source is looked into for either. */

/** The pictures beside `library.yaml`, of which one may be the logo. Links are left alone, so that nothing outside can be meant. */
export async function readLibraryPictures(root: Root): Promise<readonly PictureFile[]> {
  const files: PictureFile[] = [];
  for (const name of namesIn(root, '.', [])) {
    if (/\.(?:png|jpe?g|webp)$/i.test(name) && statusOf(join(root.at, name)) === 'file') files.push(await inspectPicture(join(root.at, name), name));
  }
  return files;
}

/** The texts of the layouts that `library.yaml` names. A folder that is also a source, or lies in one, is others' and gives none. */
export function readLayouts(root: Root, { layouts = [] }: Library, sources: readonly Root[], findings: Finding[]): ReadonlyMap<OwnPart, string> {
  const texts = new Map<OwnPart, string>();
  const folder = join(root.at, 'layouts');
  if (sources.some(({ at }) => isWithin(folder, at) || isWithin(at, folder)) || statusOf(folder) !== 'folder') return texts;
  for (const part of layouts) {
    const text = readText(root, `layouts/${part}.tsx`, findings, true);
    if (text !== undefined) texts.set(part, text);
  }
  return texts;
}

function isWithin(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`));
}
