import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { pageHtml } from '../../layouts/page.tsx';
import type { Library } from '../core/pack/library.ts';
import { folderPage } from '../outputs/folder-page.ts';
import { styleOf } from '../outputs/styles.ts';
import type { Assets, Page, ShownPack } from '../outputs/views.ts';
import { zipOf } from '../outputs/zip.ts';
import { licencesUrl, plainScript, scriptPaths } from './browser-code.ts';
import type { Bundler } from './bundle.ts';
import type { SiteFile } from './write-files.ts';

/** Width of the pictures in the folder, in pixels. */
const width = 960;

/** Links that lead to nothing from the folder are taken away where they stand in a list of links. */
const folderStyle =
  '.masthead nav a:not([href]), .foot nav a:not([href]), .trail a:not([href]), .versions a:not([href]), .onward-list li:has(> a:not([href])) { display: none; }\n.trail li:has(> a:not([href])) { display: none; }\n';

interface Made {
  readonly library: Library;
  readonly pages: readonly Page[];
  readonly assets: Assets;
  readonly files: readonly SiteFile[];
  readonly bundle: Bundler;
}

export interface PackFolders {
  /** What a pack's folder is made of, as one text. All that is not named in it has a name by its content, and the pages name it. */
  readonly madeOf: (shown: ShownPack, markOf: (page: Page) => string) => string;
  readonly make: (shown: ShownPack) => Promise<Uint8Array>;
}

/** Makes a pack's `pack.zip`: its pages, sheets and pictures as a folder that opens from a disk, without a network and without a server. Nothing is in it but what the site shows. */
export function packFolders(made: Made): PackFolders {
  const byUrl = new Map(made.files.map((file) => [file.url, file]));
  const read = new Map<string, Promise<Uint8Array>>();
  /** What all packs share is read and made once. */
  const once = (name: string, make: () => Promise<Uint8Array>) => {
    const known = read.get(name) ?? make();
    read.set(name, known);
    return known;
  };
  const bytesOf = async (url: string): Promise<Uint8Array> => {
    const file = byUrl.get(url);
    if (!file) throw new Error(`a folder needs "${url}", and the site has no such file`);
    return 'text' in file ? new TextEncoder().encode(file.text) : readFile(file.from);
  };
  const prose = made.pages.filter(({ view }) => view.kind === 'prose');
  const ownPages = new Map<ShownPack['pack'], Page[]>();
  for (const page of made.pages) {
    const { view } = page;
    if (view.kind !== 'family' && view.kind !== 'booklet' && view.kind !== 'lesson') continue;
    const own = ownPages.get(view.shown.pack) ?? [];
    own.push(page);
    ownPages.set(view.shown.pack, own);
  }
  const pagesOf = (shown: ShownPack) => [...(ownPages.get(shown.pack) ?? []), ...prose].filter((page) => nameOf(page, shown) !== undefined);
  const make = async (shown: ShownPack): Promise<Uint8Array> => {
    const inside = new Map<string, string>();
    const pages = pagesOf(shown);
    for (const page of pages) inside.set(page.url, nameOf(page, shown) ?? '');
    for (const { url } of shown.papers) inside.set(url, basename(url));
    const shared = [
      ...new Set([...pages.flatMap(({ view }) => [styleOf(made.assets, 'screen', view.kind), styleOf(made.assets, 'print', view.kind)]), ...made.assets.later.filter((url) => url.endsWith('.woff2'))]),
    ];
    shared.push(licencesUrl, ...[made.assets.logo?.light, made.assets.logo?.dark].filter((each) => each !== undefined));
    for (const url of shared) inside.set(url, `files/${url.slice('assets/'.length)}`);
    const pictures = shown.pictures.map(({ webp, jpeg }) => ({ one: webp.findLast((each) => each.width <= width) ?? webp[0], all: [...webp, ...jpeg] }));
    const own = new Map<string, string>();
    for (const { one, all } of pictures) {
      if (!one) continue;
      own.set(one.url, `files/${basename(one.url)}`);
      for (const each of all) inside.set(each.url, `files/${basename(one.url)}`);
    }
    const files = new Map<string, Uint8Array>();
    const text = (content: string) => new TextEncoder().encode(content);
    files.set('files/folder.css', text(folderStyle));
    for (const page of pages) {
      const scripts = scriptsOf(page);
      const html = folderPage({
        html: pageHtml(page),
        url: page.url,
        placeOf: (url) => inside.get(url),
        address: made.library.address,
        scripts: scripts.map((name) => `files/${name}.js`),
        styles: ['files/folder.css'],
      });
      files.set(inside.get(page.url) ?? '', text(html));
      for (const name of scripts) files.set(`files/${name}.js`, await once(name, async () => text(await plainScript(scriptPaths[name] ?? '', made.bundle))));
    }
    for (const url of shared) files.set(inside.get(url) ?? '', await once(url, () => bytesOf(url)));
    for (const { url } of shown.papers) files.set(basename(url), await bytesOf(url));
    for (const [url, place] of own) files.set(place, await bytesOf(url));
    // In one order, so that the same files make the same bytes.
    return zipOf(Object.fromEntries([...files].sort(([a], [b]) => (a < b ? -1 : 1))));
  };
  const sheet = (url: string) => {
    const file = byUrl.get(url);
    return file && 'from' in file ? file.from : url;
  };
  return { make, madeOf: (shown, markOf) => JSON.stringify([pagesOf(shown).map(markOf), shown.papers.map(({ url }) => sheet(url))]) };
}

/** What a page is called in the folder; undefined for pages that are not in it. */
function nameOf({ view, language }: Page, { pack }: ShownPack): string | undefined {
  if (view.kind === 'prose') return language === pack.language ? `${view.name}.html` : undefined;
  if (view.kind !== 'family' && view.kind !== 'booklet' && view.kind !== 'lesson') return undefined;
  if (view.shown.pack !== pack) return undefined;
  return view.kind === 'family' ? 'index.html' : `${view.kind}.html`;
}

function scriptsOf({ view, language }: Page): readonly string[] {
  const names = view.kind === 'booklet' ? ['booklet', 'listen'] : view.kind === 'family' ? ['listen'] : view.kind === 'lesson' ? [`lesson-${language.split('-', 1)[0] ?? ''}`] : [];
  return names.filter((name) => scriptPaths[name] !== undefined);
}
