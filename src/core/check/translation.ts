import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/**
 * A translation names the person who checked it and the day. Where it holds words of care or of consent, it waits for
 * that: a mistake there can hurt. Common practice and from memory, no source at hand.
 */
export function* translation(pack: Pack): Iterable<Finding> {
  const { translation: made, care, recording } = pack;
  if (made === undefined || (made.checkedBy !== undefined && made.checked !== undefined)) return;
  const careful = (care ?? []).length > 0 || recording !== undefined;
  yield finding('translation/unchecked', careful ? 'stop' : 'warn', placeOf(pack, 'translation'), { missing: made.checkedBy === undefined ? 'checked by' : 'checked', careful });
}
