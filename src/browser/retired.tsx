import { render, type JSX } from 'preact';
import type { Phrases } from '../core/languages/en.ts';
import type { Booklet } from '../core/booklet/booklet.ts';
import { AskFirst } from './booklet/ask-first.tsx';
import { bookletFile, saveFile } from './booklet/hand-over.ts';
import { storage } from './booklet/storage.ts';
import type { Asked } from './offline-worker.ts';

/**
 * On the page of a companion that was taken out of the library. What children answered is still on their device: here it can be
 * saved as a file and erased. A copy of the companion for times without a network is taken away.
 */

const english = async (): Promise<Phrases['booklet']> => (await import('../core/languages/en-booklet.ts')).enBooklet;
const phrases: Readonly<Record<string, typeof english>> = {
  es: async () => (await import('../core/languages/es-booklet.ts')).esBooklet,
  ar: async () => (await import('./booklet/phrases-ar.ts')).phrases,
};

const section = document.querySelector<HTMLElement>('.retired-answers');
if (section) {
  takeCopyAway(section.dataset['book'] ?? '');
  const told = section.querySelector<HTMLElement>('.told');
  const room = section.querySelector<HTMLElement>('.screen-room');
  if (told && room) void offer(section, told, room);
}

/** Shows each booklet of this book that the device holds. */
async function offer(section: HTMLElement, told: HTMLElement, room: HTMLElement): Promise<void> {
  const { slug = '', language = '', none = '', keep = '' } = section.dataset;
  const readers = await storage.readers({ slug, language });
  const kept = await Promise.all(readers.map(({ bookmark }) => storage.read({ slug, language, bookmark })));
  const booklets = kept.flatMap((each) => each?.booklet ?? []);
  told.textContent = booklets.length === 0 ? none : keep;
  if (booklets.length === 0) {
    render(null, room);
    return;
  }
  const words = await (phrases[language.split('-', 1)[0] ?? ''] ?? english)();
  const erase = async (booklet: Booklet) => {
    await storage.erase({ slug, language, bookmark: booklet.bookmark });
    await offer(section, told, room);
  };
  render(
    <ul class="kept-booklets">
      {booklets.map((booklet) => (
        <Kept booklet={booklet} words={words} onErase={() => void erase(booklet)} key={booklet.id} />
      ))}
    </ul>,
    room,
  );
}

function Kept({ booklet, words, onErase }: { readonly booklet: Booklet; readonly words: Phrases['booklet']; readonly onErase: () => void }): JSX.Element {
  const { mine, grown } = words.screen;
  return (
    <li>
      <p>{words.screen.yours(booklet.bookmark.pattern, booklet.bookmark.colour)}</p>
      <p class="button-row">
        <button type="button" class="page-button" onClick={() => saveFile(bookletFile(booklet, { words }))}>
          {mine.save}
        </button>
        <AskFirst label={grown.erase} question={grown.sure} yes={grown.yes} no={grown.no} onYes={onErase} />
      </p>
    </li>
  );
}

/** A copy would go on showing what was taken out. Without a worker there is none. */
function takeCopyAway(book: string): void {
  if ('serviceWorker' in navigator) navigator.serviceWorker.controller?.postMessage({ ask: 'remove', book } satisfies Asked);
}
