import { useEffect, useState } from 'preact/hooks';
import type { enBookletScreen } from '../../core/languages/en-booklet-screen.ts';
import type { Phrases } from '../../core/languages/en.ts';
import type { BookletData } from '../../outputs/booklet-data.ts';
import type { Keeper } from './keeper.ts';

/** All that a part of the booklet works with. */
export interface Desk {
  readonly data: BookletData;
  /** What is said before the first answer; the other phrases come with the parts that say them. */
  readonly words: typeof enBookletScreen;
  readonly allWords: () => Promise<Phrases['booklet']>;
  readonly keeper: Keeper;
  /** Turns to a page by its name. */
  readonly turnTo: (page: string) => void;
  /** Says something to those who listen, without moving anything. */
  readonly announce: (text: string) => void;
}

/** The desk of a part that was fetched later, and all phrases with it. */
export interface WholeDesk extends Desk {
  readonly words: Phrases['booklet'];
}

/** Draws a part anew after each change of what is kept. */
export function useKeeper({ keeper }: Desk): void {
  const [, again] = useState(0);
  useEffect(() => keeper.listen(() => again((n) => n + 1)), [keeper]);
}
