/**
 * What of a class's counts others may see. Source: NCES 2011-603, SLDS Technical Brief 3: minimum group sizes in US states are 5 to 30,
 * most often 10. That all alike is hidden as well: common practice, no source, since it discloses everyone's.
 */

/** Who looks: the teacher in private, or anybody: families, a wall, a colleague. */
export type Audience = 'teacher' | 'anybody';

/** Fewer than so many: nobody else is told anything. Fewer than the second: only how many answered. */
export const leastTold = 5;
export const leastShown = 10;

/** What may be seen of something that a number of children answered. */
export type Shown<T> =
  | { readonly kind: 'nothing'; readonly why: 'too few' | 'nobody' }
  /** Only how many answered: a few, or all alike, would tell what each child said. */
  | { readonly kind: 'only how many'; readonly n: number; readonly why: 'few' | 'all alike' }
  | { readonly kind: 'all'; readonly counts: T };

/** `n` children answered, and each of `sizes` is how many of them said one and the same. */
export function shownCounts<T>(counts: T, n: number, sizes: readonly number[], audience: Audience): Shown<T> {
  if (n === 0) return { kind: 'nothing', why: 'nobody' };
  if (audience === 'teacher') return { kind: 'all', counts };
  if (n < leastTold) return { kind: 'nothing', why: 'too few' };
  if (n < leastShown) return { kind: 'only how many', n, why: 'few' };
  if (sizes.includes(n)) return { kind: 'only how many', n, why: 'all alike' };
  return { kind: 'all', counts };
}
