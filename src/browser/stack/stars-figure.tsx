import type { JSX } from 'preact';
import { wilsonInterval, type Stars } from '../../classroom/stars.ts';
import type { Desk } from './desk.ts';
import { DotsFigure } from './dots-figure.tsx';

interface Props {
  readonly id: string;
  readonly desk: Desk;
  readonly stars: Stars;
  /** What each number of stars was called; empty where nobody gave it. */
  readonly words: readonly string[];
  readonly note: string;
}

/** Stars as dots, one for each child, the most stars on top; in words, and as a table. */
export function StarsFigure({ id, desk, stars, words, note }: Props): JSX.Element {
  const say = desk.words.stack.counts;
  const rows = stars.counts.map((count, index) => ({ name: say.starRow(index + 1, words[index] ?? ''), full: count })).reverse();
  return (
    <DotsFigure id={id} title={say.stars} rows={rows} text={starsInWords(desk, stars)} table={{ summary: say.table, heads: say.starsHeads, rows: rows.map(({ name, full }) => [name, full]) }}>
      <p class="figure-key">{note}</p>
    </DotsFigure>
  );
}

/** "18 of 22 gave 4 or 5 stars. The middle lies between 4 and 5." No average, and no percentage that hides how few they are. */
export function starsInWords(desk: Desk, { counts, n, middle, mostOften }: Stars): string {
  const say = desk.words.stack.counts;
  const of = counts.length;
  const from = of > 3 ? of - 1 : of;
  const some = counts.slice(from - 1).reduce((sum, each) => sum + each, 0);
  const [low, high] = wilsonInterval(some, n);
  return [say.starsText(some, n, from, of), ...(middle ? [say.middle(...middle)] : []), say.mostOften(mostOften), ...(n < 30 ? [say.wilson(Math.round(low * 100), Math.round(high * 100))] : [])].join(
    ' ',
  );
}
