import { lineageOf } from '../core/check/lineage.ts';
import { versionsOf } from '../core/check/versions.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { OwnLayouts } from '../outputs/views.ts';
import { packKeeper, type Looked } from './kept-packs.ts';
import { readContent, type Content } from './read-content.ts';
import { textThreads, type TextThreads } from './text-threads.ts';

export interface WholeLibrary {
  readonly content: Omit<Content, 'sources'>;
  readonly library: Library;
  readonly own: OwnLayouts;
  readonly told: readonly Looked[];
  readonly findings: readonly Finding[];
  /** Paths of what was taken from the cache or put into it. */
  readonly used: Iterable<string>;
}

/**
 * The stages that only look: every pack read, checked, measured and planned, and all findings.
 *
 * @param today The day that dates are held against.
 * @param cache Where packs are kept from one time to the next; they are not where it is undefined.
 * @param threads Where many packs are read at once; of the caller, or begun and ended here.
 * @param progress Told after each pack that had to be read.
 */
export async function readWholeLibrary(
  folder: string,
  today = new Date().toISOString().slice(0, 10),
  cache?: string,
  threads?: TextThreads,
  progress?: (done: number, all: number) => void,
): Promise<WholeLibrary> {
  const { sources, ...content } = await readContent(folder);
  const { library } = content;
  const { own, findings: ofLayouts } = await ownLayouts(content);
  const keeper = await packKeeper(library, cache);
  const reading = threads ?? textThreads(() => import('./bundle.ts').then(({ bundler }) => bundler(undefined)));
  let each: readonly Looked[];
  try {
    each = await keeper.lookAll(sources, today, reading, progress);
  } finally {
    if (!threads) await reading.close();
  }
  const told = withVersions(each, library);
  return { content, library, own, told, findings: [...content.findings, ...ofLayouts, ...told.flatMap((one) => one.findings)], used: keeper.used };
}

/** Most libraries have none, and need nothing that makes them. */
async function ownLayouts({ library, layouts }: Pick<Content, 'library' | 'layouts'>): Promise<{ readonly own: OwnLayouts; readonly findings: readonly Finding[] }> {
  if (library.layouts === undefined || library.layouts.length === 0) return { own: {}, findings: [] };
  const { readOwnLayouts } = await import('./own-layouts.ts');
  return readOwnLayouts(layouts, library);
}

/** Findings that need all packs at once: two of a book in one language, one in a language that the library does not have, a parent that is not here. */
function withVersions(told: readonly Looked[], library: Library): readonly Looked[] {
  const packs = told.flatMap((each) => each.pack ?? []);
  const retired = told.flatMap((each) => each.retired ?? []);
  const byFile = new Map<string, Finding[]>();
  for (const found of [...versionsOf([...packs, ...retired], library), ...lineageOf(packs, retired, library)]) byFile.set(found.place.file, [...(byFile.get(found.place.file) ?? []), found]);
  return told.map((each) => ({ ...each, findings: [...each.findings, ...(byFile.get(each.source.file) ?? [])] }));
}
