import { join } from 'node:path';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { finding, type Finding } from '../core/finding.ts';
import { defaultLibrary, readLibrary, type Library } from '../core/pack/library.ts';
import type { OwnPart } from '../core/pack/own-parts.ts';
import type { Source } from '../core/pack/pack.ts';
import { namesIn, placeIn, readText, statusOf, type Root } from './disk.ts';
import { readLayouts, readLibraryPictures } from './read-look.ts';
import { readPackFolder, readRoster, together, type PackFolder, type Roster } from './read-pack-folder.ts';
import { readSources } from './read-sources.ts';
import { slugOf } from './slug.ts';

/**
 * Reads the content folder, and the folders that `library.yaml` names as sources: what lies there, as text, before any
 * pack is understood. Folders are listed before files are opened, links are told and never followed, and sizes are bounded.
 */

export interface Page {
  /** File relative to the content folder. */
  readonly file: string;
  readonly name: string;
  readonly languageOfFile: string | undefined;
  readonly text: string;
}

export interface Content {
  readonly library: Library;
  readonly sources: readonly Source[];
  readonly pages: readonly Page[];
  /** Layouts of the library's own, by the part of a page that they are for. Packs and sources bring none. */
  readonly layouts: ReadonlyMap<OwnPart, string>;
  /** The folders that were read, the content folder first. */
  readonly roots: readonly Root[];
  /** Names that no published text may hold, from `private/roster.txt` of the whole library. */
  readonly roster: Roster;
  readonly findings: readonly Finding[];
}

const pageFile = /^([a-z0-9]+(?:-[a-z0-9]+)*)(?:\.([a-z]{2,3}))?\.md$/;

/** Everything of a content folder and its sources. Only a folder that cannot be listed at all is an exception. */
export async function readContent(content: string): Promise<Content> {
  const root: Root = { at: content, label: '' };
  const findings: Finding[] = [];
  const settings = readLibrary(readText(root, 'library.yaml', findings, true), 'library.yaml', await readLibraryPictures(root));
  findings.push(...settings.findings);
  const library = settings.value ?? defaultLibrary;
  const roster = readRoster(root, 'private', findings);
  const own = ownFolders(root, library, findings);
  const others = await readSources(content, library.sources ?? [], (index) => settings.placeOf('sources', index), own, findings);
  const sources: Source[] = [];
  for (const [index, folder] of own.filter(({ slug }) => !others.clashing.has(slug)).entries()) {
    sources.push(...(await readPackFolder(root, folder, roster, findings)));
    // The preview answers in between.
    if (index % 64 === 63) await nextTurn();
  }
  for (const each of others.roots) {
    const names = together(roster, readRoster(each.root, 'private', findings));
    for (const folder of each.folders) sources.push(...(await readPackFolder(each.root, folder, names, findings)));
  }
  const otherRoots = others.roots.map((each) => each.root);
  const layouts = readLayouts(root, library, otherRoots, findings);
  return { library, sources, pages: readPages(root, findings), layouts, roots: [root, ...otherRoots], roster, findings };
}

/** Where a file of a finding lies on this machine. */
export function onDisk(roots: readonly Root[], file: string): string {
  const root = roots.find(({ label }) => label !== '' && file.startsWith(label)) ?? roots[0];
  if (!root) throw new Error('No folder was read.');
  return join(root.at, file.slice(root.label.length));
}

/** The folders in `packs/`. A library of sources alone needs none. */
function ownFolders(root: Root, { sources = [] }: Library, findings: Finding[]): readonly PackFolder[] {
  if (sources.length > 0 && statusOf(join(root.at, 'packs')) === 'missing') return [];
  const folders: PackFolder[] = [];
  for (const name of namesIn(root, 'packs', findings)) {
    const path = `packs/${name}`;
    const status = statusOf(join(root.at, path));
    if (status === 'link') findings.push(finding('file/link', 'stop', placeIn(root, path), { name }));
    if (status !== 'folder') continue;
    const slug = slugOf(name);
    if (slug === name) folders.push({ path, slug });
    else findings.push(finding('folder/name', 'stop', placeIn(root, path), { folder: name, suggestion: slug }));
  }
  return folders;
}

function readPages(root: Root, findings: Finding[]): readonly Page[] {
  const pages: Page[] = [];
  if (statusOf(join(root.at, 'pages')) !== 'folder') return pages;
  for (const fileName of namesIn(root, 'pages', findings)) {
    const match = pageFile.exec(fileName);
    const text = match ? readText(root, `pages/${fileName}`, findings, false) : undefined;
    if (match?.[1] !== undefined && text !== undefined) pages.push({ file: `pages/${fileName}`, name: match[1], languageOfFile: match[2], text });
  }
  return pages;
}
