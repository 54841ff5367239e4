import type { JSX } from 'preact';
import { localeOf } from '../../src/core/languages/about-language.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { Page } from '../../src/outputs/views.ts';
import { numbersIn } from '../../src/core/languages/formats.ts';
import { toHtml } from '../to-html.ts';
import { sharedByBooks } from './shared-by-books.ts';

/** At the end of a book's pages and of the form, once a script has kept them: what is saved on the device, and how to take it away. */
export function OfflineNote({ page }: { readonly page: Page }): JSX.Element | null {
  const kept = keptWith(page);
  if (!kept) return null;
  return (
    <div
      class="offline-note"
      hidden
      role="status"
      data-book={kept.url}
      data-worker={linkFrom(page.url, 'offline-worker.js')}
      data-asked={kept.what === 'search' ? '' : undefined}
      dangerouslySetInnerHTML={{ __html: inside(page) }}
    />
  );
}

const inside = sharedByBooks((page) => toHtml(<Inside page={page} />));

function Inside({ page }: { readonly page: Page }): JSX.Element {
  const { offline, maker, find } = phrasesFor(page.language);
  const what = keptWith(page)?.what;
  const say = what === 'form' ? { ...offline, ...maker.copyHere, kept: (size: string) => maker.copyHere.kept.replace('{size}', size) } : what === 'search' ? { ...offline, ...find.copyHere } : offline;
  const [before = '', after = ''] = say.kept('\u0000').split('\u0000');
  // A phone needs long to learn how a language writes numbers, and for this one place the mark is enough.
  const decimalMark = numbersIn(localeOf(page.language)).format(1.5).charAt(1);
  return (
    <>
      <p data-part="kept" hidden>
        {before}
        <span data-size={decimalMark} />
        {after}{' '}
        <button type="button" data-act="remove">
          {say.remove}
        </button>
      </p>
      <p data-part="removed" hidden>
        {say.removed}{' '}
        <button type="button" data-act="keep">
          {say.keep}
        </button>
      </p>
      <p data-part="newer" hidden>
        {say.newer}{' '}
        <button type="button" data-act="show">
          {say.show}
        </button>
      </p>
      <p data-part="no-room" hidden>
        {say.noRoom}
      </p>
    </>
  );
}

/** What is kept on the device when this page is opened: its book, or the form; the search when somebody asks for it; nothing with other pages. */
export function keptWith({ view, url }: Page): { readonly url: string; readonly what: 'book' | 'form' | 'search' } | undefined {
  if ('shown' in view) return { url: view.shown.urls.family, what: 'book' };
  return view.kind === 'maker' ? { url, what: 'form' } : view.kind === 'find' ? { url, what: 'search' } : undefined;
}
