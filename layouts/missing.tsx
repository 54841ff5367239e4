import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { MissingView, PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { ClosedBook } from './parts/ornaments.tsx';

/** What a visitor gets for an address that is not there: calm words and the way back. */
export function Missing(page: PageOf<MissingView>): JSX.Element {
  const say = phrasesFor(page.language).missing;
  return (
    <Document page={page} title={say.title} description={say.description}>
      <div class="title-page">
        <ClosedBook />
        <h1>{say.title}</h1>
        <p class="welcome">{say.text}</p>
        <p>
          <a class="onward" href={linkFrom(page.url, rootOf(page.language, page.library.language))}>
            {say.back}
          </a>
        </p>
      </div>
    </Document>
  );
}
