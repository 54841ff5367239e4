import type { JSX, RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { useOwnId } from './own-id.ts';

interface Props {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly field?: RefObject<HTMLTextAreaElement | null>;
  /** Lines to begin with. */
  readonly rows?: number;
}

/** Where the browser does it, nothing has to be measured at each letter. */
const growsByItself = CSS.supports('field-sizing', 'content');

/** Ruled lines to write on, as many as the text needs. No limit, no spelling marks: nobody corrects a child here. */
export function Lines({ label, text, onText, field, rows = 3 }: Props): JSX.Element {
  const id = useOwnId();
  const own = useRef<HTMLTextAreaElement>(null);
  const at = field ?? own;
  const grow = () => {
    const area = at.current;
    if (!area || growsByItself) return;
    area.style.height = 'auto';
    area.style.height = `${String(area.scrollHeight + 2)}px`;
  };
  useLayoutEffect(grow, [text]);
  useEffect(() => {
    addEventListener('resize', grow);
    return () => removeEventListener('resize', grow);
  }, []);
  return (
    <div class="lines">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        ref={at}
        rows={rows}
        value={text}
        style={{ minHeight: `calc(${String(rows * 3)}rem + 3px)` }}
        onInput={(event) => onText(event.currentTarget.value)}
        autocomplete="off"
        spellcheck={false}
        dir="auto"
      />
    </div>
  );
}

/** Puts a piece of text where the writing mark is, as typing would: the browser's own undo takes it back. */
export function insert(area: HTMLTextAreaElement, piece: string): void {
  area.focus();
  const { value, selectionStart, selectionEnd } = area;
  const before = value.slice(0, selectionStart);
  const after = value.slice(selectionEnd);
  const text = `${before === '' || /\s$/.test(before) ? '' : ' '}${piece}${after === '' || /^[\s.,;:!?]/.test(after) ? '' : ' '}`;
  // The one way that the browser's undo knows of. Where it is gone, the text is set and the undo is lost, not the text.
  if (!document.execCommand('insertText', false, text)) {
    area.setRangeText(text, selectionStart, selectionEnd, 'end');
    area.dispatchEvent(new Event('input', { bubbles: true }));
  }
  const blank = /_{2,}/.exec(text);
  if (blank) area.setSelectionRange(selectionStart + blank.index, selectionStart + blank.index + blank[0].length);
}

/** Takes back the last change of a field, as Ctrl+Z does. */
export function undo(area: HTMLTextAreaElement): void {
  area.focus();
  document.execCommand('undo');
}
