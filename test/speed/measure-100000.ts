/**
 * A report, never a test: how long counting 100,000 words takes, after start, beside a plain split on spaces of the same
 * text in the same run; and the whole command in a process of its own.
 *
 *   node --import tsx test/speed/measure-100000.ts [number of words]
 *
 * The text is made: nine words in ten come from twelve public-domain passages, the tenth from a dictionary of 126,000, so
 * that there are about as many different words as a long novel has, and remembering words does not flatter the figure.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { dictionary } from 'cmu-pronouncing-dictionary';
import { countText } from '../../src/core/measure/count-text.ts';
import { familiarBy } from '../../src/core/measure/familiar-words.ts';
import { passages } from '../outside/passages.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const wanted = Number(process.argv[2] ?? 100_000);

/** Numbers from 0 to 1 that are the same each time: a linear congruential generator with the constants of Numerical Recipes. */
let state = 20261101;
const random = (): number => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 4294967296;

function madeText(words: number): string {
  const plain = passages.filter((each) => !each.own).flatMap((each) => each.text.toLowerCase().match(/[a-z]+/g) ?? []);
  const rare = Object.keys(dictionary).filter((word) => /^[a-z]+$/.test(word));
  const pick = (list: readonly string[]) => list[Math.floor(random() * list.length)] ?? 'word';
  const lines: string[] = [];
  for (let made = 0; made < words;) {
    const length = Math.min(words - made, 6 + Math.floor(random() * 12));
    const sentence = Array.from({ length }, () => pick(random() < 0.1 ? rare : plain)).join(' ');
    lines.push(`${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.${random() < 0.2 ? '\n\n' : ' '}`);
    made += length;
  }
  return lines.join('');
}

interface Timed {
  readonly first: number;
  readonly best: number;
}

function timed(work: () => unknown): Timed {
  const times = Array.from({ length: 5 }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  });
  return { first: times[0] ?? 0, best: Math.min(...times) };
}

const text = madeText(wanted);
const floor = timed(() => text.split(' ').length);
const kinds: readonly (readonly [string, () => unknown])[] = [
  ['counts, English', () => countText(text, 'en')],
  ['and Spache words', () => countText(text, 'en', { familiar: familiarBy('spache') })],
  ['counts, Spanish', () => countText(text, 'es')],
];
console.log(`${String(wanted)} words, ${String(new Set(text.toLowerCase().match(/[a-z]+/g)).size)} of them different, ${(text.length / 1e6).toFixed(2)} MB, Node ${process.versions.node}`);
console.log(`${'plain split'.padEnd(18)} ${floor.first.toFixed(1).padStart(8)} ms the first time ${floor.best.toFixed(1).padStart(8)} ms at best`);
for (const [name, work] of kinds) {
  const { first, best } = timed(work);
  console.log(
    `${name.padEnd(18)} ${first.toFixed(1).padStart(8)} ms the first time ${best.toFixed(1).padStart(8)} ms at best   ratio ${(first / floor.first).toFixed(0)}, ${(best / floor.best).toFixed(0)}`,
  );
}

const folder = mkdtempSync(join(tmpdir(), 'bookfellow-measure-'));
const command = (file: string): number => {
  const started = performance.now();
  const ended = spawnSync(process.execPath, ['src/cli/bookfellow.js', 'measure', file], { cwd: root, encoding: 'utf8' });
  if (ended.status !== 0) throw new Error(ended.stderr);
  return performance.now() - started;
};
const [small, large] = [join(folder, 'small.txt'), join(folder, 'large.txt')];
writeFileSync(small, 'One sentence stands here.\n');
writeFileSync(large, text);
const [start, whole] = [small, large].map((file) => Math.min(...Array.from({ length: 3 }, () => command(file)))) as [number, number];
console.log(`bookfellow measure ${whole.toFixed(0)} ms, of which ${(whole - start).toFixed(0)} ms after start (one short sentence takes ${start.toFixed(0)} ms); fastest of 3`);
rmSync(folder, { recursive: true });
