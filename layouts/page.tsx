import type { JSX } from 'preact';
import type { Page } from '../src/outputs/views.ts';
import { Booklet } from './booklet.tsx';
import { Browse, BrowseListPage } from './browse.tsx';
import { Family } from './family.tsx';
import { Find } from './find.tsx';
import { Lesson } from './lesson.tsx';
import { HandOver } from './hand-over.tsx';
import { Librarian } from './librarian.tsx';
import { LibraryPage } from './library.tsx';
import { MakerPage } from './maker.tsx';
import { Missing, Unsaved } from './missing.tsx';
import { Programs } from './programs.tsx';
import { Prose } from './prose.tsx';
import { Recording } from './recording.tsx';
import { Quality } from './quality.tsx';
import { Retired } from './retired.tsx';
import { SameBook } from './same-book.tsx';
import { Stack } from './stack.tsx';
import { toHtml } from './to-html.ts';

/** A page of the site as the text of an HTML file. The same page gives the same text. */
export function pageHtml(page: Page): string {
  const html = `<!DOCTYPE html>\n${toHtml(layoutOf(page))}\n`;
  return page.view.kind === 'missing' && page.library.address !== undefined ? fromTheRoot(html, new URL(page.library.address).pathname) : html;
}

/**
 * The page for a missing address is sent for addresses of any depth, so what it links to cannot be relative to itself.
 * Only a library that says where it lives knows the way from the root of its host.
 */
function fromTheRoot(html: string, path: string): string {
  return html.replace(/ (href|src)="(?![a-z]+:|#|\/)(?:\.\/)?([^"]*)"/g, (_, name: string, to: string) => ` ${name}="${path.replace(/\/*$/, '/')}${to}"`);
}

/** The visible list of layouts, one for each kind of view. */
function layoutOf(page: Page): JSX.Element {
  const { view } = page;
  switch (view.kind) {
    case 'library':
      return <LibraryPage {...page} view={view} />;
    case 'family':
      return <Family {...page} view={view} />;
    case 'booklet':
      return <Booklet {...page} view={view} />;
    case 'lesson':
      return <Lesson {...page} view={view} />;
    case 'recording':
      return <Recording {...page} view={view} />;
    case 'quality':
      return <Quality {...page} view={view} />;
    case 'same-book':
      return <SameBook {...page} view={view} />;
    case 'stack':
      return <Stack {...page} view={view} />;
    case 'maker':
      return <MakerPage {...page} view={view} />;
    case 'hand-over':
      return <HandOver {...page} view={view} />;
    case 'find':
      return <Find {...page} view={view} />;
    case 'browse':
      return <Browse {...page} view={view} />;
    case 'browse-list':
      return <BrowseListPage {...page} view={view} />;
    case 'programs':
      return <Programs {...page} view={view} />;
    case 'prose':
      return <Prose {...page} view={view} />;
    case 'unsaved':
      return <Unsaved {...page} view={view} />;
    case 'retired':
      return <Retired {...page} view={view} />;
    case 'librarian':
      return <Librarian {...page} view={view} />;
    case 'missing':
      return <Missing {...page} view={view} />;
  }
}
