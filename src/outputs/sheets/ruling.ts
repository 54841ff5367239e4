import type { PackFields } from '../../core/pack/pack.ts';

/** Lines to write on, in millimetres. */
export interface Ruling {
  readonly name: 'large' | 'middle' | 'small';
  /** From the headline to the base line; a dashed line stands half-way. */
  readonly height: number;
  /** From a base line to the next headline: room for what hangs below, as on writing paper about half the height (common practice, no source). */
  readonly gap: number;
  /** How many lines a child is given at one stop. Common practice, no source. */
  readonly lines: number;
}

/**
 * The three sizes: 3/4, 5/8 and 1/2 inch, the usual stock for kindergarten, grade 1 and grades 2 and 3 (from memory).
 * A top line stands above each because without one beginners take the middle line for it (Reidlinger, Candler and Neville 2012).
 */
export const rulings: Readonly<Record<Ruling['name'], Ruling>> = {
  large: { name: 'large', height: 19.05, gap: 9.5, lines: 2 },
  middle: { name: 'middle', height: 15.875, gap: 8, lines: 3 },
  small: { name: 'small', height: 12.7, gap: 6.5, lines: 4 },
};

/** The pack's own choice, or the size usual for its youngest grade. */
export function rulingOf(pack: Pick<PackFields, 'for'>): Ruling {
  if (pack.for.ruling !== undefined) return rulings[pack.for.ruling];
  const { grades } = pack.for;
  if (grades.includes('PreK') || grades.includes('K')) return rulings.large;
  return grades.includes('1') ? rulings.middle : rulings.small;
}
