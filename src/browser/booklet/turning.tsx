import type { JSX } from 'preact';
import type { Desk } from './desk.ts';

interface Props {
  readonly desk: Desk;
  readonly pages: readonly string[];
  readonly here: string;
}

/** The foot of a page: back, its number, and on. */
export function Turning({ desk, pages, here }: Props): JSX.Element {
  const say = desk.words.screen;
  const at = pages.indexOf(here);
  const [before, after] = [pages[at - 1], pages[at + 1]];
  return (
    <nav class="turning" aria-label={say.pages}>
      {before === undefined ? <span /> : <Turn desk={desk} page={before} label={say.back} kind="turn-back" />}
      <span class="page-number">{say.page(at + 1, pages.length)}</span>
      {after === undefined ? <span /> : <Turn desk={desk} page={after} label={here === 'read-first' ? say.readDone : say.forward} kind="turn-on" />}
    </nav>
  );
}

function Turn({ desk, page, label, kind }: { readonly desk: Desk; readonly page: string; readonly label: string; readonly kind: string }): JSX.Element {
  return (
    <button type="button" class={`page-button ${kind}`} onClick={() => desk.turnTo(page)}>
      {label}
    </button>
  );
}
