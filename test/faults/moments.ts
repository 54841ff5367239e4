/** Moments that look random and are the same each time, and how many of them. */
import { seeded } from '../speed/invented-library.ts';

export { seeded };

/** So many cases in an ordinary run, so many when everything is proved (`npm run prove`). */
export function cases(ordinary: number, whole: number): number {
  return process.env['BOOKFELLOW_PROVE'] === '1' ? whole : ordinary;
}

/** `count` whole numbers from 1 to `most`, one in each of as many equal parts, in an order that goes to and fro. */
export function spread(count: number, most: number, seed: number): readonly number[] {
  const random = seeded(seed);
  const inOrder = Array.from({ length: count }, (_, index) => Math.max(1, Math.min(most, Math.ceil(((index + random()) * most) / count))));
  return inOrder
    .map((moment) => ({ moment, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ moment }) => moment);
}
