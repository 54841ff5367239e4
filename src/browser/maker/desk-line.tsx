import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Desk } from './desk.ts';
import { takeFile } from './take.ts';

interface LineProps {
  readonly desk: Desk;
  readonly leave: () => void;
  readonly preview?: { readonly open: boolean; readonly toggle: () => void };
}

/** What is kept, and what can be done with the whole at any time. */
export function DeskLine({ desk, leave, preview }: LineProps): JSX.Element {
  const { say } = desk.data;
  const [leaving, setLeaving] = useState(false);
  // What is nowhere but on this page would be gone with it.
  const wishToLeave = (): void => void desk.settled().then(() => (desk.isOnlyHere ? setLeaving(true) : leave()));
  const kept = { opened: say.desk.opened, keeping: say.desk.keeping, kept: say.desk.kept, refused: say.desk.notKept, full: say.desk.full }[desk.keeping];
  return (
    <div class="desk-line" role="group" aria-label={say.desk.name}>
      <p class="desk-title">{desk.title || say.start.untitled}</p>
      <p class={`desk-kept is-${desk.keeping}`} role="status">
        {desk.said === '' ? '' : `${desk.said} `}
        {kept}
        {desk.parted && ` ${say.desk.parted}`}
        {desk.elsewhere && ` ${say.desk.elsewhere}`}
      </p>
      <p class="desk-buttons">
        <button type="button" class="word-button" disabled={desk.earlier.length === 0} onClick={() => void desk.goBack()}>
          {say.desk.back}
        </button>
        {preview && (
          <button type="button" id="preview-button" class="word-button" aria-expanded={preview.open} onClick={preview.toggle}>
            {say.desk.preview}
          </button>
        )}
        <button type="button" class="word-button" onClick={() => void takeFile(desk)}>
          {say.desk.download}
        </button>
        <button type="button" class="word-button" onClick={wishToLeave}>
          {say.desk.other}
        </button>
      </p>
      {leaving && (
        <p class="desk-leave" role="alert">
          {say.desk.leaveSure}{' '}
          <button type="button" class="word-button" onClick={() => void takeFile(desk).then(leave)}>
            {say.desk.leaveTake}
          </button>{' '}
          <button type="button" class="word-button" onClick={leave}>
            {say.desk.leaveYes}
          </button>{' '}
          <button type="button" class="word-button" onClick={() => setLeaving(false)}>
            {say.desk.leaveNo}
          </button>
        </p>
      )}
    </div>
  );
}
