/**
 * The runs of words that other texts share with one text, in time that grows with the length of both and no faster,
 * however often a text repeats itself: a suffix automaton (Blumer, Blumer, Haussler, Ehrenfeucht, Chen and Seiferas 1985,
 * Theoretical Computer Science 40:31-55; from memory), with words for letters. A text of n words has at most 2n states
 * and 3n steps between them.
 */

/** A run of words in another text that stands in the first one as well, and cannot be made longer to the right. */
export interface SharedRun {
  /** Index of its first word in the other text. */
  readonly from: number;
  readonly words: number;
  /** Index of its first word where the first text has it first. */
  readonly source: number;
}

export interface RunFinder {
  readonly runsIn: (words: readonly string[]) => readonly SharedRun[];
  /** Steps taken so far, in making the finder and in finding; a test holds it against the length of the texts. */
  readonly steps: () => number;
}

/** Learns a text, to find its runs in others. Words are compared as they are given: even them out before. */
export function runFinder(source: readonly string[]): RunFinder {
  const numbers = new Map<string, number>();
  for (const word of source) if (!numbers.has(word)) numbers.set(word, numbers.size);
  const kinds = numbers.size;
  // State 0 is the empty run. `next` holds all steps between states, keyed by state and word.
  const length: number[] = [0];
  const link: number[] = [-1];
  const firstEnd: number[] = [-1];
  const wordsFrom: number[][] = [[]];
  const next = new Map<number, number>();
  let steps = 0;
  const goTo = (state: number, word: number): number | undefined => next.get(state * kinds + word);
  const join = (from: number, word: number, to: number): void => {
    const key = from * kinds + word;
    if (!next.has(key)) wordsFrom[from]?.push(word);
    next.set(key, to);
    steps += 1;
  };
  const add = (words: number, end: number): number => {
    length.push(words);
    link.push(0);
    firstEnd.push(end);
    wordsFrom.push([]);
    return length.length - 1;
  };

  let last = 0;
  for (const [index, each] of source.entries()) {
    const word = numbers.get(each) ?? 0;
    const state = add((length[last] ?? 0) + 1, index);
    let before = last;
    while (before !== -1 && goTo(before, word) === undefined) {
      join(before, word, state);
      before = link[before] ?? -1;
    }
    if (before !== -1) {
      const reached = goTo(before, word) ?? 0;
      if (length[reached] === (length[before] ?? 0) + 1) link[state] = reached;
      else {
        const copy = add((length[before] ?? 0) + 1, firstEnd[reached] ?? 0);
        for (const known of wordsFrom[reached] ?? []) join(copy, known, goTo(reached, known) ?? 0);
        link[copy] = link[reached] ?? 0;
        while (before !== -1 && goTo(before, word) === reached) {
          join(before, word, copy);
          before = link[before] ?? -1;
        }
        link[reached] = copy;
        link[state] = copy;
      }
    }
    last = state;
  }

  const runsIn = (words: readonly string[]): readonly SharedRun[] => {
    const runs: SharedRun[] = [];
    let state = 0;
    let shared = 0;
    const close = (end: number): void => {
      if (shared > 0) runs.push({ from: end - shared, words: shared, source: (firstEnd[state] ?? 0) - shared + 1 });
    };
    for (const [index, each] of words.entries()) {
      const word = numbers.get(each);
      let to = word === undefined ? undefined : goTo(state, word);
      if (to === undefined) close(index);
      while (to === undefined && state !== 0) {
        state = word === undefined ? 0 : (link[state] ?? 0);
        shared = length[state] ?? 0;
        to = word === undefined ? undefined : goTo(state, word);
        steps += 1;
      }
      shared = to === undefined ? 0 : shared + 1;
      state = to ?? 0;
      steps += 1;
    }
    close(words.length);
    return runs;
  };
  return { runsIn, steps: () => steps };
}
