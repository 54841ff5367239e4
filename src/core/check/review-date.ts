import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import type { Surroundings } from './surroundings.ts';

/** Years after which a pack should be looked at again. Common practice, no source. */
const yearsBetweenReviews = 2;

/** The day of the last review is neither long past nor still to come. Days are text like 2026-09-01, which sorts as days do. */
export function* reviewDate(pack: Pack, { today }: Surroundings): Iterable<Finding> {
  const { reviewed } = pack.by;
  if (reviewed === undefined || today === undefined) return;
  const place = placeOf(pack, 'by', 'reviewed');
  if (reviewed > today) yield finding('by/review-ahead', 'warn', place, { reviewed, today });
  else if (addYears(reviewed, yearsBetweenReviews) < today) yield finding('by/review-past', 'note', place, { reviewed, years: yearsBetweenReviews });
}

function addYears(day: string, years: number): string {
  return String(Number(day.slice(0, 4)) + years) + day.slice(4);
}
