import { bookletFileName, writeBookletFile } from '../../core/booklet/write-booklet-file.ts';
import type { Booklet } from '../../core/booklet/booklet.ts';
import type { WholeDesk } from './desk.ts';

/** The booklet as a file, made here and given to nobody but who asked for it. */
export function bookletFile(booklet: Booklet, { words }: Pick<WholeDesk, 'words'>): File {
  const direction = document.documentElement.dir === 'rtl' ? 'rtl' : 'ltr';
  return new File([writeBookletFile(booklet, words.file, direction)], bookletFileName(booklet), { type: 'text/html' });
}

/** Saves a file where the browser puts downloads. */
export function saveFile(file: File): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  // Some browsers read the address only a moment later.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Whether the device can hand a file on to a program that a person then chooses. */
export function canShare(file: File): boolean {
  return 'canShare' in navigator && navigator.canShare({ files: [file] });
}

/** Opens the device's own sheet. False when it could not be opened; turning it down is no failure. */
export async function share(file: File): Promise<boolean> {
  try {
    await navigator.share({ files: [file] });
    return true;
  } catch (fault) {
    return fault instanceof DOMException && fault.name === 'AbortError';
  }
}
