import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { directionOf } from '../../core/languages/about-language.ts';
import type { Desk } from './desk.ts';
import { Still } from './still.tsx';
import { fill, listAt, textAt } from './words.ts';

interface StripProps {
  readonly desk: Desk;
  readonly put: (opening: number) => void;
  /** Puts a stop on another opening; `focus` names what has the focus then. */
  readonly move: (index: number, opening: number, focus: (to: number) => string) => Promise<void>;
  readonly open: number | undefined;
  readonly setOpen: (index: number | undefined) => void;
}

/** The book as a line of openings. A stop hangs from its opening like a bookmark: press, draw, or use the arrow keys. */
export function Strip({ desk, put, move: moveStop, open, setOpen }: StripProps): JSX.Element {
  const moving = useRef(false);
  const { say } = desk.data;
  const raw = desk.fields?.raw;
  const openings = Math.min(200, Number(textAt(raw, ['book', 'openings'])) || 0);
  const stops = listAt(raw, ['stops']).map((_, index) => ({ index, opening: Number(textAt(raw, ['stops', index, 'at', 'opening'])) || 1 }));
  const beyond = stops.filter((stop) => stop.opening > openings);
  const move = (index: number, opening: number): void => {
    // One at a time: a key that is held down would move the stop that came into this one's place.
    if (opening < 1 || opening > openings || moving.current) return;
    moving.current = true;
    void moveStop(index, opening, (to) => `mark-${String(to)}`).finally(() => (moving.current = false));
  };
  if (!(openings > 0)) return <p class="note">{say.strip.noOpenings}</p>;
  const mark = (stop: { index: number; opening: number }): JSX.Element => (
    <Mark key={stop.index} desk={desk} index={stop.index} opening={stop.opening} isOpen={open === stop.index} press={() => setOpen(stop.index)} move={(opening) => move(stop.index, opening)} />
  );
  const drawn = (): JSX.Element => (
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
  return <Still on={[openings, stops.map((stop) => stop.opening).join(), open]}>{drawn}</Still>;
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
        // The arrow goes where the book goes on.
        const right = directionOf(desk.data.language) === 'rtl' ? -1 : 1;
        const by = { ArrowLeft: -right, ArrowUp: -1, ArrowRight: right, ArrowDown: 1 }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        move(opening + by);
      }}
    >
      <span aria-hidden="true">{index + 1}</span>
    </button>
  );
}
