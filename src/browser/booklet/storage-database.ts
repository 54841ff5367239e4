import { seenOf, sortedEntries, sortedPrompts, sortedSeen, type Booklet, type Entry, type Name } from '../../core/booklet/booklet.ts';
import { keyOf, keyText, NotKept, packText, type BookletKey, type BookletStorage, type Settings } from './kept-booklet.ts';

/** IndexedDB. What stands around the answers is one record, each answer another, so that a changed word does not write sixty drawings anew. */

const databaseName = 'bookfellow-booklets';

type HeadRecord = Omit<Booklet, 'entries'> & { readonly settings: Settings };

export const database: BookletStorage = {
  async readers(pack) {
    const found = await within('readonly', async ({ heads, entries }) => {
      const records = (await answer(heads.getAll(beginningWith(packText(pack))))) as readonly HeadRecord[];
      return Promise.all(records.map(async ({ bookmark }) => ({ bookmark, answers: await answer(entries.count(ofBooklet({ ...pack, bookmark }))) })));
    });
    return found ?? [];
  },
  async read(key) {
    return within('readonly', async ({ heads, entries }) => {
      const head = (await answer(heads.get(keyText(key)))) as HeadRecord | undefined;
      if (!head) return undefined;
      const { settings, ...rest } = head;
      const kept = (await answer(entries.getAll(ofBooklet(key)))) as readonly Entry[];
      return { booklet: { ...rest, entries: sortedEntries(kept) }, settings };
    });
  },
  async save({ booklet, settings }) {
    const key = keyOf(booklet);
    const merged = await within('readwrite', async ({ heads, entries }) => {
      const there = (await answer(heads.get(keyText(key)))) as HeadRecord | undefined;
      const names = (await answer(entries.getAllKeys(ofBooklet(key)))).map(nameOfKey);
      const { kept, gone, news } = reconcile(booklet, there, names);
      const fetched = await Promise.all(news.map(async (name) => (await answer(entries.get(entryKey(key, name)))) as Entry));
      for (const name of gone) entries.delete(entryKey(key, name));
      const known = new Set(names.map(nameText));
      for (const entry of kept) if (!known.has(nameText(entry))) entries.put(entry, entryKey(key, entry));
      const { format, version, pack, bookmark } = booklet;
      const seen = sortedSeen([...new Map([...booklet.seen, ...(there?.seen ?? [])])].map(([writer]) => [writer, Math.max(seenOf(booklet, writer), there ? seenOf(there, writer) : 0)] as const));
      const record: HeadRecord = {
        format,
        version,
        pack,
        bookmark,
        id: there && there.id < booklet.id ? there.id : booklet.id,
        seen,
        prompts: sortedPrompts([...booklet.prompts, ...(there?.prompts ?? [])]),
        settings,
      };
      heads.put(record, keyText(key));
      return { ...booklet, id: record.id, seen, prompts: record.prompts, entries: sortedEntries([...kept, ...fetched]) };
    });
    if (!merged) throw new NotKept('blocked');
    return merged;
  },
  async erase(key) {
    const left = await within('readwrite', async ({ heads, entries }) => {
      heads.delete(keyText(key));
      entries.delete(ofBooklet(key));
      return answer(heads.count());
    });
    if (left === 0) await removeDatabase();
  },
  eraseAll: removeDatabase,
};

/** The rule of `merge-booklets.ts`, by names alone: what stays of ours, what of the kept goes, what of the kept is news to us. */
function reconcile(booklet: Booklet, there: HeadRecord | undefined, names: readonly Name[]): { readonly kept: readonly Entry[]; readonly gone: readonly Name[]; readonly news: readonly Name[] } {
  const ours = new Set(booklet.entries.map(nameText));
  const theirs = new Set(names.map(nameText));
  const others = names.filter((name) => !ours.has(nameText(name)));
  return {
    kept: booklet.entries.filter((entry) => theirs.has(nameText(entry)) || !there || entry.count > seenOf(there, entry.writer)),
    gone: others.filter((name) => name.count <= seenOf(booklet, name.writer)),
    news: others.filter((name) => name.count > seenOf(booklet, name.writer)),
  };
}

const nameText = ({ writer, count }: Name): string => `${writer} ${String(count)}`;
const entryKey = (key: BookletKey, name: Name): IDBValidKey => [keyText(key), name.writer, name.count];
const ofBooklet = (key: BookletKey): IDBKeyRange => IDBKeyRange.bound([keyText(key)], [keyText(key), []]);
const beginningWith = (text: string): IDBKeyRange => IDBKeyRange.bound(`${text} `, `${text} \uffff`);

function nameOfKey(key: IDBValidKey): Name {
  const [, writer, count] = key as [string, string, number];
  return { writer, count };
}

interface Stores {
  readonly heads: IDBObjectStore;
  readonly entries: IDBObjectStore;
}

/** Does something in one transaction; resolved when it is on the disk. Undefined when there is no database to look into. */
async function within<T>(mode: IDBTransactionMode, work: (stores: Stores) => Promise<T>): Promise<T | undefined> {
  const opened = await openDatabase(mode === 'readwrite');
  if (!opened) return undefined;
  try {
    const transaction = opened.transaction(['heads', 'entries'], mode, { durability: 'strict' });
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new NotKept('blocked'));
    });
    const [result] = await Promise.all([work({ heads: transaction.objectStore('heads'), entries: transaction.objectStore('entries') }), done]);
    return result;
  } finally {
    opened.close();
  }
}

/** Opens the database; without `make`, one that is not there stays not there. */
function openDatabase(make: boolean): Promise<IDBDatabase | undefined> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(databaseName, 1);
    request.onupgradeneeded = () => {
      if (make) {
        request.result.createObjectStore('heads');
        request.result.createObjectStore('entries');
      } else request.transaction?.abort();
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      if (!make && request.error?.name === 'AbortError') resolve(undefined);
      else reject(request.error ?? new NotKept('blocked'));
    };
  });
}

function removeDatabase(): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(databaseName);
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error ?? new NotKept('blocked'));
  });
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new NotKept('blocked'));
  });
}
