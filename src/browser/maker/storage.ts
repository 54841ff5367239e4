/**
 * Packs under way, kept in this browser: one record for each with its text and the ten texts before, and one for each picture.
 * Nothing is made before somebody changes or opens something.
 */

const databaseName = 'bookfellow-packs';

/** A pack under way. */
export interface KeptPack {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly fileName?: string;
  /** The same pack in another language, while it is translated. */
  readonly beside?: string;
  /** Earlier texts, the latest last. */
  readonly earlier: readonly string[];
  /** Milliseconds since 1970, to say when it was changed last. */
  readonly changed: number;
  /** Counts the writings of this record, so that a window knows whether another one has written. */
  readonly revision?: number;
  /** The book's own text, only where somebody asked for it to be kept. */
  readonly passage?: string;
}

/** A picture made here, ready to be published. */
export interface KeptPicture {
  readonly name: string;
  readonly blob: Blob;
  readonly width: number;
  readonly height: number;
}

/** Why something was not kept: no room, or the browser keeps nothing. */
export class NotKept extends Error {
  constructor(readonly why: 'full' | 'refused') {
    super(why);
  }
}

export async function keptPacks(): Promise<readonly KeptPack[]> {
  const found = await softly(() => within('readonly', ({ packs }) => answer<KeptPack[]>(packs.getAll())));
  return [...(found ?? [])].sort((a, b) => b.changed - a.changed);
}

export async function keptPictures(id: string): Promise<readonly KeptPicture[]> {
  return (await softly(() => within('readonly', ({ pictures }) => answer<KeptPicture[]>(pictures.getAll(ofPack(id)))))) ?? [];
}

/** Writes a record, unless another window has written it since this one last did: then both are to be kept, and nothing is written here. */
export async function keepPack(pack: KeptPack, known: number): Promise<{ readonly revision: number; readonly isNew: boolean } | 'changed elsewhere'> {
  const kept = await within(
    'readwrite',
    async ({ packs }) => {
      const there = await answer<KeptPack | undefined>(packs.get(pack.id));
      if (there && (there.revision ?? 0) !== known) return 'changed elsewhere' as const;
      const revision = known + 1;
      await answer(packs.put({ ...pack, revision }));
      return { revision, isNew: there === undefined };
    },
    true,
  );
  if (kept === undefined) throw new NotKept('refused');
  return kept;
}

export async function keepPicture(id: string, picture: KeptPicture): Promise<void> {
  await within('readwrite', ({ pictures }) => answer(pictures.put(picture, [id, picture.name])), true);
}

/** Erases a pack with its pictures; with the last one the whole database goes. */
export async function erasePack(id: string): Promise<void> {
  const left = await softly(() =>
    within('readwrite', async ({ packs, pictures }) => {
      packs.delete(id);
      pictures.delete(ofPack(id));
      return answer(packs.count());
    }),
  );
  if (left === 0) indexedDB.deleteDatabase(databaseName);
}

const ofPack = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []]);

async function softly<T>(asked: () => Promise<T>): Promise<T | undefined> {
  try {
    return await asked();
  } catch {
    return undefined;
  }
}

interface Stores {
  readonly packs: IDBObjectStore;
  readonly pictures: IDBObjectStore;
}

async function within<T>(mode: IDBTransactionMode, work: (stores: Stores) => Promise<T>, make = false): Promise<T | undefined> {
  const opened = await open(make);
  if (!opened) return undefined;
  try {
    const transaction = opened.transaction(['packs', 'pictures'], mode);
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(asNotKept(transaction.error));
    });
    const [result] = await Promise.all([work({ packs: transaction.objectStore('packs'), pictures: transaction.objectStore('pictures') }), done]);
    return result;
  } finally {
    opened.close();
  }
}

/** Opens the database; without `make`, one that is not there stays not there. */
function open(make: boolean): Promise<IDBDatabase | undefined> {
  return new Promise((resolve, reject) => {
    let request: IDBOpenDBRequest;
    try {
      request = indexedDB.open(databaseName, 1);
    } catch {
      reject(new NotKept('refused'));
      return;
    }
    request.onupgradeneeded = () => {
      if (make) {
        request.result.createObjectStore('packs', { keyPath: 'id' });
        request.result.createObjectStore('pictures');
      } else request.transaction?.abort();
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      if (!make && request.error?.name === 'AbortError') resolve(undefined);
      else reject(asNotKept(request.error));
    };
  });
}

function answer<T>(request: IDBRequest): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result as T);
    request.onerror = () => reject(asNotKept(request.error));
  });
}

function asNotKept(fault: DOMException | null): NotKept {
  return new NotKept(fault?.name === 'QuotaExceededError' ? 'full' : 'refused');
}
