import type { KeptPicture } from './storage.ts';
import { slugOf } from './folder-name.ts';

/** Longest side of a picture as it is kept, in pixels: twice the widest that a page shows it. */
const longest = 1600;
/** Largest file that is taken, in bytes. */
const largestFile = 60_000_000;

/**
 * A picture made anew from the one that somebody chose: upright, no larger than a page needs, and with nothing in it but
 * what is seen. Undefined when this browser cannot read it.
 */
export async function makePicture(file: File, taken: ReadonlySet<string>): Promise<KeptPicture | undefined> {
  if (file.size > largestFile || !/^image\/(?:png|jpeg|webp)$/.test(file.type)) return undefined;
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!bitmap) return undefined;
  const shrink = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * shrink));
  const height = Math.max(1, Math.round(bitmap.height * shrink));
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const drawing = canvas.getContext('2d');
  if (!drawing) return undefined;
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  // A drawing keeps its sharp edges as PNG; a photo is small as JPEG.
  const type = file.type === 'image/png' ? 'image/png' : 'image/jpeg';
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, 0.86));
  return blob ? { name: freeName(file.name, type === 'image/png' ? 'png' : 'jpg', taken), blob, width, height } : undefined;
}

/** The size of a picture that is there already. */
export async function sizeOf(blob: Blob): Promise<{ readonly width: number; readonly height: number } | undefined> {
  const bitmap = await createImageBitmap(blob).catch(() => undefined);
  if (!bitmap) return undefined;
  const { width, height } = bitmap;
  bitmap.close();
  return { width, height };
}

function freeName(name: string, ending: string, taken: ReadonlySet<string>): string {
  const stem = slugOf(name.replace(/\.[^.]*$/, ''));
  for (let number = 1; ; number++) {
    const free = `${stem}${number === 1 ? '' : `-${String(number)}`}.${ending}`;
    if (!taken.has(free)) return free;
  }
}
