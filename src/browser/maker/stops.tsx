import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { FormNode } from '../../outputs/maker-form.ts';
import { adviceFor } from './advice.ts';
import type { Desk } from './desk.ts';
import { isOutOfOrder, moveStopEdits, newStopEdits } from './edits.ts';
import { AdviceList } from './fields.tsx';
import { FieldsOf } from './groups.tsx';
import { MinutesBox, spanOf } from './minutes.tsx';
import { Still } from './still.tsx';
import { Strip } from './strip.tsx';
import { counted, fill, idOf, listAt, textAt } from './words.ts';

interface Props {
  readonly desk: Desk;
  readonly node: FormNode;
  readonly everything: boolean;
  /** The stop that is open, by its number from 0. */
  readonly open: number | undefined;
  readonly setOpen: (index: number | undefined) => void;
}

/** The stops: the book as a line of openings, the minutes, and one stop at a time to fill in. */
export function Stops({ desk, node, everything, open, setOpen }: Props): JSX.Element | null {
  const { item } = node;
  const raw = desk.fields?.raw;
  const { say } = desk.data;
  const stops = listAt(raw, ['stops']);
  if (!item) return null;
  const put = (opening: number): void => {
    void desk.change((now) => {
      const { edits, at } = newStopEdits(now, opening);
      setOpen(at);
      desk.focusNext = idOf(['stops', at, 'at', 'cue']);
      return edits;
    }, '');
  };
  const isOpen = open !== undefined && open < stops.length;
  const shown = useRef({ open, key: 0, movedTo: open });
  // A stop that moves among the others stays the same one in the form; another one begins anew.
  if (shown.current.open !== open) shown.current = { open, key: shown.current.key + (open === shown.current.movedTo ? 0 : 1), movedTo: undefined };
  const move = (index: number, opening: number, focus?: (to: number) => string): Promise<void> => {
    // Known when the change is asked for, and meant for when it has been made: the mark is drawn anew then.
    const then: { focus?: string; say?: string } = {};
    return desk.change(
      (now) => {
        const { edits, to } = moveStopEdits(now, index, opening);
        if (open === index && to !== index) {
          shown.current.movedTo = to;
          setOpen(to);
        }
        if (focus) then.focus = focus(to);
        then.say = fill(say.strip.moved, { n: to + 1, opening });
        return edits;
      },
      `move ${String(index)}`,
      then,
    );
  };
  return (
    <>
      <Strip desk={desk} put={put} move={move} open={isOpen ? open : undefined} setOpen={setOpen} />
      <MinutesBox desk={desk} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, 'stops', everything)} id={idOf(['stops'])} />
      {stops.length > 0 && <StopList desk={desk} open={isOpen ? open : undefined} setOpen={setOpen} />}
      <p>
        <button type="button" class="page-button" onClick={() => put(Math.max(1, Number(textAt(raw, ['stops', stops.length - 1, 'at', 'opening'])) || 1))}>
          {say.items['stops']?.[1]}
        </button>
      </p>
      {isOpen && <OpenStop key={shown.current.key} desk={desk} item={item} everything={everything} index={open} setOpen={setOpen} move={move} />}
    </>
  );
}

function OpenStop({
  desk,
  item,
  everything,
  index,
  setOpen,
  move,
}: {
  readonly desk: Desk;
  readonly item: FormNode;
  readonly everything: boolean;
  readonly index: number;
  readonly setOpen: Props['setOpen'];
  readonly move: (index: number, opening: number) => Promise<void>;
}): JSX.Element {
  const { say } = desk.data;
  const steps = ['stops', index];
  const id = idOf(steps);
  const name = fill(say.items['stops']?.[0] ?? '{n}', { n: index + 1 });
  const close = (): void => {
    setOpen(undefined);
    desk.focusNext = `${id}-line`;
    desk.tell();
  };
  // An opening that was typed puts the stop in its place among the others once the field is left, and not with each digit.
  const typedElsewhere = (event: FocusEvent): void => {
    const field = event.target;
    const opening = field instanceof HTMLInputElement && field.id === idOf([...steps, 'at', 'opening']) ? Number(field.value) : NaN;
    if (Number.isInteger(opening) && opening > 0 && isOutOfOrder(listAt(desk.fields?.raw, ['stops']), index, opening)) void move(index, opening);
  };
  return (
    <fieldset class="item open-stop" id={id} tabIndex={-1} onFocusOut={typedElsewhere}>
      <legend>{name}</legend>
      <AdviceList desk={desk} advice={adviceFor(desk.look, `stops.${String(index)}`, everything)} id={id} />
      <FieldsOf desk={desk} steps={steps} everything={everything} nodes={item.fields ?? []} more={say.moreOf['stops.*'] ?? say.moreFields} />
      <p class="item-buttons">
        <button type="button" class="page-button" onClick={close}>
          {say.strip.close}
        </button>
        <button
          type="button"
          class="word-button"
          onClick={() => {
            setOpen(undefined);
            void desk.change([{ kind: 'remove', steps }], '', { focus: 'strip', say: say.takenAway });
          }}
        >
          {say.takeAway}
          <span class="unseen">: {name}</span>
        </button>
      </p>
    </fieldset>
  );
}

/** The stops one under another, with the way between them and what each takes. */
function StopList({ desk, open, setOpen }: { readonly desk: Desk; readonly open: number | undefined; readonly setOpen: Props['setOpen'] }): JSX.Element {
  const raw = desk.fields?.raw;
  const { say, kinds, comma, semicolon } = desk.data;
  let before = 0;
  return (
    <ol class="stop-lines" aria-label={say.strip.list}>
      {listAt(raw, ['stops']).map((stop, index) => {
        const value = (...steps: readonly string[]) => textAt(raw, ['stops', index, ...steps]);
        const opening = Number(value('at', 'opening')) || 0;
        const gap = opening - before;
        before = opening;
        const seconds = desk.look?.minutes?.stops.find((each) => each.id === value('id'));
        const line = (): JSX.Element => (
          <li>
            <button type="button" id={`${idOf(['stops', index])}-line`} class="stop-line" aria-expanded={open === index} onClick={() => setOpen(open === index ? undefined : index)}>
              <span class="stop-number">{index + 1}</span>
              <span class="stop-words">
                <span class="stop-ask" lang={value('ask') === '' ? undefined : textAt(raw, ['language']) || undefined}>
                  {value('ask') || say.strip.noQuestion}
                </span>
                <span class="stop-facts">
                  {fill(say.strip.opening, { n: opening || '?' })}
                  {index > 0 && `${comma}${gap === 0 ? say.strip.sameOpening : counted(say.strip.gap, gap)}`}
                  {value('kind') !== '' && `${semicolon}${(kinds as Readonly<Record<string, string>>)[value('kind')] ?? value('kind')}`}
                  {seconds &&
                    `${semicolon}${fill(say.strip.takes, { span: spanOf(seconds.seconds, say) })}${semicolon}${!seconds.first ? say.strip.later : seconds.chosen ? say.strip.short : say.strip.left}`}
                </span>
              </span>
            </button>
          </li>
        );
        return (
          <Still key={index} on={[stop, index, gap, seconds, open === index, textAt(raw, ['language'])]}>
            {line}
          </Still>
        );
      })}
    </ol>
  );
}
