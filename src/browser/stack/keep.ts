import type { ScoresFile } from '../../classroom/scoring-files.ts';
import type { StackBooklet } from '../../classroom/stack.ts';
import { clearDesk, type Desk, type DeskState } from './desk.ts';

/**
 * Keeps the desk in the browser's database, once a teacher has said so and not before: even looking makes nothing. A booklet is one record
 * and the rest another, so that a score does not write three hundred drawings anew. A trait of what is kept: it is this device's alone.
 */

const name = 'bookfellow-stack';
type Rest = Pick<DeskState, 'scoring' | 'others' | 'sheet' | 'sheetScoring' | 'aloud' | 'shared' | 'notes' | 'book'> & {
  readonly order: readonly string[];
  readonly packs: DeskState['stack']['packs'];
};

/** Desks that were kept when there could be one colleague only. */
type KeptBefore = Rest & { readonly second?: ScoresFile };

const idOf = ({ booklet: { pack, id } }: StackBooklet): string => `${pack.slug} ${pack.language} ${id}`;

let written: readonly StackBooklet[] = [];
let waiting: ReturnType<typeof setTimeout> | undefined;
/** Writings come one after the other. */
let queue: Promise<unknown> = Promise.resolve();

/** What was kept before, put on the desk; nothing where there is nothing. */
export async function openKept(desk: Desk): Promise<void> {
  try {
    const database = await open(false);
    if (!database) return;
    const transaction = database.transaction(['booklets', 'rest']);
    const [rest, booklets] = await Promise.all([
      asked(transaction.objectStore('rest').get('rest')) as Promise<KeptBefore | undefined>,
      asked(transaction.objectStore('booklets').getAll()) as Promise<readonly StackBooklet[]>,
    ]);
    database.close();
    if (!rest) return;
    const { order, packs, second, ...kept } = rest;
    written = order.flatMap((id) => booklets.find((each) => idOf(each) === id) ?? []);
    // A pack that came with the page is newer than one that was kept.
    const more = packs.filter((each) => !desk.packs.some((own) => own.slug === each.slug && own.language === each.language));
    desk.set({ ...clearDesk(desk.packs), ...(second && { others: [second] }), ...kept, stack: { packs: [...desk.packs, ...more], booklets: written }, keeping: 'yes' });
  } catch {
    // A database that cannot be opened holds nothing of ours.
  }
}

export async function startKeeping(desk: Desk): Promise<void> {
  written = [];
  desk.set({ keeping: 'yes' });
  await write(desk);
}

export async function stopKeeping(desk: Desk): Promise<void> {
  desk.set({ keeping: 'no' });
  await eraseKept();
}

export async function eraseKept(): Promise<void> {
  clearTimeout(waiting);
  waiting = undefined;
  await queue;
  written = [];
  await new Promise<void>((done) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => done();
    request.onerror = () => done();
  }).catch(() => undefined);
}

/** Writes what changed, a moment after the last change. */
export function keepSoon(desk: Desk): void {
  if (desk.state.keeping !== 'yes' || waiting !== undefined) return;
  waiting = setTimeout(() => {
    waiting = undefined;
    void write(desk);
  }, 400);
}

function write(desk: Desk): Promise<void> {
  const work = queue.then(() => writeNow(desk));
  queue = work;
  return work;
}

async function writeNow(desk: Desk): Promise<void> {
  const { stack, scoring, others, sheet, sheetScoring, aloud, shared, notes, book, keeping } = desk.state;
  if (keeping !== 'yes') return;
  const rest: Rest = { scoring, others, sheet, sheetScoring, aloud, shared, notes, book, order: stack.booklets.map(idOf), packs: stack.packs };
  try {
    const database = await open(true);
    if (!database) throw new DOMException('none', 'InvalidStateError');
    const transaction = database.transaction(['booklets', 'rest'], 'readwrite');
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new DOMException('aborted', 'AbortError'));
    });
    const booklets = transaction.objectStore('booklets');
    for (const each of stack.booklets) if (!written.includes(each)) booklets.put(each, idOf(each));
    for (const gone of written) if (!stack.booklets.some((each) => idOf(each) === idOf(gone))) booklets.delete(idOf(gone));
    transaction.objectStore('rest').put(rest, 'rest');
    await done;
    database.close();
    written = stack.booklets;
  } catch (fault) {
    desk.set({ keeping: fault instanceof DOMException && fault.name === 'QuotaExceededError' ? 'full' : 'blocked' });
  }
}

/** Opens the database; without `make`, one that is not there stays not there. */
function open(make: boolean): Promise<IDBDatabase | undefined> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
      if (make) {
        request.result.createObjectStore('booklets');
        request.result.createObjectStore('rest');
      } else request.transaction?.abort();
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      if (!make && request.error?.name === 'AbortError') resolve(undefined);
      else reject(request.error ?? new DOMException('none', 'InvalidStateError'));
    };
  });
}

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new DOMException('none', 'InvalidStateError'));
  });
}
