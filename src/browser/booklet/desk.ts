import { useEffect, useState } from 'preact/hooks';
import type { Phrases } from '../../core/languages/en.ts';
import type { BookletData } from '../../outputs/booklet-data.ts';
import type { Keeper } from './keeper.ts';

/** All that a part of the booklet works with. */
export interface Desk {
  readonly data: BookletData;
  readonly words: Phrases['booklet'];
  readonly keeper: Keeper;
  /** Turns to a page by its name. */
  readonly turnTo: (page: string) => void;
  /** Says something to those who listen, without moving anything. */
  readonly announce: (text: string) => void;
}

/** Draws a part anew after each change of what is kept. */
export function useKeeper({ keeper }: Desk): void {
  const [, again] = useState(0);
  useEffect(() => keeper.listen(() => again((n) => n + 1)), [keeper]);
}
