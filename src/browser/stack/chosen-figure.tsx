import type { JSX } from 'preact';
import type { BooksChosen } from '../../classroom/best-of.ts';
import type { Desk } from './desk.ts';
import { DotsFigure } from './dots-figure.tsx';

/** Which of a few books the class chose: a full dot for a child's first choice, an empty one where it could wait; in words, and as a table. */
export function ChosenFigure({ id, desk, chosen, lang }: { readonly id: string; readonly desk: Desk; readonly chosen: BooksChosen; readonly lang: string | undefined }): JSX.Element {
  const say = desk.words.stack.counts.chosen;
  const { books, n, nLast } = chosen;
  const named = books.map(({ book, best, last }) => ({ book: <span lang={lang}>{book}</span>, name: <tspan lang={lang}>{book}</tspan>, best, last }));
  return (
    <DotsFigure
      id={id}
      title={say.title}
      rows={named.map(({ name, best, last }) => ({ name, full: best, empty: last }))}
      text={say.text(
        books.map(({ book, best }) => [book, best] as const),
        n,
        books.map(({ book, last }) => [book, last] as const),
        nLast,
      )}
      table={{
        summary: desk.words.stack.counts.table,
        heads: nLast > 0 ? say.heads : say.heads.slice(0, 2),
        rows: named.map(({ book, best, last }) => (nLast > 0 ? [book, best, last] : [book, best])),
      }}
    >
      <p class="figure-key">{nLast > 0 ? `${say.key} ${say.note}` : say.note}</p>
    </DotsFigure>
  );
}
