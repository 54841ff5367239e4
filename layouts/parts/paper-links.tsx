import type { JSX } from 'preact';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { PackView, PageOf, PaperKind } from '../../src/outputs/views.ts';

interface Props {
  readonly page: PageOf<PackView>;
  /** The sheets that belong to this page, in their order. */
  readonly kinds: readonly PaperKind[];
}

/** The sheets of a pack that belong to a page: each with its kind of file, its pages and its size told before anybody opens it. Nothing where none was made. */
export function PaperLinks({ page, kinds }: Props): JSX.Element | null {
  const { papers, pack } = page.view.shown;
  const say = phrasesFor(page.language).paper;
  const here = kinds.flatMap((kind) => papers.filter((paper) => paper.kind === kind));
  if (here.length === 0) return null;
  return (
    <section class="papers" aria-labelledby="papers">
      <h2 id="papers">{say.heading}</h2>
      <p class="note">{say.note}</p>
      <ul>
        {here.map((paper) => (
          <li>
            <a href={linkFrom(page.url, paper.url)} hreflang={pack.language} type="application/pdf">
              {say.kinds[paper.kind]}
            </a>{' '}
            <span class="papers-what">
              {say.notes[paper.kind]} <span class="papers-file">({say.file(paper.pages, Math.max(1, Math.round(paper.bytes / 1000)))})</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
