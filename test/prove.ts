/**
 * `npm run prove`: everything that is promised about faults and attacks, tried with large numbers, and one table of it. 20 to 30 minutes.
 *
 *   npm run prove                       everything
 *   npm run prove -- test/faults        only these tests; their rows take the place of earlier ones
 *   npm run prove -- --last             nothing is tried: the table of what was tried last
 *   … --write                           puts the table into DEVELOPERS.md
 *
 * It ends with 1 when something did not hold, or when README and DEVELOPERS.md tell other numbers than the table.
 */
import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { disagreements, promisedIn, readRows, tableOf, toldIn, withTable, type Row } from './proof-table.ts';
import { assetsBySize, pageWeights, weightTable } from './whole-site/shipped.ts';
import { buildDemo } from './whole-site/site.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const kept = join(root, '.cache/proved.jsonl');
const options = process.argv.slice(2).filter((each) => each.startsWith('--'));
const filters = process.argv.slice(2).filter((each) => !each.startsWith('--'));

/** Tests that write their own rows. */
const own = ['test/faults', 'test/hostile', 'test/build/save-pack.test.ts'];
/** Tests that write none: each is a class, and each of its tests a case. */
const named: Readonly<Record<string, string>> = {
  'test/browser/kept-safe.test.ts': 'a booklet on a device that loses its network, its room or its window',
  'test/browser/tab-dies.test.ts': 'a booklet whose tab dies while somebody draws',
  'test/build/canary.test.ts': 'secrets in every private place',
  'test/build/supply-chain.test.ts': 'what comes from outside',
  'test/core/booklet': 'booklets written and read back, ten times as many random ones',
  'test/whole-site/pages.test.ts': 'pages in a browser: other hosts, storage, policies',
};

mkdirSync(join(root, '.cache'), { recursive: true });
const scratch = mkdtempSync(join(tmpdir(), 'bookfellow-prove-'));
let fine = true;
if (!options.includes('--last')) {
  if (filters.length === 0) rmSync(kept, { force: true });
  const site = await buildDemo(scratch);
  fine = tryAll(site, filters.length === 0 ? [...own, ...Object.keys(named)] : filters);
  console.log(`\nWhat all pages share, by size\n${weightTable(assetsBySize(site))}`);
  const pages = ['', 'packs/seven-buttons/', 'packs/seven-buttons/booklet/', 'packs/seven-buttons/lesson/', 'find/', 'make/', 'stack/', 'quality/'];
  console.log(`\nPages of the demo library with what they name\n${weightTable(pageWeights(site, pages))}\n`);
}
rmSync(scratch, { recursive: true, force: true });

const rows = existsSync(kept) ? readRows(readFileSync(kept, 'utf8')) : [];
console.log(tableOf(rows));
const place = join(root, 'DEVELOPERS.md');
if (options.includes('--write')) writeFileSync(place, withTable(readFileSync(place, 'utf8'), rows));
for (const each of rows) if (each.held !== each.cases) tell(`${each.class}: ${each.held} of ${each.cases} held`);
const told = toldIn(readFileSync(place, 'utf8'));
const counted = new Map(rows.map((row) => [row.class, row]));
for (const [name, { cases }] of told) {
  if (counted.get(name)?.cases !== cases && (filters.length === 0 || counted.has(name)))
    tell(`DEVELOPERS.md says ${cases} of "${name}", and the last run tried ${counted.get(name)?.cases ?? 'none'}. --write mends it.`);
}
for (const each of disagreements(promisedIn(readFileSync(join(root, 'README.md'), 'utf8')), told)) tell(each);
process.exit(fine ? 0 : 1);

function tell(what: string): void {
  console.error(what);
  fine = false;
}

interface Report {
  readonly testResults: readonly { readonly name: string; readonly startTime: number; readonly endTime: number; readonly assertionResults: readonly { readonly status: string }[] }[];
}

function tryAll(site: string, files: readonly string[]): boolean {
  const report = join(scratch, 'report.json');
  const env = { ...process.env, BOOKFELLOW_TEST_SITE: site, BOOKFELLOW_PROVE: '1', BOOKFELLOW_PROVE_FILE: kept, BOOKFELLOW_WHOLE: '1', BOOKFELLOW_TRIES: '10', BOOKFELLOW_RUNS: '500' };
  const args = [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    '.config/vitest.config.js',
    '--retry=0',
    '--testTimeout=7200000',
    '--hookTimeout=7200000',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ];
  const { status } = spawnSync(process.execPath, [...args, ...files], { cwd: root, stdio: 'inherit', env });
  const results = existsSync(report) ? (JSON.parse(readFileSync(report, 'utf8')) as Report).testResults : [];
  for (const [path, name] of Object.entries(named)) {
    const of = results.filter((each) => relative(root, each.name).split('\\').join('/').startsWith(path));
    const tests = of.flatMap((each) => each.assertionResults).filter((each) => each.status === 'passed' || each.status === 'failed');
    if (tests.length === 0) continue;
    const row: Row = {
      class: name,
      cases: tests.length,
      held: tests.filter((each) => each.status === 'passed').length,
      ms: of.reduce((sum, each) => sum + each.endTime - each.startTime, 0),
      peakMB: 0,
    };
    appendFileSync(kept, `${JSON.stringify(row)}\n`);
  }
  return status === 0;
}
