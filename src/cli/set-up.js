// What `npm start` and `npm test` begin with. Plain JavaScript with nothing but Node's own modules,
// because on a fresh checkout nothing else is there yet.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const [task = 'start', ...rest] = process.argv.slice(2);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Bookfellow needs Node.js 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(2);
}

if (!isInstalled()) {
  console.log('Installing what is missing (once; about a minute) …');
  const installed = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (installed !== 0) {
    console.error('The installation did not finish. Check the connection to the internet and try again.');
    process.exit(installed);
  }
}

process.exit(task === 'test' ? run(process.execPath, ['--import', 'tsx', 'test/run.ts', ...rest]) : run(process.execPath, ['src/cli/bookfellow.js', 'preview', ...rest]));

/** npm notes in this hidden file what it installed; it is there only after a whole installation of this lockfile's packages. */
function isInstalled() {
  const noted = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(noted)) return false;
  /** @type {{ packages: Record<string, { version?: string, optional?: boolean, os?: string[], cpu?: string[] }> }} */
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  /** @type {typeof wanted} */
  const there = JSON.parse(readFileSync(noted, 'utf8'));
  return Object.entries(wanted.packages).every(([path, { version, optional }]) => path === '' || optional === true || there.packages[path]?.version === version);
}

/**
 * @param {string} command
 * @param {string[]} args
 */
function run(command, args) {
  const result = spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' && command === 'npm' });
  return result.status ?? 1;
}
