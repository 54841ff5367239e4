import { render, type JSX } from 'preact';
import type { StackPack } from '../core/pack/stack-pack.ts';
import { packsAnswered } from '../classroom/stack.ts';
import { Desk, views, type StackWords, type ViewName } from './stack/desk.ts';
import { Agree } from './stack/agree.tsx';
import { Judge } from './stack/judge.tsx';
import { Select } from './stack/from-paper.tsx';
import { keepSoon, openKept } from './stack/keep.ts';
import { onPaper } from './stack/lazy.tsx';
import { Look } from './stack/look.tsx';
import { Pile } from './stack/pile.tsx';
import { TakeAway, TeacherPage } from './stack/take-away.tsx';
import { Tomorrow } from './stack/tomorrow.tsx';
import { Wall } from './stack/wall.tsx';
import { wallPage } from '../classroom/wall-page.ts';
import { filesIn, readFiles } from './stack/read-files.ts';

/** What the page carries for its script. */
interface Island extends Pick<StackWords, 'strengths' | 'comma'> {
  /** Questions, rubrics and models of the library's packs; none where the library is too large. */
  readonly packs: readonly StackPack[];
}

/**
 * The stack: the page on which a teacher looks through the booklets that came back. All of it happens on this device: once the page is
 * loaded it asks for nothing, and what is on the desk is gone with the window unless the teacher keeps it.
 */
export function startStack(words: Omit<StackWords, 'strengths' | 'comma'>): void {
  const room = document.getElementById('stack-room');
  const island = document.getElementById('stack-data');
  if (!room || !island) return;
  const { packs, strengths, comma } = JSON.parse(island.textContent) as Island;
  const about = document.getElementById('stack-about');
  for (const each of document.querySelectorAll<HTMLElement>('.needs-script')) each.hidden = true;
  const aside = document.createElement('p');
  aside.setAttribute('role', 'status');
  aside.className = 'stack-told';
  const inside = document.createElement('div');
  room.append(aside, inside);

  const viewNow = (): ViewName => views.find((each) => `#${each}` === location.hash) ?? 'pile';
  const turnTo = (view: ViewName): void => {
    if (location.hash !== `#${view}`) location.hash = view;
  };
  const announce = (text: string): void => {
    aside.textContent = text;
  };
  const desk = new Desk(packs, { ...words, strengths, comma }, document.documentElement.lang, announce, turnTo);

  let waiting = false;
  const draw = (): void => {
    const clear = packsAnswered(desk.state.stack).length === 0;
    if (about) about.hidden = !clear || viewNow() !== 'pile';
    render(<Page desk={desk} view={viewNow()} />, inside);
  };
  desk.listen(() => {
    keepSoon(desk);
    if (waiting) return;
    waiting = true;
    queueMicrotask(() => {
      waiting = false;
      draw();
    });
  });
  addEventListener('hashchange', () => {
    announce('');
    draw();
    const title = document.getElementById('view-title');
    title?.focus({ preventScroll: true });
    room.scrollIntoView({ block: 'start' });
  });
  const toPaper = (printing: boolean): void => {
    onPaper.now = printing;
    draw();
  };
  addEventListener('beforeprint', () => toPaper(true));
  addEventListener('afterprint', () => {
    desk.onPaper = 'leaf';
    toPaper(false);
  });
  // Files may be dropped anywhere: one that misses the blotter would otherwise be opened in place of the page.
  addEventListener('dragover', (event) => event.preventDefault());
  addEventListener('drop', (event) => {
    event.preventDefault();
    if (event.dataTransfer) void filesIn(event.dataTransfer.items).then((files) => (files.length > 0 ? readFiles(desk, files) : undefined));
  });
  draw();
  void openKept(desk);
}

function Page({ desk, view }: { readonly desk: Desk; readonly view: ViewName }): JSX.Element {
  const say = desk.words.stack;
  const offered = viewsOf(desk);
  const shown = offered.includes(view) ? view : 'pile';
  if (onPaper.now && desk.onPaper === 'teacher') return <TeacherPage desk={desk} />;
  if (onPaper.now && desk.onPaper === 'wall' && desk.here) return <Wall desk={desk} page={wallPage(desk.state.stack, desk.here.pack, desk.state.shared)} />;
  return (
    <div class={`stack-desk showing-${shown}`}>
      {offered.length > 1 && <Contents desk={desk} offered={offered} view={shown} />}
      <section class="stack-leaf" aria-labelledby="view-title">
        <h2 id="view-title" tabIndex={-1}>
          {say.views[shown]}
        </h2>
        {shown !== 'pile' && <WhichBook desk={desk} />}
        {shown === 'pile' && <Pile desk={desk} />}
        {shown === 'look' && <Look desk={desk} />}
        {shown === 'judge' && <Judge desk={desk} />}
        {shown === 'agree' && <Agree desk={desk} />}
        {shown === 'tomorrow' && <Tomorrow desk={desk} />}
        {shown === 'take' && <TakeAway desk={desk} />}
      </section>
    </div>
  );
}

/** A clear desk is a pile; a sheet alone is judged; with booklets there is all of it. */
function viewsOf({ state: { stack, sheet } }: Desk): readonly ViewName[] {
  if (packsAnswered(stack).length > 0) return views;
  return sheet === undefined ? ['pile'] : ['pile', 'judge'];
}

/** The parts of the page as a table of contents. */
function Contents({ desk, offered, view }: { readonly desk: Desk; readonly offered: readonly ViewName[]; readonly view: ViewName }): JSX.Element {
  const say = desk.words.stack;
  return (
    <nav class="stack-contents" aria-label={say.viewsName}>
      <ol>
        {offered.map((each) => (
          <li>
            <a href={`#${each}`} aria-current={each === view ? 'page' : undefined}>
              {say.views[each]}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** A stack may hold booklets of several books; all but the pile looks at one of them. */
function WhichBook({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const say = desk.words.stack;
  const { here } = desk;
  const books = packsAnswered(desk.state.stack);
  if (!here) return null;
  return (
    <>
      {books.length > 1 ? (
        <Select
          label={say.which}
          name="book"
          chosen={String(Math.min(desk.state.book, books.length - 1))}
          choices={books.map(({ title, booklets }, index) => [String(index), say.bookOf(title, booklets)])}
          onChoose={(chosen) => desk.set({ book: Number(chosen) })}
        />
      ) : (
        <p class="which-book">{say.bookOf(here.pack.title, here.booklets.length)}</p>
      )}
      {!here.known && <p class="note">{say.unknownPack}</p>}
    </>
  );
}
