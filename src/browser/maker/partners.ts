import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import { listAt, textAt } from './words.ts';

/**
 * Which stop of one language is which of the other: the same id first, wherever it stands; stops that no id matches, by their order among those.
 * Everything else of a pack is matched by its place in its list.
 */
export interface Partners {
  /** The steps of the same text here, for steps of the other language; undefined where its stop has no partner. */
  readonly here: (theirs: readonly Step[]) => readonly Step[] | undefined;
  /** And the other way round. */
  readonly there: (own: readonly Step[]) => readonly Step[] | undefined;
  /** Places of stops, from 0, that only this language has, and that only the other one has. */
  readonly onlyHere: readonly number[];
  readonly onlyThere: readonly number[];
}

export function partnersOf(own: Raw | undefined, beside: Raw | undefined): Partners {
  const ids = (raw: Raw | undefined) => listAt(raw, ['stops']).map((stop) => textAt(stop, ['id']).trim());
  const [ours, theirs] = [ids(own), ids(beside)];
  const hereOf = new Map<number, number>();
  for (const [there, id] of theirs.entries()) {
    // An id that stands there twice is nobody's.
    const here = id !== '' && isOnce(theirs, id) && isOnce(ours, id) ? ours.indexOf(id) : -1;
    if (here !== -1) hereOf.set(there, here);
  }
  const taken = new Set(hereOf.values());
  const free = ours.flatMap((_, here) => (taken.has(here) ? [] : [here]));
  const left = theirs.flatMap((_, there) => (hereOf.has(there) ? [] : [there]));
  for (const [at, there] of left.entries()) {
    const here = free[at];
    if (here !== undefined) hereOf.set(there, here);
  }
  const thereOf = new Map([...hereOf].map(([there, here]) => [here, there]));
  return { here: moved(hereOf), there: moved(thereOf), onlyHere: free.slice(left.length), onlyThere: left.slice(free.length) };
}

const isOnce = (ids: readonly string[], id: string): boolean => ids.indexOf(id) === ids.lastIndexOf(id);

/** Steps with the place of their stop exchanged. */
function moved(places: ReadonlyMap<number, number>): (steps: readonly Step[]) => readonly Step[] | undefined {
  return (steps) => {
    const [list, at, ...rest] = steps;
    if (list !== 'stops' || typeof at !== 'number') return steps;
    const to = places.get(at);
    return to === undefined ? undefined : [list, to, ...rest];
  };
}
