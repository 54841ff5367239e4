import { notKept, type BookletStorage, type Reader } from './kept-booklet.ts';
import { mergeBooklets } from '../../core/booklet/merge-booklets.ts';
import { database } from './storage-database.ts';
import { plainStorage } from './storage-plain.ts';

/** The database first; what it refuses for another reason than want of room goes into the plain storage, and both are looked into. */
export const storage: BookletStorage = {
  async readers(pack) {
    const found = [...(await softly(database.readers(pack), [])), ...(await softly(plainStorage.readers(pack), []))];
    const byMark = new Map<string, Reader>();
    for (const each of found) {
      const name = `${each.bookmark.pattern} ${each.bookmark.colour}`;
      byMark.set(name, { bookmark: each.bookmark, answers: Math.max(each.answers, byMark.get(name)?.answers ?? 0) });
    }
    return [...byMark.values()];
  },
  async read(key) {
    const first = await softly(database.read(key), undefined);
    const second = await softly(plainStorage.read(key), undefined);
    if (!first || !second) return first ?? second;
    return { booklet: mergeBooklets(first.booklet, second.booklet), settings: first.settings };
  },
  async save(kept) {
    try {
      return await database.save(kept);
    } catch (fault) {
      if (notKept(fault).why === 'full') throw notKept(fault);
    }
    try {
      return await plainStorage.save(kept);
    } catch (fault) {
      throw notKept(fault);
    }
  },
  async erase(key) {
    await Promise.all([softly(database.erase(key), undefined), softly(plainStorage.erase(key), undefined)]);
  },
  async eraseAll() {
    await Promise.all([softly(database.eraseAll(), undefined), softly(plainStorage.eraseAll(), undefined)]);
  },
};

/** What a storage that may be refused says, or nothing. A refusal shows when something is to be kept. */
async function softly<T>(asked: Promise<T>, otherwise: T): Promise<T> {
  try {
    return await asked;
  } catch {
    return otherwise;
  }
}
