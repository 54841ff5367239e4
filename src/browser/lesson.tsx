import { render } from 'preact';
import { Fit, Remedies } from '../../layouts/parts/lesson-fit.tsx';
import { Minutes } from '../../layouts/parts/lesson-minutes.tsx';
import { Rest, Run, type Card } from '../../layouts/parts/lesson-run.tsx';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import type { Remedy } from '../core/plan/short-lesson.ts';
import { choicesFrom, queryOf, type Choices } from '../outputs/lesson-choices.ts';
import type { LessonData } from '../outputs/lesson-data.ts';
import { sheetOf } from '../outputs/lesson-sheet.ts';
import { ChoicesForm, Narrowed } from './lesson-choices.tsx';
import { FollowAlong } from './follow-along.tsx';
import { KeptLessons } from './kept-lessons.tsx';
import { newProgress, type Progress } from './progress.ts';
import { WeekFile } from './week-file.tsx';

/**
 * The lesson page in the browser: the sheet that the server wrote, worked out anew for what is chosen.
 * It asks the network for nothing; what is chosen stands in the page's address and nowhere else.
 */
function start(data: LessonData, say: LessonPhrases): void {
  const card = cardsOnThePage();
  const minutes = document.querySelector('section.minutes');
  const run = document.querySelector('section.run');
  if (!minutes || !run) return;
  const rest = sectionAfter(run, 'rest', 'rest');
  const week = document.querySelector('section.week');
  const past = sectionAfter(week ?? rest, 'past', 'past');
  const dialog = document.body.appendChild(document.createElement('div'));
  document.documentElement.classList.add('live');

  let choices = choicesFrom(location.search, data);
  let progress: Progress | undefined;

  const choose = (change: Partial<Choices>): void => {
    choices = { ...choices, ...change };
    history.replaceState(history.state, '', `${location.pathname}${queryOf(choices, data)}${location.hash}`);
    show();
  };
  const follow = (): void => {
    // Pictures that wait until they are scrolled to would be missing where the network ends at the classroom's door.
    for (const picture of run.querySelectorAll('img')) picture.loading = 'eager';
    const opener = document.activeElement;
    const closed = (): void => {
      render(null, dialog);
      show();
      if (opener instanceof HTMLElement) opener.focus();
    };
    progress ??= newProgress(sheetOf(data, choices));
    render(<FollowAlong data={data} progress={progress} say={say} card={card} changed={(now) => (progress = now)} closed={closed} keptOne={showPast} />, dialog);
  };
  const show = (): void => {
    const sheet = sheetOf(data, choices);
    const parts = { data, sheet, say, card };
    // A lesson under way is gone on with; one that has not begun, or is over, is made anew from what is chosen.
    if (progress && progress.phase !== 'during') progress = undefined;
    render(
      <Minutes {...parts}>
        <ChoicesForm data={data} choices={choices} say={say} choose={choose} />
        <Fit {...parts} />
        <Remedies {...parts} choose={(remedy) => choose(changeFor(remedy))} />
        <Narrowed data={data} choices={choices} say={say} choose={choose} />
        <p class="follow-open">
          <button type="button" class="button" onClick={follow}>
            {progress ? say.follow.goOn : say.follow.open}
          </button>{' '}
          <span class="note">{say.follow.openNote}</span>
        </p>
      </Minutes>,
      minutes,
    );
    render(<Run {...parts} />, run);
    rest.hidden = sheet.rest.length === 0;
    render(<Rest {...parts} />, rest);
  };
  const showPast = (): void => {
    render(<KeptLessons data={data} say={say} section={past} />, past);
  };

  show();
  showPast();
  if (week) {
    const file = week.appendChild(document.createElement('div'));
    render(<WeekFile data={data} say={say} start={() => choices.start} />, file);
  }
}

/** What a remedy asks to be chosen. */
function changeFor(remedy: Remedy): Partial<Choices> {
  switch (remedy.kind) {
    case 'shorter opening and closing':
      return { shortEnds: true };
    case 'read a part':
      return { to: remedy.to };
    case 'two days':
      return { to: remedy.firstDayTo };
  }
}

/** The words on each stop's card, as the server wrote them. They are read once, before anything is moved. */
function cardsOnThePage(): Card {
  const cards = new Map<string, { ask: readonly Node[]; help: readonly Node[] }>();
  for (const stop of document.querySelectorAll<HTMLElement>('[data-stop]')) {
    const part = (name: string): readonly Node[] => [...(stop.querySelector(`[data-card="${name}"]`)?.childNodes ?? [])].map((each) => each.cloneNode(true));
    cards.set(stop.dataset['stop'] ?? '', { ask: part('ask'), help: part('help') });
  }
  return ({ id }) => {
    const { ask = [], help = [] } = cards.get(id) ?? {};
    return { ask: <div data-card="ask" ref={filledWith(ask)} />, help: <div data-card="help" ref={filledWith(help)} /> };
  };
}

/** What each place of a card was filled with, so that a card that stays is left as it is: a part of it may be open. */
const filled = new WeakMap<Element, readonly Node[]>();

/** Copies, since a stop is shown in the run and again while the lesson is followed. */
function filledWith(nodes: readonly Node[]): (place: Element | null) => void {
  return (place) => {
    if (!place || filled.get(place) === nodes) return;
    filled.set(place, nodes);
    place.replaceChildren(...nodes.map((each) => each.cloneNode(true)));
  };
}

/** The page's section of a name, or a new one behind another. */
function sectionAfter(before: Element, name: string, heading: string): HTMLElement {
  const there = document.querySelector<HTMLElement>(`section.${name}`);
  if (there) return there;
  const section = document.createElement('section');
  section.className = name;
  section.setAttribute('aria-labelledby', heading);
  section.hidden = true;
  before.after(section);
  return section;
}

/** Begins with the data that the page holds, in the page's language. */
export function startLesson(say: LessonPhrases): void {
  const island = document.getElementById('lesson-data');
  if (island) start(JSON.parse(island.textContent) as LessonData, say);
}
