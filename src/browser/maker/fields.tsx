import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Step } from '../../core/pack/pack.ts';
import type { FormNode } from '../../outputs/maker-form.ts';
import { adviceFor, type Desk } from './desk.ts';
import { fieldEdits, tickEdits } from './edits.ts';
import { BesideText } from './beside.tsx';
import { fill, idOf, listAt, pathOf, textAt, valueAt } from './words.ts';

export interface FieldProps {
  readonly desk: Desk;
  readonly node: FormNode;
  readonly steps: readonly Step[];
  /** Shows advice on what is still empty as well. */
  readonly everything: boolean;
}

/** Milliseconds without a key before what was typed goes into the file, and before advice comes. */
const pause = { write: 600, advise: 1500 } as const;

/** One field that holds one value: its name, what it is for, an example, the place to write, and what there is to say about it. */
export function Field(props: FieldProps & { readonly label?: string; readonly bare?: boolean; readonly begun?: () => void }): JSX.Element {
  const { desk, node, steps, bare = false } = props;
  const id = idOf(steps);
  const [advice, typing] = useCalmAdvice(props);
  const described = [bare ? undefined : `${id}-hint`, advice.length > 0 ? `${id}-advice` : undefined].filter((each) => each !== undefined).join(' ');
  const common = { id, 'aria-describedby': described === '' ? undefined : described, 'aria-invalid': advice.some((each) => each.level === 'stop' && !each.empty) };
  return (
    <div class={`slot slot-${node.kind.replace(/ /g, '-')}`}>
      <label for={id}>{props.label ?? node.label}</label>
      {!bare && <Hint desk={desk} node={node} id={id} />}
      {desk.beside && <BesideText desk={desk} node={node} steps={steps} />}
      <Control {...props} common={common} typing={typing} />
      <AdviceList desk={desk} advice={advice} id={id} />
      {desk.refused === pathOf(steps) && <p class="advice refused">{desk.data.say.unwritten}</p>}
    </div>
  );
}

export function Hint({ desk, node, id }: { readonly desk: Desk; readonly node: FormNode; readonly id: string }): JSX.Element {
  return (
    <p class="hint" id={`${id}-hint`}>
      {node.hint}
      {node.example !== undefined && node.kind !== 'body' && node.kind !== 'yes or no' && (
        <span class="for-example">
          {' '}
          {desk.data.say.example} <span class="example">{node.example}</span>
        </span>
      )}
      {node.kind === 'body' && <span class="body-example">{node.example}</span>}
    </p>
  );
}

type AdviceItem = ReturnType<typeof adviceFor>[number];

/** Advice that does not move while somebody types in its field. */
function useCalmAdvice({ desk, steps, everything }: FieldProps): readonly [readonly AdviceItem[], (on: boolean) => void] {
  const [typing, setTyping] = useState(false);
  const now = adviceFor(desk.look, pathOf(steps), everything);
  const shown = useRef(now);
  if (!typing) shown.current = now;
  return [shown.current, setTyping];
}

export function AdviceList({ desk, advice, id }: { readonly desk: Desk; readonly advice: readonly AdviceItem[]; readonly id: string }): JSX.Element | null {
  if (advice.length === 0) return null;
  const { say } = desk.data;
  return (
    <ul class="advice" id={`${id}-advice`} aria-label={say.desk.adviceHere}>
      {advice.map((each) => (
        <li class={`is-${each.level}`}>
          <span class="level">{say.levels[each.level]}:</span> {each.say}
        </li>
      ))}
    </ul>
  );
}

interface ControlProps extends FieldProps {
  /** Told when somebody begins to type. */
  readonly begun?: (() => void) | undefined;
  readonly common: { readonly id: string; readonly 'aria-describedby': string | undefined; readonly 'aria-invalid': boolean };
  readonly typing: (on: boolean) => void;
}

function Control(props: ControlProps): JSX.Element {
  const { desk, node, steps, common } = props;
  const raw = desk.fields?.raw;
  const set = (value: string | boolean): Promise<void> => desk.change(fieldEdits(desk.fields?.raw, steps, value), pathOf(steps));
  const value = textAt(raw, steps);
  if (node.path === 'language' || node.choices || node.kind === 'reference') {
    const choices = node.path === 'language' ? desk.data.languages : (node.choices ?? namesFor(desk, node));
    return <Choice {...common} value={value} choices={choices} none={desk.data.say.notChosen} changed={set} />;
  }
  switch (node.kind) {
    case 'yes or no':
      return (
        <span class="tick">
          <input {...common} type="checkbox" checked={/^(?:true|yes)$/i.test(value)} onChange={(event) => void set(event.currentTarget.checked)} />
          <span aria-hidden="true">{desk.data.say.yes}</span>
        </span>
      );
    case 'date':
      // A year that is typed is a day after its first digit already, so the letters wait here too.
      return <Typed {...props} value={value} rows={1} write={set} />;
    case 'body':
      return <Typed {...props} value={desk.fields?.body ?? ''} rows={12} lines write={(markdown) => desk.change([{ kind: 'body', markdown }], 'body')} />;
    default:
      return <Typed {...props} value={value} rows={node.kind === 'long text' ? 2 : 1} write={(text) => desk.change(fieldEdits(desk.fields?.raw, steps, text), pathOf(steps))} />;
  }
}

interface TypedProps extends ControlProps {
  readonly value: string;
  readonly rows: number;
  /** True where an end of a line means something. */
  readonly lines?: boolean;
  readonly write: (text: string) => Promise<void>;
}

/** A place to type. The letters are the field's own until there is a pause; then they go into the file. */
function Typed({ desk, node, common, typing, begun, value, rows, lines = false, write }: TypedProps): JSX.Element {
  const [draft, setDraft] = useState<string>();
  const state = useRef<{ draft?: string | undefined; writing?: ReturnType<typeof setTimeout>; advising?: ReturnType<typeof setTimeout> }>({});
  const latest = useRef({ value, write });
  latest.current = { value, write };
  const commit = async (): Promise<void> => {
    clearTimeout(state.current.writing);
    const { draft: typed } = state.current;
    if (typed === undefined || typed === latest.current.value) return;
    await latest.current.write(lines ? typed : typed.trim());
  };
  const input = (text: string): void => {
    const typed = lines ? text : text.replace(/\s*\n\s*/g, ' ');
    state.current.draft = typed;
    setDraft(typed);
    typing(true);
    begun?.();
    clearTimeout(state.current.writing);
    clearTimeout(state.current.advising);
    state.current.writing = setTimeout(() => void commit(), pause.write);
    state.current.advising = setTimeout(() => typing(false), pause.advise);
  };
  const leave = (): void => {
    clearTimeout(state.current.advising);
    void commit().then(() => {
      state.current.draft = undefined;
      setDraft(undefined);
      typing(false);
    });
  };
  useEffect(
    () => () => {
      clearTimeout(state.current.advising);
      void commit();
    },
    [],
  );
  const isNumber = node.kind === 'whole number' || node.kind === 'number';
  const shared = {
    ...common,
    // What is written is in the pack's language, whatever the page's is: a reader's voice and the spelling go by it.
    lang: textAt(desk.fields?.raw, ['language']) || undefined,
    value: draft ?? value,
    autocomplete: 'off' as const,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => input(event.currentTarget.value),
    onBlur: leave,
  };
  if (rows > 1) return <textarea {...shared} rows={rows} />;
  if (node.kind === 'date') return <input {...shared} type="date" />;
  return <input {...shared} type="text" inputMode={isNumber ? 'numeric' : undefined} class={isNumber ? 'number' : undefined} />;
}

interface ChoiceProps {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean;
  readonly value: string;
  readonly choices: readonly (readonly [value: string, label: string])[];
  readonly none: string;
  readonly changed: (value: string) => Promise<void>;
}

/** One of several. What the file has and nobody knows is offered as it is, so that it is not lost. */
function Choice({ value: written, choices, none, changed, ...common }: ChoiceProps): JSX.Element {
  // Somebody who goes through the choices with a key is faster than the file.
  const [chosen, setChosen] = useState<string>();
  const latest = useRef<string>(undefined);
  const value = chosen ?? written;
  const known = choices.some(([each]) => each === value);
  const choose = (next: string): void => {
    latest.current = next;
    setChosen(next);
    void changed(next).then(() => latest.current === next && setChosen(undefined));
  };
  return (
    <select {...common} value={value} onChange={(event) => choose(event.currentTarget.value)}>
      <option value="">{none}</option>
      {!known && value !== '' && <option value={value}>{value}</option>}
      {choices.map(([each, label]) => (
        <option value={each} selected={each === value}>
          {label}
        </option>
      ))}
    </select>
  );
}

/** Stops or pictures of this pack, by name. */
function namesFor(desk: Desk, node: FormNode): readonly (readonly [string, string])[] {
  const raw = desk.fields?.raw;
  if (node.refersTo === 'picture')
    return listAt(raw, ['pictures'])
      .flatMap((_, index) => textAt(raw, ['pictures', index, 'file']) || [])
      .map((file) => [file, file]);
  return listAt(raw, ['stops']).map((_, index) => [
    textAt(raw, ['stops', index, 'id']),
    fill(desk.data.say.stopName, { n: index + 1, opening: textAt(raw, ['stops', index, 'at', 'opening']) || '?' }),
  ]);
}

/** Several of a few: a box to tick for each. */
export function Ticks({ desk, node, steps, everything }: FieldProps): JSX.Element {
  const raw = desk.fields?.raw;
  const choices = node.item?.choices ?? [];
  const ticked = listAt(raw, steps);
  const id = idOf(steps);
  const advice = [pathOf(steps), ...ticked.map((_, index) => pathOf([...steps, index]))].flatMap((path) => adviceFor(desk.look, path, everything));
  return (
    <fieldset class="slot ticks" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      <div class="tick-row">
        {choices.map(([value, label]) => (
          <label class="tick">
            <input
              type="checkbox"
              checked={ticked.includes(value)}
              onChange={(event) =>
                void desk.change(
                  tickEdits(
                    raw,
                    steps,
                    choices.map(([each]) => each),
                    value,
                    event.currentTarget.checked,
                  ),
                  pathOf(steps),
                )
              }
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <AdviceList desk={desk} advice={advice} id={id} />
    </fieldset>
  );
}

/** A list of short texts: a line for each, and one more to write on. */
export function TextList({ desk, node, steps, everything }: FieldProps): JSX.Element | null {
  const { item } = node;
  if (!item) return null;
  const list = listAt(desk.fields?.raw, steps);
  // The next line is there as soon as somebody writes on the last one, so that nothing moves when they go on.
  const [begun, setBegun] = useState(0);
  const lines = Math.max(list.length, begun) + 1;
  const id = idOf(steps);
  const { say } = desk.data;
  const label = (index: number): string => (index === lines - 1 && index > 0 ? fill(say.oneMore, { label: node.label }) : fill(say.numbered, { label: node.label, n: index + 1 }));
  return (
    <fieldset class="slot text-list" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, pathOf(steps), everything)} id={id} />
      {Array.from({ length: lines }, (_, index) => (
        <Field key={index} desk={desk} node={item} steps={[...steps, index]} everything={everything} label={label(index)} bare begun={() => setBegun((before) => Math.max(before, index + 1))} />
      ))}
    </fieldset>
  );
}

/** A group whose names are languages: a line for each, and one more with its language to choose. */
export function ByLanguage({ desk, node, steps, everything }: FieldProps): JSX.Element | null {
  const [tag, setTag] = useState('');
  const { item } = node;
  if (!item) return null;
  const { say } = desk.data;
  const id = idOf(steps);
  const there = valueAt(desk.fields?.raw, steps);
  const tags = typeof there === 'object' && !Array.isArray(there) ? Object.keys(there) : [];
  const names = new Intl.DisplayNames([desk.data.language], { type: 'language' });
  const nameOf = (each: string): string => {
    try {
      return names.of(each) ?? each;
    } catch {
      return each;
    }
  };
  const good = /^[a-z]{2,3}(?:-[A-Z]{2})?$/.test(tag) && !tags.includes(tag);
  return (
    <fieldset class="slot text-list" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      {tags.map((each) => (
        <Field key={each} desk={desk} node={item} steps={[...steps, each]} everything={everything} label={nameOf(each)} bare />
      ))}
      <div class="by-language">
        <div class="slot">
          <label for={`${id}-tag`}>{say.languageTag}</label>
          <input id={`${id}-tag`} type="text" class="number" list="language-tags" autocomplete="off" value={tag} onInput={(event) => setTag(event.currentTarget.value.trim())} />
        </div>
        {good && (
          <Field
            key={`new-${tag}`}
            desk={desk}
            node={item}
            steps={[...steps, tag]}
            everything={everything}
            label={fill('{word} ({language})', { word: say.languageWord, language: nameOf(tag) })}
            bare
          />
        )}
      </div>
    </fieldset>
  );
}

export type Part = (props: FieldProps) => ComponentChildren;
