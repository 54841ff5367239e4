import { mergeBooklets } from '../../core/booklet/merge-booklets.ts';
import { isEmpty, type Booklet } from '../../core/booklet/booklet.ts';
import { keyOf, keyText, packText, type BookletStorage, type KeptBooklet } from './kept-booklet.ts';

/** localStorage, for a browser that refuses its database. Each booklet is one text; there is room for writing and a few drawings. */

const prefix = 'booklet ';

/** Async throughout, so that a browser that throws on the mere word localStorage ends in a refused promise. */
export const plainStorage: BookletStorage = {
  async readers(pack) {
    await Promise.resolve();
    return names(`${prefix}${packText(pack)} `).flatMap((name) => {
      const kept = parsed(localStorage.getItem(name));
      return kept ? [{ bookmark: kept.booklet.bookmark, answers: kept.booklet.entries.filter(({ value }) => !isEmpty(value)).length }] : [];
    });
  },
  async read(key) {
    await Promise.resolve();
    return parsed(localStorage.getItem(prefix + keyText(key)));
  },
  async save({ booklet, settings }) {
    await Promise.resolve();
    const name = prefix + keyText(keyOf(booklet));
    const there = parsed(localStorage.getItem(name));
    const merged: Booklet = there ? mergeBooklets(booklet, there.booklet) : booklet;
    localStorage.setItem(name, JSON.stringify({ booklet: merged, settings } satisfies KeptBooklet));
    return merged;
  },
  async erase(key) {
    await Promise.resolve();
    localStorage.removeItem(prefix + keyText(key));
  },
  async eraseAll() {
    await Promise.resolve();
    for (const name of names(prefix)) localStorage.removeItem(name);
  },
};

function names(beginning: string): readonly string[] {
  return Array.from({ length: localStorage.length }, (_, index) => localStorage.key(index) ?? '').filter((name) => name.startsWith(beginning));
}

/** Text of ours; another page of the same host may have written anything under the name. */
function parsed(text: string | null): KeptBooklet | undefined {
  try {
    const kept = text === null ? undefined : (JSON.parse(text) as KeptBooklet);
    return Array.isArray(kept?.booklet.entries) ? kept : undefined;
  } catch {
    return undefined;
  }
}
