/** Runs a program and tells what it cost, as Linux counts it: seconds by the clock and of the processor, and the most memory it held. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';

export interface Cost {
  readonly seconds: number;
  readonly cpuSeconds: number;
  readonly peakMegabytes: number;
  /** What it printed. */
  readonly out: string;
}

/** Clock ticks a second in `/proc`: 100 on every Linux that Node runs on. Source: proc_pid_stat(5), sysconf(3), from memory. */
const ticks = 100;

/** Throws when the program ends with anything but 0. What it costs is asked every few milliseconds, so the last of them are missed. */
export async function runProgram(program: string, args: readonly string[], cwd: string): Promise<Cost> {
  const started = performance.now();
  const child = spawn(program, args, { cwd, stdio: ['ignore', 'pipe', 'inherit'] });
  let out = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
  let [cpuSeconds, peakMegabytes] = [0, 0];
  const look = setInterval(() => {
    try {
      const stat = readFileSync(`/proc/${String(child.pid)}/stat`, 'utf8');
      // The program's name stands in brackets and may hold anything.
      const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      const now = (Number(fields[11]) + Number(fields[12])) / ticks;
      if (now > cpuSeconds) cpuSeconds = now;
      const most = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${String(child.pid)}/status`, 'utf8'))?.[1];
      if (most !== undefined) peakMegabytes = Number(most) / 1024;
    } catch {
      // It has ended.
    }
  }, 10);
  const code = await new Promise<number | null>((done, failed) => {
    child.once('error', failed).once('close', done);
  });
  clearInterval(look);
  if (code !== 0) throw new Error(`${program} ended with ${String(code)}: ${out.slice(-2000)}`);
  return { seconds: (performance.now() - started) / 1000, cpuSeconds, peakMegabytes, out };
}
