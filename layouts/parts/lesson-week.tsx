import type { JSX } from 'preact';
import type { LessonPhrases } from '../../src/core/languages/en-lesson.ts';
import type { PlanStop } from '../../src/core/plan/plannable.ts';
import { weekOf } from '../../src/core/plan/week.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { numberOf } from '../../src/outputs/lesson-sheet.ts';

/** The book on several days: what each reading is for, the one question it must not end without, and what moved since the day before. */
export function Week({ data, say, quoted }: { readonly data: LessonData; readonly say: LessonPhrases; readonly quoted: (text: string) => string }): JSX.Element | null {
  const week = weekOf(data);
  if (week.length < 2) return null;
  const numbers = (stops: readonly PlanStop[]) => stops.map((stop) => numberOf(data, stop.id));
  return (
    <section class="week" aria-labelledby="week">
      <h2 id="week">{say.week}</h2>
      <p class="note">{say.weekNote}</p>
      <ol class="days">
        {week.map((day) => {
          const moved = [
            day.fresh.length > 0 ? say.moved.fresh(numbers(day.fresh)) : '',
            day.again.length > 0 ? say.moved.again(numbers(day.again)) : '',
            day.back.length > 0 ? say.moved.back(numbers(day.back)) : '',
            day.resting.length > 0 ? say.moved.resting(numbers(day.resting)) : '',
          ].filter((each) => each !== '');
          return (
            <li class="day">
              <h3>{say.readingN(day.reading)}</h3>
              <p class="purpose">{day.purpose}</p>
              {day.mustAsk && (
                <p>
                  <em>{say.mustAsk}:</em> <a href={`#stop-${day.mustAsk.id}`}>{quoted(day.mustAsk.ask)}</a>
                </p>
              )}
              {moved.length > 0 && <p class="note">{moved.join('. ')}.</p>}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
