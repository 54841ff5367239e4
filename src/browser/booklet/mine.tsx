import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { entriesOf, isEmpty } from '../../core/booklet/booklet.ts';
import { useKeeper, type WholeDesk } from './desk.ts';
import { bookletFile, canShare, saveFile, share } from './hand-over.ts';
import { KeptAnswer } from './kept-answer.tsx';
import { isLasting } from './lasting.ts';
import { ReadBack } from './read-back.tsx';

export { KeptAnswers } from './kept-sheets.tsx';

/** My page of answers: all that is kept, as a small booklet, and the ways in which it can leave the device. */
export function Mine({ desk }: { readonly desk: WholeDesk }): JSX.Element {
  useKeeper(desk);
  const { keeper, words, data } = desk;
  const { booklet } = keeper;
  const say = words.screen.mine;
  const sheets = [...data.stops.map(({ id, number, ask }) => ({ of: id, number, ask })), ...data.atNoStop.map(({ of, ask }) => ({ of, number: undefined, ask }))];
  const known = new Set(sheets.map(({ of }) => of));
  // Answers to a stop that the pack no longer has: kept, with the question as it was asked.
  const others = [...new Set(booklet?.entries.map(({ to }) => to))]
    .filter((to) => !known.has(to))
    .map((of) => ({ of, number: undefined, ask: booklet?.prompts.find((each) => each.of === of)?.ask ?? of }));
  const answered = [...sheets, ...others].flatMap((sheet) => {
    const entries = booklet ? entriesOf(booklet, sheet.of).filter(({ value }) => !isEmpty(value)) : [];
    return entries.length > 0 ? [{ ...sheet, entries }] : [];
  });
  return (
    <>
      <p class="note">{answered.length > 0 ? say.note : say.none}</p>
      <ol class="my-answers">
        {answered.map(({ of, number, ask, entries }) => (
          <li>
            <h3>{ask}</h3>
            {entries.map((entry) => (
              <KeptAnswer desk={desk} entry={entry} key={`${entry.writer} ${String(entry.count)}`} />
            ))}
            {number !== undefined && (
              <p>
                <a class="onward" href={`#stop-${of}`}>
                  {say.to(number)}
                </a>
              </p>
            )}
          </li>
        ))}
      </ol>
      {booklet && <HandOver desk={desk} />}
    </>
  );
}

function HandOver({ desk }: { readonly desk: WholeDesk }): JSX.Element {
  const { keeper, words } = desk;
  const say = words.screen.mine;
  const [told, setTold] = useState('');
  const [lasting, setLasting] = useState<boolean>();
  useEffect(() => void isLasting().then(setLasting), []);
  const [sharing] = useState(() => canShare(new File(['x'], 'x.booklet.html', { type: 'text/html' })));
  const make = () => keeper.booklet && bookletFile(keeper.booklet, desk);
  const save = () => {
    const file = make();
    if (!file) return;
    saveFile(file);
    setTold(say.saved(file.name));
  };
  const handOn = () => {
    const file = make();
    if (file) void share(file).then((done) => setTold(done ? '' : say.shareFailed));
  };
  return (
    <section class="hand-over" aria-labelledby="hand-over">
      <h3 id="hand-over">{say.hand}</h3>
      <p class="note">
        {say.handNote} {lasting === undefined ? '' : lasting ? say.stays : say.mayGo}
      </p>
      <p class="button-row">
        <button type="button" class="page-button" onClick={save}>
          {say.save}
        </button>
        <button type="button" class="page-button" onClick={() => print()}>
          {say.print}
        </button>
        {sharing && (
          <button type="button" class="page-button" onClick={handOn}>
            {say.share}
          </button>
        )}
      </p>
      <p role="status" class="note">
        {told}
      </p>
      <ReadBack desk={desk} />
    </section>
  );
}
