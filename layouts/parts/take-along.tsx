import type { JSX } from 'preact';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { PackView, PageOf } from '../../src/outputs/views.ts';
import { numbersIn } from '../../src/core/languages/formats.ts';

/** The book's pages as one folder to take along: what is in it, how to open it, and how large it is before anybody fetches it. */
export function TakeAlong({ page }: { readonly page: PageOf<PackView> }): JSX.Element | null {
  const { folder, recording, papers } = page.view.shown;
  if (!folder) return null;
  const say = phrasesFor(page.language).offline.folder;
  const megabytes = numbersIn(page.language, { maximumFractionDigits: 1, minimumFractionDigits: 1 }).format(folder.bytes / 1024 / 1024);
  return (
    <section class="papers take-along" aria-labelledby="take-along">
      <h2 id="take-along">{say.heading}</h2>
      <p>
        {papers.length > 0 ? say.inside : say.insideWithoutSheets} {say.open} {recording?.film && say.noFilm}
      </p>
      <p class="note">{say.answers}</p>
      <p>
        <a class="onward" href={linkFrom(page.url, folder.url)} download>
          {say.get(megabytes)}
        </a>
      </p>
    </section>
  );
}
