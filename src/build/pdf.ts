import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { charactersIn } from './glyphs.ts';
import { holds, sumOf, writeWhole } from './kept.ts';
import { answerOf, beginThread, CannotStart } from './threads.ts';

/** Sheets set by Typst as tagged PDF (PDF/UA-1 as the compiler checks it), the same bytes for the same sheet, kept by the hash of all that goes into one. */

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const require = createRequire(import.meta.url);
const templates = join(root, 'layouts/print');

/** The typefaces, whole. All are under the SIL Open Font License. The templates name the families. */
const fonts: readonly string[] = [
  '@expo-google-fonts/andika/Andika_400Regular.ttf',
  '@expo-google-fonts/andika/Andika_400Regular_Italic.ttf',
  '@expo-google-fonts/andika/Andika_700Bold.ttf',
  '@expo-google-fonts/gentium-book-plus/400Regular/GentiumBookPlus_400Regular.ttf',
  '@expo-google-fonts/gentium-book-plus/400Regular_Italic/GentiumBookPlus_400Regular_Italic.ttf',
  '@expo-google-fonts/amiri/400Regular/Amiri_400Regular.ttf',
  '@expo-google-fonts/amiri/700Bold/Amiri_700Bold.ttf',
];
/** Fonts that between them have every letter that any part of a sheet may use. */
const fontsOfText = [fonts[0], fonts[5]];

/** One sheet to be set: a template's name without its ending, its data, and the pictures that the data names by address. */
export interface PdfJob {
  readonly template: string;
  readonly data: object;
  readonly pictures: readonly { readonly name: string; readonly from: string }[];
}

export type PdfResult = { readonly made: true; readonly from: string; readonly pages: number } | { readonly made: false; readonly fault: string };

export interface PdfOptions {
  readonly cache: string;
  readonly progress?: (done: number, all: number) => void;
  /** The program of a thread; a test puts one in its place that cannot start. */
  readonly worker?: URL;
}

/** The sheets in the order of the jobs, from the cache or made now on all processors; or why none can be made on this machine. */
export async function makePdfs(jobs: readonly PdfJob[], options: PdfOptions): Promise<{ readonly results: readonly PdfResult[] } | { readonly cannotStart: string }> {
  const folder = join(options.cache, 'pdf');
  await mkdir(folder, { recursive: true });
  const kept = await keptIn(folder);
  const recipe = await recipeHash();
  const results: (PdfResult | undefined)[] = [];
  const missing: { readonly index: number; readonly hash: string; readonly job: Job }[] = [];
  for (const [index, { template, data, pictures }] of jobs.entries()) {
    const text = JSON.stringify(data);
    const hash = createHash('sha256').update(`${recipe}\n${template}\n${text}`).digest('hex').slice(0, 24);
    const name = kept.get(hash);
    if (name === undefined || !(await holds(join(folder, name), partsOf(name)[2]))) missing.push({ index, hash, job: { job: index, template: `${template}.typ`, data: text, pictures } });
    else results[index] = { made: true, from: join(folder, name), pages: Number(partsOf(name)[1]) };
  }
  try {
    let done = 0;
    await onThreads(missing, options.worker ?? new URL('./pdf-worker.js', import.meta.url), async ({ index, hash }, answer) => {
      results[index] = 'fault' in answer ? { made: false, fault: answer.fault } : { made: true, from: await keep(folder, hash, answer), pages: answer.pages };
      options.progress?.(++done, missing.length);
    });
  } catch (error) {
    if (error instanceof CannotStart) return { cannotStart: error.message };
    throw error;
  }
  return { results: results.map((result) => result ?? { made: false, fault: 'it was not set' }) };
}

interface Job {
  readonly job: number;
  readonly template: string;
  readonly data: string;
  readonly pictures: PdfJob['pictures'];
}
type Answer = { readonly job: number; readonly pages: number; readonly pdf: Uint8Array } | { readonly job: number; readonly fault: string };

/** Gives each waiting job to a thread that is free. A thread that dies costs the job it was at; one that never gets ready means that the program does not run here. */
async function onThreads<W extends { readonly job: Job }>(waiting: readonly W[], program: URL, told: (work: W, answer: Answer) => Promise<void>): Promise<void> {
  const queue = [...waiting];
  // A thread needs a moment to read its fonts: a second one pays from about this many sheets on.
  const number = Math.min(availableParallelism(), Math.ceil(queue.length / 4));
  await Promise.all(Array.from({ length: number }, () => oneThread(queue, program, told)));
}

async function oneThread<W extends { readonly job: Job }>(queue: W[], program: URL, told: (work: W, answer: Answer) => Promise<void>): Promise<void> {
  const begin = () => beginThread(program, { workerData: { workspace: templates, fonts: fonts.map((font) => require.resolve(font)) } });
  let thread = await begin();
  try {
    for (let work = queue.shift(); work; work = queue.shift()) {
      const { job } = work.job;
      const answer = await answerOf<Answer>(thread, work.job).catch((error: unknown): Answer => ({ job, fault: error instanceof Error ? error.message : String(error) }));
      await told(work, answer);
      if (thread.threadId === -1) thread = await begin();
    }
  } catch (error) {
    // The others are not to go on with what nobody waits for any more.
    queue.length = 0;
    throw error;
  } finally {
    await thread.terminate();
  }
}

/** Kept files by their hash. A file's name is `hash-pages-sum.pdf`, the sum being that of its bytes. */
async function keptIn(folder: string): Promise<ReadonlyMap<string, string>> {
  const names = await readdir(folder);
  return new Map(names.filter((name) => partsOf(name).length === 3).map((name) => [partsOf(name)[0] ?? '', name]));
}

function partsOf(name: string): readonly string[] {
  return name.endsWith('.pdf') ? name.slice(0, -'.pdf'.length).split('-') : [];
}

async function keep(folder: string, hash: string, { pages, pdf }: Extract<Answer, { pages: number }>): Promise<string> {
  const path = join(folder, `${hash}-${String(pages)}-${sumOf(pdf)}.pdf`);
  await writeWhole(path, pdf);
  return path;
}

/** A hash of what all sheets have in common: the compiler, the fonts and the templates. */
async function recipeHash(): Promise<string> {
  const hash = createHash('sha256');
  const compiler = JSON.parse(await readFile(require.resolve('@myriaddreamin/typst-ts-node-compiler/package.json'), 'utf8')) as { version: string };
  hash.update(compiler.version);
  for (const font of fonts) hash.update(await readFile(require.resolve(font)));
  for (const name of (await readdir(templates)).sort()) hash.update(name).update(await readFile(join(templates, name)));
  return hash.digest('hex');
}

let known: ReadonlySet<number> | undefined;

/** Characters that a sheet's fonts have no letter for: the compiler would refuse the whole sheet for one of them. */
export function unprintable(text: string): readonly string[] {
  known ??= new Set(fontsOfText.flatMap((font) => [...charactersIn(require.resolve(font ?? ''))]));
  const letters = known;
  return [...new Set(text)].filter((character) => !letters.has(character.codePointAt(0) ?? 0));
}
