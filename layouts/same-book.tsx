import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import { compared, factsOf, shownQuestions } from '../src/outputs/same-book.ts';
import type { PageOf, RelatedPacks, SameBookCase, SameBookView, ShownPack } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { FilePlace } from './parts/file-place.tsx';
import { Rule } from './parts/ornaments.tsx';
import { dateIn, langIfOther } from './parts/pack-links.tsx';

interface Props {
  readonly page: PageOf<SameBookView>;
  readonly say: Phrases;
}

/** Packs of one book beside each other: what they have alike, where they differ, who made them, and what can be done. */
export function SameBook(page: PageOf<SameBookView>): JSX.Element {
  const say = phrasesFor(page.language);
  const { number, numbered, cases, count, related } = page.view;
  const title = number === 1 ? say.sameBook.title : say.sameBook.titleOfPage(number);
  const quality = { name: say.quality.title, url: `${rootOf(page.language, page.library.language)}quality/` };
  return (
    <Document page={page} title={title} description={say.sameBook.description} trail={number === 1 ? [quality] : [quality, { name: say.sameBook.title, url: numbered[0] ?? page.url }]}>
      <h1>{title}</h1>
      <Rule />
      <p class="lead">{say.sameBook.lead}</p>
      <p>{count === 0 ? say.sameBook.none : say.sameBook.count(count)}</p>
      {count > 0 && number === 1 && <Ways say={say} />}
      {cases.map((each, index) => (
        <Case page={page} say={say} each={each} id={`book-${String(index + 1)}`} />
      ))}
      {numbered.length > 1 && (
        <nav class="numbered-pages" aria-label={say.sameBook.pages}>
          <ol>
            {numbered.map((url, index) => (
              <li>
                <a href={linkFrom(page.url, url)} aria-current={url === page.url ? 'page' : undefined} aria-label={say.find.page(index + 1)}>
                  {index + 1}
                </a>
              </li>
            ))}
          </ol>
        </nav>
      )}
      {related.length > 0 && <RelatedList page={page} say={say} related={related} />}
    </Document>
  );
}

function Ways({ say }: Pick<Props, 'say'>): JSX.Element {
  return (
    <section class="what-can-be-done" aria-labelledby="what">
      <h2 id="what">{say.sameBook.what}</h2>
      <ul>
        {say.sameBook.ways.map(([when, how]) => (
          <li>
            <strong>{when}</strong> {how}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Case({ page, say, each, id }: Props & { readonly each: SameBookCase; readonly id: string }): JSX.Element {
  const { packs, others, grounds, shared } = each;
  const { alike, differing } = compared(packs.map((shown) => factsOf(shown, say, (day) => dateIn(day, page.language))));
  const [first] = packs;
  const questions = shownQuestions(shared);
  return (
    <section class="same-book" aria-labelledby={id}>
      <h2 id={id} lang={first && langIfOther(first.pack.language, page.language)}>
        {first?.pack.book.title}
      </h2>
      <dl class="in-common">
        <div>
          <dt>{say.sameBook.why}</dt>
          {grounds.map((ground) => (
            <dd>{say.sameBook.grounds[ground]}</dd>
          ))}
        </div>
      </dl>
      {alike.length > 0 && (
        <>
          <h3>{say.sameBook.alike}</h3>
          <dl class="alike">
            {alike.map(([name, value]) => (
              <Fact name={name} value={value} />
            ))}
          </dl>
        </>
      )}
      <h3>{say.sameBook.differs}</h3>
      {differing.every((facts) => facts.length === 0) && <p>{say.sameBook.same}</p>}
      {/* Beside each other on a wide page, below each other on a phone. */}
      <ul class="packs-beside">
        {packs.map((shown, index) => (
          <li>
            <PackName page={page} shown={shown} heading />
            <dl>
              {(differing[index] ?? []).map(([name, value]) => (
                <Fact name={name} value={value === '' ? say.sameBook.notGiven : value} />
              ))}
              <div>
                <dt>{say.sameBook.facts.file}</dt>
                <dd>
                  <FilePlace library={page.library} file={shown.pack.file} line={1} />
                </dd>
              </div>
            </dl>
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <p>
          {say.sameBook.others}:{' '}
          {others.map((shown, index) => (
            <>
              {index > 0 && say.comma}
              <PackName page={page} shown={shown} />
            </>
          ))}
        </p>
      )}
      {questions.length > 0 && (
        <details>
          <summary>{say.sameBook.shared(shared.length)}</summary>
          <ul class="shared-questions" lang={first && langIfOther(first.pack.language, page.language)}>
            {questions.map((question) => (
              <li>{question}</li>
            ))}
          </ul>
          {shared.length > questions.length && <p>{say.sameBook.andMore(shared.length - questions.length)}</p>}
        </details>
      )}
    </section>
  );
}

function Fact({ name, value }: { readonly name: string; readonly value: string }): JSX.Element {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <bdi>{value}</bdi>
      </dd>
    </div>
  );
}

function PackName({ page, shown, heading = false }: { readonly page: PageOf<SameBookView>; readonly shown: ShownPack; readonly heading?: boolean }): JSX.Element {
  const other = langIfOther(shown.pack.language, page.language);
  const link = (
    <a href={linkFrom(page.url, shown.urls.family)} lang={other} hreflang={other}>
      {shown.pack.title}
    </a>
  );
  return heading ? <h4>{link}</h4> : link;
}

function Named({ page, shown }: Pick<Props, 'page'> & { readonly shown: ShownPack }): JSX.Element {
  return (
    <>
      <PackName page={page} shown={shown} /> <FilePlace library={page.library} file={shown.pack.file} line={1} />
    </>
  );
}

/** A list of relatives that somebody may look through. */
const mostRelated = 200;

function RelatedList({ page, say, related }: Props & { readonly related: readonly RelatedPacks[] }): JSX.Element {
  return (
    <section aria-labelledby="related">
      <h2 id="related">{say.sameBook.relatedHeading}</h2>
      <p class="less">{say.sameBook.relatedLead}</p>
      <ul class="relatives">
        {related.slice(0, mostRelated).map(({ first, second, how }) => (
          <li>
            <Named page={page} shown={first} /> {say.sameBook.and} <Named page={page} shown={second} />
            {': '}
            {say.sameBook.how[how]}
          </li>
        ))}
      </ul>
      {related.length > mostRelated && <p>{say.sameBook.andMore(related.length - mostRelated)}</p>}
    </section>
  );
}
