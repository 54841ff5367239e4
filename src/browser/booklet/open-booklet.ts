import type { Bookmark } from '../../core/booklet/booklet.ts';
import { packText, type PackKey } from './kept-booklet.ts';

/** Which booklet is open in this window, so that a page that is loaded anew goes on where it was. It is forgotten with the window. */

const prefix = 'booklet open ';
const named = (pack: PackKey): string => prefix + packText(pack);

export function rememberOpen(pack: PackKey, { pattern, colour }: Bookmark): void {
  softly(() => sessionStorage.setItem(named(pack), `${pattern} ${colour}`));
}

export function openBefore(pack: PackKey): Bookmark | undefined {
  const [pattern, colour] = softly(() => sessionStorage.getItem(named(pack)))?.split(' ') ?? [];
  return pattern && colour ? { pattern, colour } : undefined;
}

export function forgetOpen(pack: PackKey): void {
  softly(() => sessionStorage.removeItem(named(pack)));
}

/** A browser may refuse even this; then a child picks the bookmark again. */
function softly<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
