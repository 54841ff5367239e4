import type { JSX } from 'preact';
import { At, Figure } from '../../../layouts/parts/figure.tsx';
import { wilsonInterval, type Stars } from '../../classroom/stars.ts';
import type { Desk } from './desk.ts';

interface Props {
  readonly id: string;
  readonly desk: Desk;
  readonly stars: Stars;
  /** What each number of stars was called; empty where nobody gave it. */
  readonly words: readonly string[];
  readonly note: string | undefined;
}

/** So many dots stand in one line: they keep their size on the narrowest page. */
const inALine = 18;
const lineHeight = 16;

/** Stars as dots, one for each child, the most stars on top; in words, and as a table. */
export function StarsFigure({ id, desk, stars, words, note }: Props): JSX.Element {
  const say = desk.words.stack.counts;
  const of = stars.counts.length;
  let top = 0;
  const rows = stars.counts
    .map((count, index) => ({ n: index + 1, count, words: words[index] ?? '' }))
    .reverse()
    .map((row) => {
      const laid = { ...row, y: top };
      top += 24 + lineHeight * Math.max(1, Math.ceil(row.count / inALine)) + 8;
      return laid;
    });
  return (
    <Figure
      id={id}
      title={say.stars}
      headingLevel={3}
      height={top}
      drawing={rows.map(({ n, count, words: name, y }) => (
        <>
          <text x="0" y={y + 15} class="italic">
            {say.starRow(n, name)}
          </text>
          {Array.from({ length: count }, (_, dot) => (
            <At x={2.2 + (dot % inALine) * (97 / inALine)} y={y + 24 + lineHeight * (Math.floor(dot / inALine) + 0.5)}>
              <path class="full" stroke="none" d="M5 .4C4.6 3.6 2.3 5.1-.5 4.9S-5 2.6-4.8-.4-2-5 .8-4.8 5.3-2.6 5 .4Z" />
            </At>
          ))}
          {count === 0 && <line class="hair" x1="1%" x2="12%" y1={y + 32} y2={y + 32} />}
        </>
      ))}
      text={starsInWords(desk, stars)}
      table={{ summary: say.table, heads: say.starsHeads, rows: stars.counts.map((count, index) => [say.starRow(index + 1, words[index] ?? ''), count]).reverse() }}
    >
      {note !== undefined && of > 0 && <p class="figure-key">{note}</p>}
    </Figure>
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
