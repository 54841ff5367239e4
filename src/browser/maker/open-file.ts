import type { KeptPicture } from './storage.ts';

/** A file that somebody chose: a pack, or why it is none. */
export type OpenedFile = { readonly kind: 'pack'; readonly text: string; readonly pictures: readonly KeptPicture[] } | { readonly kind: 'too big' | 'wrong' };

/** As large as a pack file and its pictures may be together, in bytes. */
const most = { text: 1_000_000, zip: 60_000_000 } as const;

/** Reads a pack.md, or the pack in a zip. What it holds is only data: nothing of it is run. */
export async function openFile(file: File): Promise<OpenedFile> {
  const isZip = /\.zip$/i.test(file.name) || file.type === 'application/zip';
  if (file.size > (isZip ? most.zip : most.text)) return { kind: 'too big' };
  if (isZip) return { kind: 'wrong' };
  try {
    // The bytes as they are: a mark of their order at the beginning stays.
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    return /^\ufeff?---/.test(text) ? { kind: 'pack', text, pictures: [] } : { kind: 'wrong' };
  } catch {
    return { kind: 'wrong' };
  }
}
