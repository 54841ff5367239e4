import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { clock } from '../../layouts/parts/minutes.ts';
import type { LessonPhrases } from '../core/languages/en-lesson.ts';
import type { KeptLesson, KeptPart } from '../core/plan/kept-lesson.ts';
import type { Step } from '../core/plan/pace.ts';
import type { LessonData } from '../outputs/lesson-data.ts';
import { numberOf } from '../outputs/lesson-sheet.ts';
import { keepLesson } from './kept-storage.ts';
import type { Progress } from './progress.ts';

interface Props {
  readonly data: LessonData;
  readonly progress: Progress;
  readonly steps: readonly Step[];
  readonly say: LessonPhrases;
  readonly heading: { current: HTMLHeadingElement | null };
  readonly keptOne: () => void;
}

/** The end of a lesson: what each part was to take and took, and a button to keep that. Nothing is kept before it is pressed. */
export function AfterLesson({ data, progress, steps, say, heading, keptOne }: Props): JSX.Element {
  const [kept, setKept] = useState<boolean>();
  const parts = partsOf(steps, progress.entered);
  const sum = (of: (part: KeptPart) => number) => parts.reduce((all, part) => all + of(part), 0);
  const keep = (): void => {
    const done = keepLesson(recordOf(data, progress, parts));
    setKept(done);
    if (done) keptOne();
  };
  return (
    <>
      <h2 id="follow-step" ref={heading} tabIndex={-1}>
        {say.follow.done}
      </h2>
      <p>{say.follow.doneIn(say.span(sum((part) => part.took)), say.span(sum((part) => part.planned)))}</p>
      <PartsTable data={data} parts={parts} say={say} caption={undefined} />
      {progress.heard > 0 && progress.children !== undefined && <p>{say.past.heard(progress.heard, progress.children)}</p>}
      {kept !== true && (
        <p>
          <button type="button" class="button quiet" onClick={keep}>
            {say.follow.keep}
          </button>
        </p>
      )}
      <p role="status">{kept === undefined ? '' : kept ? say.follow.kept : say.follow.cannotKeep}</p>
      <p class="note">{say.follow.keepNote}</p>
    </>
  );
}

/** From when each step was come to, how long it took. */
function partsOf(steps: readonly Step[], entered: ReadonlyMap<string, number>): readonly KeptPart[] {
  return steps.flatMap((step, index) => {
    const from = entered.get(step.key);
    const to = entered.get(steps[index + 1]?.key ?? 'end');
    return from === undefined || to === undefined ? [] : [{ key: step.key, planned: Math.round(step.seconds), took: Math.max(0, Math.round(to - from)) }];
  });
}

function recordOf(data: LessonData, { sheet, children, heard }: Progress, parts: readonly KeptPart[]): KeptLesson {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return {
    version: 1,
    pack: data.slug,
    language: data.language,
    day: `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    reading: sheet.choices.reading,
    minutes: sheet.choices.minutes,
    parts,
    ...(children === undefined ? {} : { children, heard }),
  };
}

interface TableProps {
  readonly data: LessonData;
  readonly parts: readonly KeptPart[];
  readonly say: LessonPhrases;
  readonly caption: string | undefined;
}

/** Planned beside taken, in minutes and seconds. A stop that the pack has no more is called by its id. */
export function PartsTable({ data, parts, say, caption }: TableProps): JSX.Element {
  const name = (key: string) => {
    if (key === 'opening') return say.openingPart;
    if (key === 'closing') return say.closingPart;
    const number = numberOf(data, key);
    return number === 0 ? key : say.stop(number);
  };
  return (
    <table class="minutes-table">
      {caption !== undefined && <caption>{caption}</caption>}
      <thead>
        <tr>
          <th scope="col">{say.part}</th>
          <th scope="col">{say.follow.planned}</th>
          <th scope="col">{say.follow.took}</th>
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part.key}>
            <th scope="row">{name(part.key)}</th>
            <td>{clock(part.planned)}</td>
            <td>{clock(part.took)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
