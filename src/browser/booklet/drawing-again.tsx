import type { JSX } from 'preact';

/** A drawing that stands on the page for paper already: it is copied from there, so that a phone does not load it twice. */
export function DrawingAgain({ like }: { readonly like: string }): JSX.Element | null {
  const drawing = document.querySelector(like);
  return drawing && <span class="drawing-again" ref={(place) => place?.replaceChildren(drawing.cloneNode(true))} />;
}
