/**
 * A report, never a test: how long the sheets of 1,000 packs take, three a pack (lesson, substitute, booklet), beside the floor:
 * the same compiler with the same typefaces setting as many plain documents of one page. Each in its own process, from nothing;
 * then once more with everything kept.
 *
 *   node --import tsx test/speed/papers-1000.ts [number of packs]
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makePdfs, type PdfJob, type PdfResult } from '../../src/build/pdf.ts';
import { jobOf } from '../../src/build/papers.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { showPack } from '../../src/build/show-pack.ts';
import { sheetsOf } from '../../src/outputs/sheets/sheets.ts';
import { writePacks } from './invented-library.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [count, task, folder] = [Number(process.argv[2] ?? 1000), process.argv[3], process.argv[4] ?? ''];
const kinds = ['lesson', 'substitute', 'booklet'];

if (task === 'sheets') await sheets();
else if (task === 'floor') await floor();
else report();

/** The demo's own packs are the pattern: every pack's sheets, made from the invented library. */
async function sheets(): Promise<void> {
  const { library, told } = await readWholeLibrary(join(folder, 'content'));
  const all = told.flatMap((each) => each.pack ?? []);
  const jobs: PdfJob[] = [];
  for (const pack of all) {
    const { shown } = await showPack(pack, [pack], library, join(folder, 'content'), join(folder, 'cache'));
    for (const sheet of sheetsOf(shown, library).filter(({ kind }) => kinds.includes(kind))) jobs.push(await jobOf(sheet, new Map(), new Set()));
  }
  await set(jobs, 'cache');
}

/** Plain documents through the same door: a letter without prompts is the smallest sheet there is. */
async function floor(): Promise<void> {
  const plain = (number: number): PdfJob => ({
    template: 'letter',
    pictures: [],
    data: {
      language: 'en',
      dir: 'ltr',
      paper: 'a4',
      title: `Plain ${number}`,
      author: '',
      foot: '',
      kind: 'plain',
      book: `Plain ${number}`,
      by: '',
      heard: 'The ferry waits.',
      summary: '',
      ten: '',
      prompts: [],
      versions: [{ note: '', words: [] }],
      labels: { date: '', dear: '', words: '', from: '' },
      where: { code: null, text: '', address: '', note: '' },
      also: [],
    },
  });
  await set(
    Array.from({ length: count * kinds.length }, (_, number) => plain(number)),
    'floor-cache',
  );
}

async function set(jobs: readonly PdfJob[], cache: string): Promise<void> {
  const start = process.cpuUsage();
  const started = performance.now();
  const made = await makePdfs(jobs, { cache: join(folder, cache) });
  if ('cannotStart' in made) throw new Error(made.cannotStart);
  const faults = made.results.flatMap((result) => (result.made ? [] : [result.fault]));
  if (faults.length > 0) throw new Error(`${faults.length} sheets were not made: ${faults[0] ?? ''}`);
  const files = made.results as readonly Extract<PdfResult, { made: true }>[];
  const { user, system } = process.cpuUsage(start);
  console.log(
    JSON.stringify({
      sheets: files.length,
      pages: files.reduce((sum, each) => sum + each.pages, 0),
      kilobytes: files.reduce((sum, each) => sum + statSync(each.from).size, 0) / 1000,
      seconds: (performance.now() - started) / 1000,
      cpuSeconds: (user + system) / 1e6,
      peakMegabytes: process.resourceUsage().maxRSS / 1024,
    }),
  );
}

function report(): void {
  const place = mkdtempSync(join(tmpdir(), 'bookfellow-sheets-'));
  writePacks(join(place, 'content'), count);
  writeFileSync(join(place, 'content', 'library.yaml'), 'title: The speed shelf\nlanguage: en\n');
  const run = (what: string) => {
    const ended = spawnSync(process.execPath, ['--import', 'tsx', fileURLToPath(import.meta.url), String(count), what, place], { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
    if (ended.status !== 0) throw new Error(`${what} ended with ${ended.status ?? ended.signal ?? 'nothing'}: ${ended.stdout}`);
    return JSON.parse(ended.stdout.trim().split('\n').at(-1) ?? '') as Record<'sheets' | 'pages' | 'kilobytes' | 'seconds' | 'cpuSeconds' | 'peakMegabytes', number>;
  };
  const [floorCosts, cold, kept] = [run('floor'), run('sheets'), run('sheets')];
  console.log(`${count} packs, ${kinds.length} sheets each, ${availableParallelism()} processors, Node ${process.versions.node}`);
  for (const [name, costs] of [
    ['plain pages', floorCosts],
    ['sheets', cold],
    ['all kept', kept],
  ] as const)
    console.log(
      `${name.padEnd(12)} ${costs.sheets} sheets, ${costs.pages} pages, ${(costs.kilobytes / costs.sheets).toFixed(0)} kB each  ${costs.seconds.toFixed(1)} s  ${costs.cpuSeconds.toFixed(1)} CPU s  ${((1000 * costs.cpuSeconds) / costs.sheets).toFixed(1)} ms a sheet  ${costs.peakMegabytes.toFixed(0)} MB at most`,
    );
  console.log(
    `ratio        ${(cold.cpuSeconds / floorCosts.cpuSeconds).toFixed(2)} of the plain pages' CPU, ${(cold.cpuSeconds / cold.pages / (floorCosts.cpuSeconds / floorCosts.pages)).toFixed(2)} a page; kept ${(kept.seconds / cold.seconds).toFixed(3)} of the time`,
  );
  rmSync(place, { recursive: true });
}
