import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { PageOf, ProgramsView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Rule } from './parts/ornaments.tsx';

/** For whoever collects packs with a program: every file, its standard, its fields, and what can be relied on. */
export function Programs(page: PageOf<ProgramsView>): JSX.Element {
  const { programs: say } = phrasesFor(page.language);
  const { library, url, view } = page;
  const root = rootOf(page.language, library.language);
  const whole = library.address !== undefined;
  const files: readonly (readonly [address: string, is: keyof typeof say.files, standard: string, link: string | undefined])[] = [
    ['packs.json', 'list', say.own, 'packs.json'],
    ['packs/…/pack.json', 'pack', 'JSON Schema, draft-07', view.example?.json],
    ['arrivals.json', 'arrivals', say.own, 'arrivals.json'],
    ['schema/pack.json', 'schema', 'JSON Schema, draft-07', 'schema/pack.json'],
    ['packs/…/pack.md', 'text', say.own, view.example?.text],
    ['packs/…/', 'page', 'schema.org: LearningResource, Book (JSON-LD)', view.example?.page],
    ...(whole
      ? ([
          [`${root}feed.xml`, 'atom', 'Atom, RFC 4287', `${root}feed.xml`],
          [`${root}feed.json`, 'feed', 'JSON Feed 1.1', `${root}feed.json`],
          ['sitemap.xml', 'sitemap', 'sitemaps.org 0.9', 'sitemap.xml'],
          [`${root}opensearch.xml`, 'search', 'OpenSearch 1.1', `${root}opensearch.xml`],
        ] as const)
      : []),
    ['robots.txt', 'robots', 'RFC 9309', 'robots.txt'],
    ['packs/…/stops.vtt', 'stops', 'WebVTT', view.stops],
    ['packs/…/pack.zip', 'folder', 'ZIP', undefined],
  ];
  return (
    <Document page={page} title={say.title} description={say.description}>
      <h1>{say.title}</h1>
      <Rule />
      <p class="lead">{say.lead}</p>
      <section class="prose">
        <h2>{say.filesHeading}</h2>
        {!whole && <p>{say.onlyWithAddress}</p>}
        <dl class="file-list">
          {files.map(([address, is, standard, link]) => (
            <div>
              <dt>
                {link === undefined ? (
                  <code dir="ltr">{address}</code>
                ) : (
                  <a href={linkFrom(url, link)}>
                    <code dir="ltr">{address}</code>
                  </a>
                )}
              </dt>
              <dd>{say.files[is]}</dd>
              <dd class="note">
                {say.standard}: {standard}
              </dd>
            </div>
          ))}
        </dl>
        <h2>{say.fieldsHeading}</h2>
        <dl class="file-list">
          {say.fields.map(([names, text]) => (
            <div>
              <dt>
                <code dir="ltr" lang="en">
                  {names}
                </code>
              </dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
        <h2>{say.promisesHeading}</h2>
        <ul>
          {say.promises.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
        <h2>{say.rightsHeading}</h2>
        <p>{say.rights}</p>
      </section>
    </Document>
  );
}
