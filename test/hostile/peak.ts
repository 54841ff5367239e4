/** The most memory that this process has held, and a new beginning for it. Linux keeps the mark (`proc(5)`: VmHWM, set back through clear_refs); elsewhere it only grows. */
import { readFileSync, writeFileSync } from 'node:fs';

/** Does the work, and tells how long it took and how much memory the process held at most meanwhile. */
export async function measured<T>(work: () => T | Promise<T>): Promise<{ readonly value: T; readonly ms: number; readonly peakMB: number }> {
  begin();
  const started = performance.now();
  const value = await work();
  return { value, ms: performance.now() - started, peakMB: peak() };
}

function begin(): void {
  try {
    writeFileSync('/proc/self/clear_refs', '5');
  } catch {
    // No such file: the mark counts from the start of the process.
  }
}

function peak(): number {
  try {
    const kilobytes = /^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))?.[1];
    if (kilobytes !== undefined) return (Number(kilobytes) * 1024) / 1e6;
  } catch {
    // As above.
  }
  return (process.resourceUsage().maxRSS * 1024) / 1e6;
}
