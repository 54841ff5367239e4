import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { MissingView, Page, PageOf, UnsavedView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { ClosedBook } from './parts/ornaments.tsx';

/** What a visitor gets for an address that is not there: calm words and the way back. */
export function Missing(page: PageOf<MissingView>): JSX.Element {
  return <CalmWords page={page} words={phrasesFor(page.language).missing} />;
}

/** What a reader without a network gets for a page that is not saved on the device. */
export function Unsaved(page: PageOf<UnsavedView>): JSX.Element {
  return <CalmWords page={page} words={phrasesFor(page.language).offline} />;
}

interface Words {
  readonly title: string;
  readonly text: string;
  readonly back: string;
  readonly description: string;
}

function CalmWords({ page, words }: { readonly page: Page; readonly words: Words }): JSX.Element {
  return (
    <Document page={page} title={words.title} description={words.description}>
      <div class="title-page">
        <ClosedBook />
        <h1>{words.title}</h1>
        <p class="welcome">{words.text}</p>
        <p>
          <a class="onward" href={linkFrom(page.url, rootOf(page.language, page.library.language))}>
            {words.back}
          </a>
        </p>
      </div>
    </Document>
  );
}
