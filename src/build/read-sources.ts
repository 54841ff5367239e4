import { realpath } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { finding, type Finding, type FactsOf, type Place } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { namesIn, placeIn, statusOf, type Root } from './disk.ts';
import type { PackFolder } from './read-pack-folder.ts';
import { slugInSource, slugOf } from './slug.ts';

/**
 * The folders of others that `library.yaml` names. One that is missing or cannot be read is told and hides no other. Where two
 * folders would have one address, both are told and neither is published: nobody's pack silently takes another's place.
 */

type NamedSource = NonNullable<Library['sources']>[number];

interface SourceRoot {
  readonly root: Root;
  readonly folders: readonly PackFolder[];
}

/** The pack folders of all sources, without those that clash; `clashing` are the addresses that are asked for more than once. */
export async function readSources(
  content: string,
  named: readonly NamedSource[],
  placeOf: (index: number) => Place,
  own: readonly PackFolder[],
  findings: Finding[],
): Promise<{ readonly roots: readonly SourceRoot[]; readonly clashing: ReadonlySet<string> }> {
  const roots: SourceRoot[] = [];
  const keys = new Set<string>();
  const seen = new Set(await Promise.all([content, join(content, 'packs')].map(realPathOf)));
  for (const [index, source] of named.entries()) {
    const root = { at: resolve(content, source.folder), label: `sources/${keyOf(source, keys)}/` };
    const refuse = (why: FactsOf['source/folder']['why']) => findings.push(finding('source/folder', 'stop', placeOf(index), { owner: source.owner, folder: source.folder, why }));
    const status = statusOf(root.at);
    if (status !== 'folder') refuse(status === 'missing' || status === 'link' ? status : 'not a folder');
    else {
      const real = await realPathOf(root.at);
      if (seen.has(real)) refuse('twice');
      else roots.push({ root, folders: foldersOf(root, source, () => refuse('unreadable'), findings) });
      seen.add(real);
    }
  }
  return withoutClashes(roots, own, findings);
}

/** The folders with packs: those in `packs/` where there is one, as in a library's own checkout, or else those that lie there. */
function foldersOf(root: Root, source: NamedSource, refuse: () => void, findings: Finding[]): readonly PackFolder[] {
  const inPacks = statusOf(join(root.at, 'packs'));
  if (inPacks === 'link') {
    findings.push(finding('file/link', 'stop', placeIn(root, 'packs'), { name: 'packs' }));
    return [];
  }
  const above = inPacks === 'folder' ? 'packs/' : '';
  const listing: Finding[] = [];
  const names = namesIn(root, above, listing);
  if (listing.some(({ code }) => code === 'file/unreadable')) refuse();
  else findings.push(...listing);
  const folders: PackFolder[] = [];
  for (const name of names) {
    const path = above + name;
    const status = statusOf(join(root.at, path));
    if (status === 'link') findings.push(finding('file/link', 'stop', placeIn(root, path), { name }));
    // What lies beside the packs of a checkout: names that must not be public, and pages of its own.
    if (status !== 'folder' || (above === '' && (name === 'private' || name === 'pages'))) continue;
    const { owner, contact, prefix, licence, rights } = source;
    folders.push({ path, slug: slugInSource(name, prefix), owner: { name: owner, contact, prefix }, given: { licence, rights } });
  }
  return folders;
}

function withoutClashes(roots: readonly SourceRoot[], own: readonly PackFolder[], findings: Finding[]): Awaited<ReturnType<typeof readSources>> {
  const asking = new Map<string, Place[]>();
  const ask = (root: Root, { path, slug }: PackFolder) => asking.set(slug, [...(asking.get(slug) ?? []), placeIn(root, path)]);
  for (const folder of own) ask({ at: '', label: '' }, folder);
  for (const { root, folders } of roots) for (const folder of folders) ask(root, folder);
  const clashing = new Set<string>();
  for (const [slug, places] of asking) {
    if (places.length < 2) continue;
    clashing.add(slug);
    for (const place of places) findings.push(finding('source/clash', 'stop', place, { slug, others: places.filter((each) => each !== place).map(({ file }) => file) }));
  }
  return { roots: roots.map(({ root, folders }) => ({ root, folders: folders.filter(({ slug }) => !clashing.has(slug)) })), clashing };
}

/** What a source's files are called by: its prefix, or its owner's name; numbered where two are alike. */
function keyOf({ prefix, owner }: NamedSource, used: Set<string>): string {
  const base = prefix ?? slugOf(owner);
  let key = base;
  for (let number = 2; used.has(key); number++) key = `${base}-${String(number)}`;
  used.add(key);
  return key;
}

/** A folder's path without links and detours, so that one folder has one name. */
async function realPathOf(path: string): Promise<string> {
  return realpath(path).catch(() => resolve(path));
}
