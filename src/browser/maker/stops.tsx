import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { FormNode } from '../../outputs/maker-form.ts';
import { adviceFor, type Desk } from './desk.ts';
import { moveStopEdits, newStopEdits } from './edits.ts';
import { AdviceList } from './fields.tsx';
import { FieldsOf } from './groups.tsx';
import { MinutesBox, spanOf } from './minutes.tsx';
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
    const { edits, at } = newStopEdits(raw, opening);
    setOpen(at);
    void desk.change(edits, '', { focus: idOf(['stops', at, 'at', 'cue']) });
  };
  const isOpen = open !== undefined && open < stops.length;
  return (
    <>
      <Strip desk={desk} put={put} open={isOpen ? open : undefined} setOpen={setOpen} />
      <MinutesBox desk={desk} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, 'stops', everything)} id={idOf(['stops'])} />
      {stops.length > 0 && <StopList desk={desk} open={isOpen ? open : undefined} setOpen={setOpen} />}
      <p>
        <button type="button" class="page-button" onClick={() => put(Math.max(1, Number(textAt(raw, ['stops', stops.length - 1, 'at', 'opening'])) || 1))}>
          {say.items['stops']?.[1]}
        </button>
      </p>
      {isOpen && <OpenStop key={open} desk={desk} item={item} everything={everything} index={open} setOpen={setOpen} />}
    </>
  );
}

function OpenStop({
  desk,
  item,
  everything,
  index,
  setOpen,
}: {
  readonly desk: Desk;
  readonly item: FormNode;
  readonly everything: boolean;
  readonly index: number;
  readonly setOpen: Props['setOpen'];
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
  return (
    <fieldset class="item open-stop" id={id} tabIndex={-1}>
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

interface StripProps {
  readonly desk: Desk;
  readonly put: (opening: number) => void;
  readonly open: number | undefined;
  readonly setOpen: Props['setOpen'];
}

/** The book as a line of openings. A stop hangs from its opening like a bookmark: press, draw, or use the arrow keys. */
function Strip({ desk, put, open, setOpen }: StripProps): JSX.Element {
  const raw = desk.fields?.raw;
  const { say } = desk.data;
  const openings = Math.min(200, Number(textAt(raw, ['book', 'openings'])) || 0);
  const stops = listAt(raw, ['stops']).map((_, index) => ({ index, opening: Number(textAt(raw, ['stops', index, 'at', 'opening'])) || 1 }));
  const beyond = stops.filter((stop) => stop.opening > openings);
  const move = (index: number, opening: number): void => {
    if (opening < 1 || opening > openings) return;
    const { edits, to } = moveStopEdits(raw, index, opening);
    if (open === index) setOpen(to);
    void desk.change(edits, `move ${String(index)}`, { focus: `mark-${String(to)}`, say: fill(say.strip.moved, { n: to + 1, opening }) });
  };
  if (!(openings > 0)) return <p class="note">{say.strip.noOpenings}</p>;
  const mark = (stop: { index: number; opening: number }): JSX.Element => (
    <Mark key={stop.index} desk={desk} index={stop.index} opening={stop.opening} isOpen={open === stop.index} press={() => setOpen(stop.index)} move={(opening) => move(stop.index, opening)} />
  );
  return (
    <>
      <p class="note" id="strip-help">
        {say.strip.help}
      </p>
      <ol class="strip" id="strip" tabIndex={-1} aria-label={say.strip.name} aria-describedby="strip-help">
        {Array.from({ length: openings }, (_, each) => each + 1).map((opening) => (
          <li data-opening={opening}>
            <button type="button" class="leaf" aria-label={fill(say.strip.put, { n: opening })} onClick={() => put(opening)}>
              <span aria-hidden="true">{opening}</span>
            </button>
            {stops.filter((stop) => stop.opening === opening).map(mark)}
          </li>
        ))}
      </ol>
      {beyond.length > 0 && (
        <div class="beyond">
          <p class="note">{say.strip.pastEnd}</p>
          {beyond.map(mark)}
        </div>
      )}
    </>
  );
}

interface MarkProps {
  readonly desk: Desk;
  readonly index: number;
  readonly opening: number;
  readonly isOpen: boolean;
  readonly press: () => void;
  readonly move: (opening: number) => void;
}

/** One stop on the line. A press opens it, drawing it to another opening moves it, and so do the arrow keys. */
function Mark({ desk, index, opening, isOpen, press, move }: MarkProps): JSX.Element {
  const from = useRef<{ x: number; y: number } | undefined>(undefined);
  const [shift, setShift] = useState<{ x: number; y: number }>();
  const openingAt = (x: number, y: number): number | undefined => {
    const cell = document.elementsFromPoint(x, y).find((each) => each instanceof HTMLElement && each.dataset['opening'] !== undefined);
    return cell instanceof HTMLElement ? Number(cell.dataset['opening']) : undefined;
  };
  const end = (event: PointerEvent): void => {
    const moved = shift;
    from.current = undefined;
    setShift(undefined);
    if (!moved) return;
    const to = openingAt(event.clientX, event.clientY);
    if (to !== undefined && to !== opening) move(to);
  };
  return (
    <button
      type="button"
      id={`mark-${String(index)}`}
      class={`stop-mark${isOpen ? ' is-open' : ''}${shift ? ' is-drawn' : ''}`}
      aria-label={fill(desk.data.say.strip.stop, { n: index + 1, opening })}
      aria-expanded={isOpen}
      ref={(element) => {
        // A style set by a script's own hand is no inline style of the page.
        if (element) element.style.transform = shift ? `translate(${String(shift.x)}px, ${String(shift.y)}px)` : '';
      }}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        from.current = { x: event.clientX, y: event.clientY };
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => {
        if (!from.current) return;
        const by = { x: event.clientX - from.current.x, y: event.clientY - from.current.y };
        if (shift || Math.hypot(by.x, by.y) > 6) setShift(by);
      }}
      onPointerUp={end}
      onPointerCancel={() => {
        from.current = undefined;
        setShift(undefined);
      }}
      onClick={() => {
        if (!shift) press();
      }}
      onKeyDown={(event) => {
        const by = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        move(opening + by);
      }}
    >
      <span aria-hidden="true">{index + 1}</span>
    </button>
  );
}

/** The stops one under another, with the way between them and what each takes. */
function StopList({ desk, open, setOpen }: { readonly desk: Desk; readonly open: number | undefined; readonly setOpen: Props['setOpen'] }): JSX.Element {
  const raw = desk.fields?.raw;
  const { say, kinds } = desk.data;
  let before = 0;
  return (
    <ol class="stop-lines" aria-label={say.strip.list}>
      {listAt(raw, ['stops']).map((_, index) => {
        const value = (...steps: readonly string[]) => textAt(raw, ['stops', index, ...steps]);
        const opening = Number(value('at', 'opening')) || 0;
        const gap = opening - before;
        before = opening;
        const seconds = desk.look?.minutes?.stops.find((each) => each.id === value('id'));
        return (
          <li>
            <button type="button" id={`${idOf(['stops', index])}-line`} class="stop-line" aria-expanded={open === index} onClick={() => setOpen(open === index ? undefined : index)}>
              <span class="stop-number">{index + 1}</span>
              <span class="stop-words">
                <span class="stop-ask" lang={value('ask') === '' ? undefined : textAt(raw, ['language']) || undefined}>
                  {value('ask') || say.strip.noQuestion}
                </span>
                <span class="stop-facts">
                  {fill(say.strip.opening, { n: opening || '?' })}
                  {index > 0 && `, ${gap === 0 ? say.strip.sameOpening : counted(say.strip.gap, gap)}`}
                  {value('kind') !== '' && `; ${(kinds as Readonly<Record<string, string>>)[value('kind')] ?? value('kind')}`}
                  {seconds && `; ${fill(say.strip.takes, { span: spanOf(seconds.seconds, say) })}; ${!seconds.first ? say.strip.later : seconds.chosen ? say.strip.short : say.strip.left}`}
                </span>
              </span>
            </button>
          </li>
        );
      })}
    </ol>
  );
}
