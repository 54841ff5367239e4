import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { answersIn, joinTwins, twinsOf, withoutBooklet, type StackBooklet } from '../../classroom/stack.ts';
import { AskFirst } from '../booklet/ask-first.tsx';
import { Mark } from './answer.tsx';
import { clearDesk, type Desk } from './desk.ts';
import { FromPaper } from './from-paper.tsx';
import { eraseKept, startKeeping, stopKeeping } from './keep.ts';
import { readFiles } from './read-files.ts';

/** The pile: where files are put, what is on the desk, what is set aside, and whether any of it is kept. */
export function Pile({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.pile;
  const { stack, aside, reading, sheet, others, keeping } = desk.state;
  const [typing, setTyping] = useState(false);
  const typed = useRef<HTMLButtonElement>(null);
  const wasTyping = useRef(false);
  useEffect(() => {
    if (wasTyping.current && !typing) typed.current?.focus();
    wasTyping.current = typing;
  }, [typing]);
  return (
    <>
      <Blotter desk={desk} />
      {reading && (
        <p class="reading-line">
          <progress max={reading.of} value={reading.done} aria-label={say.reading(reading.done, reading.of)} /> {say.reading(reading.done, reading.of)}
        </p>
      )}
      <Twins desk={desk} />
      {stack.booklets.length > 0 && (
        <ul class="covers">
          {stack.booklets.map((each) => (
            <Cover key={each.booklet.id} desk={desk} one={each} />
          ))}
        </ul>
      )}
      {typing ? (
        <FromPaper desk={desk} onDone={() => setTyping(false)} />
      ) : (
        <p>
          <button ref={typed} type="button" class="quiet" onClick={() => setTyping(true)}>
            {say.typed}
          </button>
        </p>
      )}
      {aside.length > 0 && (
        <section class="set-aside" aria-labelledby="aside">
          <h3 id="aside">{say.aside}</h3>
          <p class="note">{say.asideNote}</p>
          <dl>
            {aside.map(({ file, reason }) => (
              <div>
                <dt>
                  <bdi>{file}</bdi>
                </dt>
                <dd>{reason === 'unread' ? say.unreadFile : desk.words.booklet.unreadable[reason]}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {/* A clear desk has nothing to keep and nothing to erase. */}
      {(stack.booklets.length > 0 || sheet !== undefined || others.length > 0 || keeping !== 'no') && <Keeping desk={desk} />}
    </>
  );
}

/** The blotter in the middle of the desk: files are laid on it, or chosen. */
function Blotter({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.pile;
  const folder = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // A folder field is no standard attribute of the types, and is one of the browsers.
    folder.current?.setAttribute('webkitdirectory', '');
  }, []);
  const chosen = (field: HTMLInputElement) => {
    const files = [...(field.files ?? [])];
    field.value = '';
    if (files.length > 0) void readFiles(desk, files);
  };
  return (
    <div class="blotter">
      <PileDrawing />
      <div class="blotter-fields">
        <p class="blotter-words">{say.drop}</p>
        <p class="file-field">
          <label for="stack-files">{say.files}</label>
          <input id="stack-files" type="file" multiple accept=".html,.htm,.json,text/html,application/json" aria-describedby="stack-files-note" onChange={(event) => chosen(event.currentTarget)} />
        </p>
        <p class="file-field folder-field">
          <label for="stack-folder">{say.folder}</label>
          <input id="stack-folder" ref={folder} type="file" multiple aria-describedby="stack-files-note" onChange={(event) => chosen(event.currentTarget)} />
        </p>
        <p class="note small" id="stack-files-note">
          {say.note}
        </p>
      </div>
    </div>
  );
}

/** One booklet on the desk: a cover with its bookmark hanging out. */
function Cover({ desk, one }: { readonly desk: Desk; readonly one: StackBooklet }): JSX.Element {
  const say = desk.words.stack.pile;
  const mark = desk.markOf(one);
  const many = new Set(desk.state.stack.booklets.map(({ booklet }) => `${booklet.pack.slug} ${booklet.pack.language}`)).size > 1;
  return (
    <li class="cover-of">
      <Mark bookmark={one.booklet.bookmark} />
      <div>
        <p class="cover-mark">{mark}</p>
        {many && <p class="note">{one.booklet.pack.title}</p>}
        <p class="note">
          {[say.answersIn(answersIn(one).length), ...(one.files.length === 0 ? [desk.words.stack.fromPaper] : []), ...(one.leftOut > 0 ? [say.leftOut(one.leftOut)] : [])].join(desk.words.comma)}
        </p>
        <button
          type="button"
          class="quiet"
          aria-label={say.off(mark)}
          onClick={(event) => {
            // The focus goes to the next cover, or to the heading when the last one is gone.
            const item = event.currentTarget.closest('li');
            const next = item?.nextElementSibling?.querySelector('button') ?? item?.previousElementSibling?.querySelector('button') ?? document.getElementById('view-title');
            desk.set({ stack: withoutBooklet(desk.state.stack, one) });
            desk.announce(say.takenOff);
            next?.focus();
          }}
        >
          {say.takeOff}
        </button>
      </div>
    </li>
  );
}

/** Booklets with one bookmark: a person says whether they are one child's. */
function Twins({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const say = desk.words.stack.pile;
  const { stack } = desk.state;
  const [apart, setApart] = useState<readonly string[]>([]);
  const pairs = stack.booklets.flatMap((second) => {
    const first = twinsOf(stack, second.booklet).find((each) => each.copy < second.copy);
    return first && !apart.includes(second.booklet.id) ? [{ first, second }] : [];
  });
  if (pairs.length === 0) return null;
  return (
    <section class="twins" aria-labelledby="twins">
      <h3 id="twins">{say.twins}</h3>
      <ul>
        {pairs.map(({ first, second }) => (
          <li key={second.booklet.id}>
            <p>{say.twinsNote(desk.words.booklet.screen.bookmark(first.booklet.bookmark.pattern, first.booklet.bookmark.colour))}</p>
            <p class="button-row">
              <button
                type="button"
                class="page-button"
                onClick={() => {
                  desk.set({ stack: joinTwins(stack, first, second) });
                  document.getElementById('view-title')?.focus();
                }}
              >
                {say.join}
              </button>
              <button
                type="button"
                class="page-button"
                onClick={() => {
                  setApart([...apart, second.booklet.id]);
                  document.getElementById('view-title')?.focus();
                }}
              >
                {say.apart}
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Keeping({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.pile.keep;
  const { keeping, stack } = desk.state;
  const told = keeping === 'yes' ? say.kept : keeping === 'full' ? say.full : keeping === 'blocked' ? say.cannot : say.not;
  return (
    <fieldset class="keeping">
      <legend>{say.legend}</legend>
      <p class="tick">
        <input
          id="keep-stack"
          type="checkbox"
          checked={keeping === 'yes'}
          aria-describedby="keep-note"
          onChange={(event) => void (event.currentTarget.checked ? startKeeping(desk) : stopKeeping(desk))}
        />
        <label for="keep-stack">{say.label}</label>
      </p>
      <p class="note small" id="keep-note">
        {say.note}
      </p>
      <p role="status">{stack.booklets.length > 0 || keeping !== 'no' ? told : ''}</p>
      <AskFirst
        label={say.erase}
        question={say.eraseAsk}
        yes={say.eraseYes}
        no={say.eraseNo}
        onYes={() => {
          void eraseKept();
          desk.set(clearDesk(desk.packs));
          desk.announce(say.erased);
          document.getElementById('view-title')?.focus();
        }}
      />
    </fieldset>
  );
}

/** A pile of little booklets, each a bit askew. */
function PileDrawing(): JSX.Element {
  return (
    <svg class="drawing pile-drawing" viewBox="0 0 200 92" aria-hidden="true" focusable="false" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linecap="round" stroke-linejoin="round">
      <path d="M12 84c58 1.6 118 1.3 177-.4" stroke-width="1" />
      <path d="M34 82.5c-1.2-4.6-.8-8.3.5-12.2 43 .9 86 .6 129-.5 1.6 4.2 1.8 8.2.3 12.4" />
      <path d="M40 73.8c39 .8 79 .6 118-.3M40 78.2c40 .9 79 .7 119-.2" stroke-width=".8" />
      <path d="M42 69.8c-1.4-4.5-1.2-8.6.3-12.6 41 1.4 85 1 125-1.6 1.6 4 1.9 8 .8 12.3" />
      <path d="M48 61c38 1.1 77 .8 114-1.4M48 65.2c38 1.1 77 .9 115-1.2" stroke-width=".8" />
      <path d="M36 57c-1-4.2-.7-8 .5-11.8 40-.4 81-1.9 121-4.4 1.5 3.9 1.8 8 .7 12" />
      <path d="M42 48.9c37-.5 75-1.8 112-4M42 53c38-.5 75-1.9 113-4.1" stroke-width=".8" />
      <path d="M46 45c-1-4-.8-7.6.3-11.2 38 .6 77 .2 116-1.2 1.4 3.6 1.6 7.3.7 10.6" />
      <path d="M52 37c36 .5 72 .2 107-1M52 41c36 .5 72 .3 108-.8" stroke-width=".8" />
      <path d="M55 33.8C63 25 72 17 82 9.8c24 1.6 49 1.7 74 .2-6.6 8-14.5 15.6-23 22.4" />
      <path d="M92 15c14 .7 28 .7 42 .1M86 20c14 .8 28 .8 42 .1" stroke-width=".8" />
      <path class="accent" d="M58 70.3l-.6 17 4-3.5 4.2 3.6-.2-17" />
      <path class="accent" d="M138 57.500l.4 15.500 3.6-3.400 4 3-.7-15.500" />
    </svg>
  );
}
