import type { JSX } from 'preact';
import { isInEnglish, phrasesFor } from '../src/core/languages/pick-language.ts';
import type { PageOf, StackView } from '../src/outputs/views.ts';
import { DataIsland, Document } from './parts/document.tsx';
import { directionOf } from './parts/language-name.ts';
import { Rule } from './parts/ornaments.tsx';

/** The page of the stack as it is loaded: what it is for, and the data that its script works with. The script does the rest on the device. */
export function Stack(page: PageOf<StackView>): JSX.Element {
  const phrases = phrasesFor(page.language);
  const say = phrases.stack;
  const { packs } = page.view;
  const letters = directionOf(page.language) === 'rtl' ? 'a ا' : 'a';
  return (
    <Document page={page} title={say.title} description={say.description} script={`stack-${isInEnglish(page.language, 'stack') ? 'en' : (page.language.split('-')[0] ?? '')}`}>
      <header class="stack-head">
        <p class="kind">{say.kind}</p>
        <h1>{say.title}</h1>
        <Rule />
        <p class="lead">{say.lead}</p>
      </header>
      <p class="note needs-script">{say.needsScript}</p>
      {packs === undefined && <p class="note">{say.large}</p>}
      <div id="stack-room" />
      <section id="stack-about" class="stack-about" aria-labelledby="what-for">
        <h2 id="what-for">{say.about}</h2>
        <dl>
          {say.abouts.map(([name, text]) => (
            <div>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      </section>
      {/* A letter of each face that the script's leaves are set in: else the browser would ask for the face when its first leaf is opened, and this page asks for nothing once it is loaded. */}
      <p class="unseen every-face" aria-hidden="true">
        {letters} <b>{letters}</b> <i>a</i>{' '}
        <span>
          a <b>a</b>
        </span>
      </p>
      <DataIsland id="stack-data" data={{ packs: packs ?? [], strengths: phrases.strengths, comma: phrases.comma }} />
    </Document>
  );
}
