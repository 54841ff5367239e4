/** A build in a process of its own, with a fault in it. It says what came of it in one line of JSON, or why not in a sentence. */
import { resolve } from 'node:path';
import type { BuildOptions } from '../../src/build/build.ts';
import { putIn, type Fault } from './disk-calls.ts';

export interface Told {
  readonly published: number;
  readonly calls: number;
  readonly writes: number;
  readonly ms: number;
  readonly peakMB: number;
}

const { options, fault } = JSON.parse(process.argv[2] ?? '') as { readonly options: BuildOptions; readonly fault: Fault };
const counted = putIn({ ...fault, within: resolve(fault.within) });
const { build } = await import('../../src/build/build.ts');
const { reasonFor } = await import('../../src/cli/reason-for.ts');
const started = performance.now();
process.stdout.write('ready\n');
try {
  const { published } = await build({ ...options, paperProgram: new URL('../../src/build/pdf-worker.js', import.meta.url) });
  const told: Told = { published, ...counted, ms: performance.now() - started, peakMB: process.resourceUsage().maxRSS / 1000 };
  process.stdout.write(`${JSON.stringify(told)}\n`);
} catch (error) {
  process.stderr.write(`${reasonFor(error).join('\n')}\n`);
  process.exitCode = 2;
}
