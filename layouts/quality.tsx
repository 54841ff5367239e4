import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { isInEnglish, phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { PageOf, QualityView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Numbered } from './parts/numbered.tsx';
import { Rule } from './parts/ornaments.tsx';
import { QualityEntry } from './parts/quality-entry.tsx';
import { QualityFilter } from './parts/quality-filter.tsx';
import { QualitySum } from './parts/quality-sum.tsx';

/** How the library's packs measure up, in honest words, with what each figure does not mean. The totals stand on the first page of the list. */
export function Quality(page: PageOf<QualityView>): JSX.Element {
  const say = phrasesFor(page.language);
  const { number, numbered, rows } = page.view;
  const isFirst = number === 1;
  const first = numbered[0] ?? page.url;
  const title = isFirst ? say.quality.title : say.quality.titleOfPage(number);
  return (
    <Document page={page} title={title} description={say.quality.description} trail={isFirst ? [] : [{ name: say.quality.title, url: first }]} script="quality">
      <h1>{title}</h1>
      <Rule />
      <p class="lead">{say.quality.lead}</p>
      <ul class="shortcuts">
        {!isFirst && <Shortcut to={linkFrom(page.url, first)} name={say.quality.toSum} />}
        <Shortcut to={isFirst ? '#meaning' : `${linkFrom(page.url, first)}#meaning`} name={say.quality.toMeaning} />
        <Shortcut to={linkFrom(page.url, `${rootOf(page.language, page.library.language)}quality/same-book/`)} name={say.sameBook.title} />
        <Shortcut to={linkFrom(page.url, 'quality.json')} name={say.quality.data} />
      </ul>
      {isFirst && <QualitySum page={page} say={say} />}
      <section class="ledger" aria-labelledby="each">
        <h2 id="each">{say.quality.each}</h2>
        <QualityFilter page={page} say={say} />
        {rows.map((row) => (
          <QualityEntry page={page} row={row} say={say} />
        ))}
        {numbered.length > 1 && <Numbered page={page} numbered={numbered} name={say.quality.pages} each={say.quality.page} />}
      </section>
      {isFirst && <Meaning say={say} />}
      {isFirst && (
        <p class="to-librarian">
          <a class="onward" href={linkFrom(page.url, `${rootOf(page.language, page.library.language)}librarian/`)} lang={isInEnglish(page.language, 'librarian') ? 'en' : undefined}>
            {say.librarian.link}
          </a>
        </p>
      )}
    </Document>
  );
}

function Shortcut({ to, name }: { readonly to: string; readonly name: string }): JSX.Element {
  return (
    <li>
      <a href={to}>{name}</a>
    </li>
  );
}

function Meaning({ say }: { readonly say: Phrases }): JSX.Element {
  return (
    <section class="meaning" aria-labelledby="meaning">
      <h2 id="meaning">{say.quality.meaning}</h2>
      <dl class="meanings">
        {say.quality.meanings.map(([figure, meaning]) => (
          <div>
            <dt>{figure}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
