import type { JSX } from 'preact';
import type { Step } from '../../core/pack/pack.ts';
import type { Tree } from '../../core/pack/scalar-text.ts';
import type { FormNode } from '../../outputs/maker-form.ts';
import { adviceFor } from './advice.ts';
import type { Desk } from './desk.ts';
import { addEdits } from './edits.ts';
import { AdviceList, Field, Hint, type FieldProps } from './fields.tsx';
import { Thumbnail } from './pictures.tsx';
import { partnersOf } from './partners.ts';
import { Still } from './still.tsx';
import { ByLanguage, TextList, Ticks } from './text-lists.tsx';
import { anyPath, fill, idOf, listAt, pathOf, textAt, valueAt } from './words.ts';

/** Any field of the form. It is drawn anew only when something that it shows is another. */
export function AnyField(props: FieldProps): JSX.Element {
  const { desk, node, steps, everything } = props;
  const { fields, look, beside, refused = '' } = desk;
  const path = pathOf(steps);
  const within = node.kind === 'body' ? fields?.body : valueAt(fields?.raw, steps);
  const theirs = node.kind === 'body' ? beside?.fields.body : beside && valueAt(beside.fields.raw, partnersOf(fields?.raw, beside.fields.raw).there(steps) ?? steps);
  const named = namesOthers(node) ? [valueAt(fields?.raw, ['stops']), valueAt(fields?.raw, ['pictures']), desk.pictures] : [];
  const on = [path, within, theirs, beside === undefined, everything, look?.advice, look?.early, refused.startsWith(path) ? refused : '', textAt(fields?.raw, ['language']), ...named];
  return <Still on={on}>{() => <FieldByKind {...props} />}</Still>;
}

const known = new WeakMap<FormNode, boolean>();
/** True for a field that offers names from elsewhere in the pack, or shows a picture, or holds one that does. */
function namesOthers(node: FormNode): boolean {
  const is = known.get(node) ?? (node.refersTo !== undefined || node.path === 'pictures' || [...(node.fields ?? []), ...(node.item ? [node.item] : [])].some(namesOthers));
  known.set(node, is);
  return is;
}

function FieldByKind(props: FieldProps): JSX.Element | null {
  const { node } = props;
  if (node.kind === 'group') return <Group {...props} />;
  if (node.kind === 'by language') return <ByLanguage {...props} />;
  if (node.kind === 'list' && node.item) {
    if (node.item.kind === 'group') return <GroupList {...props} />;
    return node.item.choices ? <Ticks {...props} /> : <TextList {...props} />;
  }
  return <Field {...props} />;
}

/** Fields one after another; those that a pack is good without are folded away at the end. */
export function FieldsOf({ nodes, more, ...props }: Omit<FieldProps, 'node'> & { readonly nodes: readonly FormNode[]; readonly more: string }): JSX.Element {
  const { desk, steps } = props;
  const at = (node: FormNode): readonly Step[] =>
    node.kind === 'body'
      ? ['body']
      : [
          ...steps,
          ...node.path
            .slice(anyPath(steps).length)
            .split('.')
            .filter((step) => step !== ''),
        ];
  const show = (node: FormNode): JSX.Element => <AnyField key={node.path} {...props} node={node} steps={at(node)} />;
  const folded = nodes.filter((node) => node.folded);
  const used = folded.some((node) => valueAt(desk.fields?.raw, at(node)) !== undefined && node.name !== 'id');
  return (
    <>
      {nodes.filter((node) => !node.folded).map(show)}
      {folded.length > 0 && (
        <details class="more" open={used}>
          <summary>{more}</summary>
          {folded.map(show)}
        </details>
      )}
    </>
  );
}

/** A group of fields with a name; one that need not be there is folded until it is used. */
function Group(props: FieldProps): JSX.Element {
  const { desk, node, steps } = props;
  const id = idOf(steps);
  const inner = (
    <>
      <Hint desk={desk} node={node} id={id} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, pathOf(steps), props.everything)} id={id} />
      <FieldsOf {...props} nodes={node.fields ?? []} more={desk.data.say.moreFields} />
    </>
  );
  if (node.required || node.path === 'home')
    return (
      <fieldset class="group" id={id} tabIndex={-1}>
        <legend>{node.label}</legend>
        {inner}
      </fieldset>
    );
  return (
    <details class="more group" open={valueAt(desk.fields?.raw, steps) !== undefined}>
      <summary id={id}>{node.label}</summary>
      {inner}
    </details>
  );
}

/** A list of groups: each with its fields, a way to move it and to take it away, and a button for one more. */
function GroupList(props: FieldProps): JSX.Element | null {
  const { desk, node, steps } = props;
  const { item } = node;
  if (!item) return null;
  const list = listAt(desk.fields?.raw, steps);
  const id = idOf(steps);
  const [itemName, addName] = desk.data.say.items[node.path] ?? ['{n}', '+'];
  return (
    <div class="group-list" role="group" aria-labelledby={id}>
      <h3 id={id} tabIndex={-1}>
        {node.label}
      </h3>
      <Hint desk={desk} node={node} id={id} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, pathOf(steps), props.everything)} id={id} />
      {list.map((_, index) => (
        <Item key={index} {...props} node={item} steps={[...steps, index]} name={fill(itemName, { n: index + 1 })} last={index === list.length - 1} />
      ))}
      <p>
        <button type="button" class="page-button" onClick={() => addItem(desk, node, steps)}>
          {addName}
        </button>
      </p>
    </div>
  );
}

/** Puts an empty item at the end of a list and goes to its first field. */
function addItem(desk: Desk, list: FormNode, steps: readonly Step[]): void {
  const first = list.item?.fields?.find((node) => !node.folded);
  if (!first) return;
  void desk.change((raw) => {
    const { length } = listAt(raw, steps);
    // A reading has its number by itself.
    const value: Tree = list.path === 'readings' ? { reading: length + 1 } : { [first.name]: '' };
    desk.focusNext = idOf([...steps, length, list.path === 'readings' ? 'purpose' : first.name]);
    return addEdits(raw, steps, value);
  }, '');
}

function Item({ name, last, ...props }: FieldProps & { readonly name: string; readonly last: boolean }): JSX.Element {
  const { desk, node, steps } = props;
  const id = idOf(steps);
  const above = steps.slice(0, -1);
  const index = Number(steps.at(-1));
  const { say } = desk.data;
  const move = (to: number): void => void desk.change([{ kind: 'move', steps: above, from: index, to }], '', { focus: idOf([...above, to]) });
  return (
    <fieldset class="item" id={id} tabIndex={-1}>
      <legend>{name}</legend>
      <AdviceList desk={desk} advice={adviceFor(desk.look, pathOf(steps), props.everything)} id={id} />
      {node.path === 'pictures.*' && <Thumbnail desk={desk} index={index} />}
      <FieldsOf {...props} nodes={node.fields ?? []} more={say.moreOf[node.path] ?? say.moreFields} />
      <p class="item-buttons">
        {index > 0 && (
          <button type="button" class="word-button" onClick={() => move(index - 1)}>
            {say.up}
            <span class="unseen">: {name}</span>
          </button>
        )}
        {!last && (
          <button type="button" class="word-button" onClick={() => move(index + 1)}>
            {say.down}
            <span class="unseen">: {name}</span>
          </button>
        )}
        <button type="button" class="word-button" onClick={() => void desk.change([{ kind: 'remove', steps }], '', { focus: idOf(above), say: say.takenAway })}>
          {say.takeAway}
          <span class="unseen">: {name}</span>
        </button>
      </p>
    </fieldset>
  );
}
