/**
 * Finds a browser for the tests: one that is named, one that is installed, one that Debian has, or one from a package.
 * Chromium without any window is taken before the whole one: it is the same engine, and a page in it costs less than half.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Debian's Chromium without a window. */
const shell = 'chromium-headless-shell';
const names = [shell, 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge'];

/** Usual places of a browser that is installed and in no search path. */
const places: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium', '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge'],
  win32: ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData'].flatMap((name) => {
    const folder = process.env[name];
    return folder === undefined ? [] : [join(folder, 'Google/Chrome/Application/chrome.exe'), join(folder, 'Microsoft/Edge/Application/msedge.exe')];
  }),
};

export interface FoundBrowser {
  readonly path: string;
  /** Flags that this browser needs beside ours. */
  readonly flags: readonly string[];
}

/** The browser to test with. `tell` hears about what takes long. Throws a sentence when there is none to be had. */
export async function findBrowser(tell: (message: string) => void = () => undefined): Promise<FoundBrowser> {
  const named = process.env['BOOKFELLOW_BROWSER'];
  if (named !== undefined && named !== '') {
    if (!existsSync(named)) throw new Error(`BOOKFELLOW_BROWSER names "${named}", and there is no such file.`);
    return { path: named, flags: [] };
  }
  const there = installedBrowser();
  // On a machine that exists for the tests alone the small one is fetched, even when the large one is there.
  const wanted = there === undefined || (process.env['CI'] === 'true' && !there.endsWith(shell));
  const installed = (wanted ? fromDebian(tell) : undefined) ?? there;
  return installed === undefined ? fromPackage(tell) : { path: installed, flags: [] };
}

function installedBrowser(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const ending = process.platform === 'win32' ? '.exe' : '';
  const candidates = [...names.flatMap((name) => folders.map((folder) => join(folder, name + ending))), ...(places[process.platform] ?? [])];
  return candidates.find(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** On Debian and its kin, when we may install: the distribution's own browser. */
function fromDebian(tell: (message: string) => void): string | undefined {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  tell(`Installing ${shell} with apt-get (once; a minute or two) …`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', shell]]) {
    if (spawnSync('apt-get', ['-qq', ...args], { stdio: ['ignore', 'ignore', 'inherit'], env }).status !== 0) return undefined;
  }
  return installedBrowser();
}

/** A browser that comes as a package, for machines that have none and may not install one. Linux only. */
async function fromPackage(tell: (message: string) => void): Promise<FoundBrowser> {
  const how = 'Install Chromium or Chrome, or name one: BOOKFELLOW_BROWSER=/path/to/browser npm test';
  if (process.platform !== 'linux') throw new Error(`The tests need a browser and found none. ${how}`);
  tell('No browser found; unpacking the one that comes as a package …');
  const { default: chromium } = await import('@sparticuz/chromium');
  const path = await chromium.executablePath();
  try {
    execFileSync(path, ['--version', '--no-sandbox'], { stdio: 'ignore' });
  } catch (error) {
    throw new Error(`The browser that comes as a package does not start here. ${how}`, { cause: error });
  }
  return { path, flags: chromium.args };
}
