import { mkdir } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { inOrder, stops, type Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { findFiles } from '../outputs/find-files.ts';
import { withLineage } from '../outputs/lineage.ts';
import { textOutputs } from '../outputs/output.ts';
import { listPages, pagesOf, pagesOfPack, type PageText, type Published } from '../outputs/pages.ts';
import { showRetired } from '../outputs/retired.ts';
import type { Output, OwnLayouts, Page, ShownPack } from '../outputs/views.ts';
import { makeAssets } from './browser-code.ts';
import { arrivalsFile, arrivalsOf, arrivalsText, knownDays } from './arrivals.ts';
import { bundler, type Bundler } from './bundle.ts';
import { codeMark, hashOf } from './code-mark.ts';
import type { Looked } from './kept-packs.ts';
import { keptSite, type KeptSite } from './kept-site.ts';
import { makeLogo } from './logo.ts';
import { markOfShown, pageMarks } from './marks.ts';
import { offlineFiles } from './offline.ts';
import { packAgain } from './pack-again.ts';
import { packFolders, type PackFolders } from './pack-folder.ts';
import { makePapers } from './papers.ts';
import { stage } from './publish.ts';
import { onDisk, type Content } from './read-content.ts';
import { readWholeLibrary } from './read-library.ts';
import { readProse } from './read-prose.ts';
import { showPack, type Shown } from './show-pack.ts';
import { textThreads, type TextThreads, type TextThreadsOptions } from './text-threads.ts';
import { tidyCache } from './tidy-cache.ts';
import { turns } from './turns.ts';
import { writeFiles, type SiteFile } from './write-files.ts';
import { writePages } from './write-pages.ts';

export interface BuildOptions {
  /** The content folder. */
  readonly content: string;
  /** Where the site goes. */
  readonly site: string;
  /** For what may be thrown away and made again. */
  readonly cache: string;
  /** True: one finding that stops keeps the whole library from being published. */
  readonly strict: boolean;
  /** The day of the build, `2026-09-01`; today where nobody says. */
  readonly today?: string;
  /** True: the sheets for printing are made as PDF too. */
  readonly paper?: boolean;
  /** True: each pack is also made as a folder to take along, `pack.zip`. */
  readonly folders?: boolean;
  /** The program that sets sheets on a thread; a test puts another in its place. */
  readonly paperProgram?: URL;
  /** Threads for packs and their pages; what is usual where nothing is said. */
  readonly threads?: TextThreadsOptions;
  /** Told after each sheet that had to be set. */
  readonly paperProgress?: (done: number, all: number) => void;
  /** Told after each pack that had to be read. */
  readonly readProgress?: (done: number, all: number) => void;
  /** Told after each page of a pack that had to be made. */
  readonly progress?: (done: number, all: number) => void;
}

export interface Built {
  readonly findings: readonly Finding[];
  readonly published: number;
  /** Packs that a finding kept off the site. */
  readonly leftOut: number;
  readonly pages: number;
  /** The folders that were asked for: the content, and the sources that its settings name, also one that is not there. */
  readonly folders: readonly string[];
  /** The pages of the pack that a file belongs to and those that list it, made anew with all else as it was built; undefined where that would not be the truth. */
  readonly again: (path: string) => ReturnType<typeof packAgain>;
}

/** Six stages: read, check, measure, plan, render, publish. */
export async function build(options: BuildOptions): Promise<Built> {
  await mkdir(options.cache, { recursive: true });
  const bundle = await bundler(options.cache);
  const threads = textThreads(() => Promise.resolve(bundle), options.threads);
  try {
    return await buildOn(threads, bundle, options);
  } finally {
    await threads.close();
  }
}

async function buildOn(threads: TextThreads, bundle: Bundler, options: BuildOptions): Promise<Built> {
  const { content, library, own, told, findings, used } = await readWholeLibrary(options.content, options.today, options.cache, threads, options.readProgress);

  const sound = told.filter((each) => each.pack && !stops(each.findings));
  const bare = await showPacks(sound, content, options);
  const set = options.paper === true ? await withPapers(bare, library, options) : bare;
  const outOfUse = told.flatMap((each) => (each.retired && !stops(each.findings) ? [each.retired] : []));
  const shown = { ...set, packs: withLineage(set.packs, outOfUse, library) };
  const retired = showRetired(outOfUse, shown.packs, library);
  const prose = readProse(content.pages, library, content.roster);
  const logo = await makeLogo(options.content, library, options.cache);
  const made = await makeAssets(bundle, library.theme);
  const assets = { ...made.assets, logo: logo.logo };
  const files = [...made.files, ...logo.files];
  const find = findFiles(library, shown.packs);
  const arrivals = await arrivalsOf(shown.packs, options.site, options.today ?? new Date().toISOString().slice(0, 10));
  const keptOffOf = countKeptOff(told, shown.packs);
  const leftOut = new Set(told.map((each) => each.source.file)).size - shown.packs.length - retired.length;
  const published = (packs: ShownPacks['packs'], all: readonly Finding[], layouts: OwnLayouts): Published => ({
    library,
    shown: packs,
    retired,
    findingsOf: findingsByFile(all),
    keptOff: leftOut,
    keptOffOf,
    arrivals: knownDays(arrivals),
    prose: prose.pages satisfies readonly PageText[],
    assets,
    own: layouts,
    find,
  });
  // A library's own layouts are tried on every page before one is written.
  const layouts = Object.keys(own).length === 0 ? { own, findings: [] } : await soundOn(own, pagesOf(published(shown.packs, [], {})));
  const everything = inOrder([...findings, ...shown.findings, ...prose.findings, ...logo.findings, ...layouts.findings]);
  const result = {
    findings: everything,
    published: shown.packs.length,
    leftOut,
    folders: [options.content, ...(library.sources ?? []).map(({ folder }) => resolve(options.content, folder))],
    again: () => Promise.resolve(undefined),
  };
  if (options.strict && stops(everything)) return { ...result, published: 0, pages: 0 };

  let toPublish = published(shown.packs, everything, layouts.own);
  const markOf = pageMarks(
    await codeMark(),
    library,
    assets,
    [...content.layouts].filter(([part]) => layouts.own[part] !== undefined),
  );
  const spare = join(options.cache, 'spare', hashOf(resolve(options.site)));
  const staging = await stage(options.site, spare);
  const site = await keptSite(options.cache, staging);
  let pages = pagesOf(toPublish);
  try {
    // A page tells how large its folder is, so the folders come first; a folder's own pages have none to offer.
    if (options.folders === true) {
      toPublish = published(await withFolders(shown.packs, packFolders({ library, pages, assets, files: [...files, ...shown.files], bundle }), site, markOf), everything, layouts.own);
      pages = pagesOf(toPublish);
    }
    await writePages(pages, site, { markOf, output: staging.folder, cache: options.cache, threads, progress: options.progress });
    const code = await codeMark();
    writeFiles(site, [
      ...files,
      ...shown.files.map((file) => ofCache(file, options.cache)),
      ...textOutputs({ library, shown: shown.packs, retired, pages }).map((each) => ofPack(each, code)),
      ...find.flatMap((each) => each.files),
      { url: arrivalsFile, text: arrivalsText(arrivals) },
    ]);
    writeFiles(site, await offlineFiles({ folder: staging.folder, site, library, pages, shown: shown.packs, retired, assets, find, bundle }));
    await site.forget();
    await site.save(await staging.publish(site.notTaken()));
  } catch (error) {
    await staging.discard();
    throw error;
  }
  await tidyCache(options.cache, [...used, spare, ...shown.files.flatMap((file) => ('from' in file ? [file.from] : []))]);
  const around = {
    content,
    library,
    packs: toPublish.shown,
    pagesOf: (one: ShownPack) => pagesOfPack(toPublish, one),
    listsOf: (packs: readonly ShownPack[]) => listPages({ ...toPublish, shown: packs }),
    cache: options.cache,
    today: options.today,
  };
  return { ...result, pages: pages.length, again: (path) => packAgain(around, path) };
}

async function soundOn(own: OwnLayouts, pages: readonly Page[]) {
  const { soundLayouts } = await import('./own-layouts.ts');
  return soundLayouts(own, pages);
}

/** What is made of one pack alone, with a mark. Its text is not asked for here. */
function ofPack(output: Output, code: string): SiteFile {
  return output.of === undefined ? output : Object.defineProperty({ url: output.url, text: '', mark: code + markOfShown(output.of) }, 'text', { get: () => output.text });
}

/** Files of the cache have names by their content. A film lies in the content folder, and is copied each time. */
function ofCache(file: SiteFile, cache: string): SiteFile {
  const mark = 'from' in file ? relative(cache, file.from) : '..';
  return mark.startsWith('..') ? file : { ...file, mark };
}

interface ShownPacks {
  readonly packs: readonly Shown['shown'][];
  readonly files: Shown['files'];
  readonly findings: readonly Finding[];
}

async function withFolders(packs: ShownPacks['packs'], folders: PackFolders, site: KeptSite, markOf: (page: Page) => string): Promise<ShownPacks['packs']> {
  const made: ShownPacks['packs'][number][] = [];
  for (const shown of packs) {
    const url = `${shown.urls.family}pack.zip`;
    const mark = hashOf(folders.madeOf(shown, markOf));
    if (!site.take(url, mark)) site.write(url, await folders.make(shown), mark);
    made.push({ ...shown, folder: { url, bytes: site.sized(url)?.bytes ?? 0 } });
  }
  return made;
}

async function withPapers(bare: ShownPacks, library: Library, options: BuildOptions): Promise<ShownPacks> {
  const papers = await makePapers(bare.packs, library, bare.files, {
    cache: options.cache,
    ...(options.paperProgress && { progress: options.paperProgress }),
    ...(options.paperProgram && { worker: options.paperProgram }),
  });
  return { packs: papers.packs, files: [...bare.files, ...papers.files], findings: [...bare.findings, ...papers.findings] };
}

async function showPacks(sound: readonly Looked[], { library, roots }: Pick<Content, 'library' | 'roots'>, options: BuildOptions): Promise<ShownPacks> {
  const packs: Shown['shown'][] = [];
  const files = new Map<string, Shown['files'][number]>();
  const findings: Finding[] = [];
  const all = sound.flatMap((each) => each.pack ?? []);
  const bySlug = new Map<string, PlannedPack[]>();
  for (const pack of all) bySlug.set(pack.slug, [...(bySlug.get(pack.slug) ?? []), pack]);
  const turn = turns();
  for (const pack of all) {
    await turn();
    const one = await showPack(pack, bySlug.get(pack.slug) ?? [], library, join(dirname(onDisk(roots, pack.file)), 'pictures'), options.cache);
    findings.push(...one.findings);
    if (!stops(one.findings)) {
      packs.push(one.shown);
      for (const file of one.files) files.set(file.url, file);
    }
  }
  return { packs, files: [...files.values()], findings };
}

/** Packs that are not shown, by whose folder they lie in: the library's own under its empty name. Of an unpublished pack nothing else is told, its school neither. */
function countKeptOff(told: readonly Looked[], shown: ShownPacks['packs']): ReadonlyMap<string, number> {
  const published = new Set(shown.map(({ pack }) => pack.file));
  const counts = new Map<string, number>();
  for (const { source, retired, findings } of told) {
    if (published.has(source.file) || (retired && !stops(findings))) continue;
    const owner = source.owner?.name ?? '';
    counts.set(owner, (counts.get(owner) ?? 0) + 1);
  }
  return counts;
}

function findingsByFile(findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const byFile = new Map<string, Finding[]>();
  // What is told about persons is for whoever makes the packs, and not for visitors of the site.
  for (const each of findings.filter((found) => !found.code.startsWith('privacy/'))) byFile.set(each.place.file, [...(byFile.get(each.place.file) ?? []), each]);
  return byFile;
}
