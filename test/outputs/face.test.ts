/**
 * Faces can be told apart in grey at 12 millimetres, the size at which a child's page prints them.
 *
 * Each face is drawn at 150 dots an inch (71 dots, fewer than any printer lays) and softened by one dot, as paper and eyes do. Two faces
 * are laid over each other as well as whole dots allow. How far they are apart is told by the spot of two millimetres, the size of an
 * eye or half a mouth, where their greys differ most: that is where one looks. The floor is measured, not chosen: the same for a face
 * laid over itself in the worst place, half a dot off in both directions. Less than that could be the printer's doing.
 */
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { families } from '../../src/core/pack/schema.ts';
import { faceGeometry, faceSvg } from '../../src/outputs/face.ts';

const dots = Math.round((12 / 25.4) * 150);
const faces = families.flatMap((family) => [1, 2, 3].map((strength) => ({ name: `${family} ${String(strength)}`, family, strength })));
/** Whole dots by which a face may be moved to lie better over another. */
const moves = [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y) => [x, y] as const));
const margin = 2;

type Greys = readonly number[];

/** Ink at each dot, 0 to 255, with the drawing moved by so many half dots. */
async function printed(svg: string, halves: readonly [x: number, y: number]): Promise<Greys> {
  const background = '#fff';
  const [x, y] = halves;
  const twice = await sharp(Buffer.from(svg))
    .resize(dots * 2)
    .flatten({ background })
    .extend({ left: 2 * margin + x, right: 2 * margin - x, top: 2 * margin + y, bottom: 2 * margin - y, background })
    .toBuffer();
  const raw = await sharp(twice)
    .resize(dots + 2 * margin, undefined, { kernel: 'cubic' })
    .greyscale()
    .blur(1)
    .raw()
    .toBuffer();
  return [...raw].map((grey) => 255 - grey);
}

const side = dots + 2 * margin;
const spot = Math.round((2 / 25.4) * 150);

/** The most by which two greys differ in any spot, as a share of a spot that is all ink. */
function difference(a: Greys, b: Greys): number {
  // Sums of the rectangle from the first dot to each: any spot is then four look-ups.
  const sums = new Float64Array((side + 1) ** 2);
  let most = 0;
  for (let y = 1; y <= side; y++) {
    for (let x = 1; x <= side; x++) {
      const dot = (y - 1) * side + x - 1;
      const at = y * (side + 1) + x;
      sums[at] = Math.abs((a[dot] ?? 0) - (b[dot] ?? 0)) + (sums[at - 1] ?? 0) + (sums[at - side - 1] ?? 0) - (sums[at - side - 2] ?? 0);
      if (y < spot || x < spot) continue;
      const up = at - spot * (side + 1);
      most = Math.max(most, (sums[at] ?? 0) - (sums[at - spot] ?? 0) - (sums[up] ?? 0) + (sums[up - spot] ?? 0));
    }
  }
  return most / (255 * spot * spot);
}

const drawn = await Promise.all(
  faces.map(async (face) => {
    const svg = faceSvg(face, String(dots));
    const moved = await Promise.all(moves.map(([x, y]) => printed(svg, [2 * x, 2 * y])));
    return { ...face, moved, here: await printed(svg, [0, 0]), halfOff: await printed(svg, [1, 1]) };
  }),
);
type Drawn = (typeof drawn)[number];
const apart = (from: Greys, to: Drawn): number => Math.min(...to.moved.map((greys) => difference(from, greys)));

const pairs = drawn.flatMap((a, index) => drawn.slice(index + 1).map((b) => ({ pair: `${a.name} and ${b.name}`, kin: a.family === b.family, apart: apart(a.here, b) })));
const nearest = (of: readonly (typeof pairs)[number][]) => [...of].sort((a, b) => a.apart - b.apart);
const floor = Math.max(...drawn.map((face) => apart(face.halfOff, face)));

describe('faces in grey at 12 mm', () => {
  test.each([
    ['two families', false],
    ['two rungs of one family', true],
  ] as const)('%s are further apart than a printer could make one face', (_, kin) => {
    const [first, ...next] = nearest(pairs.filter((each) => each.kin === kin)).slice(0, 5);
    process.stdout.write(`floor ${floor.toFixed(3)}; nearest: ${[first, ...next].map((each) => `${each?.pair ?? ''} ${each?.apart.toFixed(3) ?? ''}`).join(', ')}\n`);
    expect(first?.apart).toBeGreaterThan(floor);
  });
});

describe('a face', () => {
  test.each(faces)('$name is an svg of paths alone', ({ family, strength }) => {
    const svg = faceSvg({ family, strength }, '12mm');
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="12mm" height="12mm"[^<>]*>(?:<path d="[\d\s.MZc-]+"[^<>]*\/>)+<\/svg>$/u);
  });

  test('a mouth turns with how pleasant the feeling is', () => {
    const mouths = [-0.9, 0, 0.9].map((valence) => JSON.stringify(faceGeometry({ family: 'calm', strength: 2, valence })));
    expect(new Set(mouths).size).toBe(3);
  });

  test('a strength outside the ladder takes the nearest rung', () => {
    expect(faceGeometry({ family: 'glad', strength: 7, valence: 0.9 })).toEqual(faceGeometry({ family: 'glad', strength: 3, valence: 0.9 }));
  });
});
