/**
 * A report, never a test: what the folders to take along (`pack.zip`) add to a build of many packs, in time and in room, beside the same build
 * without them. Each in its own process, from nothing, the fastest of three in turn.
 *
 *   node --import tsx test/speed/folders.ts [number of packs]
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from '../../src/build/build.ts';
import { writePacks } from './invented-library.ts';

interface Costs {
  readonly seconds: number;
  readonly cpuSeconds: number;
  readonly peakMegabytes: number;
  readonly megabytes: number;
  readonly zips: number;
}

const [count, task, folder] = [Number(process.argv[2] ?? 200), process.argv[3], process.argv[4] ?? ''];
if (task === undefined) report();
else await one(task === 'with');

async function one(folders: boolean): Promise<void> {
  const [cpu, started] = [process.cpuUsage(), performance.now()];
  const site = join(folder, 'site');
  await build({ content: join(folder, 'content'), site, cache: join(folder, 'cache'), strict: false, folders });
  const { user, system } = process.cpuUsage(cpu);
  const files = readdirSync(site, { recursive: true, encoding: 'utf8' }).map((name) => join(site, name));
  const bytes = (list: readonly string[]) => list.reduce((sum, each) => sum + statSync(each).size, 0) / 1e6;
  const zips = files.filter((each) => each.endsWith('.zip'));
  console.log(
    JSON.stringify({
      seconds: (performance.now() - started) / 1000,
      cpuSeconds: (user + system) / 1e6,
      peakMegabytes: process.resourceUsage().maxRSS / 1024,
      megabytes: bytes(zips),
      zips: zips.length,
    }),
  );
}

function report(): void {
  const place = mkdtempSync(join(tmpdir(), 'bookfellow-folders-'));
  writePacks(join(place, 'content'), count);
  writeFileSync(join(place, 'content', 'library.yaml'), 'title: The speed shelf\nlanguage: en\n');
  const run = (what: 'with' | 'without'): Costs => {
    for (const made of ['site', 'cache']) rmSync(join(place, made), { recursive: true, force: true });
    const ended = spawnSync(process.execPath, ['--import', 'tsx', fileURLToPath(import.meta.url), String(count), what, place], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
    if (ended.status !== 0) throw new Error(`${what} ended with ${ended.status ?? 'nothing'}: ${ended.stdout}`);
    return JSON.parse(ended.stdout.trim().split('\n').at(-1) ?? '') as Costs;
  };
  const all = { without: [] as Costs[], with: [] as Costs[] };
  for (let turn = 0; turn < 3; turn++) for (const what of ['without', 'with'] as const) all[what].push(run(what));
  const least = (what: 'with' | 'without', of: keyof Costs) => Math.min(...all[what].map((each) => each[of]));
  console.log(`${count} packs without pictures and sheets, Node ${process.versions.node}`);
  for (const what of ['without', 'with'] as const)
    console.log(`${what.padEnd(8)} folders  ${least(what, 'seconds').toFixed(1)} s  ${least(what, 'cpuSeconds').toFixed(1)} CPU s  ${least(what, 'peakMegabytes').toFixed(0)} MB at most`);
  const more = least('with', 'cpuSeconds') - least('without', 'cpuSeconds');
  console.log(
    `ratio    ${(least('with', 'cpuSeconds') / least('without', 'cpuSeconds')).toFixed(2)} in CPU; ${((1000 * more) / count).toFixed(0)} ms and ${((1000 * least('with', 'megabytes')) / least('with', 'zips')).toFixed(0)} kB a folder`,
  );
  rmSync(place, { recursive: true });
}
