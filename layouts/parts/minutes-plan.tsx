import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import type { PlannedPack } from '../../src/core/plan/plan.ts';
import type { RunSheetRow } from '../../src/core/plan/run-sheet.ts';
import { clock } from './minutes.ts';

interface Props {
  readonly pack: PlannedPack;
  readonly rows: readonly RunSheetRow[];
  readonly say: Phrases;
}

/** Where the minutes go: a drawn line of the lesson, and the same in a table. */
export function Minutes({ pack, rows, say }: Props): JSX.Element {
  const { lesson, pace } = pack.plan;
  const numberOf = (id: string) => pack.stops.findIndex((stop) => stop.id === id) + 1;
  const parts: readonly (readonly [name: string, seconds: number])[] = [
    [say.lesson.openingPart, lesson.opening],
    [say.lesson.reading, lesson.reading],
    [say.lesson.turns, lesson.pageTurns],
    ...lesson.stops.map((stop) => [say.stop(numberOf(stop.id)), stop.total] as const),
    [say.lesson.closingPart, lesson.closing],
  ];
  return (
    <section class="minutes" aria-labelledby="minutes">
      <h2 id="minutes">{say.lesson.plan}</h2>
      <LessonLine rows={rows} total={lesson.total} numberOf={numberOf} label={say.lesson.bar} />
      <table class="minutes-table">
        <thead>
          <tr>
            <th scope="col">{say.lesson.part}</th>
            <th scope="col">{say.lesson.takes}</th>
          </tr>
        </thead>
        <tbody>
          {parts.map(([name, seconds]) => (
            <tr>
              <th scope="row">{name}</th>
              <td>{clock(seconds)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{say.lesson.total}</th>
            <td>{clock(lesson.total)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="note">{say.lesson.planNote(pace)}</p>
    </section>
  );
}

const width = 600;

interface LineProps {
  readonly rows: readonly RunSheetRow[];
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
