import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/** Seconds of silence after a question. Source: Rowe 1986, who found about one second in use and asks for three. */
const leastWait = 3;

/** A wait that the pack sets is three seconds or more. */
export function* waitTime(pack: Pack): Iterable<Finding> {
  for (const [index, stop] of pack.stops.entries()) {
    if (stop.wait !== undefined && stop.wait < leastWait) {
      yield finding('stop/short-wait', 'warn', placeOf(pack, 'stops', index, 'wait'), { stop: stop.id, wait: stop.wait, least: leastWait });
    }
  }
}
