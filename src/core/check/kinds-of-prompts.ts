import { finding, type Finding } from '../finding.ts';
import { placeOf, type Kind, type Pack } from '../pack/pack.ts';
import { canBeWeighed } from './prompts.ts';

/** Kinds of prompt that a pack should mix. The kinds are sourced (Whitehurst et al. 1988; National Research Council 2000); how many is common practice. */
const fewestKinds = 3;

/** A pack mixes kinds of prompt, one of them about the child's own life, and past kindergarten children do more than fill in words. */
export function* kindsOfPrompts(pack: Pack): Iterable<Finding> {
  if (!canBeWeighed(pack)) return;
  const at = placeOf(pack, 'stops');
  const counts = new Map<Kind, number>();
  for (const { kind } of pack.stops) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (counts.size < fewestKinds) yield finding('balance/few-kinds', 'note', at, { found: counts.size, least: fewestKinds });
  if (!counts.has('own life') && !pack.stops.some((stop) => stop.about === 'me')) yield finding('balance/no-own-life', 'note', at, {});
  const completions = counts.get('completion') ?? 0;
  const most = Math.max(...[...counts].filter(([kind]) => kind !== 'completion').map(([, count]) => count), 0);
  const older = pack.for.grades.some((grade) => /^\d$/.test(grade));
  if (older && completions > most) yield finding('balance/mostly-completion', 'note', at, { found: completions, stops: pack.stops.length });
}
