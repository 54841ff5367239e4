import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { isInEnglish, phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { LibrarianView, PageOf, Related } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Numbered } from './parts/numbered.tsx';
import { Rule } from './parts/ornaments.tsx';
import { OwnerLetter } from './parts/owner-letter.tsx';
import { dateIn, langIfOther } from './parts/pack-links.tsx';
import { SkillTable } from './parts/skill-table.tsx';

type Sum = NonNullable<LibrarianView['sum']>;

interface Props {
  readonly page: PageOf<LibrarianView>;
  /** The language that the page is worded in. */
  readonly wording: string;
  readonly say: Phrases;
}

/** What the library asks of whoever looks after it: a page to work from, and to read without a script. */
export function Librarian(page: PageOf<LibrarianView>): JSX.Element {
  // In a language that lacks this page's phrases all of it is English, figures and days too.
  const wording = isInEnglish(page.language, 'librarian') ? 'en' : page.language;
  const say = phrasesFor(wording);
  const { number, numbered, owners, sum } = page.view;
  const first = numbered[0] ?? page.url;
  const title = number === 1 ? say.librarian.title : say.librarian.titleOfPage(number);
  const quality = { name: phrasesFor(page.language).quality.title, url: `${rootOf(page.language, page.library.language)}quality/` };
  return (
    <Document page={page} title={title} description={say.librarian.description} trail={[quality, ...(number === 1 ? [] : [{ name: say.librarian.title, url: first }])]} script="librarian">
      <h1>{title}</h1>
      <Rule />
      <p class="lead">{say.librarian.lead}</p>
      <ul class="shortcuts">
        {sum ? (
          <>
            <li>
              <a href="#kept-off">{say.librarian.keptOff}</a>
            </li>
            <li>
              <a href="#past">{say.librarian.past}</a>
            </li>
            <li>
              <a href="#coverage">{say.librarian.coverage}</a>
            </li>
          </>
        ) : (
          <li>
            <a href={linkFrom(page.url, first)}>{say.librarian.toSum}</a>
          </li>
        )}
        <li>
          <a href="#owners">{say.librarian.toOwners}</a>
        </li>
      </ul>
      {sum && (
        <>
          <News page={page} wording={wording} say={say} sum={sum} />
          <KeptOff say={say} sum={sum} />
          <Past page={page} wording={wording} say={say} sum={sum} />
          <section class="sum" aria-labelledby="coverage">
            <h2 id="coverage">{say.librarian.coverage}</h2>
            <p class="less">{say.librarian.coverageNote}</p>
            {sum.coverage.map((table) => (
              <SkillTable table={table} pageLanguage={wording} say={say} />
            ))}
          </section>
        </>
      )}
      <section class="sum" aria-labelledby="owners">
        <h2 id="owners">{say.librarian.owners}</h2>
        <p class="less">{owners.length === 0 ? say.librarian.ownersNone : say.librarian.ownersNote}</p>
        {owners.map((row, index) => (
          <OwnerLetter page={page} row={row} id={`owner-${String(index + 1)}`} wording={wording} say={say} />
        ))}
        {numbered.length > 1 && <Numbered page={page} numbered={numbered} name={say.librarian.pages} each={say.librarian.page} />}
      </section>
    </Document>
  );
}

function PackLink({ page, pack }: { readonly page: PageOf<LibrarianView>; readonly pack: Related }): JSX.Element {
  return (
    <a href={linkFrom(page.url, pack.url)} lang={langIfOther(pack.language, page.language)} hreflang={pack.language}>
      {pack.title}
    </a>
  );
}

function News({ page, wording, say, sum }: Props & { readonly sum: Sum }): JSX.Element {
  const { librarian } = say;
  return (
    <section class="sum" aria-labelledby="news">
      <h2 id="news">{librarian.news}</h2>
      <p class="less">{sum.news.length === 0 ? librarian.noNews : librarian.newsNote}</p>
      {sum.news.length > 0 && (
        <>
          <p class="since" hidden data-shown={librarian.sinceShown}>
            <label for="since">{librarian.since}</label> <input id="since" type="date" /> <span role="status" />
          </p>
          <div class="counts dated" role="group" aria-labelledby="news" tabIndex={0}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{librarian.companion}</th>
                  <th scope="col">{librarian.happened}</th>
                  <th scope="col">{librarian.day}</th>
                  <th scope="col">{librarian.from}</th>
                </tr>
              </thead>
              <tbody>
                {sum.news.map(({ pack, day, what }) => (
                  <tr data-day={day}>
                    <th scope="row">
                      <PackLink page={page} pack={pack} />
                    </th>
                    <td>{librarian.what[what]}</td>
                    <td>{dateIn(day, wording)}</td>
                    <td>{pack.from ?? librarian.own}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {sum.moreNews > 0 && <p class="less">{librarian.moreLines(sum.moreNews)}</p>}
        </>
      )}
    </section>
  );
}

function KeptOff({ say: { librarian }, sum }: { readonly say: Phrases; readonly sum: Sum }): JSX.Element {
  return (
    <section class="sum" aria-labelledby="kept-off">
      <h2 id="kept-off">{librarian.keptOff}</h2>
      {sum.keptOff.length > 0 && (
        <ul class="remarks">
          {sum.keptOff.map(({ owner, packs }) => (
            <li>{librarian.keptOffOf(owner === '' ? librarian.own : owner, packs)}</li>
          ))}
        </ul>
      )}
      <p class="less">{sum.keptOff.length === 0 ? librarian.keptOffNone : librarian.keptOffNote}</p>
    </section>
  );
}

function Past({ page, wording, say: { librarian }, sum }: Props & { readonly sum: Sum }): JSX.Element {
  return (
    <section class="sum" aria-labelledby="past">
      <h2 id="past">{librarian.past}</h2>
      {sum.past.length > 0 && (
        <ul class="remarks">
          {sum.past.map(({ pack, day }) => (
            <li>
              <PackLink page={page} pack={pack} />. {librarian.lastLooked}: {dateIn(day, wording)}
              {pack.from === undefined ? '' : ` (${pack.from})`}
            </li>
          ))}
        </ul>
      )}
      {sum.morePast > 0 && <p>{librarian.morePast(sum.morePast)}</p>}
      <p class="less">
        {sum.past.length === 0 ? librarian.pastNone : librarian.pastNote} {sum.never > 0 && librarian.never(sum.never)}
      </p>
    </section>
  );
}
