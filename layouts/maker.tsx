import type { JSX } from 'preact';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { linkFrom } from '../src/outputs/addresses.ts';
import { makerDataOf } from '../src/outputs/maker-data.ts';
import { makerForm, type FormNode } from '../src/outputs/maker-form.ts';
import type { MakerView, PageOf } from '../src/outputs/views.ts';
import { DataIsland, Document } from './parts/document.tsx';
import { Rule } from './parts/ornaments.tsx';

/** The form that makes a pack. Without a script the page explains every field, for whoever writes the file by hand. */
export function MakerPage(page: PageOf<MakerView>): JSX.Element {
  const phrases = phrasesFor(page.language);
  const say = phrases.maker;
  return (
    <Document page={page} title={say.title} description={say.description} script="maker">
      <h1>{say.title}</h1>
      <Rule />
      <p class="lead">{say.lead}</p>
      <div id="maker">
        <noscript>
          <p class="note">{say.noScript}</p>
        </noscript>
      </div>
      <section class="every-field">
        <details>
          <summary>{say.everyField}</summary>
          <p>
            <a class="onward" href={linkFrom(page.url, 'make/pack.md')} hreflang="en">
              {say.emptyFile}
            </a>
          </p>
          {makerForm(phrases).map((chapter) =>
            chapter.fields.length === 0 ? null : (
              <>
                <h2>{chapter.title}</h2>
                <dl>
                  {chapter.fields.map((node) => (
                    <Explained node={node} example={say.example} />
                  ))}
                </dl>
              </>
            ),
          )}
        </details>
      </section>
      <p>
        <a class="onward" href={linkFrom(page.url, `${page.url}hand-over/`)}>
          {say.handOver}
        </a>
      </p>
      <DataIsland id="maker-data" data={makerDataOf(page)} />
    </Document>
  );
}

/** A field with its name in the file, and what is in it. */
function Explained({ node, example }: { readonly node: FormNode; readonly example: string }): JSX.Element {
  const inner = [...(node.fields ?? []), ...(node.item?.fields ?? [])];
  return (
    <div>
      <dt>
        {node.label} {node.kind !== 'body' && <code>{node.name}:</code>}
      </dt>
      <dd>
        {node.hint}
        {node.example !== undefined && node.kind !== 'body' && (
          <>
            {' '}
            {example} <span class="example">{node.example}</span>
          </>
        )}
        {inner.length > 0 && (
          <dl>
            {inner.map((each) => (
              <Explained node={each} example={example} />
            ))}
          </dl>
        )}
      </dd>
    </div>
  );
}
