/** A report: how long it takes to find packs of one book among 2,500 to 10,000 invented ones, and how the time grows. `node --import tsx test/speed/alike-10000.ts` */
import { daleChall as everyday } from 'dale-chall';
import { alike } from '../../src/core/find/alike.ts';
import type { Compared } from '../../src/core/find/compared.ts';
import { crowd } from '../core/find/crowd.ts';
import { seeded } from './invented-library.ts';

/** Packs with eight questions each, half of them begun with a stock phrase; every twentieth is a copy of the one before with two questions changed and a slip in the title. */
function library(count: number): readonly Compared[] {
  const random = seeded(9);
  const word = () => everyday[Math.floor(random() ** 2 * everyday.length)] ?? '';
  const stock = ['What do you think will happen next, and', 'How do you know that', 'Why do you think the', 'What would you do if'];
  const question = (number: number) => `${number % 2 === 0 ? (stock[Math.floor(random() * stock.length)] ?? '') : ''} ${Array.from({ length: 8 }, word).join(' ')}?`;
  const packs: Compared[] = [];
  for (const [number, { pack }] of crowd(count, 'en', { schools: 200, names: true }).entries()) {
    const before = packs.at(-1);
    const copied = number % 20 === 19 && before !== undefined;
    const asks = Array.from({ length: 8 }, (_, at) => (copied && at > 1 ? (before.stops[at]?.ask ?? '') : question(at)));
    packs.push({
      slug: `pack-${number}`,
      language: 'en',
      title: pack.title,
      by: pack.by,
      book: copied ? { ...before.book, title: before.book.title.replace(/^(.)(.)/, '$2$1') } : { ...pack.book, title: `${pack.title} ${word()}` },
      stops: asks.map((ask, at) => ({ id: `s-${at}`, at: { opening: 1 + at, cue: 'x', picture: 'shown' as const }, ask, kind: 'reason' as const, depth: 1, answer: 'say' as const })),
    });
  }
  return packs;
}

const lines: string[] = [];
for (const count of [2500, 5000, 10_000]) {
  const packs = library(count);
  const before = process.cpuUsage();
  const { unsettled } = alike(packs, () => undefined);
  const used = process.cpuUsage(before);
  const copies = unsettled.filter(({ packs: of }) => of.length === 2 && (of[1] ?? 0) % 20 === 19).length;
  const milliseconds = (used.user + used.system) / 1000;
  lines.push(
    `${String(count).padStart(6)} packs   ${milliseconds.toFixed(0)} ms of the processor, ${((milliseconds * 1000) / count).toFixed(0)} µs a pack   ${String(copies)} of ${String(count / 20)} copies found, ${String(unsettled.length - copies)} other cases`,
  );
}
process.stdout.write(`${lines.join('\n')}\n`);
