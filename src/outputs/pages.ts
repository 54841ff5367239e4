import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { rootOf } from './addresses.ts';
import { browsePages, packsOnAPage } from './browse.ts';
import { byTitle } from './by-title.ts';
import type { FindFiles } from './find-files.ts';
import { librarianViews } from './librarian.ts';
import { qualityRow, qualityTotals } from './quality.ts';
import { retiredPages } from './retired.ts';
import { casesOnAPage, sameBooks, type SameBooks } from './same-book.ts';
import { packsCarried } from './stack-data.ts';
import { stopsUrl } from './stops-vtt.ts';
import type { Assets, OwnLayouts, Page, PageContext, ShownPack, ShownRetired, View } from './views.ts';

/** One of the library's own pages in one language. */
export interface PageText {
  readonly name: string;
  readonly language: string;
  readonly title: string;
  readonly description: string;
  readonly html: string;
}

export interface Published {
  readonly library: Library;
  readonly shown: readonly ShownPack[];
  readonly retired?: readonly ShownRetired[];
  readonly findingsOf: ReadonlyMap<string, readonly Finding[]>;
  /** How many packs a finding kept off the site. */
  readonly keptOff: number;
  /** For whoever looks after the library: of how many packs that is, by whose they are, and when packs came in. */
  readonly keptOffOf?: ReadonlyMap<string, number>;
  readonly arrivals?: ReadonlyMap<string, string>;
  readonly prose: readonly PageText[];
  readonly assets: Assets;
  readonly own?: OwnLayouts;
  readonly find: readonly FindFiles[];
}

/** First parts of the addresses below a language's root that are taken: a page of the library's own cannot have one of them. */
export const takenNames: ReadonlySet<string> = new Set(['assets', 'find', 'index', 'librarian', 'make', 'not-saved', 'packs', 'programs', 'quality', 'schema', 'stack']);

/** Address of a page of the library's own. */
export function ownPageUrl(library: Library, { name, language }: Pick<PageText, 'name' | 'language'>): string {
  return `${rootOf(language, library.language)}${name}/`;
}

/** Every page of the site. The visible list of what there is: a new kind of page is a line here, a view and a layout. */
export function pagesOf(published: Published): readonly Page[] {
  const { library, shown } = published;
  const books = sameBooks(
    library,
    shown,
    (published.retired ?? []).map(({ pack }) => pack),
  );
  return [
    ...library.languages.flatMap((language) => [
      libraryPage(published, language),
      ...findPages(published, language),
      ...qualityPages(published, language),
      ...sameBookPages(published, language, books),
      ...librarianPages(published, language),
      stackPage(published, language),
      unsavedPage(published, language),
      ...makerPages(published, language),
      programsPage(published, language),
    ]),
    ...shown.flatMap((each) => packPages(published, each)),
    ...shown.flatMap((each) => recordingPage(published, each)),
    ...(published.retired ?? []).flatMap((each) => retiredPages(each).map(({ url, view }) => page(published, each.pack.language, url, [], view))),
    ...prosePages(published),
    page(published, library.language, '404.html', [], { kind: 'missing' }),
  ];
}

function page(published: Published, language: string, url: string, alternates: PageContext['alternates'], view: View): Page {
  const { library, assets, own } = published;
  return { library, language, url, alternates, assets, own, view };
}

/** A page that every language of the library has, at the same place below its root. */
function inEachLanguage(library: Library, path: string): PageContext['alternates'] {
  return library.languages.length < 2 ? [] : library.languages.map((language) => ({ language, url: rootOf(language, library.language) + path }));
}

function libraryPage(published: Published, language: string): Page {
  const { library, shown } = published;
  const packs = byTitle(
    shown.filter((each) => each.pack.language === language),
    language,
  );
  const here = new Set(packs.map((each) => each.pack.slug));
  // A book without a pack in this language is offered in the language it has: in the library's own, if there is a choice.
  const elsewhere = new Map<string, ShownPack>();
  for (const each of shown) {
    const { slug, language: its } = each.pack;
    if (!here.has(slug) && (!elsewhere.has(slug) || its === library.language)) elsewhere.set(slug, each);
  }
  return page(published, language, rootOf(language, library.language), inEachLanguage(library, ''), {
    kind: 'library',
    packs: firstShown(packs),
    count: packs.length,
    elsewhere: firstShown(byTitle([...elsewhere.values()], language)),
  });
}

/** All packs, or in a library of more than a page the two dozen that were looked over last. The index has them all. */
function firstShown(packs: readonly ShownPack[]): readonly ShownPack[] {
  if (packs.length <= packsOnAPage) return packs;
  const reviewed = (each: ShownPack) => each.pack.by.reviewed ?? '';
  return [...packs].sort((a, b) => (reviewed(a) < reviewed(b) ? 1 : reviewed(a) > reviewed(b) ? -1 : 0)).slice(0, 24);
}

/** The search, and the index that leads to every pack of a language without a script. */
function findPages(published: Published, language: string): readonly Page[] {
  const { library, shown, find } = published;
  const indexes = find.map(({ language: of, folder, packs }) => ({ language: of, folder, packs }));
  const count = shown.filter(({ pack }) => pack.language === language).length;
  return [page(published, language, `${rootOf(language, library.language)}find/`, inEachLanguage(library, 'find/'), { kind: 'find', indexes, count }), ...indexPages(published, language)];
}

function indexPages(published: Published, language: string): readonly Page[] {
  const { library, shown, find } = published;
  const own = shown.filter(({ pack }) => pack.language === language);
  return browsePages(own, language, find).map(({ path, view }) => page(published, language, rootOf(language, library.language) + path, path === 'index/' ? inEachLanguage(library, path) : [], view));
}

/** The pages on which packs are listed by their titles: the first page and the index of each language. */
export function listPages(published: Published): readonly Page[] {
  return published.library.languages.flatMap((language) => [libraryPage(published, language), ...indexPages(published, language)]);
}

/** So many packs stand on one page about quality: a library of a thousand would make a page of megabytes. */
export const rowsOnAPage = 60;

/** The pages about quality: one, or in a large library several, with the totals on the first. The order is the same in every language, so that a pack has one number. */
function qualityPages(published: Published, language: string): readonly Page[] {
  const { library, shown, findingsOf, keptOff } = published;
  const rows = byTitle(shown, library.language).map((each) => qualityRow(each, findingsOf.get(each.pack.file) ?? []));
  const totals = qualityTotals(rows, keptOff);
  const paths = Array.from({ length: Math.max(1, Math.ceil(rows.length / rowsOnAPage)) }, (_, index) => (index === 0 ? 'quality/' : `quality/${String(index + 1)}/`));
  const numbered = paths.map((path) => rootOf(language, library.language) + path);
  return paths.map((path, index) =>
    page(published, language, numbered[index] ?? '', inEachLanguage(library, path), {
      kind: 'quality',
      number: index + 1,
      numbered,
      rows: rows.slice(index * rowsOnAPage, (index + 1) * rowsOnAPage),
      totals,
    }),
  );
}

/** Packs of one book beside each other; one page, or in a large library several. */
function sameBookPages(published: Published, language: string, { cases, related }: SameBooks): readonly Page[] {
  const { library } = published;
  const paths = Array.from({ length: Math.max(1, Math.ceil(cases.length / casesOnAPage)) }, (_, index) => (index === 0 ? 'quality/same-book/' : `quality/same-book/${String(index + 1)}/`));
  const numbered = paths.map((path) => rootOf(language, library.language) + path);
  return paths.map((path, index) =>
    page(published, language, numbered[index] ?? '', inEachLanguage(library, path), {
      kind: 'same-book',
      number: index + 1,
      numbered,
      cases: cases.slice(index * casesOnAPage, (index + 1) * casesOnAPage),
      count: cases.length,
      related: index === 0 ? related : [],
    }),
  );
}

/** What the library asks of whoever looks after it. Only the page about quality leads there. */
function librarianPages(published: Published, language: string): readonly Page[] {
  const { library, shown, retired = [], findingsOf, keptOffOf = new Map<string, number>(), arrivals = new Map<string, string>() } = published;
  const paths = (pages: number) => Array.from({ length: pages }, (_, index) => (index === 0 ? 'librarian/' : `librarian/${String(index + 1)}/`));
  const root = rootOf(language, library.language);
  const views = librarianViews({ library, shown, retired, findingsOf, keptOffOf, arrivals }, (pages) => paths(pages).map((path) => root + path));
  const all = paths(views.length);
  return views.map((view, index) => page(published, language, view.numbered[index] ?? '', inEachLanguage(library, all[index] ?? ''), view));
}

function stackPage(published: Published, language: string): Page {
  const { library, shown } = published;
  return page(published, language, `${rootOf(language, library.language)}stack/`, inEachLanguage(library, 'stack/'), { kind: 'stack', packs: packsCarried(shown) });
}

/** The form that makes packs, and how to hand over what came of it. */
function makerPages(published: Published, language: string): readonly Page[] {
  const { library, shown } = published;
  const root = rootOf(language, library.language);
  const here = (each: ShownPack) => (each.pack.language === language ? 0 : 1);
  const copies = [...byTitle(shown, language)].sort((a, b) => here(a) - here(b));
  return [
    page(published, language, `${root}make/`, inEachLanguage(library, 'make/'), { kind: 'maker', copies }),
    page(published, language, `${root}make/hand-over/`, inEachLanguage(library, 'make/hand-over/'), { kind: 'hand-over' }),
  ];
}

/** What there is for other programs, with the files of one pack as an example. */
function programsPage(published: Published, language: string): Page {
  const { library, shown } = published;
  const [first] = byTitle(shown, library.language);
  const withStops = shown.find(({ recording }) => recording !== undefined);
  return page(published, language, `${rootOf(language, library.language)}programs/`, inEachLanguage(library, 'programs/'), {
    kind: 'programs',
    example: first && { page: first.urls.family, json: `${first.urls.family}pack.json`, text: `${first.urls.family}pack.md` },
    stops: withStops && stopsUrl(withStops),
  });
}

function unsavedPage(published: Published, language: string): Page {
  return page(published, language, `${rootOf(language, published.library.language)}not-saved/`, [], { kind: 'unsaved' });
}

/** The pages that a pack has to itself. */
export function pagesOfPack(published: Published, shown: ShownPack): readonly Page[] {
  return [...packPages(published, shown), ...recordingPage(published, shown)];
}

function packPages(published: Published, shown: ShownPack): readonly Page[] {
  const { language } = shown.pack;
  return (['family', 'booklet', 'lesson'] as const).map((kind) => {
    const alternates = shown.versions.length < 2 ? [] : shown.versions.map((version) => ({ language: version.language, url: version.urls[kind] }));
    return page(published, language, shown.urls[kind], alternates, { kind, shown });
  });
}

/** The recording's page, of a pack that has one; in other languages where they have one too. */
function recordingPage(published: Published, shown: ShownPack): readonly Page[] {
  const { recording, pack } = shown;
  if (!recording) return [];
  const versions = published.shown.filter((each) => each.pack.slug === pack.slug && each.recording !== undefined);
  const alternates = versions.length < 2 ? [] : versions.map((each) => ({ language: each.pack.language, url: each.urls.recording }));
  return [page(published, pack.language, shown.urls.recording, alternates, { kind: 'recording', shown, recording })];
}

function prosePages(published: Published): readonly Page[] {
  const { library, prose } = published;
  const urlOf = (text: PageText) => ownPageUrl(library, text);
  return prose
    .filter((text) => library.languages.includes(text.language))
    .map((text) => {
      const versions = prose.filter((each) => each.name === text.name && library.languages.includes(each.language));
      const alternates = versions.length < 2 ? [] : versions.map((each) => ({ language: each.language, url: urlOf(each) }));
      const { name, title, description, html } = text;
      return page(published, text.language, urlOf(text), alternates, { kind: 'prose', name, title, description, html });
    });
}
