import type { ComponentChildren, JSX } from 'preact';
import type { LessonPhrases } from '../../src/core/languages/en-lesson.ts';
import { clockOf } from '../../src/core/plan/clock.ts';
import type { PlanStop } from '../../src/core/plan/plannable.ts';
import type { StopSeconds } from '../../src/core/plan/seconds.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { numberOf, secondsIn, type Sheet } from '../../src/outputs/lesson-sheet.ts';
import { clock } from './minutes.ts';

/**
 * What stands on a stop's card beside its place on the clock: what is said, and what helps.
 * The server writes it; the script takes it from the page as it is.
 */
export type Card = (stop: PlanStop) => { readonly ask: JSX.Element; readonly help: JSX.Element };

interface Props {
  readonly data: LessonData;
  readonly sheet: Sheet;
  readonly say: LessonPhrases;
  readonly card: Card;
}

/** The lesson from its opening to its closing, with a clock beside each step. */
export function Run({ data, sheet, say, card }: Props): JSX.Element {
  const { choices, rows } = sheet;
  const at = (seconds: number) => (choices.start === undefined ? clock(seconds) : clockOf(choices.start + seconds));
  const end = rows.at(-1)?.begins ?? 0;
  return (
    <>
      <h2 id="run-sheet">{say.runSheet}</h2>
      {sheet.purpose !== '' && <p class="purpose">{say.planFor(choices.reading, sheet.purpose)}</p>}
      <p class="have">{haveReady(sheet, say)}</p>
      <p class="note">{choices.start === undefined ? say.runNote : say.runNoteClock(at(0), at(end))}</p>
      <ol class="run-steps">
        {rows.map((row, index) => {
          switch (row.kind) {
            case 'opening':
              return (
                <Step key="opening" at={at(row.begins)} name={say.openingPart}>
                  {say.begin}
                </Step>
              );
            case 'closing':
              return (
                <Step key="closing" at={at(row.begins)} name={say.closingPart}>
                  {say.close}
                </Step>
              );
            case 'stop':
              return (
                <StopCard
                  key={row.stop.id}
                  stop={row.stop}
                  number={numberOf(data, row.stop.id)}
                  at={at(row.begins)}
                  seconds={secondsIn(sheet, row.stop)}
                  recording={choices.setting === 'recording'}
                  say={say}
                  card={card}
                />
              );
            case 'reading':
              // Before a stop, its own card says how far to read.
              return rows[index + 1]?.kind === 'stop' ? null : (
                <Step key="last" at={at(row.begins)} name={say.readingAloud}>
                  {row.to === data.book.openings ? say.toTheEnd : say.readTo(row.to)}
                </Step>
              );
            case 'end':
              return null;
          }
        })}
      </ol>
    </>
  );
}

/** The stops that this lesson leaves out, so that they can be read and chosen for another day. */
export function Rest({ data, sheet, say, card }: Props): JSX.Element | null {
  if (sheet.rest.length === 0) return null;
  return (
    <>
      <h2 id="rest">{say.rest}</h2>
      <p class="note">{say.restNote}</p>
      <ol class="run-steps">
        {sheet.rest.map((stop) => (
          <StopCard key={stop.id} stop={stop} number={numberOf(data, stop.id)} seconds={secondsIn(sheet, stop)} recording={sheet.choices.setting === 'recording'} say={say} card={card} />
        ))}
      </ol>
    </>
  );
}

function Step({ at, name, children }: { readonly at: string; readonly name: string; readonly children: ComponentChildren }): JSX.Element {
  return (
    <li class="run-step">
      <p class="clock">{at}</p>
      <div>
        <h3>{name}</h3>
        <p>{children}</p>
      </div>
    </li>
  );
}

interface CardProps {
  readonly stop: PlanStop;
  readonly number: number;
  /** The clock, where the stop is part of the lesson. */
  readonly at?: string;
  readonly seconds: StopSeconds;
  readonly recording: boolean;
  readonly say: LessonPhrases;
  readonly card: Card;
}

function StopCard({ stop, number, at, seconds, recording, say, card }: CardProps): JSX.Element {
  const { ask, help } = card(stop);
  return (
    <li class="run-step stop" id={`stop-${stop.id}`} data-stop={stop.id}>
      {at === undefined ? <p class="clock numeral">{number}</p> : <p class="clock">{at}</p>}
      <div>
        <h3>{say.stop(number)}</h3>
        {ask}
        <p class="timing">{timingInWords(seconds, recording, say)}</p>
        {help}
      </div>
    </li>
  );
}

/** What has to lie there before the lesson begins: the book, and what its stops need. */
export function haveReady({ choices, stops }: Sheet, say: LessonPhrases): string {
  return say.have([choices.setting === 'recording' ? say.theRecording : say.theBook, ...new Set(stops.flatMap((stop) => stop.materials ?? []))]);
}

/** "Wait 5 seconds in silence. Give 45 seconds to do it. Hear two children, …" */
export function timingInWords(seconds: StopSeconds, recording: boolean, say: LessonPhrases): string {
  if (recording) return [say.wait(seconds.wait), say.hold].join(' ');
  return [say.wait(seconds.wait), seconds.task > 0 ? say.task(seconds.task) : '', say.shares(seconds.shares, seconds.secondWait)].filter((part) => part !== '').join(' ');
}
