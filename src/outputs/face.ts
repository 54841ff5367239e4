import { usualValence, type Family } from '../core/measure/feelings-lexicon.ts';
import { brows, drawingOf, eyes, head, mouth, shoulders, type Pen, type Stroke } from './face-features.ts';
import { looks, rungOf } from './face-looks.ts';
import { curve, ring, turned, type Point } from './pen.ts';

/**
 * A face for a feeling, drawn from numbers: the mouth from how pleasant it is, eyes, brows and shoulders from how strong it is, and
 * from its family what only that has. A pen drawing of our own, of nobody in particular. It is always shown with its word: a story
 * tells a feeling better than a face does (Widen and Russell 2010), so the face only helps to find the word.
 */
export interface FaceOf {
  readonly family: Family;
  /** Rung of the ladder, 1 to 3. */
  readonly strength: number;
  /** -1 to 1; without it what is usual for the family at that strength. */
  readonly valence?: number | undefined;
}

export interface FacePath {
  readonly pen: Pen;
  /** Path data within 0 0 100 100. */
  readonly d: string;
}

/** Widths of the pens, in units of the box. */
export const penWidths: Readonly<Record<Exclude<Pen, 'ink'>, number>> = { line: 2.5, fine: 1.5, shape: 2.5 };

/** The chest, around which a head is tilted. */
const neck: Point = [50, 78];
/** A lonely figure is small on an empty sheet, and the lonelier the smaller. */
const farAway = { scale: [0.76, 0.66, 0.57], x: 66, y: 97 };

/** The paths of a face, in the order in which they are drawn. */
export function faceGeometry(feeling: FaceOf): readonly FacePath[] {
  const strength = rungOf(feeling.strength);
  const look = looks[feeling.family](strength);
  const valence = feeling.valence ?? usualValence(feeling.family, strength);
  const scale = look.marks.includes('far away') ? (farAway.scale[strength - 1] ?? 1) : undefined;
  const place = (on: Stroke['on'], [x, y]: Point): Point => {
    if (on === 'sheet') return [x, y];
    const there = on === 'body' ? ([x, y] as const) : turned([x, on === 'face' ? y + look.nod : y], neck, look.tilt);
    return scale === undefined ? there : [farAway.x + (there[0] - 50) * scale, farAway.y + (there[1] - farAway.y) * scale];
  };
  const strokes = [...shoulders(look.shoulders), ...head, ...brows(look), ...eyes(look), ...mouth(look, valence, strength), ...look.marks.flatMap((mark) => drawingOf(mark, strength))];
  const paths: FacePath[] = [];
  for (const { pen, points, closed, on } of strokes) {
    const placed = points.map((point) => place(on, point));
    const d = closed === true ? ring(...placed) : curve(...placed);
    const last = paths.at(-1);
    // Strokes of one pen that follow each other are one path; paper has to stay on its own, since it hides only what came before.
    if (last?.pen === pen && pen !== 'shape') paths[paths.length - 1] = { pen, d: last.d + d };
    else paths.push({ pen, d });
  }
  return paths;
}

/** The ink of the house, for pictures that stand by themselves. */
const ink = '#2b2622';

/** A face as a picture of its own, for paper: `size` is what width and height say (`12mm`). */
export function faceSvg(feeling: FaceOf, size: string): string {
  const paths = faceGeometry(feeling).map(({ pen, d }) => {
    if (pen === 'ink') return `<path d="${d}" fill="${ink}" stroke="none"/>`;
    return `<path d="${d}" stroke-width="${String(penWidths[pen])}"${pen === 'shape' ? ' fill="#fff"' : ''}/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="0 0 100 100" fill="none" stroke="${ink}" stroke-linecap="round" stroke-linejoin="round">${paths.join('')}</svg>`;
}
