import type { JSX } from 'preact';
import { bestOf } from '../../core/booklet/booklet.ts';
import { chosenOf } from '../../core/booklet/chosen.ts';
import { Choices } from './choices.tsx';
import { useKeeper, type WholeDesk } from './desk.ts';

/** Which of a few books, and perhaps which one could wait: real radio buttons, and nobody has to choose. What is first cannot be last as well. */
export function BestOf({ desk, asked: { ask, books, last: askLast } }: { readonly desk: WholeDesk; readonly asked: NonNullable<WholeDesk['data']['bestOf']> }): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const kept = keeper.placed(bestOf, 'chosen').at(-1)?.entry.value;
  const [best, last] = [kept?.best, kept?.last];
  const choose = (first?: string, end?: string) => keeper.putOnly(bestOf, chosenOf(books, first, end), 'chosen');
  const all = books.map((book) => ({ value: book, name: book }));
  return (
    <>
      <Choices legend={ask} kind="asked-above" group="best-of" chosen={best} choices={all} onChoose={(book) => choose(book, last)} />
      {askLast !== undefined && best !== undefined && (
        <Choices legend={askLast} group="last-of" chosen={last} choices={all.filter(({ value }) => value !== best)} onChoose={(book) => choose(best, book)} />
      )}
      {best !== undefined && (
        <p>
          <button
            type="button"
            class="quiet"
            onClick={(event) => {
              event.currentTarget.closest('.screen-room')?.querySelector('input')?.focus();
              choose();
            }}
          >
            {words.screen.feeling.rubOut}
          </button>
        </p>
      )}
    </>
  );
}
