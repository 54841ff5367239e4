import type { JSX } from 'preact';
import { useEffect, useReducer, useState } from 'preact/hooks';
import type { FormChapter, FormNode } from '../../outputs/maker-form.ts';
import type { Desk, Opening } from './desk.ts';
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
import { counted, fill, idOf } from './words.ts';

/** The open pack: the chapters of the form, one at a time, with the line above that says what is kept. */
export function DeskPage({ desk, leave, open }: { readonly desk: Desk; readonly leave: () => void; readonly open: (opening: Opening) => void }): JSX.Element {
  const [, again] = useReducer<number, undefined>((count) => count + 1, 0);
  const [chapterId, setChapter] = useState<FormChapter['id']>('book');
  const [openStop, setOpenStop] = useState<number>();
  const [everything, setEverything] = useState(false);
  const [Preview, setPreview] = useState<Preview>();
  const { data } = desk;
  const { chapters } = data;
  useEffect(() => desk.listen(() => again(undefined)), [desk]);
  useEffect(() => guardDesk(desk), [desk]);
  useEffect(() => focusWanted(desk));

  const turnTo = (id: FormChapter['id']): void => {
    setChapter(id);
    desk.focusNext = 'chapter';
    document.querySelector('.desk-line')?.scrollIntoView();
  };
  const goTo = (path: string): void => {
    const chapter = chapterOf(chapters, path);
    const steps = path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
    if (steps[0] === 'stops' && typeof steps[1] === 'number') setOpenStop(steps[1]);
    setChapter(chapter?.id ?? 'share');
    desk.focusNext = idOf(steps);
    again(undefined);
  };
  const togglePreview = (): void => {
    desk.focusNext = Preview ? 'preview-button' : 'preview';
    if (Preview) setPreview(undefined);
    else void import('./preview.tsx').then((part) => setPreview(() => part.Preview));
  };
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
  return (
    <div class={Preview ? 'desk with-preview' : 'desk'}>
      <DeskLine desk={desk} leave={leave} preview={{ open: Preview !== undefined, toggle: togglePreview }} />
      <Still on={[desk.look?.advice, desk.look?.early, chapterId]}>{() => <Contents desk={desk} here={chapterId} turnTo={turnTo} />}</Still>
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
          {chapterId === 'rights' && <Translate desk={desk} open={open} />}
          {chapterId === 'book' && <Passage desk={desk} />}
          {chapterId === 'words' && <Candidates desk={desk} />}
          {chapterId === 'share' && <Share desk={desk} everything={everything} setEverything={setEverything} goTo={goTo} nameOf={(path) => nameOf(desk, path)} />}
        </div>
        <Turning chapters={chapters} index={index} desk={desk} turnTo={turnTo} />
      </section>
      {Preview && <Preview desk={desk} close={togglePreview} />}
    </div>
  );
}

type Preview = typeof PreviewPart;

/** The chapters as the contents of a book, with how much there is to look at in each. */
function Contents({ desk, here, turnTo }: { readonly desk: Desk; readonly here: FormChapter['id']; readonly turnTo: (id: FormChapter['id']) => void }): JSX.Element {
  const { chapters, say } = desk.data;
  const advice = [...(desk.look?.advice ?? []), ...(desk.look?.early ?? [])].filter((each) => !each.empty);
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

/** The chapter that a field of the file stands in. */
function chapterOf(chapters: readonly FormChapter[], path: string): FormChapter | undefined {
  const within = (node: FormNode): boolean => path === node.path || path.startsWith(`${node.path}.`);
  const group = path.split('.')[0] ?? '';
  return chapters.find((chapter) => chapter.fields.some(within)) ?? chapters.find((chapter) => chapter.fields.some((node) => node.path.split('.')[0] === group));
}

/** A field as its form names it: "Stop 2, What you say". */
function nameOf(desk: Desk, path: string): string {
  const { chapters, say } = desk.data;
  const steps = path.split('.');
  const names: string[] = [];
  let nodes: readonly FormNode[] = chapters.flatMap((chapter) => chapter.fields);
  let at = '';
  for (const step of steps) {
    at = at === '' ? step : `${at}.${/^\d+$/.test(step) ? '*' : step}`;
    const node = nodes.find((each) => each.path === at);
    if (/^\d+$/.test(step)) {
      const list = at.replace(/\.\*$/, '');
      const item = say.items[list]?.[0];
      names[names.length - 1] = item === undefined ? `${names.at(-1) ?? ''} ${String(Number(step) + 1)}` : fill(item, { n: Number(step) + 1 });
    } else if (node) names.push(node.label);
    if (node) nodes = [...(node.fields ?? []), ...(node.item ? [node.item] : [])];
    // The item of a list is a step of its own.
    if (node?.kind === 'list' && node.item) nodes = [node.item];
  }
  return names.join(', ') || path;
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
