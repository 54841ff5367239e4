import type { JSX } from 'preact';
import type { PicturePhrases } from '../../src/core/languages/en-pictures.ts';
import type { PlanStop } from '../../src/core/plan/plannable.ts';
import type { RunSheetRow } from '../../src/core/plan/run-sheet.ts';
import type { LessonSeconds } from '../../src/core/plan/seconds.ts';
import { minutesSpent, spentAt, type Spending, type Spent } from '../../src/outputs/minutes-spent.ts';
import { At, Figure, FigureDrawing, percent } from './figure.tsx';
import { clock } from './minutes.ts';

interface Props {
  readonly id: string;
  readonly lesson: LessonSeconds;
  readonly rows: readonly RunSheetRow<PlanStop>[];
  readonly numberOf: (stop: string) => number;
  readonly say: PicturePhrases['spent'];
  readonly headingLevel?: number | undefined;
}

const line = { top: 22, bottom: 58 };
const scale = { y: 66, numbers: 86 };
const keyFrom = 132;
const keyStep = 40;

/** How a lesson's minutes are spent: the lesson as a line from left to right, and under it what each kind of minute adds up to, to the same scale. */
export function MinutesPicture({ id, lesson, rows, numberOf, say, headingLevel }: Props): JSX.Element {
  const spent = minutesSpent(lesson);
  const minutesOn = (...kinds: readonly Spending[]) => Math.round(spent.filter((each) => kinds.includes(each.on)).reduce((sum, each) => sum + each.seconds, 0) / 60);
  const height = keyFrom + keyStep * spent.length;
  return (
    <Figure
      id={id}
      title={say.title}
      headingLevel={headingLevel}
      height={height}
      drawing={
        <>
          <Textures id={id} />
          <Line id={id} lesson={lesson} rows={rows} numberOf={numberOf} />
          <text y={scale.numbers + 17} class="soft">
            {say.minutes}
          </text>
          {spent.map(({ on, seconds }, index) => (
            <>
              <text y={keyFrom + keyStep * index}>{say.spending[on]}</text>
              <text x="100%" y={keyFrom + keyStep * index} text-anchor="end">
                {clock(seconds)}
              </text>
              <Bar id={id} on={on} from={0} share={seconds / lesson.total} top={keyFrom + keyStep * index + 6} height={12} />
            </>
          ))}
        </>
      }
      text={say.text(Math.ceil(lesson.total / 60), minutesOn('reading', 'pages'), minutesOn('thinking', 'doing', 'hearing'), lesson.stops.length)}
      table={{ summary: say.table, heads: [say.on, say.takes], rows: spent.map(({ on, seconds }) => [say.spending[on], clock(seconds)]) }}
    />
  );
}

/** Strokes by which the kinds are told apart without a colour. Their ids begin with the figure's. */
function Textures({ id }: { readonly id: string }): JSX.Element {
  return (
    <defs>
      <pattern id={`${id}-doing`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(38)">
        <path d="M2.5 0V5" stroke-width="1.2" />
      </pattern>
      <pattern id={`${id}-hearing`} width="5" height="5" patternUnits="userSpaceOnUse">
        <circle cx="2.5" cy="2.5" r="1.1" fill="currentColor" stroke="none" />
      </pattern>
    </defs>
  );
}

interface LineProps {
  readonly id: string;
  readonly lesson: LessonSeconds;
  readonly rows: readonly RunSheetRow<PlanStop>[];
  readonly numberOf: (stop: string) => number;
  /** Stops in one texture: where there is no key. */
  readonly plain?: boolean;
}

/** The line alone, for a page whose own table stands beside it. */
export function LessonLine({ label, ...line }: LineProps & { readonly label: string }): JSX.Element {
  return (
    <div class="figure lesson-line">
      <FigureDrawing label={label} height={scale.numbers + 4}>
        <Textures id={line.id} />
        <Line {...line} plain />
      </FigureDrawing>
    </div>
  );
}

/** The lesson as one line: thin where it is read, a block with its number where it stops. */
function Line({ id, lesson, rows, numberOf, plain = false }: LineProps): JSX.Element {
  const total = Math.max(1, lesson.total);
  const start = rows[0]?.begins ?? 0;
  const every = [1, 2, 5, 10, 20, 30].find((minutes) => total / 60 / minutes <= 6) ?? 60;
  const marks = Array.from({ length: Math.floor(total / 60 / every) + 1 }, (_, index) => index * every);
  const last = marks.at(-1) ?? 0;
  return (
    <>
      {rows.map((row) => {
        const from = (row.begins - start) / total;
        const share = row.seconds / total;
        if (row.kind === 'end') return null;
        if (row.kind === 'reading') return <Bar id={id} on="reading" from={from} share={share} top={line.top} height={line.bottom - line.top} />;
        if (row.kind !== 'stop') return <Bar id={id} on="ends" from={from} share={share} top={line.top + 8} height={line.bottom - line.top - 16} />;
        return <StopBlock id={id} from={from} share={share} seconds={plain ? undefined : lesson.stops.find((stop) => stop.id === row.stop.id)} number={numberOf(row.stop.id)} />;
      })}
      <line class="edge" x1="0" x2="100%" y1={scale.y} y2={scale.y} />
      {marks.map((minute) => (
        <>
          <line class="tick" x1={percent((6000 * minute) / total)} x2={percent((6000 * minute) / total)} y1={scale.y} y2={scale.y + 6} />
          <text x={percent((6000 * minute) / total)} y={scale.numbers} text-anchor={minute === 0 ? 'start' : minute === last && total - minute * 60 < 60 ? 'end' : 'middle'}>
            {minute}
          </text>
        </>
      ))}
    </>
  );
}

interface BlockProps {
  readonly id: string;
  readonly from: number;
  readonly share: number;
  /** Undefined where its parts are not shown. */
  readonly seconds: LessonSeconds['stops'][number] | undefined;
  readonly number: number;
}

function StopBlock({ id, from, share, seconds, number }: BlockProps): JSX.Element {
  const parts: readonly Spent[] = seconds ? spentAt(seconds) : [{ on: 'doing', seconds: 1 }];
  const all = parts.reduce((sum, each) => sum + each.seconds, 0);
  let at = from;
  return (
    <>
      {parts.map((part) => {
        const begins = at;
        const own = (share * part.seconds) / Math.max(1, all);
        at += own;
        return <Bar id={id} on={part.on} from={begins} share={own} top={line.top} height={line.bottom - line.top} />;
      })}
      <rect class="accent-ink" x={percent(100 * from)} y={line.top} width={percent(100 * share)} height={line.bottom - line.top} />
      <At x={100 * (from + share / 2)} y={line.top - 6}>
        <text text-anchor="middle" class="numeral-text">
          {number}
        </text>
      </At>
    </>
  );
}

interface BarProps {
  readonly id: string;
  readonly on: Spending;
  /** Shares of the whole width. */
  readonly from: number;
  readonly share: number;
  readonly top: number;
  readonly height: number;
}

function Bar({ id, on, from, share, top, height }: BarProps): JSX.Element {
  const place = { x: percent(100 * from), y: top, width: percent(100 * share), height };
  const thread = { x1: percent(100 * from), x2: percent(100 * (from + share)), y1: top + height / 2, y2: top + height / 2 };
  switch (on) {
    case 'reading':
      return <line class="thread" {...thread} />;
    case 'pages':
      return <line class="thread dotted" {...thread} />;
    case 'asking':
      return <rect class="full" {...place} />;
    case 'thinking':
      return <rect class="open" {...place} />;
    case 'doing':
    case 'hearing':
      return <rect class="open" {...place} fill={`url(#${id}-${on})`} />;
    case 'ends':
      return <rect class="open doubled" {...place} />;
  }
}
