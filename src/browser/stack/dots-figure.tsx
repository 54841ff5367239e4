import type { ComponentChildren, JSX } from 'preact';
import { At, Figure, type FigureTable } from '../../../layouts/parts/figure.tsx';

export interface DotRow {
  readonly name: ComponentChildren;
  /** Children, a full dot for each; then those with an empty dot. */
  readonly full: number;
  readonly empty?: number;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly rows: readonly DotRow[];
  readonly text: ComponentChildren;
  readonly table: FigureTable;
  readonly children?: ComponentChildren;
}

/** So many dots stand in one line: they keep their size on the narrowest page. */
const inALine = 18;
const lineHeight = 16;

/** Rows of dots, one for each child, under the row's name; in words, and as a table. */
export function DotsFigure({ id, title, rows, text, table, children }: Props): JSX.Element {
  let top = 0;
  const laid = rows.map(({ name, full, empty = 0 }) => {
    const row = { name, full, dots: full + empty, y: top };
    top += 24 + lineHeight * Math.max(1, Math.ceil(row.dots / inALine)) + 8;
    return row;
  });
  return (
    <Figure
      id={id}
      title={title}
      headingLevel={3}
      height={top}
      drawing={laid.map(({ name, full, dots, y }) => (
        <>
          <text x="0" y={y + 15} class="italic">
            {name}
          </text>
          {Array.from({ length: dots }, (_, dot) => (
            <At x={2.2 + (dot % inALine) * (97 / inALine)} y={y + 24 + lineHeight * (Math.floor(dot / inALine) + 0.5)}>
              <path class={dot < full ? 'full' : 'seed'} stroke={dot < full ? 'none' : undefined} d="M5 .4C4.6 3.6 2.3 5.1-.5 4.9S-5 2.6-4.8-.4-2-5 .8-4.8 5.3-2.6 5 .4Z" />
            </At>
          ))}
          {dots === 0 && <line class="hair" x1="1%" x2="12%" y1={y + 32} y2={y + 32} />}
        </>
      ))}
      text={text}
      table={table}
    >
      {children}
    </Figure>
  );
}
