import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/**
 * Everyone can answer: where children write there is an equal way without handwriting, where they draw there is one without
 * a pencil, and what is acted can be acted in a chair. Common practice, no source; that one way does not fit all: CAST, Universal Design for Learning.
 */
export function* anotherWay(pack: Pack): Iterable<Finding> {
  for (const [index, stop] of pack.stops.entries()) {
    const at = placeOf(pack, 'stops', index, 'answer');
    const facts = { stop: stop.id };
    if (stop.answer === 'write' && (stop.or === undefined || stop.or === 'write')) yield finding('stop/needs-handwriting', 'warn', at, facts);
    if (stop.answer === 'draw' && (stop.or === undefined || stop.or === 'draw' || stop.or === 'write')) yield finding('stop/needs-a-pencil', 'note', at, facts);
    // Another way that can be done sitting down is a seated way too, yet acting in a chair keeps a child in the play.
    if (stop.answer === 'act' && stop.seated === undefined) yield finding('stop/no-seated-way', stop.or === undefined ? 'warn' : 'note', at, facts);
  }
}
