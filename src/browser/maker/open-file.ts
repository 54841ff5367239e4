import { longestPackText, plainText } from '../../outputs/pack-text.ts';
import { sizeOf } from './make-picture.ts';
import type { KeptPicture } from './storage.ts';

/** A file that somebody chose: a pack, or why it is none. */
export type OpenedFile = { readonly kind: 'pack'; readonly name: string; readonly text: string; readonly pictures: readonly KeptPicture[] } | { readonly kind: 'too big' | 'wrong' };

const largestZip = 80_000_000;

/** Reads a pack.md, or the pack in a zip. What it holds is only data: nothing of it is run. */
export async function openFile(file: File): Promise<OpenedFile> {
  const isZip = /\.zip$/i.test(file.name) || file.type === 'application/zip';
  if (file.size > (isZip ? largestZip : longestPackText)) return { kind: 'too big' };
  if (isZip) return openZip(file);
  const text = plainText(await file.arrayBuffer());
  return text === undefined ? { kind: 'wrong' } : { kind: 'pack', name: packName(file.name), text, pictures: [] };
}

async function openZip(file: File): Promise<OpenedFile> {
  const { readPackZip } = await import('./pack-zip-part.ts');
  const found = readPackZip(new Uint8Array(await file.arrayBuffer()));
  if (!found) return { kind: 'wrong' };
  const pictures: KeptPicture[] = [];
  for (const [name, bytes] of Object.entries(found.pictures)) {
    const blob = new Blob([new Uint8Array(bytes)], { type: typeOf(name) });
    const size = await sizeOf(blob);
    if (size) pictures.push({ name, blob, ...size });
  }
  return { kind: 'pack', name: found.name, text: found.text, pictures };
}

/** The name that the file has in a library: `pack.es.md` where it says so, `pack.md` otherwise. */
function packName(name: string): string {
  return /^pack\.[a-z]{2,3}\.md$/.test(name) ? name : 'pack.md';
}

function typeOf(name: string): string {
  return /\.png$/i.test(name) ? 'image/png' : /\.webp$/i.test(name) ? 'image/webp' : 'image/jpeg';
}
