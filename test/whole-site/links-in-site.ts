/** Every link of a site, looked up in its own files: no server and no crawler, so that thousands of pages take seconds. */
import { readdir, readFile } from 'node:fs/promises';
import { join, sep } from 'node:path';

export interface SiteLinks {
  /** `page -> link` for what leads to no file, or to no place of its page. */
  readonly broken: readonly string[];
  /** Pages that no way of links leads to from the first one. */
  readonly unreached: readonly string[];
  /** How many links were looked up. */
  readonly links: number;
  readonly pages: number;
  /** Links that leave the site by a way that pages do not use. */
  readonly strange: readonly string[];
}

/** @param address Where the library says that it lives: links that begin with it lead into the site. */
export async function linksInSite(site: string, address?: string): Promise<SiteLinks> {
  const files = new Set(
    (await readdir(site, { recursive: true, withFileTypes: true }))
      .filter((each) => each.isFile())
      .map((each) =>
        join(each.parentPath, each.name)
          .slice(site.length + 1)
          .split(sep)
          .join('/'),
      ),
  );
  const pages = [...files].filter((file) => file.endsWith('.html')).sort();
  const ids = new Map<string, ReadonlySet<string>>();
  const to = new Map<string, readonly { readonly link: string; readonly file: string; readonly fragment: string }[]>();
  const strange: string[] = [];
  for (const page of pages) {
    const html = await readFile(join(site, page), 'utf8');
    ids.set(page, new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id = '']) => id)));
    const found = new Set<string>();
    for (const [, , value = ''] of html.matchAll(/\s(href|src|poster)="([^"]*)"/g)) found.add(value);
    for (const [, value = ''] of html.matchAll(/\ssrcset="([^"]*)"/g)) for (const each of value.split(',')) found.add(each.trim().split(/\s/, 1)[0] ?? '');
    to.set(
      page,
      [...found].flatMap((link) => {
        const plain = link.replaceAll('&amp;', '&').replaceAll('&#39;', "'");
        const inside = address !== undefined && plain.startsWith(address) ? `http://site.invalid/${plain.slice(address.length)}` : plain;
        if (/^[a-z][a-z0-9+.-]*:/i.test(inside) && !inside.startsWith('http://site.invalid/')) {
          if (!/^(?:https:|mailto:|tel:|data:image\/)/.test(inside)) strange.push(`${page} -> ${link}`);
          return [];
        }
        const url = new URL(inside, `http://site.invalid/${page}`);
        const path = decodeURIComponent(url.pathname.slice(1));
        return [{ link, file: path === '' || path.endsWith('/') ? `${path}index.html` : path, fragment: decodeURIComponent(url.hash.slice(1)) }];
      }),
    );
  }
  const broken: string[] = [];
  for (const [page, links] of to) {
    // The page for missing addresses is sent for any of them: its links begin at the root of the host where the library says that it lives.
    const own = page === '404.html' && address !== undefined ? links.map((each) => ({ ...each, file: withoutRoot(each.file, new URL(address).pathname) })) : links;
    for (const { link, file, fragment } of own) {
      if (!files.has(file) || (fragment !== '' && ids.get(file)?.has(fragment) === false)) broken.push(`${page} -> ${link}`);
    }
  }
  const reached = new Set(['index.html']);
  for (const page of reached) for (const { file } of to.get(page) ?? []) if (to.has(file)) reached.add(file);
  const links = [...to.values()].reduce((sum, each) => sum + each.length, 0);
  return { broken, unreached: pages.filter((page) => !reached.has(page)), links, pages: pages.length, strange };
}

function withoutRoot(file: string, root: string): string {
  const path = root.replace(/^\/|\/$/g, '');
  return file.startsWith(`${path}/`) ? file.slice(path.length + 1) : file;
}
