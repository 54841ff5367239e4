import { localeOf } from '../core/languages/about-language.ts';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import type { LessonData } from '../outputs/lesson-data.ts';
import { schoolDays, weekCalendar } from '../outputs/week-calendar.ts';

interface Props {
  readonly data: LessonData;
  readonly say: LessonPhrases;
  /** Seconds since midnight at which the lesson begins, when it has been chosen. */
  readonly start: () => number | undefined;
}

/** The week as a calendar file, made on the device. */
export function WeekFile({ data, say, start }: Props): JSX.Element {
  const [firstDay, setFirstDay] = useState('');
  const [made, setMade] = useState('');
  const make = (): void => {
    const address = location.protocol.startsWith('http') ? `${location.origin}${location.pathname}` : undefined;
    const text = weekCalendar(data, { firstDay, start: start(), minutes: data.minutes, address }, say);
    const url = URL.createObjectURL(new Blob([text], { type: 'text/calendar' }));
    const link = document.createElement('a');
    link.href = url;
    link.download = `${data.slug}-week.ics`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
    const day = new Intl.DateTimeFormat(localeOf(document.documentElement.lang), { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' });
    const days = schoolDays(firstDay, data.readings.length).map((each) => day.format(new Date(`${each}T00:00:00Z`)));
    setMade(say.calendar.made(new Intl.ListFormat(document.documentElement.lang).format(days)));
  };
  return (
    <form
      class="week-file"
      aria-labelledby="week-file"
      onSubmit={(event) => {
        event.preventDefault();
        if (firstDay !== '') make();
      }}
    >
      <h3 id="week-file">{say.calendar.title}</h3>
      <p class="note">{say.calendar.note}</p>
      <div class="field">
        <label for="week-first">{say.calendar.first}</label>
        <input id="week-first" type="date" required value={firstDay} onInput={(event) => setFirstDay(event.currentTarget.value)} />
      </div>
      <p>
        <button type="submit" class="button quiet">
          {say.calendar.make}
        </button>
      </p>
      <p role="status">{made}</p>
    </form>
  );
}
