import type { JSX } from 'preact';

/** Keeps a full stop on the line of the blank before it. */
const wordJoiner = '\u2060';

/** A sentence to complete: each run of underscores becomes a line, and is said as a blank. */
export function Frame({ text, blank }: { readonly text: string; readonly blank: string }): JSX.Element {
  const parts = text.split(/_{2,}/);
  return (
    <span class="frame">
      {parts.map((part, index) => (
        <>
          {index > 0 && (
            <span class="blank">
              <span class="unseen">{blank}</span>
            </span>
          )}
          {index > 0 ? part.replace(/^(?=[.,;:!?])/, wordJoiner) : part}
        </>
      ))}
    </span>
  );
}
