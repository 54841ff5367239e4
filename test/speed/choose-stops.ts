/**
 * A report, never a test: how the choice of stops grows with the stops and the seconds there are.
 * Run: node --import tsx test/speed/choose-stops.ts
 * Trying every set would double with each stop. The choice goes stop by stop and keeps at most one draft for each sum of seconds,
 * set of wishes met, last stop and open dependency; what is reported beside the time is time over stops × seconds, which should not rise.
 */
import { chooseStops, usualWishes, type Candidate } from '../../src/core/plan/choose-stops.ts';

/** Stops as they may come: 20 to 220 seconds each, every fifth after another, two of them musts. The same each time. */
function stopsFor(count: number, seed: number): readonly Candidate[] {
  let state = seed;
  const next = (most: number) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state % most;
  };
  return Array.from({ length: count }, (_, index) => ({
    id: `s${index}`,
    opening: index + 1,
    seconds: 20 + next(201),
    value: next(11),
    must: index === 1 || index === 4,
    after: index > 0 && next(5) === 0 ? `s${index - 1}` : undefined,
    feeling: next(5) === 0,
    writes: next(3) === 0,
  }));
}

console.log('stops   seconds   ms, mean of 5 sets   ns for stops × seconds');
for (const count of [6, 12, 24, 48, 96, 192, 384]) {
  for (const share of [0.3, 0.6]) {
    const runs = Array.from({ length: 5 }, (_, seed) => {
      const stops = stopsFor(count, seed * 97 + 11);
      const room = Math.round(stops.reduce((sum, stop) => sum + stop.seconds, 0) * share);
      const times = Array.from({ length: 3 }, () => {
        const started = performance.now();
        chooseStops(stops, { room, openings: count, wishes: usualWishes });
        return performance.now() - started;
      });
      return { room, best: Math.min(...times) };
    });
    const mean = (of: (run: (typeof runs)[number]) => number) => runs.reduce((sum, run) => sum + of(run), 0) / runs.length;
    const [room, best] = [mean((run) => run.room), mean((run) => run.best)];
    console.log(`${String(count).padStart(5)} ${room.toFixed(0).padStart(9)} ${best.toFixed(2).padStart(20)} ${((best * 1e6) / (count * room)).toFixed(0).padStart(24)}`);
  }
}
