import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Desk } from './desk.ts';
import { Late } from './late.tsx';
import { parts } from './parts.ts';

/** What is for the grown-up to decide. Folded, at the end of the first page; what is inside comes when it is unfolded. */
export function GrownUp({ desk, onErased }: { readonly desk: Desk; readonly onErased: () => void }): JSX.Element {
  const [open, setOpen] = useState(false);
  return (
    <details class="grown-up" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{desk.words.screen.grown.title}</summary>
      {open && <Late desk={desk} load={parts.grownUp} props={{ onErased }} />}
    </details>
  );
}
