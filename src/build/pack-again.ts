import { dirname, join, relative, sep } from 'node:path';
import { stops } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { fileOf } from '../outputs/addresses.ts';
import type { Page, ShownPack } from '../outputs/views.ts';
import { pageHtml } from '../../layouts/page.tsx';
import { packKeeper } from './kept-packs.ts';
import { onDisk, type Content } from './read-content.ts';
import { readPackFolder } from './read-pack-folder.ts';
import { showPack } from './show-pack.ts';

/** What a build knows that one pack's pages can be made anew with. */
export interface Around {
  readonly content: Pick<Content, 'roots' | 'roster'>;
  readonly library: Library;
  readonly packs: readonly ShownPack[];
  readonly pagesOf: (shown: ShownPack) => readonly Page[];
  /** The pages that list packs, with these packs. */
  readonly listsOf: (packs: readonly ShownPack[]) => readonly Page[];
  readonly cache: string;
  readonly today: string | undefined;
}

/** Pages by their files below the site, as they would be on the disk. */
export interface Again {
  /** Those of the pack. */
  readonly pages: ReadonlyMap<string, string>;
  /** One that lists packs, made when somebody asks for it; undefined for any other file. */
  list(file: string): string | undefined;
}

/**
 * The pages of one pack of the library's own as they are now, and those that list it. They are looked at while the whole
 * site is made anew, which takes longer and has the last word.
 *
 * @param path A file that has changed.
 * @returns Undefined where a file tells more than these pages, or nothing sound: of a pack that is new, that has a fault or other pictures.
 */
export async function packAgain(around: Around, path: string): Promise<Again | undefined> {
  const { content, library, packs, cache } = around;
  const [root] = content.roots;
  const [, slug, file = ''] = root ? (/^packs[/\\]([^/\\]+)[/\\]([^/\\]+)$/.exec(relative(root.at, path)) ?? []) : [];
  if (!root || slug === undefined || !/^pack(?:\.[\w-]+)?\.md$/.test(file)) return undefined;
  const before = packs.filter(({ pack }) => pack.slug === slug && pack.file === `packs/${slug}/${pack.file.split('/').at(-1) ?? ''}`);
  const keeper = await packKeeper(library, cache);
  const today = around.today ?? new Date().toISOString().slice(0, 10);
  const pages = new Map<string, string>();
  const changed = new Map<ShownPack, ShownPack>();
  for (const source of await readPackFolder(root, { path: `packs/${slug}`, slug }, content.roster, [])) {
    const old = before.find(({ pack }) => pack.file === source.file);
    const { pack, findings } = await keeper.look(source, today);
    if (!old || !pack || stops(findings) || pack.language !== old.pack.language || pack.by.basedOn !== old.pack.by.basedOn) return undefined;
    const versions = packs.filter((each) => each.pack.slug === slug).map((each) => (each === old ? pack : each.pack));
    const one = await showPack(pack, versions, library, join(dirname(onDisk(content.roots, pack.file)), 'pictures'), cache);
    if (stops(one.findings) || JSON.stringify([one.shown.pictures, one.shown.recording]) !== JSON.stringify([old.pictures, old.recording])) return undefined;
    const now = { ...old, pack, bodyHtml: one.shown.bodyHtml };
    changed.set(old, now);
    for (const page of around.pagesOf(now)) pages.set(onThisDisk(page), pageHtml(page));
  }
  if (pages.size === 0) return undefined;
  let lists: ReadonlyMap<string, Page> | undefined;
  return {
    pages,
    list: (file) => {
      lists ??= new Map(around.listsOf(packs.map((each) => changed.get(each) ?? each)).map((page) => [onThisDisk(page), page]));
      const page = lists.get(file);
      return page && pageHtml(page);
    },
  };
}

const onThisDisk = (page: Page): string => fileOf(page.url).split('/').join(sep);
