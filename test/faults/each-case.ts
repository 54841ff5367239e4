import { record } from '../hostile/record.ts';

/** What did not hold in a case, in plain lines; nothing when all did. */
export type Faults = readonly string[];

/**
 * Tries cases of one class one after the other, writes the class's row of the table of proofs, and gives what did not hold.
 *
 * @param peakMB The most memory of the programs tried, where they are not this process.
 */
export async function eachCase<C>(name: string, cases: readonly C[], tried: (one: C, index: number) => Promise<Faults>, peakMB?: () => number): Promise<Faults> {
  const started = performance.now();
  const all: string[] = [];
  let held = 0;
  for (const [index, one] of cases.entries()) {
    const faults = await tried(one, index);
    if (faults.length === 0) held += 1;
    all.push(...faults);
  }
  record({ class: name, cases: cases.length, held, ms: performance.now() - started, peakMB: peakMB?.() ?? process.resourceUsage().maxRSS / 1000 });
  return all;
}
