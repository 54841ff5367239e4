import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { PageOf, RetiredView } from '../src/outputs/views.ts';
import { Contact } from './parts/contact.tsx';
import { Document } from './parts/document.tsx';
import { ownName } from './parts/language-name.ts';
import { ClosedBook } from './parts/ornaments.tsx';
import { dateIn, langIfOther } from './parts/pack-links.tsx';

/** At the address of a companion that was taken out: when, why, where to go now, and what becomes of a child's answers. */
export function Retired(page: PageOf<RetiredView>): JSX.Element {
  const { pack, instead, elsewhere, stillIn } = page.view.retired;
  const say = phrasesFor(page.language).retired;
  return (
    <Document page={page} title={say.title(pack.title)} description={say.description(pack.title)} script="retired">
      <div class="title-page">
        <ClosedBook />
        <p class="kind">{say.kind}</p>
        <h1>{pack.title}</h1>
        <p class="welcome">{say.since(dateIn(pack.retired.on, page.language))}</p>
      </div>
      <section class="retired-why" aria-labelledby="why">
        <h2 id="why">{say.why}</h2>
        <p>{pack.retired.because}</p>
        {pack.owner?.contact !== undefined && (
          <p class="note">
            {say.ask(pack.owner.name)} <Contact text={pack.owner.contact} />
          </p>
        )}
      </section>
      <section class="retired-where" aria-labelledby="where">
        <h2 id="where">{say.where}</h2>
        <ul>
          {instead && (
            <li>
              <a href={linkFrom(page.url, instead.url)} lang={langIfOther(instead.language, page.language)} hreflang={instead.language}>
                {instead.title}
              </a>{' '}
              <span class="note">{say.instead}</span>
            </li>
          )}
          {elsewhere !== undefined && (
            <li>
              <a href={elsewhere} rel="noreferrer">
                {say.elsewhere}
              </a>
            </li>
          )}
          {stillIn.map((each) => (
            <li>
              <a href={linkFrom(page.url, each.url)} lang={langIfOther(each.language, page.language)} hreflang={each.language}>
                {each.title}
              </a>{' '}
              <span class="note">{say.stillIn(ownName(each.language))}</span>
            </li>
          ))}
          <li>
            <a href={linkFrom(page.url, `${rootOf(page.language, page.library.language)}find/`)}>{say.find}</a>
          </li>
        </ul>
      </section>
      <Answers page={page} />
    </Document>
  );
}

/** What children answered is on their device, and this is the only page that can reach it now. */
function Answers({ page }: { readonly page: PageOf<RetiredView> }): JSX.Element {
  const { part, retired } = page.view;
  const { pack, urls } = retired;
  const say = phrasesFor(page.language).retired;
  const own = { 'data-slug': pack.slug, 'data-language': pack.language, 'data-book': urls.family, 'data-none': say.noAnswers, 'data-keep': say.answersHere };
  return (
    <section class="retired-answers" aria-labelledby="answers" {...own}>
      <h2 id="answers">{say.answers}</h2>
      {part === 'booklet' ? (
        <>
          <p class="told" role="status">
            {say.answersOnDevice}
          </p>
          <div class="screen-room" />
        </>
      ) : (
        <p>
          {say.answersThere} <a href={linkFrom(page.url, urls.booklet)}>{say.toAnswers}</a>
        </p>
      )}
    </section>
  );
}
