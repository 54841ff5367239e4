/** A report: what a first search fetches, compressed, in libraries of 1,000 and 10,000 invented packs, and how long it looks. `node --import tsx test/speed/find-10000.ts` */
import { gzipSync } from 'node:zlib';
import { makeIndex } from '../../src/core/find/find-index.ts';
import { ask } from '../core/find/ask.ts';
import { crowd, slipped } from '../core/find/crowd.ts';
import { seeded } from './invented-library.ts';

const kilobytes = (value: unknown) => gzipSync(JSON.stringify(value)).length / 1000;
const lines: string[] = [];
for (const [count, allowed] of [
  [1000, 120],
  [10_000, 300],
] as const) {
  const packs = crowd(count, 'en', { schools: count / 20, names: true });
  const made = performance.now();
  const index = makeIndex('en', packs);
  const making = performance.now() - made;
  const random = seeded(7);
  // What people ask: one to three words of a title, some with a slip; a frequent word; one letter; a word that is not there.
  const questions = [
    ...Array.from({ length: 60 }, () => {
      const { title } = (packs[Math.floor(random() * count)] ?? packs[0])?.pack ?? { title: '' };
      return title
        .split(' ')
        .slice(0, 1 + Math.floor(random() * 3))
        .map((word) => (random() < 0.5 ? slipped(word, random) : word))
        .join(' ');
    }),
    'lamp',
    'a',
    'the clown and the planet',
    'zzyzx',
  ];
  const began = performance.now();
  const weights = questions.map((words) => ask(index, { words }).kilobytes).sort((a, b) => a - b);
  const looking = (performance.now() - began) / questions.length;
  const at = (share: number) => (weights[Math.min(weights.length - 1, Math.floor(share * weights.length))] ?? 0).toFixed(0);
  const filter = ask(index, { grade: 'K', minutes: '20' }).kilobytes;
  lines.push(
    `${String(count).padStart(6)} packs   first file ${kilobytes(index.words).toFixed(0)} kB   a first search: half within ${at(0.5)}, 95 of 100 within ${at(0.95)}, at most ${at(1)} kB (allowed ${allowed})   only chosen by fields ${filter.toFixed(0)} kB   made in ${making.toFixed(0)} ms, asked and weighed in ${looking.toFixed(0)} ms`,
  );
}
process.stdout.write(`${lines.join('\n')}\n`);
