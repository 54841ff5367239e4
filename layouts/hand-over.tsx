import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { rootOf } from '../src/outputs/addresses.ts';
import type { HandOverView, PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Rule } from './parts/ornaments.tsx';

/** How a pack made with the form is handed to whoever runs the library. */
export function HandOver(page: PageOf<HandOverView>): JSX.Element {
  const { handOver: say, maker } = phrasesFor(page.language);
  return (
    <Document page={page} title={say.title} description={say.description} trail={[{ name: maker.title, url: `${rootOf(page.language, page.library.language)}make/` }]}>
      <h1>{say.title}</h1>
      <Rule />
      <p class="lead">{say.lead}</p>
      <section class="prose">
        <ol>
          {say.steps.map(([head, text]) => (
            <li>
              <p>
                <strong>{head}</strong> {text}
              </p>
            </li>
          ))}
        </ol>
        <h2>{say.beforeHeading}</h2>
        <ul>
          {say.before.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
        <h2>{say.laterHeading}</h2>
        <p>{say.later}</p>
        <h2>{say.runnerHeading}</h2>
        <p>{say.runner}</p>
      </section>
    </Document>
  );
}
