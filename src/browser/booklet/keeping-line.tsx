import type { JSX } from 'preact';
import { useKeeper, type Desk } from './desk.ts';

/** Says when something was kept, at a pause and never while somebody writes; and says it plainly when it could not be. */
export function KeepingLine({ desk, here }: { readonly desk: Desk; readonly here: string }): JSX.Element {
  useKeeper(desk);
  const { keeping } = desk.keeper;
  const say = desk.words.screen;
  const failed = keeping === 'full' || keeping === 'blocked';
  return (
    <div class={failed ? 'keeping-line is-failed' : 'keeping-line'}>
      <p role="status">{keeping === 'silent' ? '' : say.keeping[keeping]}</p>
      {failed && here !== 'my-page' && (
        <a class="onward" href="#my-page">
          {say.toMine}
        </a>
      )}
    </div>
  );
}
