/**
 * Asks for this book, for the form that makes packs, or when somebody wants it for the search, to be kept on the device and says so: what is saved, how large it is, and how to take it away.
 * A newer copy is offered and never put in the place of a page that somebody is using.
 */
import { ownProgram } from './trusted.ts';
import type { Asked, Told } from './offline-worker.ts';

/** Set by a person who took a copy away: then none is kept on this device until they ask for one. */
const unwanted = 'bookfellow-no-copies';

// This script is on every page of a book and on the form, and so is what is of use on all of them; it comes when there is nothing else to wait for.
// The search has nothing to keep a place in.
if (!document.body.classList.contains('on-find')) addEventListener('load', () => void import('./same-place.ts').catch(() => undefined));

const note = document.querySelector<HTMLElement>('.offline-note');
const book = note?.dataset['book'];
const worker = note?.dataset['worker'];
if (note && book !== undefined && worker !== undefined && 'serviceWorker' in navigator && location.protocol.startsWith('http')) begin(note, book, worker);

function begin(note: HTMLElement, book: string, worker: string): void {
  /** True: nothing is kept before somebody asks for it here, whatever they have said of books. */
  const onlyAsked = note.dataset['asked'] !== undefined;
  const part = (name: string) => note.querySelector<HTMLElement>(`[data-part="${name}"]`);
  const show = (name: string, megabytes?: number): void => {
    note.hidden = false;
    for (const each of note.querySelectorAll<HTMLElement>('[data-part]')) each.hidden = each.dataset['part'] !== name;
    const size = part(name)?.querySelector<HTMLElement>('[data-size]');
    if (size && megabytes !== undefined) size.textContent = megabytes.toFixed(1).replace('.', size.dataset['size'] ?? '.');
  };
  const tell = (told: Told): void => {
    if ('failed' in told) {
      if (told.failed === 'no room') show('no-room');
    } else if (told.newer) show('newer');
    else if (told.kept) show('kept', told.bytes / 1024 / 1024);
    else show('removed');
  };
  const ask = async (asked: Asked['ask']): Promise<void> => {
    await navigator.serviceWorker.register(ownProgram(worker), { scope: new URL('.', new URL(worker, location.href)).href });
    const { active } = await navigator.serviceWorker.ready;
    if (!active) return;
    const channel = new MessageChannel();
    const told = new Promise<Told>((done) => {
      channel.port1.onmessage = (event: MessageEvent<Told>) => {
        done(event.data);
      };
    });
    active.postMessage({ ask: asked, book } satisfies Asked, [channel.port2]);
    tell(await told);
  };
  const quietly = (asked: Asked['ask']): void => {
    // A browser that will not keep anything is no fault of the page: it is simply not told that something was kept.
    ask(asked).catch(() => undefined);
  };
  note.addEventListener('click', (event) => {
    const act = event.target instanceof HTMLElement ? event.target.dataset['act'] : undefined;
    if (act === 'remove') {
      if (!onlyAsked) setUnwanted(true);
      quietly('remove');
    } else if (act === 'keep') {
      if (!onlyAsked) setUnwanted(false);
      quietly('keep');
    } else if (act === 'show') location.reload();
  });
  if (onlyAsked) {
    // Looking whether there is a copy keeps nothing.
    isKept(worker, book).then(
      (kept) => {
        if (kept) quietly('keep');
        else show('removed');
      },
      () => undefined,
    );
  } else if (isUnwanted()) show('removed');
  else if (document.readyState === 'complete') quietly('keep');
  else
    window.addEventListener('load', () => {
      quietly('keep');
    });
}

async function isKept(worker: string, book: string): Promise<boolean> {
  const root = new URL('.', new URL(worker, location.href)).href;
  return (await caches.keys()).some((name) => name.startsWith(`bookfellow ${root} copy ${book} `));
}

function isUnwanted(): boolean {
  try {
    return localStorage.getItem(unwanted) !== null;
  } catch {
    return false;
  }
}

function setUnwanted(yes: boolean): void {
  try {
    if (yes) localStorage.setItem(unwanted, 'yes');
    else localStorage.removeItem(unwanted);
  } catch {
    // Storage that is switched off keeps nothing to begin with.
  }
}
