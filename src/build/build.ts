import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { checkPack } from '../core/check/check-pack.ts';
import { inOrder, stops, type Finding } from '../core/finding.ts';
import { measurePack } from '../core/measure/measure-pack.ts';
import { defaultLibrary, readLibrary, type Library } from '../core/pack/library.ts';
import { readPack } from '../core/pack/read-pack.ts';
import type { Source } from '../core/pack/pack.ts';
import { planLesson } from '../core/plan/plan-lesson.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { versionsOf } from '../core/check/versions.ts';
import { textOutputs } from '../outputs/output.ts';
import { pagesOf, type PageText } from '../outputs/pages.ts';
import { showPack, type Shown } from './show-pack.ts';
import { makeAssets } from './browser-code.ts';
import { writePages } from './eleventy.ts';
import { readProse } from './read-prose.ts';
import { stage, writeFiles } from './publish.ts';
import { readContent, type Content } from './read-content.ts';

export interface BuildOptions {
  /** The content folder. */
  readonly content: string;
  /** Where the site goes. */
  readonly site: string;
  /** For what may be thrown away and made again. */
  readonly cache: string;
  /** True: one finding that stops keeps the whole library from being published. */
  readonly strict: boolean;
  /** Told after each pack of the long part of the work. */
  readonly progress?: (done: number, all: number) => void;
}

export interface Built {
  readonly findings: readonly Finding[];
  readonly published: number;
  /** Packs that a finding kept off the site. */
  readonly leftOut: number;
  readonly pages: number;
}

/** A pack as far as it came, with what was told about it on the way. */
export interface Told {
  readonly source: Source;
  readonly pack: PlannedPack | undefined;
  readonly findings: readonly Finding[];
}

/** Six stages: read, check, measure, plan, render, publish. */
export async function build(options: BuildOptions): Promise<Built> {
  await mkdir(options.cache, { recursive: true });
  const { content, library, told, findings } = await readLibraryOf(options.content);

  const sound = told.filter((each) => each.pack && !stops(each.findings));
  const shown = await showPacks(sound, library, options);
  const prose = readProse(content.pages, library);
  const everything = inOrder([...findings, ...shown.findings, ...prose.findings]);
  const result = { findings: everything, published: shown.packs.length, leftOut: new Set(told.map((each) => each.source.file)).size - shown.packs.length };
  if (options.strict && stops(everything)) return { ...result, published: 0, pages: 0 };

  const { assets, files } = await makeAssets();
  const pages = pagesOf({ library, shown: shown.packs, findingsOf: findingsByFile(everything), prose: prose.pages satisfies readonly PageText[], assets });
  const staging = await stage(options.site);
  try {
    await writePages(pages, staging.folder, options.cache);
    await writeFiles(staging.folder, [...files, ...shown.files, ...textOutputs({ library, shown: shown.packs, pages })]);
    await staging.publish();
  } catch (error) {
    await staging.discard();
    throw error;
  }
  return { ...result, pages: pages.length };
}

/** The stages that only look: every pack read, checked, measured and planned, and all findings. */
export async function readLibraryOf(folder: string): Promise<{ content: Content; library: Library; told: readonly Told[]; findings: readonly Finding[] }> {
  const content = await readContent(folder);
  const read = readLibrary(content.library, 'library.yaml');
  const library = read.value ?? defaultLibrary;
  const each = content.sources.map((source) => throughStages(source, library));
  const told = withVersions(each, library);
  return { content, library, told, findings: [...content.findings, ...read.findings, ...told.flatMap((one) => one.findings)] };
}

function throughStages(source: Source, library: Library): Told {
  const read = readPack(source);
  if (!read.value) return { source, pack: undefined, findings: read.findings };
  const checked = checkPack(read.value);
  const measured = measurePack(checked.value);
  const planned = planLesson(measured.value, library);
  return { source, pack: planned.value, findings: [...read.findings, ...checked.findings, ...measured.findings, ...planned.findings] };
}

/** Findings that need all of a book's packs at once: two in one language, or one in a language that the library does not have. */
function withVersions(told: readonly Told[], library: Library): readonly Told[] {
  const extra = versionsOf(told.flatMap((each) => each.pack ?? []), library);
  return told.map((each) => ({ ...each, findings: [...each.findings, ...extra.filter((found) => found.place.file === each.source.file)] }));
}

async function showPacks(sound: readonly Told[], library: Library, options: BuildOptions): Promise<{ packs: readonly Shown['shown'][]; files: Shown['files']; findings: readonly Finding[] }> {
  const packs: Shown['shown'][] = [];
  const files = new Map<string, Shown['files'][number]>();
  const findings: Finding[] = [];
  const all = sound.flatMap((each) => each.pack ?? []);
  for (const [index, pack] of all.entries()) {
    const one = await showPack(pack, all, library, join(options.content, 'packs', pack.slug, 'pictures'), options.cache);
    findings.push(...one.findings);
    if (!stops(one.findings)) {
      packs.push(one.shown);
      for (const file of one.files) files.set(file.url, file);
    }
    options.progress?.(index + 1, all.length);
  }
  return { packs, files: [...files.values()], findings };
}

function findingsByFile(findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const byFile = new Map<string, Finding[]>();
  for (const each of findings) byFile.set(each.place.file, [...(byFile.get(each.place.file) ?? []), each]);
  return byFile;
}
