/** `npm test`: every check there is, each told in a plain line, and one sum at the end. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './whole-site/find-browser.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'bookfellow-test-'));
const require = createRequire(import.meta.url);
const sum = { passed: 0, failed: 0, skipped: 0 };

/** A program of a package, by the name it has in that package's `bin`. */
function programOf(packageName: string, program = packageName): string {
  const at = require.resolve(`${packageName}/package.json`);
  const { bin } = JSON.parse(readFileSync(at, 'utf8')) as { bin: string | Readonly<Record<string, string>> };
  return join(dirname(at), typeof bin === 'string' ? bin : (bin[program] ?? ''));
}

function runNode(args: readonly string[], env: Readonly<Record<string, string>> = {}): boolean {
  return spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } }).status === 0;
}

/** Runs a check beside others; what it says is kept together and printed when it has ended. */
async function check(name: string, args: readonly string[]): Promise<void> {
  await step(name, () => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    const said: Buffer[] = [];
    child.stdout.on('data', (part: Buffer) => said.push(part));
    child.stderr.on('data', (part: Buffer) => said.push(part));
    return new Promise<boolean>((resolve, reject) => {
      child.on('error', reject);
      child.on('close', (code) => {
        process.stdout.write(Buffer.concat(said));
        resolve(code === 0);
      });
    });
  });
}

async function step(name: string, work: () => boolean | Promise<boolean>): Promise<boolean> {
  const started = performance.now();
  const fine = await Promise.resolve()
    .then(work)
    .catch((error: unknown) => {
      console.error(error instanceof Error ? error.message : error);
      return false;
    });
  sum[fine ? 'passed' : 'failed'] += 1;
  console.log(`${fine ? 'passed' : 'FAILED'}  ${name} (${((performance.now() - started) / 1000).toFixed(1)} s)`);
  return fine;
}

interface Counts {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly { readonly status: string }[] }[];
}

/** Runs vitest and adds its counts to the sum; a file that could not even be loaded counts as a failure. */
function runVitest(env: Readonly<Record<string, string>>, filters: readonly string[]): void {
  const counted = join(scratch, 'counts.json');
  const fine = runNode([programOf('vitest'), 'run', '--config', '.config/vitest.config.js', '--reporter=default', '--reporter=json', `--outputFile.json=${counted}`, ...filters], env);
  let counts: Counts | undefined;
  try {
    counts = JSON.parse(readFileSync(counted, 'utf8')) as Counts;
  } catch {
    console.error('vitest ended without a report.');
  }
  const unloaded = counts?.testResults.filter((file) => file.status === 'failed' && !file.assertionResults.some((each) => each.status === 'failed')).length ?? 0;
  const failed = (counts?.numFailedTests ?? 0) + unloaded;
  sum.passed += counts?.numPassedTests ?? 0;
  sum.skipped += (counts?.numPendingTests ?? 0) + (counts?.numTodoTests ?? 0);
  sum.failed += fine ? failed : Math.max(failed, 1);
}

// The compiler that is a program of the machine's own needs a fifth of the time; version 6 is there for the tests that ask it about code.
const tsc = programOf('typescript-7', 'tsc');
const env: Record<string, string> = {};

await step('a browser to test with', async () => {
  const { path, flags } = await findBrowser(console.log);
  console.log(`        ${path}`);
  // Each test would look for it again, and try again what failed.
  if (flags.length === 0) env['BOOKFELLOW_BROWSER'] = path;
  return true;
});
const code = ['src', 'layouts', 'test', '.config'];
// Two lanes of about the same length, since a small machine has two cores.
await Promise.all([
  (async () => {
    const rules = ['--type-aware', '--config', '.config/oxlint.jsonc', '--report-unused-disable-directives', '--deny-warnings'];
    await check('rules for code (oxlint)', [programOf('oxlint'), ...rules, ...code]);
    await check('types: everything (tsc)', [tsc, '--noEmit']);
    await check('types: the core without Node and without a browser (tsc -p src/core)', [tsc, '-p', 'src/core', '--noEmit']);
    await check('format (prettier)', [programOf('prettier'), '--check', '--log-level=warn', ...code]);
  })(),
  step('the demo library, built strictly', async () => {
    const { buildDemo } = await import('./whole-site/site.ts');
    env['BOOKFELLOW_TEST_SITE'] = await buildDemo(scratch);
    return true;
  }),
]);
runVitest(env, process.argv.slice(2));

rmSync(scratch, { recursive: true, force: true });
console.log(`\n${sum.passed} passed, ${sum.failed} failed${sum.skipped > 0 ? `, ${sum.skipped} skipped` : ''}`);
process.exit(sum.failed === 0 ? 0 : 1);
