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
import { run } from '../../src/cli/measure-command.ts';
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
  readonly milliseconds: number;
  /** Of the processor, which other work on the machine does not lengthen. */
  readonly cpu: number;
}

async function timed(work: () => unknown): Promise<Timed> {
  const [started, before] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(before);
  return { milliseconds: performance.now() - started, cpu: (user + system) / 1000 };
}

/** The shortest of five, by the clock and by the processor. */
async function best(work: () => unknown): Promise<Timed> {
  const times: Timed[] = [];
  for (let run = 0; run < 5; run++) times.push(await timed(work));
  return { milliseconds: Math.min(...times.map((each) => each.milliseconds)), cpu: Math.min(...times.map((each) => each.cpu)) };
}

const text = madeText(wanted);
console.log(`${String(wanted)} words, ${String(new Set(text.toLowerCase().match(/[a-z]+/g)).size)} of them different, ${(text.length / 1e6).toFixed(2)} MB, Node ${process.versions.node}`);

const folder = mkdtempSync(join(tmpdir(), 'bookfellow-measure-'));
const [small, large] = [join(folder, 'small.txt'), join(folder, 'large.txt')];
writeFileSync(small, 'One sentence stands here.\n');
writeFileSync(large, text);

// First, while nothing is warm yet: the command itself, as it works once it has started.
const log = console.log;
console.log = () => undefined;
await run([small]);
const people = await timed(() => run([large]));
const scripts = await timed(() => run([large, '--json']));
console.log = log;

const floor = await best(() => text.split(' ').length);
const line = (name: string, { milliseconds, cpu }: Timed) => {
  console.log(`${name.padEnd(34)} ${milliseconds.toFixed(1).padStart(8)} ms ${cpu.toFixed(1).padStart(8)} ms of the processor   ratio ${(milliseconds / floor.milliseconds).toFixed(0)}`);
};
line('plain split on spaces', floor);
line('bookfellow measure, after start', people);
line('bookfellow measure --json, after', scripts);
line('counts, English', await best(() => countText(text, 'en')));
line('counts and Spache words', await best(() => countText(text, 'en', { familiar: familiarBy('spache') })));
line('counts, Spanish', await best(() => countText(text, 'es')));

const started = performance.now();
const ended = spawnSync(process.execPath, ['src/cli/bookfellow.js', 'measure', large], { cwd: root, encoding: 'utf8' });
if (ended.status !== 0) throw new Error(ended.stderr);
console.log(`in a process of its own            ${(performance.now() - started).toFixed(0)} ms, start included`);
rmSync(folder, { recursive: true });
