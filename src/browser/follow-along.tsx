import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { haveReady, timingInWords, type Card } from '../../layouts/parts/lesson-run.tsx';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import { clockOf } from '../core/plan/clock.ts';
import { inMinutes, measuredFrom, standingAt, type Standing, type Step } from '../core/plan/pace.ts';
import type { LessonData } from '../outputs/lesson-data.ts';
import { limitsOf, numberOf, secondsIn, stepsWith, type Sheet } from '../outputs/lesson-sheet.ts';
import { AfterLesson } from './after-lesson.tsx';
import type { Progress } from './progress.ts';
import { keepAwake } from './wake-lock.ts';

interface Props {
  readonly data: LessonData;
  readonly progress: Progress;
  readonly say: LessonPhrases;
  readonly card: Card;
  readonly changed: (progress: Progress) => void;
  readonly closed: () => void;
  /** Told when the lesson has been kept on the device. */
  readonly keptOne: () => void;
}

/** The lesson one step at a time, over the whole screen: large words, a quiet line about the pace, no sound. */
export function FollowAlong({ data, progress: first, say, card, changed, closed, keptOne }: Props): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const [progress, setProgress] = useState(first);
  const [now, setNow] = useState(() => Date.now());
  const { phase, sheet, key } = progress;
  const steps = stepsWith(sheet, progress.asked);
  const at = steps.findIndex((step) => step.key === key);
  const seconds = (now - progress.origin) / 1000;

  useLayoutEffect(() => dialog.current?.showModal(), []);
  useLayoutEffect(() => heading.current?.focus(), [phase, key]);
  useEffect(() => {
    if (phase !== 'during') return undefined;
    const tick = setInterval(() => setNow(Date.now()), 1000);
    const sleep = keepAwake();
    return () => {
      clearInterval(tick);
      sleep();
    };
  }, [phase]);

  const change = (more: Partial<Progress>): void => {
    const next = { ...progress, ...more };
    setProgress(next);
    changed(next);
  };
  const begin = (): void => {
    const moment = Date.now();
    const origin = moment - secondsSince(sheet, moment) * 1000;
    const key = steps[0]?.key ?? '';
    setNow(moment);
    change({ phase: 'during', origin, key, entered: new Map([[key, (moment - origin) / 1000]]) });
  };
  const next = (): void => {
    const moment = Date.now();
    const key = steps[at + 1]?.key ?? 'end';
    setNow(moment);
    change({ phase: key === 'end' ? 'after' : 'during', key, entered: new Map([...progress.entered, [key, (moment - progress.origin) / 1000]]) });
  };
  const back = (): void => {
    const before = steps[at - 1];
    if (before) change({ key: before.key });
  };
  const keys = (event: KeyboardEvent): void => {
    if (phase !== 'during' || event.altKey || event.ctrlKey || event.metaKey || (event.target as HTMLElement).closest('input')) return;
    const onControl = (event.target as HTMLElement).closest('button, summary, a') !== null;
    // Onward is where reading goes on: to the left in a language written from right to left.
    const [onward, backward] = document.documentElement.dir === 'rtl' ? ['ArrowLeft', 'ArrowRight'] : ['ArrowRight', 'ArrowLeft'];
    if (event.key === onward || (event.key === ' ' && !onControl)) next();
    else if (event.key === backward) back();
    else return;
    event.preventDefault();
  };

  return (
    <dialog class="follow" ref={dialog} aria-labelledby="follow-step" onClose={closed} onKeyDown={keys}>
      <div class="follow-page">
        <p class="follow-head">
          <span>{phase === 'during' ? say.follow.stepOf(at + 1, steps.length) : say.follow.name}</span>
          <button type="button" class="word-button" onClick={() => dialog.current?.close()}>
            {say.follow.close}
          </button>
        </p>
        {phase === 'before' && <Before sheet={sheet} say={say} heading={heading} />}
        {phase === 'during' && steps[at] && (
          <>
            <PaceLine
              data={data}
              standing={standingAt(steps, { at, entered: progress.entered.get(key) ?? 0, now: seconds }, limitsOf(sheet))}
              origin={progress.origin}
              now={now}
              say={say}
              without={(ids) => change({ asked: new Set([...progress.asked].filter((id) => !ids.includes(id))) })}
              withMore={(ids) => change({ asked: new Set([...progress.asked, ...ids]) })}
            />
            <Now data={data} sheet={sheet} step={steps[at]} say={say} card={card} heading={heading} />
            <Tally progress={progress} say={say} change={change} />
          </>
        )}
        {phase === 'after' && <AfterLesson data={data} progress={progress} steps={steps} say={say} heading={heading} keptOne={keptOne} />}
      </div>
      <p class="follow-foot">
        {phase === 'before' && (
          <button type="button" class="button" onClick={begin}>
            {say.follow.begin}
          </button>
        )}
        {phase === 'during' && (
          <>
            <button type="button" class="button quiet" disabled={at <= 0} onClick={back}>
              {say.follow.back}
            </button>
            <button type="button" class="button" onClick={next}>
              {at < steps.length - 1 ? say.follow.next : say.follow.finish}
            </button>
          </>
        )}
        {phase === 'after' && (
          <button type="button" class="button" onClick={() => dialog.current?.close()}>
            {say.follow.close}
          </button>
        )}
      </p>
    </dialog>
  );
}

/** Seconds of the lesson that are gone already when it begins at this moment. */
function secondsSince(sheet: Sheet, moment: number): number {
  const now = secondOfDay(moment);
  return now - measuredFrom(sheet.choices.start, now, sheet.choices.minutes * 60);
}

function secondOfDay(moment: number): number {
  const date = new Date(moment);
  return date.getHours() * 3600 + date.getMinutes() * 60 + date.getSeconds();
}

interface HeadProps {
  readonly sheet: Sheet;
  readonly say: LessonPhrases;
  readonly heading: { current: HTMLHeadingElement | null };
}

function Before({ sheet, say, heading }: HeadProps): JSX.Element {
  const { start, minutes } = sheet.choices;
  return (
    <>
      <h2 id="follow-step" ref={heading} tabIndex={-1}>
        {sheet.purpose}
      </h2>
      <p>{haveReady(sheet, say)}</p>
      <p>{start === undefined ? say.follow.before(minutes) : say.follow.beforeClock(clockOf(start), clockOf(start + minutes * 60))}</p>
      <p class="note keys">{say.follow.keys}</p>
    </>
  );
}

interface PaceProps {
  readonly data: LessonData;
  readonly standing: Standing;
  readonly origin: number;
  readonly now: number;
  readonly say: LessonPhrases;
  readonly without: (ids: readonly string[]) => void;
  readonly withMore: (ids: readonly string[]) => void;
}

/** The clock, and in one line whether there is time. It changes with the minutes and is said politely. */
function PaceLine({ data, standing, origin, now, say, without, withMore }: PaceProps): JSX.Element {
  const { state, minutes } = inMinutes(standing.late);
  const numbers = (ids: readonly string[]) => ids.map((id) => numberOf(data, id)).sort((a, b) => a - b);
  const { leaveOut, takeIn, over, shortClosingDoes } = standing;
  const tooMuch = leaveOut.length > 0 || over > 0;
  const pace = state === 'behind' ? say.follow.behind(minutes) : tooMuch ? say.follow.tooMuch : state === 'ahead' ? say.follow.ahead(minutes) : say.follow.onTime;
  const advice = leaveOut.length > 0 ? say.follow.leaveOut(numbers(leaveOut)) : takeIn.length > 0 ? say.follow.roomFor(numbers(takeIn)) : '';
  const besides = over > 0 ? (shortClosingDoes ? say.follow.shortClosing : (leaveOut.length > 0 ? say.follow.over : say.follow.overAlone)(Math.max(1, Math.round(over / 60)))) : '';
  const told = `${advice === '' ? pace : `${pace}: ${advice}`}. ${besides}`.trim();
  return (
    <div class="pace">
      <p>
        <span class="clock">{clockOf(secondOfDay(now))}</span> <span role="status">{told}</span> <span class="note">{say.follow.ends(clockOf(secondOfDay(origin) + standing.ends))}</span>
      </p>
      {leaveOut.length > 0 && (
        <button type="button" class="word-button" onClick={() => without(leaveOut)}>
          {say.follow.leaveThem(leaveOut.length)}
        </button>
      )}
      {takeIn.length > 0 && (
        <button type="button" class="word-button" onClick={() => withMore(takeIn)}>
          {say.follow.askThem(takeIn.length)}
        </button>
      )}
    </div>
  );
}

/** What to do now. */
function Now({ data, sheet, step, say, card, heading }: HeadProps & { readonly data: LessonData; readonly step: Step; readonly card: Card }): JSX.Element {
  const stop = data.stops.find((each) => each.id === step.stop);
  if (!stop) {
    const toTheEnd = step.reading > 0 ? [sheet.choices.to === data.book.openings ? say.toTheEnd : say.readTo(sheet.choices.to)] : [];
    return (
      <>
        <h2 id="follow-step" ref={heading} tabIndex={-1}>
          {step.key === 'opening' ? say.openingPart : say.closingPart}
        </h2>
        {(step.key === 'opening' ? [say.begin] : [...toTheEnd, say.close]).map((text) => (
          <p class="say-words">{text}</p>
        ))}
      </>
    );
  }
  const { ask, help } = card(stop);
  return (
    <article class="follow-stop" key={stop.id}>
      <h2 id="follow-step" ref={heading} tabIndex={-1}>
        {say.stop(numberOf(data, stop.id))}
      </h2>
      {ask}
      <p class="timing">{timingInWords(secondsIn(sheet, stop), sheet.choices.setting === 'recording', say)}</p>
      {help}
    </article>
  );
}

/** How many have spoken and how many have not: two numbers, and nobody's name. */
function Tally({ progress, say, change }: { readonly progress: Progress; readonly say: LessonPhrases; readonly change: (more: Partial<Progress>) => void }): JSX.Element {
  const { children, heard } = progress;
  return (
    <section class="tally" aria-labelledby="tally">
      <h3 id="tally">{say.follow.tally}</h3>
      <p role="status">{say.follow.heard(heard, children === undefined ? undefined : Math.max(0, children - heard))}</p>
      <p class="tally-buttons">
        <button type="button" class="button quiet" disabled={heard >= (children ?? 99)} onClick={() => change({ heard: heard + 1 })}>
          {say.follow.oneMore}
        </button>
        <button type="button" class="button quiet" disabled={heard === 0} onClick={() => change({ heard: heard - 1 })}>
          {say.follow.oneLess}
        </button>
      </p>
      <p class="field">
        <label for="tally-children">{say.follow.children}</label>
        <input
          id="tally-children"
          type="number"
          inputMode="numeric"
          min={1}
          max={99}
          value={children ?? ''}
          onInput={(event) => {
            const number = event.currentTarget.valueAsNumber;
            change({ children: number >= 1 && number <= 99 ? Math.round(number) : undefined });
          }}
        />
      </p>
      <p class="note">{say.follow.tallyNote}</p>
    </section>
  );
}
