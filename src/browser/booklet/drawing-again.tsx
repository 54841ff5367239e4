import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * A drawing that stands on the page for paper already: it is copied from there, so that a phone does not load it twice.
 * Once only: what changes on the page while somebody types parts the browser's steps of undoing.
 */
export function DrawingAgain({ like }: { readonly like: string }): JSX.Element | null {
  const place = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const drawing = document.querySelector(like);
    if (drawing) place.current?.replaceChildren(drawing.cloneNode(true));
  }, [like]);
  return document.querySelector(like) && <span class="drawing-again" ref={place} />;
}
