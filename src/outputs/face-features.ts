import type { Look, Mark } from './face-looks.ts';
import type { Point } from './pen.ts';

/** `line` is the pen's usual line, `fine` a thin one, `ink` is filled, `shape` is a line around paper that hides what lies under it. */
export type Pen = 'line' | 'fine' | 'ink' | 'shape';

/** One stroke of the pen through its points, before head and body have taken their places. */
export interface Stroke {
  readonly pen: Pen;
  readonly points: readonly Point[];
  readonly closed?: boolean;
  /** What it moves with: the features of the face, the head, the body, or the sheet on which all of it stands. */
  readonly on: 'face' | 'head' | 'body' | 'sheet';
}

type Side = -1 | 1;
const sides: readonly Side[] = [-1, 1];

const stroke = (on: Stroke['on'], pen: Pen, points: readonly Point[]): Stroke => ({ on, pen, points });
const filled = (on: Stroke['on'], pen: Pen, points: readonly Point[]): Stroke => ({ on, pen, points, closed: true });
/** Points from their coordinates in turn: x, y, x, y. */
const to = (...coordinates: readonly number[]): readonly Point[] => Array.from({ length: coordinates.length / 2 }, (_, index) => [coordinates[index * 2] ?? 0, coordinates[index * 2 + 1] ?? 0]);
const mirrored = (points: readonly Point[]): readonly Point[] => points.map(([x, y]) => [100 - x, y]);
const both = (on: Stroke['on'], pen: Pen, points: readonly Point[]): readonly Stroke[] => [stroke(on, pen, points), stroke(on, pen, mirrored(points))];

function oval(x: number, y: number, wide: number, high: number): readonly Point[] {
  return Array.from({ length: 8 }, (_, index): Point => {
    const turn = (index / 8) * 2 * Math.PI;
    return [x + wide * Math.cos(turn), y + high * Math.sin(turn)];
  });
}

/** Short strokes from the crown inwards, each a little different, as an engraver would lay them. */
function hair(): readonly Stroke[] {
  const lengths = [5, 7.5, 5.5, 8, 6, 8.5, 6.5, 9, 6, 8, 5.5, 7, 4.5];
  return lengths.map((length, index) => {
    const turn = (-158 + (index * 136) / (lengths.length - 1)) * (Math.PI / 180);
    const along = (inwards: number, lean: number): Point => [50 + (29.5 - inwards) * Math.cos(turn + lean), 46 + (30 - inwards) * Math.sin(turn + lean)];
    return stroke('head', 'fine', [along(0.5, 0), along(length * 0.5, 0.05), along(length, 0.16)]);
  });
}

/** A child's round head that the pen did not quite close, with ears, hair in short strokes and a button of a nose. */
export const head: readonly Stroke[] = [
  stroke('head', 'shape', to(44, 17.4, 54, 15.8, 66.5, 19.6, 76.4, 30, 79.8, 44.5, 76.4, 59, 67, 71, 56, 76.6, 45.6, 76.6, 34, 71.4, 24.2, 60, 20.2, 46, 22.6, 31.4, 31.6, 20.8, 46.5, 15.4)),
  stroke('head', 'line', to(20.4, 45, 15.6, 44, 14.2, 49, 16.8, 54.6, 21.6, 55.4)),
  stroke('head', 'line', to(79.8, 45.2, 84.2, 43.8, 86, 48.6, 83.4, 54.8, 79, 55.6)),
  ...hair(),
  stroke('face', 'line', to(50.8, 50.8, 52.6, 54.4, 49.4, 55)),
];

/** Neck, shoulders and a collar. */
export function shoulders(lift: number): readonly Stroke[] {
  const side: readonly Point[] = to(43, 72, 42.6, 79, 36, 84 - lift * 0.4, 24.5, 88 - lift * 0.8, 17, 93 - lift, 14, 99.5);
  return [...both('body', 'line', side), stroke('body', 'fine', to(36.5, 84.4 - lift * 0.4, 43, 89.4, 50, 91, 57, 89.2, 63.5, 84.4 - lift * 0.4))];
}

const browAt = 39;

export function brows({ brows: [inner, outer] }: Look): readonly Stroke[] {
  return sides.map((side) => {
    const x = (way: number): number => 50 + side * way;
    return stroke('face', 'line', to(x(7), browAt - inner, x(13), browAt - 2 - (inner + outer) / 2, x(19), browAt + 0.4 - outer));
  });
}

const eyeAt = { way: 13, y: 47.5 };

export function eyes({ eyes: kind, gaze: [dx, dy] }: Look): readonly Stroke[] {
  return sides.flatMap((side): readonly Stroke[] => {
    const x = 50 + side * eyeAt.way;
    const { y } = eyeAt;
    const lid = (sag: number): Stroke =>
      stroke(
        'face',
        'line',
        [-1, -0.55, 0, 0.55, 1].map((way): Point => [x + 5.6 * way, y + sag * (0.5 - way * way)]),
      );
    const dot = (size: number): Stroke => filled('face', 'ink', oval(x + dx * 0.6, y + dy * 0.6, size, size * 1.25));
    switch (kind) {
      case 'open':
        return [dot(3)];
      case 'smiling':
        return [lid(-5.4)];
      case 'shut':
        return [lid(4.6)];
      case 'heavy':
        return [filled('face', 'ink', oval(x + dx * 0.6, y + 2.6 + dy * 0.4, 2.7, 2.7)), stroke('face', 'line', to(x - side * 5.6, y - 1.8, x, y - 1.2, x + side * 6, y + 2))];
      case 'resting':
        return [filled('face', 'ink', oval(x, y + 2.4, 2.8, 2.8)), stroke('face', 'line', to(x - 5.6, y - 0.2, x, y - 1.2, x + 5.6, y - 0.2))];
      case 'wide':
        return [filled('face', 'line', oval(x, y, 6.6, 7.4)), filled('face', 'ink', oval(x + dx, y + dy, 2.5, 2.7))];
      case 'tight':
        return [stroke('face', 'line', to(x + side * 5.4, y - 3.6, x - side * 4.4, y + 0.4)), stroke('face', 'line', to(x - side * 4.4, y + 0.4, x + side * 5, y + 3.6))];
      case 'squinting':
        return [stroke('face', 'line', to(x - side * 5.4, y + 1.6, x, y - 0.6, x + side * 5.4, y + 0.2)), stroke('face', 'fine', to(x - side * 3.4, y + 4.8, x, y + 3.6, x + side * 4, y + 4.2))];
    }
  });
}

const mouthAt = 63;

export function mouth({ mouth: kind }: Look, valence: number, strength: number): readonly Stroke[] {
  const y = mouthAt;
  const wide = 7 + Math.abs(valence) * 5.5;
  switch (kind) {
    case 'curve':
      return [stroke('face', 'line', to(50 - wide, y - valence * 4.4, 50 - wide * 0.5, y + valence * 1.8, 50.4, y + valence * 3.6, 50 + wide * 0.5, y + valence * 1.8, 50 + wide, y - valence * 4.8))];
    case 'laugh':
      return [filled('face', 'ink', to(50 - wide, y - 4, 50, y - 2.4, 50 + wide, y - 4.4, 50 + wide * 0.74, y + 3.8, 50, y + 7.6, 50 - wide * 0.74, y + 4.2))];
    case 'round':
      return [filled('face', 'ink', oval(50, y + 1.6, 2.2 + strength * 1.2, 1.6 + strength * 1.8))];
    case 'wavy':
      return [stroke('face', 'line', to(41.4, y + 2, 45, y - 1.2 - strength * 0.4, 48.6, y + 2, 52.2, y - 1.2 - strength * 0.4, 55.6, y + 2, 59, y - 0.8))];
    case 'teeth':
      return [
        filled('face', 'line', to(39, y + 5.2, 41, y - 2.6, 50, y - 4.2, 59, y - 2.6, 61, y + 5.2, 50, y + 3.4)),
        ...[44.6, 50, 55.4].map((x) => stroke('face', 'fine', to(x, y - 3, x, y + 3.6))),
      ];
    case 'skewed':
      return [stroke('face', 'line', to(40, y + 4 + strength, 45.6, y - 0.6, 51, y - 0.4 - strength, 56, y + 1.4, 60.6, y + 2.4 + strength))];
    case 'flat':
      return [stroke('face', 'line', to(43.6, y + 1.6, 50, y + 0.8, 57, y - 1.4))];
  }
}

/** A hand as in a mitten, its thumb to one side. */
const mitten = (x: number, y: number, side: Side, on: Stroke['on'] = 'body'): Stroke => {
  const shape: readonly Point[] = to(-3, 7.6, -5.6, 3, -5.6, -3.6, -1.6, -8.6, 2.8, -6.6, 3.6, -1.4, 4.4, -1.2, 7.6, -4.2, 9.4, -2.2, 7.6, 2.4, 3.6, 5.4, 2.8, 7.8);
  return filled(
    on,
    'shape',
    shape.map(([dx, dy]): Point => [x + side * dx, y + dy]),
  );
};

/** What only one family has. */
export function drawingOf(mark: Mark, strength: number): readonly Stroke[] {
  switch (mark) {
    case 'arms up':
      return [
        ...both('body', 'line', to(16.6, 93, 8.6, 82, 8, 66)),
        mitten(8.4, 57, -1),
        mitten(91.6, 57, 1),
        ...both('head', 'fine', to(85, 26, 91, 22)),
        ...both('head', 'fine', to(77, 15, 81, 9.6)),
      ];
    case 'tear':
      return [filled('face', 'line', to(68, 53.5, 71.4, 60.4, 68.2, 64.4, 65, 60.6))];
    case 'tears':
      return sides.flatMap((side) => [9.5, 16.5].map((way) => stroke('face', 'line', to(50 + side * way, 53, 50 + side * (way + 1), 58, 50 + side * way, 64))));
    case 'breath':
      return [...both('body', 'line', to(90, 40, 96, 37, 97.6, 42.6, 93, 45)), ...both('body', 'line', to(90, 56, 95, 57, 96.6, 61.4)), ...both('head', 'fine', to(68, 14, 72, 8, 71, 3))];
    case 'tremble':
      return [...both('head', 'fine', to(90.5, 33, 92.8, 38, 90.4, 43, 92.8, 48, 90.4, 53)), ...(strength < 3 ? [] : both('head', 'fine', to(96.4, 30, 98.6, 35.4, 96.2, 41, 98.6, 46.6, 96.2, 52)))];
    case 'hands at cheeks':
      return [mitten(24, 66, 1), mitten(76, 66, -1), ...both('body', 'line', to(22, 74.6, 19.6, 79.5, 19.4, 85))];
    case 'rays':
      return [...both('head', 'line', to(64, 12, 67, 5.6)), ...both('head', 'line', to(75.6, 19.6, 81.4, 14)), ...both('head', 'line', to(83.4, 30.6, 90.4, 27.4))];
    case 'wrinkled nose':
      return [stroke('face', 'fine', to(45.6, 44.6, 50, 42.8, 54.4, 44.8))];
    case 'tongue':
      return [filled('face', 'shape', to(46, 62.6, 55, 63.2, 55.4, 70, 50.8, 74, 46.2, 70)), stroke('face', 'fine', to(50.6, 65, 50.6, 69))];
    case 'hand on heart':
      return [
        ...(strength < 3 ? [] : [stroke('body', 'line', to(17, 99, 26, 97, 33, 95)), mitten(39, 92, 1)]),
        stroke('body', 'line', to(83, 99, 74, 97, 67, 95)),
        mitten(strength < 3 ? 62 : 59, 91, -1),
      ];
    case 'hand at chin':
      return [stroke('body', 'line', to(71, 80, 76, 88, 76.5, 99)), mitten(67, 73.5, -1)];
    case 'hatched cheeks':
      return sides.flatMap((side) => [0, 1, 2].map((step) => stroke('face', 'fine', to(50 + side * 18.5 + step * 3.2 - 4.8, 61, 50 + side * 18.5 + step * 3.2 - 2, 54.8))));
    case 'hand before face':
      return [stroke('head', 'line', to(69, 58, 73, 74, 82, 86)), mitten(66, 50, -1, 'head')];
    case 'still water':
      return [94, 87, 80].slice(0, strength).flatMap((y, index) => both('sheet', 'fine', to(1, y, 7 + 2 * index, y - 0.5, 12 + 5 * index, y)));
    case 'raised chin':
      return [stroke('head', 'fine', to(43, 69.6, 50, 72, 57, 69.6))];
    case 'far away':
      return [stroke('sheet', 'fine', to(1, 92.4, 14, 91.4, 27, 92))];
  }
}
