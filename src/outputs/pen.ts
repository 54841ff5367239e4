/** A pen that draws smooth lines through points, as path data in tenths: finer than a printer shows. */

export type Point = readonly [x: number, y: number];

const tenth = (value: number): number => Math.round(value * 10) / 10;
const tenths = ([x, y]: Point): Point => [tenth(x), tenth(y)];
const pair = ([x, y]: Point): string => (y < 0 ? `${String(x)}${String(y)}` : `${String(x)} ${String(y)}`);
const from = ([x, y]: Point, [toX, toY]: Point): Point => tenths([toX - x, toY - y]);

/** A third of half the way between the neighbours: a Catmull-Rom curve in Bézier form. */
const tension = 1 / 6;

function through(count: number, at: (index: number) => Point): string {
  let path = `M${pair(tenths(at(0)))}`;
  for (let index = 0; index < count; index++) {
    const [before, start, end, after] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    const leaving: Point = [start[0] + (end[0] - before[0]) * tension, start[1] + (end[1] - before[1]) * tension];
    const arriving: Point = [end[0] - (after[0] - start[0]) * tension, end[1] - (after[1] - start[1]) * tension];
    // Steps from where the pen really stands, so that rounding never adds up.
    const here = tenths(start);
    path += `c${[leaving, arriving, end].map((point) => pair(from(here, tenths(point)))).join(' ')}`;
  }
  return path;
}

/** A line through all points, from the first to the last. */
export function curve(...points: readonly Point[]): string {
  const last = points.length - 1;
  return through(last, (index) => points[Math.min(Math.max(index, 0), last)] ?? [0, 0]);
}

/** A closed line through all points. */
export function ring(...points: readonly Point[]): string {
  return `${through(points.length, (index) => points[(index + points.length) % points.length] ?? [0, 0])}Z`;
}

/** A point turned around another, clockwise, by degrees. */
export function turned([x, y]: Point, [aboutX, aboutY]: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  const [dx, dy] = [x - aboutX, y - aboutY];
  return [aboutX + dx * Math.cos(angle) - dy * Math.sin(angle), aboutY + dx * Math.sin(angle) + dy * Math.cos(angle)];
}
