import { useState } from 'preact/hooks';

let last = 0;

/** An id that nothing else on the page has. Preact's own begin anew in each of the page's roots, and labels would name the wrong field. */
export function useOwnId(): string {
  const [id] = useState(() => `own-${String(++last)}`);
  return id;
}
