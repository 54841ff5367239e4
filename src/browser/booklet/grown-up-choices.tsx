import type { JSX } from 'preact';
import { AskFirst } from './ask-first.tsx';
import { useKeeper, type WholeDesk } from './desk.ts';
import { useOwnId } from './own-id.ts';

/** The microphone, and erasing. */
export function GrownUpChoices({ desk, onErased }: { readonly desk: WholeDesk; readonly onErased: () => void }): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.grown;
  const id = useOwnId();
  const erase = (what: 'this' | 'all') => {
    void (what === 'all' ? keeper.eraseAll() : keeper.erase()).then(() => {
      onErased();
      desk.announce(say.erased);
    });
  };
  return (
    <>
      <p class="note">{say.note}</p>
      {keeper.booklet && 'MediaRecorder' in globalThis && (
        <p class="tick">
          <input id={id} type="checkbox" checked={keeper.settings.microphone} onChange={(event) => keeper.change({ microphone: event.currentTarget.checked })} />
          <label for={id}>{say.microphone}</label>
        </p>
      )}
      <p class="button-row">
        {keeper.booklet && <AskFirst label={say.erase} question={say.sure} yes={say.yes} no={say.no} onYes={() => erase('this')} />}
        <AskFirst label={say.eraseAll} question={say.sureAll} yes={say.yes} no={say.no} onYes={() => erase('all')} />
      </p>
    </>
  );
}
