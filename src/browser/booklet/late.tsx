import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from './desk.ts';

interface Props<P> {
  readonly desk: Desk;
  readonly load: () => Promise<(props: P) => JSX.Element | null>;
  readonly props: P;
}

/** A part whose code comes when it is needed. When it does not come, words say so and nothing is lost. */
export function Late<P extends object>({ desk, load, props }: Props<P>): JSX.Element {
  const [part, setPart] = useState<{ readonly Part: (props: P) => JSX.Element | null } | 'late' | 'missing'>('late');
  const fetchPart = () => {
    setPart('late');
    load().then(
      (Part) => setPart({ Part }),
      () => setPart('missing'),
    );
  };
  useEffect(fetchPart, []);
  const say = desk.words.screen.draw;
  if (part === 'late') return <p class="note">{say.late}</p>;
  if (part !== 'missing') return <part.Part {...props} />;
  return (
    <>
      <p class="note">{say.missing}</p>
      <button type="button" class="quiet" onClick={fetchPart}>
        {say.again}
      </button>
    </>
  );
}
