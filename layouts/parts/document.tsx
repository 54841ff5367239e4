import type { ComponentChildren, JSX } from 'preact';
import { isInEnglish, phrasesFor } from '../../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../../src/outputs/addresses.ts';
import { styleOf } from '../../src/outputs/styles.ts';
import type { Page } from '../../src/outputs/views.ts';
import { contentPolicy } from './content-policy.ts';
import { fitDescription } from './description.ts';
import { Footer } from './footer.tsx';
import { directionOf } from './language-name.ts';
import { nameOf } from './library-name.ts';
import { keptWith, OfflineNote } from './offline-note.tsx';
import { Masthead, Trail, type Step } from './masthead.tsx';

/** A bookmark ribbon for the browser's tab. */
const icon = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 32 32'%3E%3Cpath fill='%239b3a24' d='M9 2h14v28l-7-7-7 7z'/%3E%3C/svg%3E";

interface Props {
  readonly page: Page;
  /** Title of the page without the library's name; undefined for the library's first page. */
  readonly title: string | undefined;
  readonly description: string;
  /** Pages above this one, below the library. */
  readonly trail?: readonly Step[];
  /** Name of the one script this page can use; the page is whole without it. */
  readonly script?: string;
  /** Data for machines that read the head. */
  readonly data?: object;
  /** Stands beside the text: the bookmark ribbon. */
  readonly beside?: JSX.Element;
  readonly children: ComponentChildren;
}

/** The whole document around a page's own content: head, masthead, trail, main, footer, in the same order everywhere. */
export function Document(props: Props): JSX.Element {
  const { page, title, trail, beside, children } = props;
  const say = phrasesFor(page.language);
  const english = isInEnglish(page.language, partOf(page));
  return (
    <html lang={page.language} dir={directionOf(page.language)}>
      <Head {...props} />
      <body class={`on-${page.view.kind}`} {...(isHeard(page) && { 'data-listen': say.site.listen, 'data-listen-stop': say.site.listenStop })}>
        <a class="skip" href="#main">
          {phrasesFor(page.language).site.skip}
        </a>
        <Masthead page={page} />
        {title !== undefined && <Trail page={page} steps={trail ?? []} here={title} lang={english ? 'en' : undefined} />}
        <div class={beside ? 'spread with-ribbon' : 'spread'}>
          {beside}
          <main id="main" tabIndex={-1} {...(english && { lang: 'en', dir: 'ltr' })}>
            {english && (
              <p class="not-yet" lang={page.language} dir={directionOf(page.language)}>
                {say.site.notYet}
              </p>
            )}
            {children}
            <OfflineNote page={page} />
          </main>
        </div>
        <Footer page={page} />
      </body>
    </html>
  );
}

/** Which part of the phrases a page's own words come from, as far as a language may lack it as a whole. */
function partOf({ view }: Page): 'stack' | 'maker' | 'programs' | 'librarian' | 'site' {
  return view.kind === 'stack' || view.kind === 'maker' || view.kind === 'programs' || view.kind === 'librarian' ? view.kind : 'site';
}

function Head({ page, title, description, script, data }: Props): JSX.Element {
  const { library, language, url, assets } = page;
  const name = nameOf(page);
  // Pages of a book can also be kept on the device, and so can the form and the search.
  const names = [script, keptWith(page) ? 'offline' : undefined, isHeard(page) ? 'listen' : undefined].filter((each) => each !== undefined);
  const scripts = names.flatMap((each) => assets.scripts[each] ?? []);
  // Asked for at once: otherwise each part is known only when the one before it has come.
  const parts = names.flatMap((each) => [...(assets.preload?.[each] ?? []), ...(assets.preload?.[`${each}-${language.split('-', 1)[0] ?? ''}`] ?? [])]);
  return (
    <head>
      <meta charset="utf-8" />
      <meta http-equiv="Content-Security-Policy" content={contentPolicy(page.view.kind)} />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{title === undefined ? name : `${title} · ${name}`}</title>
      <meta name="description" content={fitDescription(description, phrasesFor(language).library.welcome)} />
      <meta name="referrer" content="no-referrer" />
      {isPassedOver(page) && <meta name="robots" content="noindex" />}
      <meta name="color-scheme" content="light dark" />
      <link rel="stylesheet" href={linkFrom(url, styleOf(assets, 'screen', page.view.kind))} media="screen" />
      <link rel="stylesheet" href={linkFrom(url, styleOf(assets, 'print', page.view.kind))} media="print" />
      <link rel="icon" href={icon} />
      {page.alternates.map((each) => (
        <link rel="alternate" hreflang={each.language} href={addressOf(library.address, each.url) ?? linkFrom(url, each.url)} />
      ))}
      {library.address !== undefined && page.view.kind !== 'missing' && page.view.kind !== 'unsaved' && !isPassedOver(page) && <link rel="canonical" href={addressOf(library.address, url)} />}
      {library.address !== undefined && (page.view.kind === 'library' || page.view.kind === 'find') && <Machines page={page} />}
      {data && <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: safeJson(data) }} />}
      {[...new Set(parts)].map((each) => (
        <link rel="modulepreload" href={linkFrom(url, each)} />
      ))}
      {scripts.map((each) => (
        <script type="module" src={linkFrom(url, each)} />
      ))}
    </head>
  );
}

/** Where a feed reader and a browser's own search find what they need. */
function Machines({ page }: { readonly page: Page }): JSX.Element {
  const root = rootOf(page.language, page.library.language);
  return (
    <>
      <link rel="alternate" type="application/atom+xml" href={linkFrom(page.url, `${root}feed.xml`)} />
      <link rel="alternate" type="application/feed+json" href={linkFrom(page.url, `${root}feed.json`)} />
      <link rel="search" type="application/opensearchdescription+xml" title={nameOf(page)} href={linkFrom(page.url, `${root}opensearch.xml`)} />
    </>
  );
}

/** Pages whose questions can be heard: those that a family and a child use. */
function isHeard({ view }: Page): boolean {
  return view.kind === 'family' || view.kind === 'booklet' || view.kind === 'recording';
}

/** Pages that no search engine should list: what is left of a companion, and what only whoever looks after the library needs. */
function isPassedOver({ view }: Page): boolean {
  return view.kind === 'retired' || view.kind === 'librarian';
}

function addressOf(root: string | undefined, url: string): string | undefined {
  return root === undefined ? undefined : `${root.replace(/\/*$/, '/')}${url}`;
}

/** JSON that cannot end the element it stands in, nor a line of a script. */
function safeJson(data: object): string {
  return JSON.stringify(data).replace(/[<>&\u2028\u2029]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** Plain data for the page's own script to read. A browser runs nothing of it. */
export function DataIsland({ id, data }: { readonly id: string; readonly data: object }): JSX.Element {
  return <script type="application/json" id={id} dangerouslySetInnerHTML={{ __html: safeJson(data) }} />;
}
