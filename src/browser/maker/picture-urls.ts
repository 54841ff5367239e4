import { useEffect, useState } from 'preact/hooks';
import type { Desk } from './desk.ts';

export type PictureUrls = Readonly<Record<string, { readonly url: string; readonly width: number; readonly height: number }>>;

/** Addresses on this device for the pictures of the pack, given back when they are no longer needed. */
export function usePictureUrls(desk: Desk): PictureUrls {
  const [urls, setUrls] = useState<PictureUrls>({});
  useEffect(() => {
    const made = Object.fromEntries(desk.pictures.map(({ name, blob, width, height }) => [name, { url: URL.createObjectURL(blob), width, height }]));
    setUrls(made);
    return () => {
      for (const each of Object.values(made)) URL.revokeObjectURL(each.url);
    };
  }, [desk.pictures]);
  return urls;
}
