import type { JSX } from 'preact';
import type { PageOf, ProseView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Rule } from './parts/ornaments.tsx';

/** One of the library's own pages: a title and text. */
export function Prose(page: PageOf<ProseView>): JSX.Element {
  const { title, description, html } = page.view;
  return (
    <Document page={page} title={title} description={description}>
      <h1>{title}</h1>
      <Rule />
      <div class="prose" dangerouslySetInnerHTML={{ __html: html }} />
    </Document>
  );
}
