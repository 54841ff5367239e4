import { render } from 'preact';
import type { Phrases } from '../core/languages/en.ts';
import type { BookletData } from '../outputs/booklet-data.ts';
import { promptsOf } from '../outputs/booklet-prompts.ts';
import { Answering } from './booklet/answering.tsx';
import { CoverPage } from './booklet/cover.tsx';
import type { Desk, WholeDesk } from './booklet/desk.ts';
import { KeepingLine } from './booklet/keeping-line.tsx';
import { Keeper } from './booklet/keeper.ts';
import { Late } from './booklet/late.tsx';
import { forgetOpen, openBefore, rememberOpen } from './booklet/open-booklet.ts';
import { fetchParts, parts } from './booklet/parts.ts';
import { ReadFirst } from './booklet/read-first.tsx';
import { Turning } from './booklet/turning.tsx';

/**
 * The booklet on the screen. The page is whole without this: paper sheets, one after the other. This turns
 * them into pages of a small book, shows one at a time, and puts a place to answer on each. What a child keeps there is
 * put back onto the sheets when they are printed.
 */

interface Words {
  readonly first: () => Promise<Desk['words']>;
  readonly all: () => Promise<Phrases['booklet']>;
}

const english: Words = {
  first: async () => (await import('../core/languages/en-booklet-screen.ts')).enBookletScreen,
  all: async () => (await import('../core/languages/en-booklet.ts')).enBooklet,
};
/** Phrases by language; a language that is not here is shown in English, as everywhere. */
const phrases: Readonly<Record<string, Words>> = {
  es: {
    first: async () => (await import('../core/languages/es-booklet-screen.ts')).esBookletScreen,
    all: async () => (await import('../core/languages/es-booklet.ts')).esBooklet,
  },
  ar: {
    first: async () => (await import('../core/languages/ar-booklet-screen.ts')).arBookletScreen,
    all: async () => (await import('./booklet/phrases-ar.ts')).phrases,
  },
};

const main = document.querySelector('main');
const island = document.getElementById('booklet-data');
if (main && island) void start(main, JSON.parse(island.textContent) as BookletData);

async function start(main: HTMLElement, data: BookletData): Promise<void> {
  const said = phrases[data.language.split('-', 1)[0] ?? ''] ?? english;
  const words = await said.first();
  const keeper = new Keeper({ slug: data.slug, language: data.language, title: data.title }, promptsOf(data));
  const aside = added(main, 'p', 'unseen');
  aside.setAttribute('role', 'status');
  const desk: Desk = { data, words, allWords: said.all, keeper, turnTo: (page) => turnTo(page), announce: (text) => (aside.textContent = text) };

  // The pages: the paper's own, and two that are only on the screen.
  const cover = main.querySelector<HTMLElement>('.cover');
  // Those about the whole book are sheets too.
  const sheets = [...main.querySelectorAll<HTMLElement>('.sheet, .rating')];
  const readFirst = document.createElement('section');
  const mine = document.createElement('section');
  if (!cover) return;
  cover.after(readFirst);
  (sheets.at(-1)?.closest('.rating, .sheets') ?? readFirst).after(mine);
  readFirst.className = 'read-first screen-page screen-room';
  mine.className = 'my-page screen-page screen-room';
  mine.setAttribute('aria-labelledby', 'my-page-title');
  readFirst.setAttribute('aria-labelledby', 'read-first-title');

  const pages = [cover, readFirst, mine, ...sheets];
  const runningMark = added(cover, 'p', 'running-mark');
  const coverRoom = added(cover, 'div', 'screen-room');
  const rooms = sheets.map((sheet) => {
    const to = sheet.dataset['stop'] ?? '';
    return { to, stop: data.stops.find(({ id }) => id === to), sheet, room: added(sheet, 'div', 'screen-room'), paper: added(sheet, 'div', 'for-print') };
  });
  const turning = added(main, 'div', 'screen-room turning-room');
  // Right below the page that is open; what is about the whole book comes after it.
  mine.after(turning);

  const pageNames = (): readonly string[] => ['cover', ...(keeper.settings.flow === 'end' ? ['read-first'] : []), ...sheets.map(({ id }) => id), 'my-page'];
  const elementOf = (page: string): HTMLElement | undefined => (page === 'cover' ? cover : page === 'read-first' ? readFirst : page === 'my-page' ? mine : sheets.find((sheet) => sheet.id === page));

  let here = 'cover';
  /** The page that an address asked for before a booklet was open. */
  let wanted: string | undefined;

  function turnTo(page: string): void {
    if (location.hash !== `#${page}`) history.pushState(null, '', `#${page}`);
    show(page, true);
  }

  function show(page: string, turned: boolean): void {
    const open = keeper.booklet !== undefined;
    const known = pageNames().includes(page);
    if (known && !open && page !== 'cover') wanted = page;
    here = open && known ? page : 'cover';
    for (const each of pages) each.classList.toggle('is-open', each === elementOf(here));
    main.classList.toggle('answers-at-end', keeper.settings.flow === 'end');
    for (const mark of document.querySelectorAll('.ribbon a')) {
      if (mark.getAttribute('href') === `#${here}`) mark.setAttribute('aria-current', 'page');
      else mark.removeAttribute('aria-current');
    }
    draw();
    if (!turned) return;
    // A turn of its own, so that a slow phone shows the page first.
    setTimeout(() => {
      const heading = elementOf(here)?.querySelector<HTMLElement>('h1, h2');
      heading?.setAttribute('tabindex', '-1');
      heading?.focus({ preventScroll: true });
      main.scrollIntoView({ block: 'start' });
    });
  }

  function draw(): void {
    const { booklet } = keeper;
    runningMark.textContent = booklet ? words.screen.yours(booklet.bookmark.pattern, booklet.bookmark.colour) : '';
    runningMark.className = `running-mark in-${booklet?.bookmark.colour ?? 'red'}`;
    render(<CoverPage desk={desk} onOpen={opened} />, coverRoom);
    render(here === 'read-first' ? <ReadFirst desk={desk} /> : null, readFirst);
    for (const { to, stop, sheet, room } of rooms)
      render(here !== sheet.id ? null : stop ? <Answering desk={desk} stop={stop} key={booklet?.id} /> : <Late desk={desk} load={parts.whole} props={{ to }} key={booklet?.id} />, room);
    const title = (
      <h2 id="my-page-title" tabIndex={-1}>
        {words.screen.mine.title}
      </h2>
    );
    render(
      here === 'my-page' ? (
        <>
          {title}
          <Late desk={desk} load={parts.mine} props={{}} />
        </>
      ) : null,
      mine,
    );
    render(
      booklet ? (
        <>
          <KeepingLine desk={desk} here={here} />
          <Turning desk={desk} pages={pageNames()} here={here} />
        </>
      ) : null,
      turning,
    );
  }

  function opened(): void {
    const { booklet } = keeper;
    if (!booklet) return;
    rememberOpen(data, booklet.bookmark);
    turnTo(wanted ?? pageNames()[1] ?? 'cover');
    wanted = undefined;
    setTimeout(ready);
  }

  // On paper each answer stands on its own sheet; it is put there for the printer alone.
  let kept: { readonly Kept: Awaited<ReturnType<typeof parts.kept>>; readonly desk: WholeDesk } | undefined;
  function toPaper(printing: boolean): void {
    for (const { to, sheet, paper } of rooms) {
      const has = printing && keeper.booklet?.entries.some((entry) => entry.to === to) === true;
      sheet.classList.toggle('has-answer', has && kept !== undefined);
      render(has && kept ? <kept.Kept desk={kept.desk} to={to} /> : null, paper);
    }
  }
  function ready(): void {
    void Promise.all([parts.kept(), desk.allWords()]).then(([Kept, all]) => (kept = { Kept, desk: { ...desk, words: all } }));
    fetchParts();
  }

  let wasOpen = false;
  keeper.listen(() => {
    const open = keeper.booklet !== undefined;
    if (wasOpen && !open) {
      forgetOpen(data);
      history.replaceState(null, '', '#cover');
      show('cover', true);
    } else if (!wasOpen && open) draw();
    wasOpen = open;
  });
  addEventListener('popstate', () => show(location.hash.slice(1) || 'cover', true));
  addEventListener('beforeprint', () => toPaper(true));
  addEventListener('afterprint', () => toPaper(false));
  matchMedia('print').addEventListener('change', ({ matches }) => toPaper(matches));

  const before = openBefore(data);
  if (before && (await keeper.readers()).some((each) => each.bookmark.pattern === before.pattern && each.bookmark.colour === before.colour)) {
    await keeper.open(before);
    ready();
  }
  main.classList.add('on-screen');
  // Read last: somebody may have gone to another page while the booklet was fetched.
  show(location.hash.slice(1) || 'cover', false);
}

function added(to: HTMLElement, tag: string, kind: string): HTMLElement {
  const made = document.createElement(tag);
  made.className = kind;
  to.append(made);
  return made;
}
