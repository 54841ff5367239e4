/**
 * Keeps copies of books on the device and answers from them, so that a book that was visited opens without a network.
 *
 * One worker for the whole site. A page asks it to keep its book; the build has listed that book's files, with a version made
 * of their content. The search is kept in the same way when somebody asks for it, with what is looked up. A book has one copy; a newer one takes its place when it is whole, and never while a page is being read.
 */

/** What the build says of a book's copy: `packs/<slug>/offline.json`. Addresses are relative to the site's root. */
export interface CopyList {
  readonly version: string;
  readonly bytes: number;
  readonly files: readonly string[];
}

/** What a page asks for. `book` is the address of the book's first page, of the form, or of the search. */
export type Asked = { readonly ask: 'keep' | 'remove'; readonly book: string };
/** What it is told. */
export type Told = { readonly kept: boolean; readonly bytes: number; readonly newer: boolean } | { readonly failed: 'no room' | 'no network' };

interface Waiting {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Messaged extends Waiting {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}
interface WorkerSelf {
  readonly registration: { readonly scope: string };
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
  addEventListener(name: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(name: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(name: 'message', listener: (event: Messaged) => void): void;
}
declare const self: WorkerSelf;
/** Put in by the build: pages that say "not saved" by the beginning of their language's addresses, what these need, the widths that pictures come in, and a hash of all that. */
declare const shell: { readonly version: string; readonly widths: readonly number[]; readonly notSaved: Readonly<Record<string, string>>; readonly files: readonly string[] };

const root = self.registration.scope;
const mine = 'bookfellow ';
const shellName = `${mine}${root} shell ${shell.version}`;
const copyPrefix = (book: string) => `${mine}${root} copy ${book} `;

self.addEventListener('install', (event) => {
  event.waitUntil(
    addAll(shellName, shell.files).then(() =>
      // It answers nothing that is not asked for, so it may begin at once.
      self.skipWaiting(),
    ),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys()) if (name.startsWith(`${mine}${root} shell `) && name !== shellName) await caches.delete(name);
      await self.clients.claim();
    })(),
  );
});

self.addEventListener('message', (event) => {
  const asked = event.data as Asked;
  const work = (asked.ask === 'keep' ? keep(asked.book) : remove(asked.book)).catch((): Told => ({ failed: 'no network' }));
  event.waitUntil(
    work.then((told) => {
      event.ports[0]?.postMessage(told);
    }),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(root) || request.headers.has('range')) return;
  event.respondWith(answer(request, event));
});

async function answer(request: Request, event: Waiting): Promise<Response> {
  const saved = await fromCopies(request);
  if (saved) return saved;
  try {
    const fetched = await fetch(request);
    if (fetched.ok && isOfSearch(request.url)) event.waitUntil(keepVisited(request, fetched.clone()));
    return fetched;
  } catch (error) {
    if (request.mode === 'navigate') return notSaved(request.url);
    throw error;
  }
}

/** Parts of the search's index, and pages of the index: `find/en-1a2b/where-3.json`, `es/index/grade/k/`. */
function isOfSearch(url: string): boolean {
  return /^(?:[a-z]{2,3}\/)?(?:find\/.+\.json|index\/(?:[^?]*\/)?)$/.test(url.slice(root.length)) && !url.endsWith('/offline.json');
}

/** Names of copies that were taken away while this worker was awake: what comes late is not put back into them. */
const gone = new Set<string>();

/** Where somebody keeps the search on this device, what they look up with it is kept too. */
async function keepVisited(request: Request, answer: Response): Promise<void> {
  const [own = ''] = /^[a-z]{2,3}\/(?=index\/)/.exec(request.url.slice(root.length)) ?? [];
  const copies = (await caches.keys()).filter((name) => /^(?:[a-z]{2,3}\/)?find\/ /.test(name.slice(copyPrefix('').length - 1)));
  const name = copies.findLast((each) => each.startsWith(copyPrefix(`${own}find/`))) ?? copies.at(-1);
  if (name === undefined || gone.has(name)) return;
  const cache = await caches.open(name);
  // A device without room keeps what it has.
  await cache.put(request, answer).catch(() => undefined);
  if (gone.has(name)) await caches.delete(name);
}

/** The saved answer to a request: as it was asked for, a page without its question mark, or the same picture in another width. */
async function fromCopies(request: Request): Promise<Response | undefined> {
  const url = new URL(request.url);
  url.hash = '';
  if (request.mode === 'navigate') url.search = '';
  const names = (await caches.keys()).filter((name) => name.startsWith(`${mine}${root} `)).reverse();
  const wanted = request.mode === 'navigate' && !/\/$|\.\w+$/.test(url.pathname) ? [url.href, `${url.href}/`] : [url.href.replace(/\/index\.html$/, '/')];
  // Caches are asked by name and never opened here: opening one that is being taken away would bring it back, empty.
  for (const cacheName of names) {
    for (const each of wanted) {
      const found = await caches.match(each, { cacheName });
      // A page's links are relative, so a page without its last slash is sent to where it has one, as a server would.
      if (found) return each === `${url.href}/` ? Response.redirect(each, 302) : found;
    }
  }
  const picture = /^(.*\/pictures\/.*)-\d+\.(?:webp|jpg)$/.exec(url.href)?.[1];
  if (picture === undefined) return undefined;
  for (const cacheName of names) {
    for (const width of shell.widths) {
      const other = await caches.match(`${picture}-${String(width)}.webp`, { cacheName });
      // The network has the picture in the width asked for; this one is for when there is none.
      if (other) return fetch(request).catch(() => other);
    }
  }
  return undefined;
}

/** Keeps a book, or brings its copy up to date. The old copy goes at the next call, when no page can be reading from it any more. */
async function keep(book: string): Promise<Told> {
  const prefix = copyPrefix(book);
  const had = (await caches.keys()).filter((name) => name.startsWith(prefix));
  let list: CopyList;
  try {
    const response = await fetch(`${root}${book}offline.json`, { cache: 'no-cache' });
    list = (await response.json()) as CopyList;
  } catch {
    const kept = had.at(-1);
    return kept === undefined ? { failed: 'no network' } : { kept: true, bytes: Number(kept.slice(prefix.length).split(' ')[1]), newer: false };
  }
  const name = `${prefix}${list.version} ${String(list.bytes)}`;
  if (had.includes(name)) {
    for (const other of had) if (other !== name) await takeAway(other);
    return { kept: true, bytes: list.bytes, newer: false };
  }
  gone.delete(name);
  try {
    await addAll(name, list.files);
  } catch (error) {
    await caches.delete(name);
    return { failed: error instanceof DOMException && error.name === 'QuotaExceededError' ? 'no room' : 'no network' };
  }
  return { kept: true, bytes: list.bytes, newer: had.length > 0 };
}

async function remove(book: string): Promise<Told> {
  for (const name of await caches.keys()) if (name.startsWith(copyPrefix(book))) await takeAway(name);
  return { kept: false, bytes: 0, newer: false };
}

async function takeAway(name: string): Promise<void> {
  gone.add(name);
  await caches.delete(name);
}

/** All or nothing: a file that does not come leaves no half a copy behind. */
async function addAll(name: string, files: readonly string[]): Promise<void> {
  const cache = await caches.open(name);
  await cache.addAll(files.map((file) => new Request(root + file, { cache: 'no-cache' })));
}

/** The page that says plainly that a page is not saved. It stands at another address than its own, so its links are made whole. */
async function notSaved(url: string): Promise<Response> {
  const path = url.slice(root.length);
  const [, page = ''] = Object.entries(shell.notSaved).find(([begin]) => begin !== '' && path.startsWith(begin)) ?? ['', shell.notSaved['']];
  const saved = await caches.match(root + page, { cacheName: shellName });
  if (!saved) return Response.error();
  const html = (await saved.text()).replace(/(href|src)="(?!data:|#|[a-z]+:)([^"]*)"/g, (_, name: string, link: string) => `${name}="${new URL(link, root + page).href}"`);
  return new Response(html, { status: 503, headers: { 'content-type': 'text/html; charset=utf-8' } });
}
