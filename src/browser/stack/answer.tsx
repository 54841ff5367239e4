import type { JSX } from 'preact';
import { BookmarkDrawing } from '../../../layouts/parts/ornaments.tsx';
import { paper } from '../../core/booklet/booklet-schema.ts';
import { bookmarkPatterns, type Bookmark, type Value } from '../../core/booklet/booklet.ts';
import type { Answer } from '../../classroom/stack.ts';
import { KeptValue } from '../booklet/kept-answer.tsx';
import type { Desk } from './desk.ts';
import { Lazy } from './lazy.tsx';

/** One answer on the desk: whose bookmark, and all that was kept. */
export function AnswerCard({ desk, answer, children }: { readonly desk: Desk; readonly answer: Answer; readonly children?: JSX.Element | undefined }): JSX.Element {
  return (
    <>
      <p class="whose">
        <Mark bookmark={answer.from.booklet.bookmark} />
        {desk.markOf(answer.from)}
      </p>
      <Values desk={desk} values={answer.entries.map(({ value }) => value)} lang={desk.langOf(answer.from.booklet.pack)} />
      {children}
    </>
  );
}

/** What was kept, one under the other, each with how it was made where that cannot be seen. */
export function Values({ desk, values, lang }: { readonly desk: Desk; readonly values: readonly Value[]; readonly lang: string | undefined }): JSX.Element {
  const say = desk.words.booklet.file;
  return (
    <>
      {values.map((value) => (
        <div class={`kept kept-${value.kind}`}>
          {value.kind !== 'passed' && !(value.kind === 'drawing' && value.marks.length > 0) && <p class="label">{say.kinds[value.kind]}</p>}
          <div lang={lang}>
            {value.kind === 'drawing' && value.marks.length === 0 ? (
              <p class="kept-text" dir="auto">
                {value.about}
              </p>
            ) : value.kind === 'drawing' ? (
              <Lazy width={paper.width} height={paper.height} name={value.about || say.untitledDrawing} draw={() => <KeptValue say={say} value={value} />} />
            ) : value.kind === 'photo' ? (
              <Lazy width={value.width} height={value.height} name={value.about || say.untitledPhoto} draw={() => <KeptValue say={say} value={value} />} />
            ) : (
              <KeptValue say={say} value={value} />
            )}
          </div>
        </div>
      ))}
    </>
  );
}

/** A bookmark's pattern in its colour. Decoration: its words stand beside it. */
export function Mark({ bookmark }: { readonly bookmark: Bookmark }): JSX.Element | null {
  const pattern = bookmarkPatterns.find((each) => each === bookmark.pattern);
  return pattern === undefined ? null : (
    <span class={`in-${bookmark.colour} small-mark`}>
      <BookmarkDrawing pattern={pattern} />
    </span>
  );
}
