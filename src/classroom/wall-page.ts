import type { Entry } from '../core/booklet/booklet.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { booksChosen, shownChosen, type BooksChosen } from './best-of.ts';
import { feelingCounts, starsGiven, type FeelingCount } from './counts.ts';
import { isJudged } from './judging.ts';
import { answersTo, type Stack } from './stack.ts';
import { shownCounts, type Shown } from './small-numbers.ts';
import { shownStars, type Stars } from './stars.ts';

/**
 * The page for families or the wall: only what a teacher ticked, and only counts that are large enough to point at nobody. It knows
 * neither bookmarks nor scores, and nothing that a child said of itself is on it.
 */
export interface WallPage {
  readonly pack: StackPack;
  readonly stars: Shown<Stars>;
  /** What each number of stars was called. */
  readonly starWords: readonly string[];
  readonly chosen: Shown<BooksChosen>;
  readonly feelings: readonly ShownFeelings[];
  readonly answers: readonly { readonly stop: StackPack['stops'][number]; readonly number: number; readonly entries: readonly Entry[] }[];
}

export interface ShownFeelings {
  readonly number: number;
  readonly ask: string;
  readonly answered: number;
  /** None where showing them would tell what single children said. */
  readonly words: readonly FeelingCount[];
}

/** Builds it from the ticked answers' keys. */
export function wallPage(stack: Stack, pack: StackPack, shared: readonly string[]): WallPage {
  const given = starsGiven(stack, pack);
  return {
    pack,
    stars: shownStars(given.stars, 'anybody'),
    starWords: given.words,
    chosen: shownChosen(booksChosen(stack, pack), 'anybody'),
    feelings: feelingCounts(stack, pack).flatMap(({ number, stop, answered, words }): readonly ShownFeelings[] => {
      const sizes = words.map(({ children }) => children);
      const shown = shownCounts(words, answered, sizes, 'anybody');
      return shown.kind === 'nothing' ? [] : [{ number, ask: stop.ask, answered, words: shown.kind === 'all' ? words : [] }];
    }),
    answers: pack.stops.flatMap((stop, index) =>
      isJudged(stop)
        ? answersTo(stack, pack, stop.id)
            .filter(({ key }) => shared.includes(key))
            .map(({ entries }) => ({ stop, number: index + 1, entries: entries.filter(({ value }) => mayBeShown(value.kind)) }))
            .filter(({ entries }) => entries.length > 0)
        : [],
    ),
  };
}

/** A voice and a photo show a child, whatever the ticks say. Source: 16 CFR 312.2 counts both as personal information. */
function mayBeShown(kind: Entry['value']['kind']): boolean {
  return kind !== 'voice' && kind !== 'photo' && kind !== 'passed' && kind !== 'cannot-tell';
}
