import type { Output, OutputInput } from './views.ts';
import { xml } from './xml.ts';

/** Lets every visitor in, and tells machines where the list of pages is. Source: RFC 9309; the Sitemap line is the sitemaps.org protocol's. */
export function robots({ library: { address } }: Pick<OutputInput, 'library'>): Output {
  const where = address === undefined ? '' : `Sitemap: ${address.replace(/\/*$/, '/')}sitemap.xml\n`;
  return { url: 'robots.txt', text: `User-agent: *\nAllow: /\n${where}` };
}

/**
 * The list of pages for search engines, with each page's other languages. It needs whole addresses, so there is
 * one only when `library.yaml` says where the site will live. Source: the sitemaps.org protocol, 0.9.
 */
export function sitemap({ library, pages }: Pick<OutputInput, 'library' | 'pages'>): readonly Output[] {
  if (library.address === undefined) return [];
  const root = library.address.endsWith('/') ? library.address : `${library.address}/`;
  const entries = pages
    .filter((page) => page.view.kind !== 'missing' && page.view.kind !== 'unsaved' && page.view.kind !== 'retired' && page.view.kind !== 'librarian')
    .map((page) => {
      const links = page.alternates.map((each) => `<xhtml:link rel="alternate" hreflang="${xml(each.language)}" href="${xml(root + each.url)}"/>`);
      return `<url><loc>${xml(root + page.url)}</loc>${links.join('')}</url>`;
    });
  const text = `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:xhtml="http://www.w3.org/1999/xhtml">\n${entries.join('\n')}\n</urlset>\n`;
  return [{ url: 'sitemap.xml', text }];
}
