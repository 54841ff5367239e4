import type { inks, Mark, stamps } from './booklet-schema.ts';

/**
 * How the marks of a drawing look: paths for a canvas (`Path2D`) and for SVG alike, so that a drawing is
 * the same on the page, in the file and on paper. Only numbers reach a path.
 */
export interface DrawnPath {
  readonly d: string;
  readonly ink: string;
  readonly width: number;
  readonly filled: boolean;
  /** Where to and how large, for a path that is drawn in a box of 100 around its middle. */
  readonly move: readonly [x: number, y: number, scale: number] | undefined;
}

export type Ink = (typeof inks)[number];
export type Stamp = (typeof stamps)[number];

/** The inks on the drawing paper, which is light in every scheme. Each has 3:1 or more on it (WCAG 2.2, 1.4.11). */
export const inkColours: Readonly<Record<Ink, string>> = { black: '#2b211a', red: '#b3261e', yellow: '#a67400', green: '#2f6b35', blue: '#1f4f94', brown: '#7a4a22' };

export const paperColour = '#fffdf7';

const round = (x: number, y: number, r: number) => `M${String(x + r)} ${String(y)}a${String(r)} ${String(r)} 0 1 1 ${String(-2 * r)} 0a${String(r)} ${String(r)} 0 1 1 ${String(2 * r)} 0`;

const wave = (y: number) => `M-48 ${String(y)}c11-12 21-12 32 0s21 12 32 0 21-12 32 0`;

const stampPaths: Readonly<Record<Stamp, string>> = {
  person: `${round(0, -32, 14)}M0-18V14M-26-2C-10-8 10-8 26-2M0 14L-17 48M0 14L17 48`,
  house: 'M-34 46V-4L0-44 34-4V46ZM-10 46V16H12V46M-34-4H34',
  tree: 'M-5 48C-3 36-3 26-5 14M9 48C7 36 7 26 8 14M0 16C-34 20-44-8-22-20-24-46 24-48 24-20 44-8 34 20 0 16Z',
  sun: `${round(0, 0, 18)}M0-28V-46M0 28V46M-28 0H-46M28 0H46M-20-20L-33-33M20-20L33-33M-20 20L-33 33M20 20L33 33`,
  rain: 'M-26-4C-46-4-46-30-24-30-18-50 14-50 18-30 42-32 44-4 24-4ZM-20 10L-27 30M2 10L-5 30M24 10L17 30M-9 28L-15 46M15 28L9 46',
  water: `${wave(-20)}${wave(4)}${wave(28)}`,
  ring: round(0, 0, 40),
  box: 'M-40-40H40V40H-40Z',
  roof: 'M-44 34L0-40 44 34Z',
  path: 'M-48 0H48',
  dot: round(0, 0, 12),
};

const eyePaths = {
  open: `${round(-16, -8, 2)}${round(16, -8, 2)}`,
  wide: `${round(-16, -8, 7)}${round(16, -8, 7)}${round(-16, -8, 1)}${round(16, -8, 1)}`,
  shut: 'M-22-8Q-16-3-10-8M10-8Q16-3 22-8',
} as const;
const browPaths = { level: 'M-24-20H-9M9-20H24', raised: 'M-24-23Q-16-30-8-23M8-23Q16-30 24-23', drawn: 'M-24-25L-9-17M9-17L24-25' } as const;
const mouthPaths = { up: 'M-19 14Q0 32 19 14', flat: 'M-16 20H16', down: 'M-18 26Q0 10 18 26', round: round(0, 21, 8) } as const;

/** The paths of one mark. A line's width follows the pressure in few steps, each a path of its own. */
export function pathsOf(mark: Mark): readonly DrawnPath[] {
  const ink = inkColours[mark.ink];
  if (mark.do === 'line') return linePaths(mark.points, mark.width).map(({ d, width }) => ({ d, ink, width, filled: false, move: undefined }));
  const move = [mark.x, mark.y, mark.size / 100] as const;
  if (mark.do === 'stamp') return [{ d: stampPaths[mark.shape], ink, width: 5, filled: mark.shape === 'dot', move }];
  return [round(0, 0, 42), eyePaths[mark.eyes], browPaths[mark.brows], mouthPaths[mark.mouth]].map((d) => ({ d, ink, width: 4, filled: false, move }));
}

/** The shape of a stamp alone, in a box of 100 around its middle, for a button. */
export const stampPath = (shape: Stamp): string => stampPaths[shape];

/** Half as wide at no pressure, half as wide again at full. source: common practice, no source. */
export function widthAt(width: number, pressure: number): number {
  return Math.round(width * (0.5 + pressure / 100) * 2) / 2;
}

function linePaths(points: readonly number[], width: number): readonly { readonly d: string; readonly width: number }[] {
  const paths: { d: string; width: number }[] = [];
  const point = (index: number): readonly [number, number, number] => [points[index * 3] ?? 0, points[index * 3 + 1] ?? 0, points[index * 3 + 2] ?? 50];
  const last = points.length / 3 - 1;
  let [x, y, pressure] = point(0);
  const step = (value: number) => Math.round(value / 10) * 10;
  let now = step(pressure);
  let d = `M${String(x)} ${String(y)}`;
  if (last === 0) return [{ d: `${d}h.01`, width: widthAt(width, now) }];
  for (let index = 1; index <= last; index++) {
    const [nextX, nextY, nextPressure] = point(index);
    // To the middle between two points, bent by the first: a hand's line without corners.
    const [middleX, middleY] = index === last ? [nextX, nextY] : [(x + nextX) / 2, (y + nextY) / 2];
    d += `Q${String(x)} ${String(y)} ${String(middleX)} ${String(middleY)}`;
    if (step(nextPressure) !== now && index < last) {
      paths.push({ d, width: widthAt(width, now) });
      now = step(nextPressure);
      d = `M${String(middleX)} ${String(middleY)}`;
    }
    [x, y, pressure] = [nextX, nextY, nextPressure];
  }
  paths.push({ d, width: widthAt(width, now) });
  return paths;
}

/** The drawing as the inside of an SVG of 1200 by 900: presentation attributes only, nothing a strict page would refuse. */
export function drawingSvg(marks: readonly Mark[]): string {
  return marks
    .flatMap(pathsOf)
    .map(
      ({ d, ink, width, filled, move }) =>
        `<path d="${d}" fill="${filled ? ink : 'none'}" stroke="${ink}" stroke-width="${String(width)}"${move ? ` transform="translate(${String(move[0])} ${String(move[1])}) scale(${String(move[2])})"` : ''}/>`,
    )
    .join('');
}
