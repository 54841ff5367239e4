import { appendFileSync } from 'node:fs';

/**
 * What a test has measured of one class of faults, a row of the table that `npm run prove` prints.
 * `cases` were tried and `held` of them did what must happen; `ms` is the time of all of them by the clock;
 * `peakMB` the most memory the process held in between, in units of 1,000,000 bytes.
 */
export interface Proved {
  readonly class: string;
  readonly cases: number;
  readonly held: number;
  readonly ms: number;
  readonly peakMB: number;
}

/** Adds a line of JSON to the file named by BOOKFELLOW_PROVE_FILE; without one, says it in the report of the tests. */
export function record(proved: Proved): void {
  const file = process.env['BOOKFELLOW_PROVE_FILE'];
  const round: Proved = { class: proved.class, cases: proved.cases, held: proved.held, ms: Math.round(proved.ms), peakMB: Math.round(proved.peakMB) };
  if (file) appendFileSync(file, `${JSON.stringify(round)}\n`);
  else process.stdout.write(`${round.class}: ${round.held} of ${round.cases} held, ${round.ms} ms, ${round.peakMB} MB at most\n`);
}
