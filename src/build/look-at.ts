import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { Places, Source } from '../core/pack/pack.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { throughStages } from '../outputs/through-stages.ts';

/** What a pack was found to be, as it is kept: nothing in it depends on the day. */
export interface Kept {
  readonly pack: PlannedPack | undefined;
  readonly findings: readonly Finding[];
}

export function lookAt(source: Source, library: Library): Kept {
  const { pack, findings } = throughStages(source, library, undefined);
  return { pack: pack && { ...pack, places: nearTop(pack.places) }, findings };
}

/** The places of fields and of their parts. Findings about what lies deeper have been made by now, and places are half of a pack. */
function nearTop(places: Places): Places {
  return Object.fromEntries(Object.entries(places).filter(([steps]) => !steps.endsWith('.*') && !isDeep(steps)));
}

/** Of three steps or more. */
function isDeep(steps: string): boolean {
  const second = steps.indexOf('.') + 1;
  return second > 0 && steps.includes('.', second);
}
