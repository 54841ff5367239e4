import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/** Most prompts on a family page: ten minutes, no book at hand. Common practice, no source. */
export const mostHomePrompts = 3;

/** A family gets at most three prompts. */
export function* home(pack: Pack): Iterable<Finding> {
  const found = pack.home?.prompts.length ?? 0;
  if (found > mostHomePrompts) yield finding('home/too-many-prompts', 'stop', placeOf(pack, 'home', 'prompts'), { found, most: mostHomePrompts });
}
