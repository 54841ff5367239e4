import { createHash } from 'node:crypto';
import { mkdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PictureFile } from '../core/pack/pack.ts';
import { longestPictureSide, mostPicturePixels } from '../core/pack/picture-limits.ts';
import type { PictureSize } from '../outputs/views.ts';
import { holds, isOfDisk, readSealed, sealed, sumOf, writeWhole } from './kept.ts';
import { metadataOf } from './picture-metadata.ts';

/** The only door to sharp. No picture is published as it came: each is decoded, turned upright and written anew without metadata. */

/** Widths that pages use, in pixels: a phone, a phone with a sharp screen, a wide page. */
export const widths = [480, 960, 1440] as const;
/** Most megabytes of a picture file that is opened. */
const mostMegabytes = 30;
/** Changes when the settings below do, so that cached files are made again. */
const recipe = 'webp78-jpeg80-v1';

sharp.cache(false);

/** What a file in a pictures folder is. Its header is read, its pixels are not. */
export async function inspectPicture(path: string, name: string): Promise<PictureFile> {
  const bad: PictureFile = { name, format: 'bad', width: 0, height: 0 };
  try {
    if ((await stat(path)).size > mostMegabytes * 1024 * 1024) return bad;
    const bytes = await readFile(path);
    const format = formatOf(bytes);
    if (format === undefined) return { ...bad, format: bytes.length === 0 ? 'bad' : 'other' };
    const metadata = await sharp(bytes, { limitInputPixels: false }).metadata();
    const { width, height } = metadata.autoOrient;
    const hidden = metadataOf(metadata);
    return { name, format, width, height, ...(hidden === undefined ? {} : { metadata: hidden }) };
  } catch {
    return bad;
  }
}

/** The kind of a picture by its first bytes; its name is not asked. */
function formatOf(bytes: Buffer): 'png' | 'jpeg' | 'webp' | undefined {
  if (bytes.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))) return 'png';
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  return bytes.subarray(0, 4).toString('latin1') === 'RIFF' && bytes.subarray(8, 12).toString('latin1') === 'WEBP' ? 'webp' : undefined;
}

export interface MadePicture {
  readonly width: number;
  readonly height: number;
  readonly webp: readonly PictureSize[];
  readonly jpeg: readonly PictureSize[];
  /** Files of the cache, by the address they get in the site. */
  readonly files: readonly { readonly url: string; readonly from: string }[];
}

/**
 * The published sizes of one picture, from the cache when the same bytes were made before. Undefined when it cannot be decoded, or has gone since it was looked at.
 *
 * @throws What the disk says when the sizes cannot be kept: the picture is not to blame.
 */
export async function makePicture(path: string, name: string, folderUrl: string, cache: string): Promise<MadePicture | undefined> {
  const bytes = await readFile(path).catch(() => undefined);
  if (!bytes) return undefined;
  const hash = createHash('sha256').update(recipe).update(bytes).digest('hex').slice(0, 16);
  const folder = join(cache, 'pictures', hash);
  const sizes = (await readSizes(folder)) ?? (await makeSizes(bytes, folder));
  if (!sizes) return undefined;
  const stem =
    name
      .replace(/\.[^.]*$/, '')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '') || 'picture';
  const urlOf = (width: number, ending: string) => `${folderUrl}${stem}-${hash.slice(0, 8)}-${String(width)}.${ending}`;
  return {
    width: sizes.width,
    height: sizes.height,
    webp: sizes.widths.map((width) => ({ url: urlOf(width, 'webp'), width })),
    jpeg: sizes.widths.map((width) => ({ url: urlOf(width, 'jpg'), width })),
    files: sizes.widths.flatMap((width) => ['webp', 'jpg'].map((ending) => ({ url: urlOf(width, ending), from: join(folder, `${String(width)}.${ending}`) }))),
  };
}

interface Sizes {
  readonly width: number;
  readonly height: number;
  readonly widths: readonly number[];
  /** The sum of each file, by its name. */
  readonly sums: Readonly<Record<string, string>>;
}

/** The cache's own note of what a folder holds, written last; without it, or when a file is not what was written, the folder counts as unfinished. */
async function readSizes(folder: string): Promise<Sizes | undefined> {
  const note = await readSealed(join(folder, 'sizes.json'));
  if (note === undefined) return undefined;
  const sizes = JSON.parse(note) as Sizes;
  for (const [name, sum] of Object.entries(sizes.sums)) if (!(await holds(join(folder, name), sum))) return undefined;
  return sizes;
}

async function makeSizes(bytes: Buffer, folder: string): Promise<Sizes | undefined> {
  try {
    const upright = sharp(bytes, { limitInputPixels: mostPicturePixels, failOn: 'error' }).autoOrient();
    const { width, height } = (await sharp(bytes, { limitInputPixels: mostPicturePixels }).metadata()).autoOrient;
    if (Math.max(width, height) > longestPictureSide) return undefined;
    const wanted = [...new Set(widths.map((each) => Math.min(each, width)))];
    const sums: Record<string, string> = {};
    await mkdir(folder, { recursive: true });
    const keep = async (name: string, made: Buffer): Promise<void> => {
      await writeWhole(join(folder, name), made);
      sums[name] = sumOf(made);
    };
    for (const each of wanted) {
      const resized = upright.clone().resize({ width: each, withoutEnlargement: true });
      await keep(`${String(each)}.webp`, await resized.clone().webp({ quality: 78 }).toBuffer());
      // JPEG knows no transparency: what is see-through lies on white paper.
      await keep(`${String(each)}.jpg`, await resized.clone().flatten({ background: '#ffffff' }).jpeg({ quality: 80, mozjpeg: true }).toBuffer());
    }
    const sizes: Sizes = { width, height, widths: wanted, sums };
    await writeWhole(join(folder, 'sizes.json'), sealed(JSON.stringify(sizes)));
    return sizes;
  } catch (error) {
    if (isOfDisk(error)) throw error;
    return undefined;
  }
}

/**
 * A small picture made to fit into a box, in pixels, and never enlarged; as WebP, which keeps what is see-through.
 *
 * @param ground What see-through parts are laid on, `#f6efe0`; without it they stay see-through.
 * @returns Undefined when the bytes cannot be decoded.
 */
export async function fitPicture(bytes: Buffer, box: { readonly width: number; readonly height: number }, ground?: string): Promise<Buffer | undefined> {
  try {
    const fitted = sharp(bytes, { limitInputPixels: mostPicturePixels, failOn: 'error' })
      .autoOrient()
      .resize({ ...box, fit: 'inside', withoutEnlargement: true });
    return await (ground === undefined ? fitted : fitted.flatten({ background: ground })).webp({ quality: 88 }).toBuffer();
  } catch {
    return undefined;
  }
}

/** Width and height of a picture that was made here, in pixels. */
export async function sizeOf(bytes: Buffer): Promise<{ readonly width: number; readonly height: number }> {
  const { width, height } = await sharp(bytes).metadata();
  return { width, height };
}

/** Whether anything of a picture lets through what it lies on. */
export async function isSeeThrough(bytes: Buffer): Promise<boolean> {
  const stats = await sharp(bytes, { limitInputPixels: mostPicturePixels })
    .stats()
    .catch(() => undefined);
  return stats !== undefined && !stats.isOpaque;
}

/** A PNG drawn from our own SVG source, for the demo library. Packs' SVG files are never opened. */
export async function drawPng(svg: Buffer, width: number): Promise<Buffer> {
  return sharp(svg).resize({ width }).png({ palette: true, compressionLevel: 9 }).toBuffer();
}
