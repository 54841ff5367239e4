import type { JSX } from 'preact';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../../src/outputs/addresses.ts';
import type { Page } from '../../src/outputs/views.ts';
import { toHtml } from '../to-html.ts';
import { ownName } from './language-name.ts';
import { nameOf } from './library-name.ts';
import { Logo } from './logo.tsx';
import { NavLinks } from './nav-links.tsx';
import { Rule } from './ornaments.tsx';
import { sharedByBooks } from './shared-by-books.ts';

/** A page above this one. */
export interface Step {
  readonly name: string;
  readonly url: string;
}

/** The running head, the same on every page. */
export function Masthead({ page }: { readonly page: Page }): JSX.Element {
  // A book's page in other languages is a page of that book.
  const usual = page.alternates.length > 0 ? inside : shared;
  return <header class="masthead" dangerouslySetInnerHTML={{ __html: (page.own?.masthead ?? usual)(page) }} />;
}

const inside = (page: Page): string => toHtml(<MastheadInside page={page} />);
const shared = sharedByBooks(inside);

/** The library's logo and name, its few pages, its other languages. */
export function MastheadInside({ page }: { readonly page: Page }): JSX.Element {
  const { language, library, url } = page;
  const say = phrasesFor(language).site;
  const root = rootOf(language, library.language);
  const links = [
    { name: say.library, url: root },
    { name: say.find, url: `${root}find/` },
    { name: say.homeReading, url: `${root}home-reading/` },
    { name: say.about, url: `${root}about/` },
  ];
  return (
    <>
      <div class="masthead-line">
        <p class="site-name">
          <a href={linkFrom(url, root)}>
            <Logo page={page} />
            {nameOf(page)}
          </a>
        </p>
        <OtherLanguages page={page} />
        <NavLinks from={url} name={say.nav} links={links} />
      </div>
      {library.headNote?.[language] !== undefined && <p class="head-note">{library.headNote[language]}</p>}
      <Rule double />
    </>
  );
}

/** This page in the library's other languages, or their first pages where it has none. Each is written in its own language. */
export function OtherLanguages({ page }: { readonly page: Page }): JSX.Element | null {
  const { library, language, url } = page;
  const others = library.languages.filter((each) => each !== language);
  if (others.length === 0) return null;
  const urlIn = (other: string) => page.alternates.find((each) => each.language === other)?.url ?? rootOf(other, library.language);
  return (
    <nav class="languages" aria-label={phrasesFor(language).site.languages}>
      <ul>
        {others.map((other) => (
          <li>
            <a href={linkFrom(url, urlIn(other))} lang={other} hreflang={other}>
              {ownName(other)}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The way from the library down to this page. */
export function Trail({
  page,
  steps,
  here,
  lang,
}: {
  readonly page: Page;
  readonly steps: readonly Step[];
  readonly here: string;
  /** Of `here`, where it is not the page's. */ readonly lang?: string | undefined;
}): JSX.Element {
  const say = phrasesFor(page.language).site;
  const above = [{ name: say.library, url: rootOf(page.language, page.library.language) }, ...steps];
  const last = steps.length > 0 ? here.slice(here.lastIndexOf(': ') + 1).trim() : here;
  return (
    <nav class="trail" aria-label={say.trail}>
      <ol>
        {above.map((step) => (
          <li>
            <a href={linkFrom(page.url, step.url)}>{step.name}</a>
          </li>
        ))}
        <li>
          <span aria-current="page" lang={lang}>
            {last}
          </span>
        </li>
      </ol>
    </nav>
  );
}
