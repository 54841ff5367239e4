import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk, WholeDesk } from './desk.ts';

type Part<P> = (props: P & { readonly desk: WholeDesk }) => JSX.Element | null;

interface Props<P> {
  readonly desk: Desk;
  readonly load: () => Promise<Part<P>>;
  readonly props: P;
}

/** A part whose code and words come when it is needed. When they do not come, words say so and nothing is lost. */
export function Late<P extends object>({ desk, load, props }: Props<P>): JSX.Element {
  const [part, setPart] = useState<{ readonly Part: Part<P>; readonly desk: WholeDesk } | 'late' | 'missing'>('late');
  const fetchPart = () => {
    setPart('late');
    Promise.all([load(), desk.allWords()]).then(
      ([Part, words]) => setPart({ Part, desk: { ...desk, words } }),
      () => setPart('missing'),
    );
  };
  useEffect(fetchPart, []);
  const say = desk.words.screen.late;
  if (part === 'late') return <p class="note">{say.wait}</p>;
  if (part !== 'missing') return <part.Part {...props} desk={part.desk} />;
  return (
    <>
      <p class="note">{say.missing}</p>
      <button type="button" class="quiet" onClick={fetchPart}>
        {say.again}
      </button>
    </>
  );
}
