import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { families, kindsOfBook } from '../src/core/pack/schema.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import { browseGroups, type BrowseList, type BrowseListView, type BrowseView, type PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { ownName } from './parts/language-name.ts';

/** The index at the back of the library: every line with its books, or in a large library with how many there are. */
export function Browse(page: PageOf<BrowseView>): JSX.Element {
  const say = phrasesFor(page.language);
  const { lists, others, count } = page.view;
  const root = rootOf(page.language, page.library.language);
  return (
    <Document page={page} title={say.find.index.title} description={say.find.index.description(count)} trail={[{ name: say.find.title, url: `${root}find/` }]}>
      <header class="book-head">
        <h1>{say.find.index.title}</h1>
        <p class="lead">{say.find.index.lead}</p>
      </header>
      {browseGroups.map((group) => {
        const of = lists.filter((list) => list.group === group);
        return of.length === 0 ? null : (
          <section class={`index-group index-${group}`} aria-labelledby={`by-${group}`}>
            <h2 id={`by-${group}`}>{say.find.index.groups[group]}</h2>
            <dl>
              {of.map((list) => (
                <Line page={page} list={list} say={say} />
              ))}
            </dl>
          </section>
        );
      })}
      {others.length > 0 && (
        <section class="index-group" aria-labelledby="by-language">
          <h2 id="by-language">{say.find.index.groups.language}</h2>
          <dl>
            {others.map(({ language, packs }) => (
              <div>
                <dt lang={language}>{ownName(language)}</dt>
                <dd>
                  <a href={linkFrom(page.url, page.library.languages.includes(language) ? `${rootOf(language, page.library.language)}index/` : `${root}find/`)}>{say.find.index.books(packs)}</a>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </Document>
  );
}

function Line({ page, list, say }: { readonly page: PageOf<BrowseView>; readonly list: BrowseList; readonly say: Phrases }): JSX.Element {
  return (
    <div>
      <dt>{lineName(list, say)}</dt>
      {list.path === undefined ? (
        list.packs.map(({ pack, urls }) => (
          <dd>
            <a href={linkFrom(page.url, urls.family)}>{pack.title}</a>
          </dd>
        ))
      ) : (
        <dd>
          <a href={linkFrom(page.url, rootOf(page.language, page.library.language) + list.path)}>{say.find.index.books(list.packs.length)}</a>
        </dd>
      )}
    </div>
  );
}

/** What a line of the index is called. */
function lineName({ group, key }: BrowseList, say: Phrases): string {
  if (group === 'grade') return say.grades([key]);
  const kind = kindsOfBook.find((each) => each === key);
  if (group === 'book' && kind) return say.find.kindsOfBook[kind];
  const family = families.find((each) => each === key);
  if (group === 'feeling' && family) return say.families[family];
  return key === '' ? say.find.index.other : key;
}

/** One line's books, sixty to a page. */
export function BrowseListPage(page: PageOf<BrowseListView>): JSX.Element {
  const say = phrasesFor(page.language);
  const { list, packs, number, paths } = page.view;
  const root = rootOf(page.language, page.library.language);
  const name = lineName(list, say);
  const title = number === 1 ? `${say.find.index.title}: ${name}` : `${say.find.index.title}: ${name}, ${say.find.page(number).toLocaleLowerCase(page.language)}`;
  return (
    <Document
      page={page}
      title={title}
      description={say.find.index.listDescription(name, list.packs.length)}
      trail={[
        { name: say.find.title, url: `${root}find/` },
        { name: say.find.index.title, url: `${root}index/` },
      ]}
    >
      <header class="book-head">
        <p class="kind">{say.find.index.groups[list.group]}</p>
        <h1>{name}</h1>
        <p class="by">{say.find.index.books(list.packs.length)}</p>
      </header>
      <ol class="found">
        {packs.map(({ pack, urls }) => (
          <li>
            <h2>
              <a href={linkFrom(page.url, urls.family)}>{pack.title}</a>
            </h2>
            <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
            <p class="found-for">
              {say.forGrades(pack.for.grades)}, {say.minutesInWords(pack.for.minutes)}
            </p>
          </li>
        ))}
      </ol>
      {paths.length > 1 && (
        <nav class="numbered-pages" aria-label={say.find.index.pages}>
          <ol>
            {paths.map((path, index) => (
              <li>
                <a href={linkFrom(page.url, root + path)} aria-current={index + 1 === number ? 'page' : undefined} aria-label={say.find.page(index + 1)}>
                  {index + 1}
                </a>
              </li>
            ))}
          </ol>
        </nav>
      )}
      <p>
        <a class="onward" href={linkFrom(page.url, `${root}index/`)}>
          {say.find.index.back}
        </a>
      </p>
    </Document>
  );
}
