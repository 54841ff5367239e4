import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { LibraryView, PageOf, ShownPack } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { directionOf } from './parts/language-name.ts';
import { nameOf } from './parts/library-name.ts';
import { ClosedBook, LampAndBook, Rule } from './parts/ornaments.tsx';
import { faceOf, langIfOther } from './parts/pack-links.tsx';
import { Picture } from './parts/picture.tsx';

/** The library's first page: a title page, then the books as a table of contents. */
export function LibraryPage(page: PageOf<LibraryView>): JSX.Element {
  const { library, language, view } = page;
  const say = phrasesFor(language);
  const own = page.own?.welcome;
  return (
    <Document page={page} title={undefined} description={say.library.description(view.packs.length)}>
      {own ? (
        <div class="title-page" dangerouslySetInnerHTML={{ __html: own(page) }} />
      ) : (
        <div class="title-page">
          <LampAndBook />
          <h1>{nameOf(page)}</h1>
          <p class="welcome">{library.welcome?.[language] ?? say.library.welcome}</p>
          <Rule double />
        </div>
      )}
      <section class="contents" aria-labelledby="books">
        <h2 id="books">{view.count > view.packs.length ? say.find.newest : say.library.contents}</h2>
        {view.packs.length === 0 ? <p>{say.library.none}</p> : <Entries page={page} packs={view.packs} first />}
        {view.count > view.packs.length && (
          <p class="all-books">
            <a class="onward" href={linkFrom(page.url, `${rootOf(language, library.language)}index/`)}>
              {say.find.allInIndex(view.count)}
            </a>
          </p>
        )}
      </section>
      {view.elsewhere.length > 0 && (
        <section class="contents elsewhere" aria-labelledby="elsewhere">
          <h2 id="elsewhere">{say.library.elsewhere}</h2>
          <p class="note">{say.library.elsewhereNote}</p>
          <Entries page={page} packs={view.elsewhere} first={false} />
        </section>
      )}
    </Document>
  );
}

function Entries({ page, packs, first }: { readonly page: PageOf<LibraryView>; readonly packs: readonly ShownPack[]; readonly first: boolean }): JSX.Element {
  return (
    <ol class="entries">
      {packs.map((shown, index) => (
        <Entry page={page} shown={shown} first={first && index === 0} />
      ))}
    </ol>
  );
}

/** One book: its drawing, its title, who made it, one line, and for whom and how long in words. */
function Entry({ page, shown, first }: { readonly page: PageOf<LibraryView>; readonly shown: ShownPack; readonly first: boolean }): JSX.Element {
  const { pack } = shown;
  // The whole entry stands in the pack's language, so that a voice reads it right.
  const say = phrasesFor(pack.language);
  const face = faceOf(shown);
  const other = langIfOther(pack.language, page.language);
  return (
    <li class="entry" lang={other} dir={other === undefined ? undefined : directionOf(other)}>
      <div class="entry-plate">{face ? <Picture picture={face} linkTo={(url) => linkFrom(page.url, url)} sizes="(min-width: 44rem) 14rem, 40vw" first={first} /> : <ClosedBook />}</div>
      <div class="entry-words">
        <h3>
          <a href={linkFrom(page.url, shown.urls.family)} hreflang={other}>
            {pack.title}
          </a>
        </h3>
        <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
        <p class="summary">{pack.summary}</p>
      </div>
      <p class="leaders">
        <span>{say.forGrades(pack.for.grades)}</span>
        <span class="leader" aria-hidden="true" />
        <span class="leader-comma">{say.comma}</span>
        <span>{say.minutesInWords(pack.for.minutes)}</span>
      </p>
    </li>
  );
}
