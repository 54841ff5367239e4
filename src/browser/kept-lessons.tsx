import { localeOf } from '../core/languages/about-language.ts';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import type { LessonData } from '../outputs/lesson-data.ts';
import { PartsTable } from './after-lesson.tsx';
import { eraseLessons, keptLessons } from './kept-storage.ts';

interface Props {
  readonly data: LessonData;
  readonly say: LessonPhrases;
  /** The section that this stands in: hidden while there is nothing to show. */
  readonly section: HTMLElement;
}

/** The lessons with this book that were kept on the device, newest first, and how to erase them. */
export function KeptLessons({ data, say, section }: Props): JSX.Element {
  const [asked, setAsked] = useState(false);
  const [erased, setErased] = useState(false);
  const kept = keptLessons().filter((each) => each.pack === data.slug);
  section.hidden = kept.length === 0 && !erased;
  const day = new Intl.DateTimeFormat(localeOf(document.documentElement.lang), { dateStyle: 'long', timeZone: 'UTC' });
  const erase = (): void => {
    eraseLessons(data.slug);
    setAsked(false);
    setErased(true);
    section.querySelector('h2')?.focus();
  };
  return (
    <>
      <h2 id="past" tabIndex={-1}>
        {say.past.title}
      </h2>
      <p class="note">{say.past.note}</p>
      {[...kept].reverse().map((lesson) => (
        <div class="past-lesson">
          <PartsTable data={data} parts={lesson.parts} say={say} caption={say.past.caption(day.format(new Date(`${lesson.day}T00:00:00Z`)), lesson.reading, lesson.minutes)} />
          {lesson.children !== undefined && <p>{say.past.heard(lesson.heard ?? 0, lesson.children)}</p>}
        </div>
      ))}
      <p role="status">{erased && kept.length === 0 ? say.past.erased : ''}</p>
      {kept.length > 0 && (
        <p class="erase">
          {asked ? (
            <>
              <button type="button" class="button quiet" onClick={erase}>
                {say.past.eraseSure}
              </button>
              <button type="button" class="button quiet" onClick={() => setAsked(false)}>
                {say.past.eraseNot}
              </button>
            </>
          ) : (
            <button type="button" class="button quiet" onClick={() => setAsked(true)}>
              {say.past.erase}
            </button>
          )}
        </p>
      )}
    </>
  );
}
