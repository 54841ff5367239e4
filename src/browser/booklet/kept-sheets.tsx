import type { JSX } from 'preact';
import { entriesOf } from '../../core/booklet/booklet.ts';
import type { WholeDesk } from './desk.ts';
import { KeptAnswer } from './kept-answer.tsx';

/** All that is kept for one stop, to stand on its sheet on paper. */
export function KeptAnswers({ desk, to }: { readonly desk: WholeDesk; readonly to: string }): JSX.Element {
  const entries = desk.keeper.booklet ? entriesOf(desk.keeper.booklet, to) : [];
  return (
    <>
      {entries.map((entry) => (
        <KeptAnswer desk={desk} entry={entry} key={`${entry.writer} ${String(entry.count)}`} />
      ))}
    </>
  );
}
