import type { Family, Strength } from '../core/measure/feelings-lexicon.ts';
import type { Point } from './pen.ts';

/** What a feeling does to a face. Distances in units of the face's box (100), angles in degrees. */
export interface Look {
  readonly mouth: 'curve' | 'laugh' | 'round' | 'wavy' | 'teeth' | 'skewed' | 'flat';
  readonly eyes: 'open' | 'smiling' | 'shut' | 'heavy' | 'wide' | 'tight' | 'squinting' | 'resting';
  /** How far the inner and the outer end of the brows are lifted. */
  readonly brows: readonly [inner: number, outer: number];
  /** Where the eyes look. */
  readonly gaze: Point;
  /** Head to the side; to the reader's right when positive. */
  readonly tilt: number;
  /** Features down when positive, as in a bowed head; up as in a raised one when negative. */
  readonly nod: number;
  /** Shoulders up when positive. */
  readonly shoulders: number;
  /** What only this family has, beside the face. */
  readonly marks: readonly Mark[];
}

export type Mark =
  | 'arms up'
  | 'tear'
  | 'tears'
  | 'breath'
  | 'tremble'
  | 'hands at cheeks'
  | 'rays'
  | 'wrinkled nose'
  | 'tongue'
  | 'hand on heart'
  | 'hand at chin'
  | 'hatched cheeks'
  | 'hand before face'
  | 'still water'
  | 'raised chin'
  | 'far away';

/** The nearest rung of the ladder. */
export const rungOf = (strength: number): Strength => (strength < 1.5 ? 1 : strength < 2.5 ? 2 : 3);

/** Of three, the one for a rung. */
const rung = <T>(strength: Strength, mild: T, middling: T, strong: T): T => [mild, middling, strong][strength - 1] ?? middling;

/** How each family looks on each rung: common practice of drawing, no source. */
export const looks: Readonly<Record<Family, (strength: Strength) => Look>> = {
  glad: (s) => ({
    ...{ mouth: rung(s, 'curve', 'curve', 'laugh'), eyes: rung(s, 'open', 'open', 'smiling'), gaze: [0, 0] },
    ...{ brows: rung(s, [1, 1], [3, 3], [4, 4]), tilt: rung(s, 0, -3, -5), nod: -s, shoulders: s - 1 },
    marks: s === 3 ? ['arms up'] : [],
  }),
  sad: (s) => ({
    ...{ mouth: 'curve', eyes: rung(s, 'heavy', 'heavy', 'shut'), gaze: [0, 2] },
    ...{ brows: rung(s, [3, -2], [5, -3], [7, -4]), tilt: rung(s, 3, 6, 9), nod: s, shoulders: -1 - 2 * s },
    marks: rung(s, [], ['tear'], ['tears']),
  }),
  cross: (s) => ({
    ...{ mouth: rung(s, 'flat', 'curve', 'teeth'), eyes: rung(s, 'open', 'open', 'tight'), gaze: rung(s, [3, 0], [0, 0], [0, 0]) },
    ...{ brows: rung(s, [-4, 0], [-7, 2], [-9, 6]), tilt: rung(s, 4, 0, 0), nod: s, shoulders: 2 * s },
    marks: s === 3 ? ['breath'] : [],
  }),
  afraid: (s) => ({
    ...{ mouth: rung(s, 'wavy', 'wavy', 'round'), eyes: rung(s, 'open', 'wide', 'wide'), gaze: rung(s, [-3, 0], [-1, 0], [0, 0]) },
    ...{ brows: rung(s, [5, -1], [7, 0], [10, 2]), tilt: 0, nod: -1, shoulders: 4 * s },
    marks: rung(s, [], ['tremble'], ['tremble', 'hands at cheeks']),
  }),
  surprised: (s) => ({
    ...{ mouth: 'round', eyes: 'wide', gaze: [0, 0] },
    ...{ brows: rung(s, [4, 4], [7, 7], [10, 10]), tilt: 0, nod: -2, shoulders: s },
    marks: s === 3 ? ['rays'] : [],
  }),
  disgusted: (s) => ({
    ...{ mouth: 'skewed', eyes: rung(s, 'heavy', 'squinting', 'squinting'), gaze: [-2, 1] },
    ...{ brows: rung(s, [-3, 2], [-4, 2], [-5, 3]), tilt: rung(s, 4, 7, 10), nod: 0, shoulders: s },
    marks: rung(s, ['wrinkled nose'], ['wrinkled nose'], ['wrinkled nose', 'tongue']),
  }),
  calm: (s) => ({
    ...{ mouth: 'curve', eyes: rung(s, 'resting', 'shut', 'shut'), gaze: [0, 0] },
    ...{ brows: rung(s, [1, 0], [0, -1], [2, -1]), tilt: rung(s, 0, 0, 9), nod: rung(s, 0, 1, 1), shoulders: -2 },
    marks: ['still water'],
  }),
  caring: (s) => ({
    ...{ mouth: 'curve', eyes: rung(s, 'open', 'smiling', 'smiling'), gaze: [2, 2] },
    ...{ brows: [3, -1], tilt: -5 - 2 * s, nod: 0, shoulders: 0 },
    marks: ['hand on heart'],
  }),
  proud: (s) => ({
    ...{ mouth: rung(s, 'curve', 'curve', 'laugh'), eyes: rung(s, 'open', 'shut', 'shut'), gaze: [0, 0] },
    ...{ brows: [3, 3], tilt: rung(s, -2, -4, -6), nod: -4 - s, shoulders: 3 + s },
    marks: ['raised chin'],
  }),
  ashamed: (s) => ({
    ...{ mouth: 'wavy', eyes: rung(s, 'open', 'heavy', 'shut'), gaze: [3, 3] },
    ...{ brows: [5, -2], tilt: 5 + 2 * s, nod: 2 + s, shoulders: 3 },
    marks: rung(s, ['hatched cheeks'], ['hatched cheeks'], ['hatched cheeks', 'hand before face']),
  }),
  curious: (s) => ({
    ...{ mouth: rung(s, 'flat', 'curve', 'curve'), eyes: rung(s, 'open', 'open', 'wide'), gaze: [2.5, -2.5] },
    ...{ brows: rung(s, [2, 1], [4, 4], [7, 7]), tilt: rung(s, 9, 7, 5), nod: -1, shoulders: 0 },
    marks: s === 1 ? [] : ['hand at chin'],
  }),
  lonely: (s) => ({
    ...{ mouth: 'curve', eyes: rung(s, 'open', 'open', 'shut'), gaze: [-4, 2] },
    ...{ brows: [4, -2], tilt: rung(s, -3, -6, -9), nod: s, shoulders: -s },
    marks: ['far away'],
  }),
};
