import type { KeptPicture } from './storage.ts';

/** A pack as somebody takes it away. */
interface ToTake {
  readonly slug: string;
  readonly fileName: string;
  readonly text: string;
  readonly ownPictures: readonly KeptPicture[];
}

/** The pack as one file, with its pictures. */
export async function zipOf({ slug, fileName, text, ownPictures }: ToTake): Promise<Blob> {
  const { packZip } = await import('./pack-zip-part.ts');
  const pictures: Record<string, Uint8Array> = {};
  for (const { name, blob } of ownPictures) pictures[name] = new Uint8Array(await blob.arrayBuffer());
  return new Blob([packZip({ slug, name: fileName, text, pictures })], { type: 'application/zip' });
}
