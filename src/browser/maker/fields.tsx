import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Step } from '../../core/pack/pack.ts';
import type { FormNode } from '../../outputs/maker-form.ts';
import { adviceFor } from './advice.ts';
import type { Desk } from './desk.ts';
import { fieldEdits } from './edits.ts';
import { BesideText } from './beside.tsx';
import { Choice, namesFor } from './choice.tsx';
import { Typed } from './typed.tsx';
import { idOf, pathOf, textAt } from './words.ts';

export interface FieldProps {
  readonly desk: Desk;
  readonly node: FormNode;
  readonly steps: readonly Step[];
  /** Shows advice on what is still empty as well. */
  readonly everything: boolean;
}

/** One field that holds one value, `paired` where its name and the other language stand around it already: its name, what it is for, an example, the place to write, and what there is to say about it. */
export function Field(props: FieldProps & { readonly label?: string; readonly bare?: boolean; readonly paired?: boolean; readonly begun?: () => void }): JSX.Element {
  const { desk, node, steps, bare = false, paired = false } = props;
  const id = idOf(steps);
  const [advice, typing] = useCalmAdvice(props);
  const described = [bare || paired ? undefined : `${id}-hint`, advice.length > 0 ? `${id}-advice` : undefined].filter((each) => each !== undefined).join(' ');
  const common = { id, 'aria-describedby': described === '' ? undefined : described, 'aria-invalid': advice.some((each) => each.level === 'stop' && !each.empty) };
  return (
    <div class={`slot slot-${node.kind.replace(/ /g, '-')}`}>
      {!paired && <label for={id}>{props.label ?? node.label}</label>}
      {!bare && !paired && <Hint desk={desk} node={node} id={id} />}
      {desk.beside && !paired && <BesideText desk={desk} node={node} steps={steps} />}
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
  const set = (value: string | boolean): Promise<void> => desk.change((now) => fieldEdits(now, steps, value), pathOf(steps));
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
      return <Typed {...props} value={value} rows={node.kind === 'long text' ? 2 : 1} write={set} />;
  }
}
