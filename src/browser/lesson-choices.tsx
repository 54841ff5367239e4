import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import { clockOf, secondsOfClock } from '../core/plan/clock.ts';
import { believablePace, paceFromPractice, settings, type Setting } from '../core/plan/seconds.ts';
import { minuteLimits, type Choices } from '../outputs/lesson-choices.ts';
import type { LessonData } from '../outputs/lesson-data.ts';

interface Props {
  readonly data: LessonData;
  readonly choices: Choices;
  readonly say: LessonPhrases;
  readonly choose: (change: Partial<Choices>) => void;
}

/** One line of choices: when it begins, how many minutes, which reading, with whom, at what pace. */
export function ChoicesForm({ data, choices, say, choose }: Props): JSX.Element {
  const { start } = choices;
  return (
    <form class="choices" aria-label={say.choices.name} onSubmit={(event) => event.preventDefault()}>
      <div class="choices-line">
        <Field name={say.choices.start}>
          {(id) => (
            <span class="with-button">
              <input id={id} type="time" value={start === undefined ? '' : clockOf(start).padStart(5, '0')} onInput={(event) => choose({ start: secondsOfClock(event.currentTarget.value) })} />
              <button type="button" class="word-button" onClick={() => choose({ start: minuteNow() })}>
                {say.choices.now}
              </button>
            </span>
          )}
        </Field>
        <NumberField name={say.choices.minutes} value={choices.minutes} {...minuteLimits} say={say} changed={(minutes) => choose({ minutes })} />
        {data.readings.length > 1 && (
          <Field name={say.choices.reading}>
            {(id) => (
              <select id={id} value={choices.reading} onChange={(event) => choose({ reading: Number(event.currentTarget.value) })}>
                {data.readings.map(({ reading }) => (
                  <option value={reading}>{reading}</option>
                ))}
              </select>
            )}
          </Field>
        )}
        <Field name={say.choices.with}>
          {(id) => (
            <select id={id} value={choices.setting} onChange={(event) => choose({ setting: event.currentTarget.value as Setting })}>
              {settings
                .filter((setting) => setting !== 'recording' || data.recording)
                .map((setting) => (
                  <option value={setting}>{say.choices.settings[setting]}</option>
                ))}
            </select>
          )}
        </Field>
      </div>
      <Pace data={data} choices={choices} say={say} choose={choose} />
      <p class="note">{say.choices.shared}</p>
    </form>
  );
}

function minuteNow(): number {
  const now = new Date();
  return now.getHours() * 3600 + now.getMinutes() * 60;
}

let fields = 0;
function useId(): string {
  return useState(() => `choice-${String(++fields)}`)[0];
}

function Field({ name, children }: { readonly name: string; readonly children: (id: string) => ComponentChildren }): JSX.Element {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{name}</label>
      {children(id)}
    </div>
  );
}

interface NumberProps {
  readonly name: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly say: LessonPhrases;
  readonly changed: (value: number) => void;
}

/** A whole number. While what stands there is none, the sheet stays as it is and the field says what it takes. */
function NumberField({ name, value, least, most, say, changed }: NumberProps): JSX.Element {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const wrong = typed !== undefined;
  const input = (text: string): void => {
    const number = Number(text);
    const good = /^\d{1,3}$/.test(text.trim()) && number >= least && number <= most;
    setTyped(good ? undefined : text);
    if (good) changed(number);
  };
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <input
        id={id}
        type="number"
        inputMode="numeric"
        min={least}
        max={most}
        step={1}
        value={typed ?? value}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(event) => input(event.currentTarget.value)}
        onBlur={() => typed === '' && setTyped(undefined)}
      />
      {wrong && (
        <span class="wrong" id={`${id}-wrong`}>
          {say.choices.range(least, most)}
        </span>
      )}
    </div>
  );
}

/** The reader's own pace: in words a minute, or from one reading of the whole book. */
function Pace({ data, choices, say, choose }: Props): JSX.Element {
  const [typed, setTyped] = useState('');
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(typed.trim());
  const pace = match ? paceFromPractice(data.book, Number(match[1]) * 60 + Number(match[2]), data.durations) : undefined;
  return (
    <details class="practice">
      <summary>{say.choices.paceNow(choices.pace)}</summary>
      <NumberField name={say.choices.pace} value={choices.pace} {...believablePace} say={say} changed={(pace) => choose({ pace })} />
      <p>{say.choices.practiceNote}</p>
      <Field name={say.choices.practiceTook}>
        {(id) => (
          <input
            id={id}
            type="text"
            inputMode="text"
            size={6}
            autocomplete="off"
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
            onChange={() => {
              if (pace !== undefined) choose({ pace });
            }}
          />
        )}
      </Field>
      <p role="status">{typed.trim() === '' ? '' : pace === undefined ? say.choices.practiceWrong : say.choices.practiceSet(pace)}</p>
    </details>
  );
}

/** What has been cut to make it fit, and how to take it back. */
export function Narrowed({ data, choices, say, choose }: Props): JSX.Element | null {
  const last = data.book.openings;
  const part = choices.from > 1 || choices.to < last;
  if (!choices.shortEnds && !part) return null;
  return (
    <div class="narrowed">
      {choices.shortEnds && (
        <p>
          {say.fit.endsCut}{' '}
          <button type="button" class="word-button" onClick={() => choose({ shortEnds: false })}>
            {say.fit.endsWhole}
          </button>
        </p>
      )}
      {part && (
        <p>
          {say.fit.part(choices.from, choices.to)}{' '}
          {choices.to < last && (
            <button type="button" class="word-button" onClick={() => choose({ from: choices.to + 1, to: last })}>
              {say.fit.rest(choices.to + 1, last)}
            </button>
          )}{' '}
          <button type="button" class="word-button" onClick={() => choose({ from: 1, to: last })}>
            {say.fit.whole}
          </button>
        </p>
      )}
    </div>
  );
}
