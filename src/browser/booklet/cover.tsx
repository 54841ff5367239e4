import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { bookmarkColours, bookmarkPatterns, type Bookmark } from '../../core/booklet/booklet.ts';
import { Choices } from './choices.tsx';
import { useKeeper, type Desk } from './desk.ts';
import { DrawingAgain } from './drawing-again.tsx';
import { GrownUp } from './grown-up.tsx';
import type { Reader } from './kept-booklet.ts';

type Pattern = (typeof bookmarkPatterns)[number];
type Colour = (typeof bookmarkColours)[number];
type Flow = 'each' | 'end';

interface Props {
  readonly desk: Desk;
  /** Called when a booklet is open and the first page can be turned. */
  readonly onOpen: () => void;
}

/** The first page: whose booklet it is, by bookmark; a new one; and what is for the grown-up. */
export function CoverPage({ desk, onOpen }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen;
  const [readers, setReaders] = useState<readonly Reader[]>();
  const [beginning, setBeginning] = useState(false);
  const look = () => void keeper.readers().then(setReaders);
  useEffect(look, [keeper.booklet === undefined]);
  const open = (bookmark: Bookmark, flow?: Flow) => {
    void keeper.open(bookmark).then(async () => {
      if (flow) keeper.change({ flow });
      await keeper.saveNow();
      setBeginning(false);
      onOpen();
    });
  };
  if (!readers) return <p class="note" />;
  if (keeper.booklet)
    return (
      <>
        <Mark bookmark={keeper.booklet.bookmark} words={say.yours(keeper.booklet.bookmark.pattern, keeper.booklet.bookmark.colour)} />
        <FlowChoice desk={desk} flow={keeper.settings.flow} onFlow={(flow) => keeper.change({ flow })} />
        <p class="button-row">
          <button
            type="button"
            class="quiet"
            onClick={() =>
              void keeper
                .saveNow()
                .then(() => keeper.letGo())
                .then(look)
            }
          >
            {say.change}
          </button>
        </p>
        <GrownUp desk={desk} onErased={look} />
      </>
    );
  return (
    <>
      {keeper.erasedElsewhere && <p class="note">{say.goneElsewhere}</p>}
      {readers.length > 0 && (
        <section class="readers" aria-labelledby="whose">
          <h2 id="whose">{say.whose}</h2>
          <ul>
            {readers.map(({ bookmark, answers }) => (
              <li>
                <button type="button" class="reader" onClick={() => open(bookmark)}>
                  <Mark bookmark={bookmark} words={say.bookmark(bookmark.pattern, bookmark.colour)} note={say.openIt(answers)} />
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      {readers.length > 0 && !beginning ? (
        <p class="button-row">
          <button type="button" class="page-button" onClick={() => setBeginning(true)}>
            {say.another}
          </button>
        </p>
      ) : (
        <NewBooklet desk={desk} readers={readers} onBegin={open} />
      )}
      <GrownUp desk={desk} onErased={look} />
    </>
  );
}

function NewBooklet({ desk, readers, onBegin }: { readonly desk: Desk; readonly readers: readonly Reader[]; readonly onBegin: (bookmark: Bookmark, flow: Flow) => void }): JSX.Element {
  const say = desk.words.screen;
  const isTaken = (bookmark: Bookmark) => readers.some((each) => each.bookmark.pattern === bookmark.pattern && each.bookmark.colour === bookmark.colour);
  // A bookmark that nobody has here is chosen already, so that nothing must be filled in.
  const [free] = useState(() =>
    bookmarkPatterns
      .flatMap((pattern, index) => bookmarkColours.map((_, step) => ({ pattern, colour: bookmarkColours[(index + step) % bookmarkColours.length] ?? 'red' })))
      .find((each) => !isTaken(each)),
  );
  const [pattern, setPattern] = useState<Pattern>(free?.pattern ?? 'waves');
  const [colour, setColour] = useState<Colour>(free?.colour ?? 'red');
  const [flow, setFlow] = useState<Flow>(desk.keeper.settings.flow);
  return (
    <section class="new-booklet" aria-labelledby="new-booklet">
      <h2 id="new-booklet">{say.choose}</h2>
      <p class="note">{say.chooseNote}</p>
      <Choices
        legend={say.pattern}
        group="pattern"
        kind={`bookmark-choices in-${colour}`}
        chosen={pattern}
        choices={bookmarkPatterns.map((value) => ({
          value,
          name: (
            <>
              <DrawingAgain like={bookmarkOf(value)} />
              {desk.words.bookmarks[value]}
            </>
          ),
        }))}
        onChoose={setPattern}
      />
      <Choices
        legend={say.colour}
        group="colour"
        kind="bookmark-choices"
        chosen={colour}
        choices={bookmarkColours.map((value) => ({
          value,
          name: (
            <>
              <span class={`in-${value}`}>
                <DrawingAgain like={bookmarkOf(pattern)} />
              </span>
              {say.colours[value]}
            </>
          ),
        }))}
        onChoose={setColour}
      />
      {isTaken({ pattern, colour }) && (
        <p class="note" role="status">
          {say.taken}
        </p>
      )}
      <FlowChoice desk={desk} flow={flow} onFlow={setFlow} />
      <p class="button-row">
        <button type="button" class="page-button main-button" onClick={() => onBegin({ pattern, colour }, flow)}>
          {say.begin}
        </button>
      </p>
    </section>
  );
}

function FlowChoice({ desk, flow, onFlow }: { readonly desk: Desk; readonly flow: Flow; readonly onFlow: (flow: Flow) => void }): JSX.Element {
  const say = desk.words.screen;
  return <Choices legend={say.when} group="flow" chosen={flow} choices={(['each', 'end'] as const).map((value) => ({ value, name: say.flows[value] }))} onChoose={onFlow} />;
}

/** Where the cover for paper shows a bookmark with a pattern. */
const bookmarkOf = (pattern: Pattern) => `[data-bookmark="${pattern}"] svg`;

/** A bookmark in its colour, and its words. A pattern of a later version is said in words alone. */
function Mark({ bookmark, words, note }: { readonly bookmark: Bookmark; readonly words: string; readonly note?: string }): JSX.Element {
  const pattern = bookmarkPatterns.find((each) => each === bookmark.pattern);
  return (
    <span class={`my-mark in-${bookmark.colour}`}>
      {pattern && <DrawingAgain like={bookmarkOf(pattern)} />}
      <span>
        <span class="mark-name">{words}</span>
        {note !== undefined && <span class="note">{note}</span>}
      </span>
    </span>
  );
}
