import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useReducer, useState } from 'preact/hooks';
import type { FormChapter } from '../../outputs/maker-form.ts';
import type { Desk } from './desk.ts';
import type { Opening } from './opening.ts';
import { DeskLine } from './desk-line.tsx';
import { FieldsOf } from './groups.tsx';
import { guardDesk } from './guard.ts';
import { Translate } from './beside.tsx';
import { Candidates, Passage } from './passage.tsx';
import { AddPictures } from './pictures.tsx';
import type { Preview as PreviewPart } from './preview.tsx';
import { Broken, Share } from './share.tsx';
import { Still } from './still.tsx';
import { Stops } from './stops.tsx';
import { SideBySide } from './side-by-side.tsx';
import { untranslated } from './translating.ts';
import { chapterOf, nameOf } from './where.ts';
import { counted, fill, idOf } from './words.ts';

/** The open pack: the chapters of the form, one at a time, with the line above that says what is kept. */
export function DeskPage({ desk, leave, open }: { readonly desk: Desk; readonly leave: () => void; readonly open: (opening: Opening) => void }): JSX.Element {
  const [, again] = useReducer<number, undefined>((count) => count + 1, 0);
  const [chapterId, setChapter] = useState<FormChapter['id']>('book');
  // A translation begins with the two languages beside each other.
  const [paired, setPaired] = useState(desk.beginsPaired);
  const [openStop, setOpenStop] = useState<number>();
  const [everything, setEverything] = useState(false);
  const [Preview, setPreview] = useState<Preview>();
  const { data } = desk;
  const { chapters } = data;
  useEffect(() => desk.listen(() => again(undefined)), [desk]);
  useEffect(() => guardDesk(desk), [desk]);
  useEffect(() => {
    if (!desk.beginsPaired) return;
    desk.focusNext = 'chapter';
    document.querySelector('.desk-line')?.scrollIntoView();
  }, [desk]);
  // At once with what was drawn: later, an effect of the drawing before would give the focus to what is about to go.
  useLayoutEffect(() => focusWanted(desk));

  const turnTo = (id: FormChapter['id']): void => {
    setChapter(id);
    setPaired(false);
    desk.focusNext = 'chapter';
    document.querySelector('.desk-line')?.scrollIntoView();
  };
  const goTo = (path: string): void => {
    const chapter = chapterOf(chapters, path);
    const steps = path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
    if (steps[0] === 'stops' && typeof steps[1] === 'number') setOpenStop(steps[1]);
    setChapter(chapter?.id ?? 'share');
    setPaired(false);
    desk.focusNext = idOf(steps);
    again(undefined);
  };
  const togglePreview = (): void => {
    desk.focusNext = Preview ? 'preview-button' : 'preview';
    if (Preview) setPreview(undefined);
    else void import('./preview.tsx').then((part) => setPreview(() => part.Preview));
  };
  const pair = (): void => {
    setPaired(true);
    desk.focusNext = 'chapter';
    again(undefined);
    document.querySelector('.desk-line')?.scrollIntoView();
  };
  if (!desk.ready || desk.unreadable)
    return (
      <div class="desk" aria-busy={!desk.ready}>
        <DeskLine desk={desk} leave={leave} />
        {desk.unreadable && <p class="chapter">{data.say.desk.unreadable}</p>}
      </div>
    );
  if (desk.fields && !desk.fields.raw)
    return (
      <div class="desk">
        <DeskLine desk={desk} leave={leave} />
        <Broken key={desk.text} desk={desk} />
      </div>
    );
  const index = chapters.findIndex((each) => each.id === chapterId);
  const chapter = chapters[index];
  if (!chapter) return <></>;
  const isPaired = paired && desk.beside !== undefined;
  return (
    <div class={Preview ? 'desk with-preview' : 'desk'}>
      <DeskLine desk={desk} leave={leave} preview={{ open: Preview !== undefined, toggle: togglePreview }} />
      <Still on={[desk.look?.advice, desk.look?.early, chapterId, isPaired, desk.fields?.raw, desk.fields?.body, desk.beside]}>
        {() => <Contents desk={desk} here={isPaired ? undefined : chapterId} turnTo={turnTo} pair={pair} />}
      </Still>
      {isPaired ? (
        <SideBySide desk={desk} everything={everything} />
      ) : (
        <section class="chapter" aria-labelledby="chapter">
          <p class="kind">{fill(data.say.desk.chapter, { n: index + 1 })}</p>
          <h2 id="chapter" tabIndex={-1}>
            {chapter.title}
          </h2>
          <p class="lead">{chapter.lead}</p>
          <div class="chapter-fields" key={chapterId}>
            {chapterId === 'pictures' && <AddPictures desk={desk} />}
            {chapterId === 'stops' && chapter.fields[0] ? (
              <Stops desk={desk} node={chapter.fields[0]} everything={everything} open={openStop} setOpen={setOpenStop} />
            ) : (
              <FieldsOf desk={desk} steps={[]} nodes={chapter.fields} everything={everything} more={data.say.moreOf[chapterId] ?? data.say.moreFields} />
            )}
            {chapterId === 'rights' && <Translate desk={desk} open={open} pair={pair} />}
            {chapterId === 'book' && <Passage desk={desk} />}
            {chapterId === 'words' && <Candidates desk={desk} />}
            {chapterId === 'share' && <Share desk={desk} everything={everything} setEverything={setEverything} goTo={goTo} nameOf={(path) => nameOf(data, path)} />}
          </div>
          <Turning chapters={chapters} index={index} desk={desk} turnTo={turnTo} />
        </section>
      )}
      {Preview && <Preview desk={desk} close={togglePreview} />}
    </div>
  );
}

type Preview = typeof PreviewPart;

/** The chapters as the contents of a book, with how much there is to look at in each. */
interface ContentsProps {
  readonly desk: Desk;
  /** Undefined beside another language. */
  readonly here: FormChapter['id'] | undefined;
  readonly turnTo: (id: FormChapter['id']) => void;
  readonly pair: () => void;
}

function Contents({ desk, here, turnTo, pair }: ContentsProps): JSX.Element {
  const { chapters, say } = desk.data;
  const advice = [...(desk.look?.advice ?? []), ...(desk.look?.early ?? [])].filter((each) => !each.empty);
  const left = desk.beside && desk.fields && untranslated(desk.fields, desk.beside.fields).length;
  return (
    <nav class="workbook" aria-label={say.desk.chapters}>
      <ol>
        {chapters.map((chapter, index) => {
          const count = advice.filter((each) => each.path !== '' && chapterOf(chapters, each.path) === chapter).length;
          return (
            <li>
              <button type="button" aria-current={chapter.id === here ? 'page' : undefined} onClick={() => turnTo(chapter.id)}>
                <span class="chapter-number">{index + 1}</span>
                <span class="chapter-name">
                  {chapter.title}
                  {count > 0 && <span class="chapter-advice">{counted(say.desk.advice, count)}</span>}
                </span>
              </button>
            </li>
          );
        })}
        {left !== undefined && (
          <li>
            <button type="button" aria-current={here === undefined ? 'page' : undefined} onClick={pair}>
              <span class="chapter-number" aria-hidden="true">
                ⇄
              </span>
              <span class="chapter-name">
                {say.beside.page}
                <span class="chapter-advice">{left === 0 ? say.beside.done : counted(say.beside.left, left)}</span>
              </span>
            </button>
          </li>
        )}
      </ol>
    </nav>
  );
}

function Turning({
  chapters,
  index,
  desk,
  turnTo,
}: {
  readonly chapters: readonly FormChapter[];
  readonly index: number;
  readonly desk: Desk;
  readonly turnTo: (id: FormChapter['id']) => void;
}): JSX.Element {
  const { say } = desk.data;
  const before = chapters[index - 1];
  const after = chapters[index + 1];
  return (
    <p class="turn-chapter">
      {before && (
        <button type="button" class="page-button" onClick={() => turnTo(before.id)}>
          {fill(say.desk.previous, { title: before.title })}
        </button>
      )}
      {after && (
        <button type="button" class="page-button main-button" onClick={() => turnTo(after.id)}>
          {fill(say.desk.next, { title: after.title })}
        </button>
      )}
    </p>
  );
}

/** Gives the focus to what is to have it next, and opens what it is folded in. */
function focusWanted(desk: Desk): void {
  const { focusNext } = desk;
  if (focusNext === undefined) return;
  // A group that is not in the file yet has its fields in the form and no place of its own.
  const found = document.getElementById(focusNext) ?? document.querySelector<HTMLElement>(`:is(input, textarea, select)[id^="${CSS.escape(focusNext)}-"]`);
  if (!found) return;
  desk.focusNext = undefined;
  for (let above = found.parentElement; above; above = above.parentElement) if (above instanceof HTMLDetailsElement) above.open = true;
  found.focus();
}
