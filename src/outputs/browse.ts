import { fold } from '../core/find/fold.ts';
import { families, grades, kindsOfBook } from '../core/pack/schema.ts';
import { schoolOf } from '../core/pack/school.ts';
import { byTitle, titleKey } from './by-title.ts';
import type { FindFiles } from './find-files.ts';
import { browseGroups, type BrowseGroup, type BrowseList, type BrowseListView, type BrowseView, type ShownPack } from './views.ts';

/** Packs on one page of a list. */
export const packsOnAPage = 60;

interface Placed {
  /** Below the language's root. */
  readonly path: string;
  readonly view: BrowseView | BrowseListView;
}

/** The index of the packs of one language, and in a library of more than a page its lists page by page. */
export function browsePages(shown: readonly ShownPack[], language: string, find: readonly Pick<FindFiles, 'language' | 'packs'>[]): readonly Placed[] {
  const packs = byTitle(shown, language);
  const lists = listsOf(packs, packs.length > packsOnAPage, language);
  const others = find.filter((each) => each.language !== language);
  return [{ path: 'index/', view: { kind: 'browse', lists, others, count: packs.length } }, ...lists.flatMap(pagesOfList)];
}

function pagesOfList(list: BrowseList): readonly Placed[] {
  const { path } = list;
  if (path === undefined) return [];
  const paths = Array.from({ length: Math.ceil(list.packs.length / packsOnAPage) }, (_, index) => (index === 0 ? path : `${path}${String(index + 1)}/`));
  return paths.map((each, index) => ({ path: each, view: { kind: 'browse-list', list, packs: list.packs.slice(index * packsOnAPage, (index + 1) * packsOnAPage), number: index + 1, paths } }));
}

/** Lines of the index in the order in which they stand there. */
function listsOf(packs: readonly ShownPack[], large: boolean, language: string): readonly BrowseList[] {
  const keysOf: Readonly<Record<BrowseGroup, (shown: ShownPack) => readonly string[]>> = {
    letter: ({ pack }) => [letterOf(pack.title)],
    grade: ({ pack }) => pack.for.grades,
    book: ({ pack }) => pack.book.kinds ?? [],
    feeling: ({ pack }) => (pack.feelings ?? []).map(({ family }) => family),
    skill: ({ pack }) => (pack.aims ?? []).map(({ skill }) => skill),
    school: ({ pack }) => [schoolOf(pack) ?? []].flat(),
  };
  // Of the packs' language: that of the machine must not turn the order.
  const collator = new Intl.Collator(language);
  return browseGroups.flatMap((group) => {
    const byKey = new Map<string, ShownPack[]>();
    for (const shown of packs) {
      for (const key of new Set(keysOf[group](shown))) {
        const of = byKey.get(key) ?? [];
        of.push(shown);
        byKey.set(key, of);
      }
    }
    const used = new Set<string>();
    return [...byKey].sort(([a], [b]) => inOrder(group, a, b, collator)).map(([key, of]) => ({ group, key, packs: of, path: large ? `index/${group}/${addressOf(key, used)}/` : undefined }));
  });
}

function inOrder(group: BrowseGroup, a: string, b: string, collator: Intl.Collator): number {
  const places: Partial<Record<BrowseGroup, readonly string[]>> = { grade: grades, book: kindsOfBook, feeling: families };
  const place = (key: string) => places[group]?.indexOf(key) ?? 0;
  return place(a) - place(b) || collator.compare(a, b);
}

/** The first letter that a title stands under, without its accent; empty for a title that begins with a sign or a number. */
function letterOf(title: string): string {
  return /^\p{L}/u.exec(fold(titleKey(title)))?.[0].toUpperCase() ?? '';
}

/** A safe part of an address for any text: its Latin letters and digits, at most 40; numbered where two would be alike or nothing is left. */
function addressOf(key: string, used: Set<string>): string {
  const base =
    fold(key)
      .replace(/[^a-z0-9]+/g, '-')
      .slice(0, 40)
      .replace(/^-+|-+$/g, '') || 'list';
  let address = base;
  for (let number = 2; used.has(address); number++) address = `${base}-${String(number)}`;
  used.add(address);
  return address;
}
