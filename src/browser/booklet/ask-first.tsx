import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly question: string;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
}

/** A button that asks before it does what cannot be undone. The dialog is the browser's own: Escape closes it, and the focus comes back. */
export function AskFirst({ label, question, yes, no, onYes }: Props): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" class="quiet" onClick={() => dialog.current?.showModal()}>
        {label}
      </button>
      <dialog ref={dialog} class="ask-first" aria-label={label}>
        <p>{question}</p>
        <p class="button-row">
          {/* First what keeps: the focus begins there. */}
          <button type="button" class="page-button" onClick={() => dialog.current?.close()}>
            {no}
          </button>
          <button
            type="button"
            class="page-button"
            onClick={() => {
              dialog.current?.close();
              onYes();
            }}
          >
            {yes}
          </button>
        </p>
      </dialog>
    </>
  );
}
