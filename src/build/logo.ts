import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { finding, type Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { usual } from '../core/pack/theme.ts';
import type { BuiltLogo } from '../outputs/views.ts';
import { fitPicture, isSeeThrough, sizeOf } from './pictures.ts';
import type { SiteFile } from './write-files.ts';

interface Made {
  readonly logo: BuiltLogo | undefined;
  readonly files: readonly SiteFile[];
  readonly findings: readonly Finding[];
}

/** The room in the head of a page, in CSS pixels: no higher than a line of links that can be tapped, so a logo moves nothing. */
const room = { width: 176, height: 44 };
/** Sharp screens have two and more dots for one. */
const dots = 2;

/**
 * The library's logo as pages show it, and its files; nothing where there is none. It is written anew as any picture is, small, and without what its
 * file may hold beside it. Where it is see-through and has no file of its own for dark screens, it lies on the library's paper there.
 *
 * @param cache Holds the files until the site is written.
 */
export async function makeLogo(content: string, { theme }: Pick<Library, 'theme'>, cache: string): Promise<Made> {
  const named = theme?.logo;
  if (!named) return { logo: undefined, files: [], findings: [] };
  const bytes = await readFile(join(content, named.file));
  const dark =
    named.onDark === undefined ? ((await isSeeThrough(bytes)) ? { bytes, ground: theme.paper ?? usual.paper } : undefined) : { bytes: await readFile(join(content, named.onDark)), ground: undefined };
  const [light, onDark] = await Promise.all([fitted(bytes), dark && fitted(dark.bytes, dark.ground)]);
  // The head of a file may be sound and what follows it not.
  if (!light || (dark && !onDark)) {
    const file = light ? (named.onDark ?? named.file) : named.file;
    return { logo: undefined, files: [], findings: [finding('library/logo', 'stop', { file: 'library.yaml', line: 1, column: 1 }, { file, problem: 'unreadable' })] };
  }
  const { width, height } = await sizeOf(light);
  // A file smaller than the room is shown as large as it is.
  const scale = Math.max(1, width / room.width, height / room.height);
  const keep = async (picture: Buffer): Promise<SiteFile & { readonly from: string }> => {
    const name = `logo-${createHash('sha256').update(picture).digest('hex').slice(0, 10)}.webp`;
    await mkdir(join(cache, 'pictures'), { recursive: true });
    await writeFile(join(cache, 'pictures', name), picture);
    return { url: `assets/${name}`, from: join(cache, 'pictures', name) };
  };
  const files = [await keep(light), ...(onDark ? [await keep(onDark)] : [])];
  return { logo: { light: files[0]?.url ?? '', dark: files[1]?.url, width: Math.round(width / scale), height: Math.round(height / scale) }, files, findings: [] };
}

const fitted = (bytes: Buffer, ground?: string) => fitPicture(bytes, { width: room.width * dots, height: room.height * dots }, ground);
