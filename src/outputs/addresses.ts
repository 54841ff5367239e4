import type { PackUrls } from './views.ts';

/** The relative link from one page of the site to another; both addresses are relative to the site's root. */
export function linkFrom(from: string, to: string): string {
  const up = '../'.repeat(from.split('/').length - 1);
  return up + to || './';
}

/** Where a language's pages begin: the library's own language has no prefix. */
export function rootOf(language: string, libraryLanguage: string): string {
  return language === libraryLanguage ? '' : `${language}/`;
}

/** Addresses of a pack's pages. The slug has been validated; nothing else of a pack reaches an address. */
export function packUrls(slug: string, language: string, libraryLanguage: string): PackUrls {
  const family = `${rootOf(language, libraryLanguage)}packs/${slug}/`;
  return { family, booklet: `${family}booklet/`, lesson: `${family}lesson/`, recording: `${family}recording/` };
}

/** The file that a web server sends for an address. */
export function fileOf(url: string): string {
  return url === '' || url.endsWith('/') ? `${url}index.html` : url;
}
