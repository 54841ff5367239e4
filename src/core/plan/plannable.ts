import type { PackFields, Stop } from '../pack/pack.ts';

/** What planning needs of a stop; a page in the browser has no more than this. */
export type PlanStop = Pick<Stop, 'id' | 'readings' | 'at' | 'ask' | 'materials' | 'answer' | 'kind' | 'frames' | 'wait' | 'task' | 'shares' | 'must' | 'value' | 'after'>;

/** What planning needs of a pack. */
export interface Plannable<S extends PlanStop = Stop> {
  /** `first` is the first opening where only a part of the book is read; 1 otherwise. `openings` counts those that are read. */
  readonly book: Pick<PackFields['book'], 'words' | 'openings'> & { readonly first?: number };
  readonly readings: PackFields['readings'];
  readonly stops: readonly S[];
}
