import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import type { FormNode } from '../../outputs/maker-form.ts';
import { bodySteps, isThere, textsToTranslate, untranslated } from './translating.ts';
import type { Desk } from './desk.ts';
import { Field } from './fields.tsx';
import { FieldsOf } from './groups.tsx';
import { Still } from './still.tsx';
import { partnersOf, type Partners } from './partners.ts';
import { chapterOf, nameOf, nodeAt } from './where.ts';
import { counted, fill, idOf, isolated, languageName, listAt, pathOf, textAt, valueAt } from './words.ts';

interface Props {
  readonly desk: Desk;
  readonly everything: boolean;
}

/** Every text of a pack in two languages, one beside the other in the order of the form, with what is still to be translated marked, and who did it and who looked it over at the end. */
export function SideBySide({ desk, everything }: Props): JSX.Element | null {
  const { say, chapters } = desk.data;
  /** Paths that are shown when only what is left is wanted: as it was when that was asked, so that no field goes while somebody types in it. */
  const [only, setOnly] = useState<ReadonlySet<string>>();
  const last = useRef(-1);
  const { fields, beside } = desk;
  if (!fields || !beside) return null;
  const texts = textsToTranslate(beside.fields);
  const partners = partnersOf(fields.raw, beside.fields.raw);
  const left = new Set(untranslated(fields, beside.fields).map(pathOf));
  const goOn = (): void => {
    const at = texts.findIndex((steps, index) => index > last.current && left.has(pathOf(steps)) && partners.here(steps) !== undefined);
    const next = texts[at === -1 ? texts.findIndex((steps) => left.has(pathOf(steps)) && partners.here(steps) !== undefined) : at];
    const here = next && partners.here(next);
    if (here) desk.focus(here);
  };
  const own = textAt(fields.raw, ['language']);
  const theirs = textAt(beside.fields.raw, ['language']);
  const translation = nodeAt(chapters, ['translation']);
  return (
    <section class="chapter two-languages" aria-labelledby="chapter">
      <p class="kind">{say.beside.heading}</p>
      <h2 id="chapter" tabIndex={-1}>
        {say.beside.page}
      </h2>
      <p class="lead">{say.beside.lead}</p>
      <p class="how-much-left">
        <strong role="status">{left.size === 0 ? say.beside.done : counted(say.beside.left, left.size)}</strong>
        {left.size > 0 && (
          <button type="button" class="word-button" onClick={goOn}>
            {say.beside.goOn}
          </button>
        )}
        <label class="tick">
          <input type="checkbox" checked={only !== undefined} onChange={(event) => setOnly(event.currentTarget.checked ? left : undefined)} />
          <span>{say.beside.only}</span>
        </label>
      </p>
      <p class="pair pair-heads" aria-hidden="true">
        <span>{languageName(desk.data, theirs)}</span>
        <span>{languageName(desk.data, own)}</span>
      </p>
      {chapters.map((chapter) => {
        const here = texts.flatMap((steps, index) => (chapterOf(chapters, pathOf(steps)) === chapter && (!only || only.has(pathOf(steps))) ? [{ steps, index }] : []));
        if (here.length === 0) return null;
        return (
          <section key={chapter.id} class="pair-chapter" aria-label={chapter.title}>
            <h3>{chapter.title}</h3>
            {chapter.id === 'stops' && <Unmatched desk={desk} partners={partners} />}
            {here.map(({ steps, index }) => (
              <div key={pathOf(steps)} onFocusIn={() => (last.current = index)}>
                <Pair desk={desk} theirs={steps} steps={partners.here(steps)} everything={everything} isLeft={left.has(pathOf(steps))} />
              </div>
            ))}
          </section>
        );
      })}
      {translation && (
        <section class="pair-chapter" aria-labelledby="looked-over">
          <h3 id="looked-over">{translation.label}</h3>
          <p class="hint">{translation.hint}</p>
          <div class="chapter-fields">
            <FieldsOf desk={desk} steps={['translation']} nodes={translation.fields ?? []} everything={everything} more={say.moreFields} />
          </div>
        </section>
      )}
    </section>
  );
}

/** Stops that only one of the two languages has. */
function Unmatched({ desk: { data, fields, beside }, partners }: { readonly desk: Desk; readonly partners: Partners }): JSX.Element | null {
  const { onlyHere, onlyThere } = partners;
  if (onlyHere.length === 0 && onlyThere.length === 0) return null;
  const told = (raw: Raw | undefined, places: readonly number[]) => {
    const names = places.map((at) => isolated(textAt(raw, ['stops', at, 'id']) || nameOf(data, pathOf(['stops', at])))).join(data.comma);
    return places.length === 0 ? null : <li>{fill(data.say.beside.onlyIn, { language: languageName(data, textAt(raw, ['language'])), stops: names })}</li>;
  };
  return (
    <ul class="note unmatched">
      {told(beside?.fields.raw, onlyThere)}
      {told(fields?.raw, onlyHere)}
    </ul>
  );
}

interface PairProps extends Props {
  /** Where the text stands in the other language, and here; undefined where its stop has no partner. */
  readonly theirs: readonly Step[];
  readonly steps: readonly Step[] | undefined;
  readonly isLeft: boolean;
}

/** One text in both languages. */
function Pair({ desk, theirs, steps = [], everything, isLeft }: PairProps): JSX.Element | null {
  const { data, fields, beside, look, refused = '' } = desk;
  const { say } = data;
  const node = nodeAt(data.chapters, theirs);
  if (!node || !beside) return null;
  const path = pathOf(steps.length === 0 ? theirs : steps);
  const isBody = path === pathOf(bodySteps);
  const from = isBody ? beside.fields.body.trim() : textAt(beside.fields.raw, theirs);
  const to = isBody ? fields?.body : valueAt(fields?.raw, steps);
  const there = isBody || (steps.length > 0 && isThere(fields?.raw, steps));
  const language = textAt(beside.fields.raw, ['language']);
  return (
    <Still on={[from, to, there, isLeft, everything, look?.advice, look?.early, refused === path, path, language, textAt(fields?.raw, ['language']), stopIds(desk)]}>
      {() => (
        <div class={isLeft ? 'pair is-left' : 'pair'}>
          <p class="pair-name">
            {there ? <label for={idOf(steps)}>{nameOf(data, path)}</label> : nameOf(data, path)}
            {isLeft && <span class="untranslated">{say.beside.untranslated}</span>}
          </p>
          <p class="pair-from" lang={language || undefined}>
            {from}
          </p>
          {there ? (
            <Field desk={desk} node={asRoom(node)} steps={steps} everything={everything} paired />
          ) : (
            <p class="note">{fill(steps.length === 0 ? say.beside.noPartner : say.beside.notThere, { chapter: chapterOf(data.chapters, path)?.title ?? '' })}</p>
          )}
        </div>
      )}
    </Still>
  );
}

const rooms = new WeakMap<FormNode, FormNode>();
/** Any text has room for several lines here, as wide as the half of a page is. */
function asRoom(node: FormNode): FormNode {
  const roomy: FormNode = rooms.get(node) ?? (node.kind === 'text' ? { ...node, kind: 'long text' } : node);
  rooms.set(node, roomy);
  return roomy;
}

/** How many stops there are: with another number the names of those behind are others. */
function stopIds(desk: Desk): number {
  return listAt(desk.fields?.raw, ['stops']).length;
}
