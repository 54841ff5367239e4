import type { ComponentChildren, JSX } from 'preact';
import type { LessonPhrases } from '../../src/core/languages/en-lesson.ts';
import type { PlanStop } from '../../src/core/plan/plannable.ts';
import type { RunSheetRow } from '../../src/core/plan/run-sheet.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { numberOf, type Sheet } from '../../src/outputs/lesson-sheet.ts';
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
      <LessonLine rows={sheet.rows} total={lesson.total} numberOf={(id) => numberOf(data, id)} label={say.bar} />
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

const width = 600;

interface LineProps {
  readonly rows: readonly RunSheetRow<PlanStop>[];
  readonly total: number;
  readonly numberOf: (id: string) => number;
  readonly label: string;
}

/** The lesson as one line: thin where it is read, a hatched block with its number where it stops. */
function LessonLine({ rows, total, numberOf, label }: LineProps): JSX.Element {
  const scale = total > 0 ? width / total : 0;
  const round = (value: number) => Number(value.toFixed(1));
  return (
    <svg class="lesson-line" viewBox={`-2 0 ${String(width + 4)} 64`} role="img" aria-label={label}>
      <defs>
        <pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(38)">
          <path class="hatch" d="M0 0V5" />
        </pattern>
      </defs>
      {rows.map((row) => {
        const x = round(row.begins * scale);
        const wide = round(row.seconds * scale);
        if (row.kind === 'reading') return <path class="thread" d={`M${String(x)} 44.5q${String(round(wide / 2))} -1.8 ${String(wide)} 0`} />;
        if (row.kind === 'end') return null;
        if (row.kind !== 'stop') return <rect class="end" x={x} y={34} width={wide} height={21} />;
        return (
          <>
            <rect class="block" x={x} y={26} width={wide} height={36} fill="url(#hatch)" />
            <text x={round(x + wide / 2)} y={18} text-anchor="middle">
              {numberOf(row.stop.id)}
            </text>
          </>
        );
      })}
    </svg>
  );
}
