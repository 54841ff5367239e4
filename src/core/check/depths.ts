import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { bookPointers } from './models-show.ts';
import { languageOf } from './plain-words.ts';
import { canBeWeighed, promptsOf } from './prompts.ts';

/** Prompts at depth 1, as a share of all. Common practice, no source. */
const mostRecall = 1 / 3;

/**
 * No more than a third of the prompts ask for recall, and one at depth 3 or more has a model answer that points to the book.
 * Common practice, no source; the depths are read off Webb 1997 and Raphael 1986.
 */
export function* depths(pack: Pack): Iterable<Finding> {
  // Depth 4 reaches across books or time: offered gladly, never demanded of a pack about one book.
  for (const [index, stop] of pack.stops.entries()) {
    if (stop.depth === 4 && stop.must === true) yield finding('stop/depth-four-must', 'note', placeOf(pack, 'stops', index, 'must'), { stop: stop.id });
  }
  if (!canBeWeighed(pack)) return;
  const at = placeOf(pack, 'stops');
  const prompts = promptsOf(pack);
  const recall = prompts.filter((prompt) => prompt.depth === 1).length;
  if (recall > prompts.length * mostRecall) yield finding('balance/mostly-recall', 'note', at, { found: recall, of: prompts.length });
  const language = languageOf(pack);
  const deep = prompts.filter((prompt) => prompt.depth >= 3);
  const models = deep.flatMap((prompt) => prompt.models);
  const points = language === undefined ? undefined : bookPointers(pack, language);
  const cites = points === undefined || models.some(({ text }) => points(text));
  const missing = deep.length === 0 ? 'prompt' : models.length === 0 ? 'model' : cites ? undefined : 'evidence';
  if (missing !== undefined) yield finding('balance/no-deep-prompt', 'note', at, { missing });
}
