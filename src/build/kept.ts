import { createHash, randomBytes } from 'node:crypto';
import { readFile, rename, rm, writeFile } from 'node:fs/promises';

/** The cache is believed only when it proves itself: each thing kept carries a sum of its bytes, and what does not fit it is made anew. */

/** A sum of bytes, short enough for a name. */
export function sumOf(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, 24);
}

/** A text with its sum on the first line. */
export function sealed(text: string): string {
  return `${sumOf(text)}\n${text}`;
}

/** The text of a sealed file; undefined when there is none, or when it is not what was written. */
export async function readSealed(path: string): Promise<string | undefined> {
  const whole = await readFile(path, 'utf8').catch(() => '');
  const end = whole.indexOf('\n');
  const text = whole.slice(end + 1);
  return end > 0 && sumOf(text) === whole.slice(0, end) ? text : undefined;
}

/** True when a file is there and holds the bytes that this is the sum of. */
export async function holds(path: string, sum: string | undefined): Promise<boolean> {
  const bytes = await readFile(path).catch(() => undefined);
  return bytes !== undefined && sumOf(bytes) === sum;
}

/** Writes a file that is whole from its first moment: others may read or write the same one. */
export async function writeWhole(path: string, bytes: string | Uint8Array): Promise<void> {
  const beside = `${path}.${randomBytes(6).toString('hex')}.part`;
  try {
    await writeFile(beside, bytes);
    // A folder in the file's place is no file of ours.
    await rename(beside, path).catch(async (error: unknown) => {
      if ((error as NodeJS.ErrnoException).code !== 'EISDIR') throw error;
      await rm(path, { recursive: true });
      await rename(beside, path);
    });
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw error;
  }
}

/** True for what the disk says (full, not allowed, broken), and not what a file holds. */
export function isOfDisk(error: unknown): boolean {
  return error instanceof Error && 'syscall' in error;
}
