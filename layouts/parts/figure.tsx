import type { ComponentChildren, JSX } from 'preact';

export interface FigureTable {
  readonly summary: string;
  readonly heads: readonly string[];
  /** Rows of cells; the first cell of each names the row. */
  readonly rows: readonly (readonly ComponentChildren[])[];
}

interface Props {
  /** Begins every id in it: pictures of many packs stand on one page. */
  readonly id: string;
  readonly title: string;
  /** 2 to 5; without it the title is not shown, and only names the drawing. */
  readonly headingLevel?: number | undefined;
  /** Height of the drawing in CSS pixels. */
  readonly height: number;
  readonly drawing: ComponentChildren;
  /** The drawing in a sentence or two. */
  readonly text: ComponentChildren;
  readonly table: FigureTable;
  /** What the marks mean. */
  readonly children?: ComponentChildren;
}

/** A drawing of figures with its text equivalent, a key and a table of the same figures. */
export function Figure({ id, title, headingLevel, height, drawing, text, table, children }: Props): JSX.Element {
  const Heading = `h${String(headingLevel ?? 3)}` as 'h3';
  return (
    <figure class="figure">
      {headingLevel !== undefined && <Heading>{title}</Heading>}
      <FigureDrawing label={title} describedBy={`${id}-text`} height={height}>
        {drawing}
      </FigureDrawing>
      {children}
      <figcaption>
        <p id={`${id}-text`}>{text}</p>
        <details class="figure-table">
          <summary>{table.summary}</summary>
          <div class="figure-figures" role="group" aria-label={`${title}: ${table.summary}`} tabIndex={0}>
            <table>
              <thead>
                <tr>
                  {table.heads.map((head) => (
                    <th key={head} scope="col">
                      {head}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {table.rows.map(([name, ...cells], index) => (
                  <tr key={index}>
                    <th scope="row">{name}</th>
                    {cells.map((cell, at) => (
                      <td key={at}>{cell}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </details>
      </figcaption>
    </figure>
  );
}

interface DrawingProps {
  readonly label: string;
  readonly describedBy?: string;
  readonly height: number;
  readonly children: ComponentChildren;
}

/** A drawing as wide as there is room: places across are given in percent, so that text and strokes keep their size. */
export function FigureDrawing({ label, describedBy, height, children }: DrawingProps): JSX.Element {
  return (
    <svg
      class="figure-drawing"
      role="img"
      aria-label={label}
      aria-describedby={describedBy}
      width="100%"
      height={height}
      fill="none"
      stroke="currentColor"
      stroke-linecap="round"
      stroke-linejoin="round"
    >
      {children}
    </svg>
  );
}

/** Puts pixels at a place in percent: what is in it is drawn around 0 0. */
export function At({ x, y, children }: { readonly x: number; readonly y: number; readonly children: ComponentChildren }): JSX.Element {
  return (
    <svg x={percent(x)} y={y} overflow="visible">
      {children}
    </svg>
  );
}

/** Lines that run across: x in percent of the width, y in pixels of a drawing so high. Their strokes keep their width. */
export function Across({ height, children }: { readonly height: number; readonly children: ComponentChildren }): JSX.Element {
  return (
    <svg class="across" width="100%" height={height} viewBox={`0 0 100 ${String(height)}`} preserveAspectRatio="none">
      {children}
    </svg>
  );
}

export const percent = (value: number): string => `${String(tidy(value))}%`;
/** Two decimals are a tenth of a pixel. */
export const tidy = (value: number): number => Math.round(value * 100) / 100;
