import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/** Model answers that a written stop should have: one short, one longer. Common practice, no source. */
const modelsWanted = 2;

/** Where children write, there are frames to begin with and model answers to judge by. */
export function* frames(pack: Pack): Iterable<Finding> {
  for (const [index, stop] of pack.stops.entries()) {
    if (stop.answer !== 'write') continue;
    if ((stop.frames ?? []).length === 0) yield finding('frames/missing', 'warn', placeOf(pack, 'stops', index), { stop: stop.id });
    const models = (stop.models ?? []).length;
    if (models < modelsWanted) yield finding('models/missing', 'warn', placeOf(pack, 'stops', index), { stop: stop.id, found: models });
  }
}
