import type { JSX } from 'preact';

/** A mark that belongs to the blank before it, and stays on its line. */
const closingMark = /^[.,;:!?)»”…،؛؟]+/;

/** A sentence to complete: each run of underscores becomes a line, and is said as a blank. */
export function Frame({ text, blank }: { readonly text: string; readonly blank: string }): JSX.Element {
  const parts = text.split(/_{2,}/);
  return (
    <span class="frame">
      {parts.map((part, index) => (
        <>
          {index > 0 && (
            <span class="blank-and-mark">
              <span class="blank">
                <span class="unseen">{blank}</span>
              </span>
              {closingMark.exec(part)?.[0]}
            </span>
          )}
          {index > 0 ? part.replace(closingMark, '') : part}
        </>
      ))}
    </span>
  );
}
