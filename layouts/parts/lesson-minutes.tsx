import type { ComponentChildren, JSX } from 'preact';
import type { LessonPhrases } from '../../src/core/languages/en-lesson.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { numberOf, type Sheet } from '../../src/outputs/lesson-sheet.ts';
import { LessonLine } from './minutes-picture.tsx';
import { clock } from './minutes.ts';

interface Props {
  readonly data: LessonData;
  readonly sheet: Sheet;
  readonly say: LessonPhrases;
  /** Stands between the heading and the figures: whether it fits and, in the browser, what can be chosen. */
  readonly children: ComponentChildren;
}

/** Where the minutes go: a drawn line of the lesson, and the same in a table. */
export function Minutes({ data, sheet, say, children }: Props): JSX.Element {
  const { lesson } = sheet;
  const parts: readonly (readonly [name: string, seconds: number])[] = [
    [say.openingPart, lesson.opening],
    [say.readingAloud, lesson.reading],
    [say.turns, lesson.pageTurns],
    ...lesson.stops.map((stop) => [say.stop(numberOf(data, stop.id)), stop.total] as const),
    [say.closingPart, lesson.closing],
  ];
  return (
    <>
      <h2 id="minutes">{say.plan}</h2>
      {children}
      <LessonLine id="lesson-line" lesson={lesson} rows={sheet.rows} numberOf={(id) => numberOf(data, id)} label={say.bar} />
      <table class="minutes-table">
        <thead>
          <tr>
            <th scope="col">{say.part}</th>
            <th scope="col">{say.takes}</th>
          </tr>
        </thead>
        <tbody>
          {parts
            .filter(([, seconds]) => seconds > 0)
            .map(([name, seconds]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{clock(seconds)}</td>
              </tr>
            ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{say.total}</th>
            <td>{clock(lesson.total)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="note">{say.planNote(sheet.choices.pace)}</p>
    </>
  );
}
