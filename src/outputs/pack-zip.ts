import { longestPackText, plainText } from './pack-text.ts';
import { unzipped, zipOf, type Files } from './zip.ts';

/** A pack as one file to hand over: its folder with the text and the pictures, as it lies in a library's content. */
export interface PackFolder {
  readonly slug: string;
  /** `pack.md`, or `pack.es.md` for another language beside it. */
  readonly name: string;
  readonly text: string;
  readonly pictures: Files;
}

/** As much as a pack's zip may hold: the text, and a picture or all of them, in bytes. */
export const packZipLimits = { files: 400, each: 20_000_000, all: 60_000_000 } as const;

export function packZip({ slug, name, text, pictures }: PackFolder): Uint8Array<ArrayBuffer> {
  const inFolder = Object.entries(pictures).map(([file, bytes]) => [`${slug}/pictures/${file}`, bytes] as const);
  return zipOf({ [`${slug}/${name}`]: new TextEncoder().encode(text), ...Object.fromEntries(inFolder) });
}

/** The pack in a zip, wherever its folder lies in it. Undefined where there is none, or where it is not what it seems. */
export function readPackZip(bytes: Uint8Array): PackFolder | undefined {
  const files = unzipped(bytes, (path) => /(?:^|\/)pack(?:\.[a-z]{2,3})?\.md$/.test(path) || /(?:^|\/)pictures\/[^/]+\.(?:png|jpe?g|webp)$/i.test(path), packZipLimits);
  const path = Object.keys(files ?? {})
    .filter((each) => each.endsWith('.md'))
    .sort((a, b) => a.split('/').length - b.split('/').length || a.length - b.length)[0];
  const packed = path === undefined ? undefined : files?.[path];
  if (!files || path === undefined || !packed || packed.length > longestPackText) return undefined;
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  const text = plainText(packed);
  if (text === undefined) return undefined;
  const pictures = Object.entries(files).filter(([each]) => each.startsWith(`${folder}pictures/`));
  return {
    slug: folder.split('/').at(-2) ?? '',
    name: path.slice(folder.length),
    text,
    pictures: Object.fromEntries(pictures.map(([each, content]) => [each.slice(`${folder}pictures/`.length), content])),
  };
}
