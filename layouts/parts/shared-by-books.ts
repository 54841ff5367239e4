import type { Page } from '../../src/outputs/views.ts';

/** A family page, a booklet, a lesson or a recording. */
export function isOfABook({ view }: Page): boolean {
  return view.kind === 'family' || view.kind === 'booklet' || view.kind === 'lesson' || view.kind === 'recording';
}

/**
 * A part that all pages of books in one language have word for word where they lie equally deep, since its links are relative and none leads
 * to a book: it is rendered once for them, which spares an eighth of rendering a library. For other pages it is made each time.
 */
export function sharedByBooks(make: (page: Page) => string): (page: Page) => string {
  let site: Pick<Page, 'library' | 'assets'> | undefined;
  const made = new Map<string, string>();
  return (page) => {
    if (!isOfABook(page)) return make(page);
    const { library, assets, language, url } = page;
    if (library !== site?.library || assets !== site.assets) made.clear();
    site = { library, assets };
    const key = `${language} ${String(url.split('/').length)}`;
    const html = made.get(key) ?? make(page);
    made.set(key, html);
    return html;
  };
}
