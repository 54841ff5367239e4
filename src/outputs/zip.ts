import { unzipSync, zipSync, type Zippable } from 'fflate';

/** The door to fflate, for whoever makes or reads a zip in the browser or on the machine. */

/** Files by their path in the zip, with forward slashes. */
export type Files = Readonly<Record<string, Uint8Array>>;

/** The moment that every file of ours says it was changed, so that the same files make the same bytes. Zip knows no time before 1980. */
const noTime = new Date(1980, 0, 1);

/** The files in one zip. Pictures, letters and sheets are not pressed any further: they have been already. */
export function zipOf(files: Files): Uint8Array<ArrayBuffer> {
  const each: Zippable = Object.fromEntries(Object.entries(files).map(([path, bytes]) => [path, [bytes, { level: /\.(?:jpe?g|png|webp|woff2|pdf)$/i.test(path) ? 0 : 6, mtime: noTime }]]));
  return zipSync(each);
}

export interface ZipLimits {
  /** Most files, all told. */
  readonly files: number;
  /** Most bytes of one file and of all that are wanted, unpacked. */
  readonly each: number;
  readonly all: number;
}

/**
 * The wanted files of a zip. Undefined for what is no zip, holds more than the limits allow, or names a path that leads
 * out of its folder; a file is unpacked into the room that its head states and no more.
 */
export function unzipped(bytes: Uint8Array, wanted: (path: string) => boolean, limits: ZipLimits): Files | undefined {
  let count = 0;
  let sum = 0;
  const over = { is: false };
  try {
    const files = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        count += 1;
        if (count > limits.files || !isInside(name)) over.is = true;
        if (over.is || !wanted(name)) return false;
        sum += originalSize;
        if (originalSize > limits.each || sum > limits.all) over.is = true;
        return !over.is;
      },
    });
    return over.is ? undefined : files;
  } catch {
    return undefined;
  }
}

/** No way up, no root, no drive, no backslash, nothing unseen. */
function isInside(path: string): boolean {
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  return !/^\/|\\|[\u0000-\u001f\u007f]|^[a-z]:/i.test(path) && !path.split('/').includes('..');
}
