import { setImmediate as nextTurn } from 'node:timers/promises';

/**
 * Lets the rest of the process have a turn now and then, so that the preview goes on answering while a large library is built.
 *
 * @returns What a long loop waits for in each round.
 */
export function turns(milliseconds = 20): () => Promise<void> {
  let last = performance.now();
  return async () => {
    if (performance.now() - last < milliseconds) return;
    await nextTurn();
    last = performance.now();
  };
}
