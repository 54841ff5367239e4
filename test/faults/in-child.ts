/** Runs builds in processes of their own, so that one can be killed, or be another user's. */
import { spawn, type SpawnOptions } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { BuildOptions } from '../../src/build/build.ts';
import type { SmallLibrary } from '../build/small-library.ts';
import type { Told } from './child.ts';
import type { Fault } from './disk-calls.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
// As deep below the project as the sources are: they look for what lies beside them.
const program = join(root, `.cache/faults/build-${process.pid}.mjs`);
let bundled: Promise<unknown> | undefined;
process.once('exit', () => rmSync(program, { force: true }));

/** The builder as one file, made of the sources as they are: to read them one by one takes a process longer than the build. */
function bundle(): Promise<unknown> {
  mkdirSync(join(root, '.cache/faults'), { recursive: true });
  bundled ??= build({
    entryPoints: [join(root, 'test/faults/child.ts')],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'error',
  });
  return bundled;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly told: Told | undefined;
  readonly err: string;
}

export interface Run {
  readonly fault?: Omit<Fault, 'within'>;
  readonly options?: Partial<BuildOptions>;
  readonly spawn?: Pick<SpawnOptions, 'uid' | 'gid' | 'env'>;
  /** Arguments for Node itself. */
  readonly node?: readonly string[];
  /** Kills it from outside, so many milliseconds after it began to build. */
  readonly killAfter?: { readonly ms: number; readonly signal: 'SIGKILL' | 'SIGTERM' };
  /** Done once it has begun to build. */
  readonly begun?: () => void;
}

/** Builds a library in its own process. The day is fixed, so that what is built now and later can be compared. */
export async function buildInChild(library: SmallLibrary, run: Run = {}): Promise<Ended> {
  await bundle();
  const { content, site, cache } = library;
  const asked = { options: { content, site, cache, strict: false, ...run.options }, fault: { within: library.folder, ...run.fault } };
  const child = spawn(process.execPath, [...(run.node ?? []), program, JSON.stringify(asked)], { ...run.spawn, stdio: ['ignore', 'pipe', 'pipe'] });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    const first = out === '';
    out += text;
    if (!first) return;
    run.begun?.();
    const { killAfter } = run;
    if (killAfter) setTimeout(() => child.kill(killAfter.signal), killAfter.ms);
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
  return new Promise((done, failed) => {
    child.once('error', failed).once('close', (code, signal) => {
      const line = out.split('\n').find((each) => each.startsWith('{'));
      done({ code, signal, told: line === undefined ? undefined : (JSON.parse(line) as Told), err: err.trim() });
    });
  });
}
