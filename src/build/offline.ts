import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { rootOf, fileOf } from '../outputs/addresses.ts';
import type { FindFiles } from '../outputs/find-files.ts';
import { styleOf } from '../outputs/styles.ts';
import { retiredPages } from '../outputs/retired.ts';
import type { Assets, Page, ShownPack, ShownRetired } from '../outputs/views.ts';
import type { Library } from '../core/pack/library.ts';
import { workerScript } from './browser-code.ts';
import { widths } from './pictures.ts';
import type { Bundler } from './bundle.ts';
import { hashOf } from './code-mark.ts';
import type { KeptSite, Sized } from './kept-site.ts';
import type { SiteFile } from './write-files.ts';

/** Width of the pictures in a book's copy, in pixels: sharp on a phone, and one file a picture. */
const copyWidth = 960;

interface Made {
  readonly folder: string;
  readonly site: KeptSite;
  readonly library: Library;
  readonly pages: readonly Page[];
  readonly shown: readonly ShownPack[];
  readonly retired: readonly ShownRetired[];
  readonly assets: Assets;
  readonly find: readonly FindFiles[];
  readonly bundle: Bundler;
}

/**
 * What a browser needs to keep books for times without a network: the worker, and for each book the list of its files.
 * Its version is made of their content, read from the finished site; a file that is not there stops the build.
 */
export async function offlineFiles(made: Made): Promise<readonly SiteFile[]> {
  const known = new Map<string, Promise<Sized>>();
  const sized = (url: string): Promise<Sized> => {
    const read = known.get(url) ?? sizedOnce(made, url);
    known.set(url, read);
    return read;
  };
  const lists: SiteFile[] = [];
  for (const [url, files] of [
    ...made.shown.map((shown) => [shown.urls.family, filesOf(shown, made)] as const),
    ...made.retired.map((each) => [each.urls.family, filesOfRetired(each, made)] as const),
    ...formsOf(made),
    ...searchesOf(made),
  ]) {
    // The pages of a book are read once and forgotten; what all books share is remembered.
    const all = await Promise.all(files.map((each) => (each.startsWith('assets/') ? sized(each) : sizedOnce(made, each))));
    const version = versionOf(files.map((each, index) => `${each} ${all[index]?.hash ?? ''}`).join('\n'));
    const bytes = all.reduce((sum, each) => sum + each.bytes, 0);
    lists.push({ url: `${url}offline.json`, text: `${JSON.stringify({ version, bytes, files })}\n` });
  }
  return [...lists, await worker(made, sized)];
}

async function sizedOnce({ folder, site }: Made, url: string): Promise<Sized> {
  const known = site.sized(fileOf(url));
  if (known) return known;
  const bytes = await readFile(join(folder, fileOf(url)));
  return { hash: hashOf(bytes), bytes: bytes.length };
}

/** The form that makes packs, in each language: its page, how to hand over, all its scripts, and the styles of the pages that it shows beside itself. */
function formsOf({ pages, assets, library }: Made): readonly (readonly [url: string, files: readonly string[]])[] {
  const kinds = ['maker', 'hand-over', 'family', 'booklet', 'lesson', 'recording'] as const;
  const styles = kinds.flatMap((kind) => [styleOf(assets, 'screen', kind), styleOf(assets, 'print', kind)]);
  const letters = [...assets.later.filter((url) => url.endsWith('.woff2')), ...(library.languages.some(inArabicScript) ? (assets.arabicLetters ?? []) : [])];
  const scripts = [...(assets.ofMaker ?? []), ...(assets.scripts['offline'] === undefined ? [] : [assets.scripts['offline']]), ...(assets.preload?.['offline'] ?? [])];
  return pages
    .filter((page) => page.view.kind === 'maker')
    .map(({ url }) => [url, [...new Set([url, `${url}hand-over/`, 'make/pack.md', ...styles, ...scripts, ...letters, ...logoFiles(assets)])]] as const);
}

/** So many files of an index are kept with the search at once. Of a larger one only the words are, and then what somebody looks up. */
const mostAtOnce = 60;

/** The search in each language: its page and the index, and what of the index's files a phone can fetch at once. */
function searchesOf({ pages, assets, find, library }: Made): readonly (readonly [url: string, files: readonly string[]])[] {
  const styles = (['find', 'browse', 'browse-list'] as const).flatMap((kind) => [styleOf(assets, 'screen', kind), styleOf(assets, 'print', kind)]);
  const scripts = ['find', 'offline'].flatMap((name) => [assets.scripts[name] ?? [], assets.preload?.[name] ?? []].flat());
  const letters = assets.later.filter((url) => url.endsWith('.woff2'));
  return pages
    .filter((page) => page.view.kind === 'find')
    .map(({ url, language }) => {
      const index = find.find((each) => each.language === language)?.files.map((file) => file.url) ?? [];
      const first = index.length > mostAtOnce ? index.filter((each) => each.endsWith('/words.json')) : index;
      const ofLanguage = inArabicScript(language) ? (assets.arabicLetters ?? []) : [];
      return [url, [...new Set([url, `${rootOf(language, library.language)}index/`, ...first, ...styles, ...scripts, ...letters, ...ofLanguage, ...logoFiles(assets)])]] as const;
    });
}

/** Every page of a book with its text as a file, its pictures, and what its pages look and work with. The film stays where it is: it would fill a phone. */
function filesOf({ pack, urls, pictures, recording }: ShownPack, { assets }: Made): readonly string[] {
  const { scripts, later } = assets;
  const letters = inArabicScript(pack.language) ? (assets.arabicLetters ?? []) : [];
  const kinds = ['family', 'booklet', 'lesson', ...(recording ? (['recording'] as const) : [])] as const;
  // The file is what the form takes a copy from.
  const pages = [...kinds.map((kind) => urls[kind]), `${urls.family}pack.md`];
  const styles = kinds.flatMap((kind) => [styleOf(assets, 'screen', kind), styleOf(assets, 'print', kind)]);
  const ofPages = ['offline', 'listen', 'booklet', `lesson-${pack.language.split('-')[0] ?? ''}`, ...(recording ? ['recording'] : [])].flatMap((name) => scripts[name] ?? []);
  const logo = logoFiles(assets);
  const ofPictures = pictures.map(({ webp }) => (webp.findLast((each) => each.width <= copyWidth) ?? webp[0])?.url ?? '').filter((url) => url !== '');
  return [...new Set([...pages, ...styles, ...ofPages, ...later, ...letters, ...logo, ...ofPictures])];
}

/** What is left of a book takes the place of a copy that somebody has: without a list of its own, the copy would go on showing what was taken out. */
function filesOfRetired(retired: ShownRetired, { assets }: Made): readonly string[] {
  const { scripts, later } = assets;
  const letters = inArabicScript(retired.pack.language) ? (assets.arabicLetters ?? []) : [];
  return [
    ...new Set([
      ...retiredPages(retired).map(({ url }) => url),
      styleOf(assets, 'screen', 'retired'),
      styleOf(assets, 'print', 'retired'),
      ...(scripts['retired'] === undefined ? [] : [scripts['retired']]),
      ...later,
      ...letters,
    ]),
  ];
}

async function worker({ library, pages, assets, bundle }: Made, sized: (url: string) => Promise<Sized>): Promise<SiteFile> {
  const notSaved = Object.fromEntries(pages.filter((page) => page.view.kind === 'unsaved').map((page) => [rootOf(page.language, library.language), page.url]));
  const files = [
    ...Object.values(notSaved),
    styleOf(assets, 'screen', 'unsaved'),
    ...logoFiles(assets),
    ...assets.later.filter((url) => url.endsWith('.woff2')),
    ...(library.languages.some(inArabicScript) ? (assets.arabicLetters ?? []) : []),
  ];
  const version = versionOf((await Promise.all(files.map(sized))).map((each) => each.hash).join());
  return { url: 'offline-worker.js', text: await workerScript('src/browser/offline-worker.ts', { shell: { version, widths, notSaved, files } }, bundle) };
}

const logoFiles = ({ logo }: Assets): readonly string[] => [logo?.light, logo?.dark].filter((each) => each !== undefined);

const inArabicScript = (language: string) => new Intl.Locale(language).maximize().script === 'Arab';

/** Half of a hash: a browser only compares it with the one it has. */
function versionOf(text: string): string {
  return hashOf(text).slice(0, 16);
}
