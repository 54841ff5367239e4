import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { inks, paper, type Mark } from '../../core/booklet/booklet-schema.ts';
import { inkColours, type Ink } from '../../core/booklet/drawing.ts';
import { Choices } from './choices.tsx';
import { useKeeper, type WholeDesk } from './desk.ts';
import { Lines } from './lines.tsx';
import { follow, placeOnPaper, show } from './sketch.ts';
import { TakeAway, usePlaces } from './text-answer.tsx';
import { SetDown, type Thing } from './set-down.tsx';

interface Props {
  readonly desk: WholeDesk;
  readonly to: string;
}

/** Widths of lines in units of the paper: for small hands the middle one, some 7 pixels on a phone. */
const widths = { '0': 10, '1': 24, '2': 52 } as const;
type Width = keyof typeof widths;

/** Milliseconds after which a line that is still growing is kept as far as it came: small hands draw long without lifting. source: common practice, no source. */
const longLine = 2000;

/** Steps that can be taken back, also after the page was opened anew. */
const mostSteps = 50;

/** The drawing paper of a stop. Two devices that both drew have two papers. */
export function Draw({ desk, to }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const papers = usePlaces(desk, keeper.placed(to, 'drawing'));
  return (
    <>
      {papers.length > 1 && <p class="note">{words.screen.write.two}</p>}
      {papers.map(({ place, entry }) => (
        <div class="one-answer" key={place}>
          <Paper
            desk={desk}
            name={`${to}-${String(place)}`}
            marks={entry?.value.marks ?? []}
            about={entry?.value.about ?? ''}
            onChange={(marks, about) => keeper.put(to, { kind: 'drawing', about, marks: [...marks] }, place)}
          />
          {entry && papers.length > 1 && <TakeAway label={words.screen.write.takeAway} onTake={() => keeper.remove(entry)} />}
        </div>
      ))}
    </>
  );
}

interface PaperProps {
  readonly desk: WholeDesk;
  readonly name: string;
  readonly marks: readonly Mark[];
  readonly about: string;
  readonly onChange: (marks: readonly Mark[], about: string) => void;
}

function Paper({ desk, name, marks, about, onChange }: PaperProps): JSX.Element {
  const say = desk.words.screen.draw;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [ink, setInk] = useState<Ink>('black');
  const [width, setWidth] = useState<Width>('1');
  const [thing, setThing] = useState<Thing>();
  const [undone, setUndone] = useState<readonly (readonly Mark[])[]>([]);
  // Steps back to begin with: the drawing without its last marks, one by one.
  const [steps, setSteps] = useState<readonly (readonly Mark[])[]>(() => marks.slice(-mostSteps).map((_, index, last) => marks.slice(0, marks.length - last.length + index)));
  const now = useRef({ marks, about, ink, width, thing, onChange });
  now.current = { marks, about, ink, width, thing, onChange };

  // While a long line grows: the drawing without it, and when it was last kept.
  const growing = useRef<{ readonly before: readonly Mark[]; kept: number }>(null);

  const change = (next: readonly Mark[]) => {
    setSteps((before) => [...before, now.current.marks].slice(-mostSteps));
    setUndone([]);
    now.current = { ...now.current, marks: next };
    onChange(next, now.current.about);
  };
  const undo = () => {
    const before = steps.at(-1);
    if (!before) return;
    setSteps(steps.slice(0, -1));
    setUndone([...undone, marks]);
    onChange(before, about);
    desk.announce(say.undone);
  };
  const redo = () => {
    const next = undone.at(-1);
    if (!next) return;
    setUndone(undone.slice(0, -1));
    setSteps([...steps, marks]);
    onChange(next, about);
    desk.announce(say.redone);
  };

  useLayoutEffect(() => {
    if (canvas.current) show(canvas.current, marks);
  }, [marks]);
  useEffect(() => {
    const at = canvas.current;
    if (!at) return;
    const again = new ResizeObserver(() => show(at, now.current.marks));
    again.observe(at);
    const hand = follow(at, {
      brush: () => (now.current.thing ? undefined : { ink: now.current.ink, width: widths[now.current.width] }),
      onGrow: (line) => {
        const under = (growing.current ??= { before: now.current.marks, kept: performance.now() });
        show(at, [...under.before, line]);
        if (performance.now() - under.kept < longLine) return;
        under.kept = performance.now();
        now.current.onChange([...under.before, line], now.current.about);
      },
      onLine: (line) => {
        if (growing.current) now.current = { ...now.current, marks: growing.current.before };
        growing.current = null;
        change([...now.current.marks, line]);
      },
    });
    // A page that is put away in the middle of a line keeps the line as far as it came.
    const hidden = () => document.visibilityState === 'hidden' && hand.finish();
    document.addEventListener('visibilitychange', hidden, { capture: true });
    addEventListener('pagehide', hand.finish, { capture: true });
    return () => {
      again.disconnect();
      hand.stop();
      document.removeEventListener('visibilitychange', hidden, { capture: true });
      removeEventListener('pagehide', hand.finish, { capture: true });
    };
  }, []);

  const lines = marks.filter((mark) => mark.do === 'line').length;
  const setDown = (x: number, y: number, what: Thing) => {
    change([...now.current.marks, { ...what.mark, ink: now.current.ink, x, y }]);
    desk.announce(say.setDown(what.name));
  };
  const moveLast = (acrossBy: number, downBy: number) => {
    const last = marks.at(-1);
    if (!last || last.do === 'line') return;
    const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
    change([...marks.slice(0, -1), { ...last, x: within(last.x + acrossBy, paper.width), y: within(last.y + downBy, paper.height) }]);
  };
  return (
    <div class="drawing-desk">
      <canvas
        ref={canvas}
        class={thing ? 'drawing-paper taps' : 'drawing-paper'}
        role="img"
        aria-label={`${say.paper}. ${about === '' ? say.inPaper(lines, marks.length - lines) : about}`}
        onClick={(event) => {
          if (!thing) return;
          const [x, y] = placeOnPaper(event.currentTarget, event);
          setDown(x, y, thing);
        }}
      />
      <p class="button-row">
        <button type="button" class="quiet" aria-disabled={steps.length === 0} onClick={undo}>
          {say.undo}
        </button>
        <button type="button" class="quiet" aria-disabled={undone.length === 0} onClick={redo}>
          {say.redo}
        </button>
        <button
          type="button"
          class="quiet"
          aria-disabled={marks.length === 0}
          onClick={() => {
            if (marks.length === 0) return;
            change([]);
            desk.announce(say.cleared);
          }}
        >
          {say.clear}
        </button>
      </p>
      <Choices
        legend={say.width}
        group={`width-${name}`}
        kind="in-a-row"
        chosen={width}
        choices={(Object.keys(widths) as Width[]).map((value, index) => ({
          value,
          name: (
            <>
              <svg class="line-sample" viewBox="0 0 40 20" aria-hidden="true" focusable="false">
                <path d="M6 12Q14 4 20 10T34 8" fill="none" stroke="currentColor" stroke-linecap="round" stroke-width={[2, 4.5, 9][index]} />
              </svg>
              {say.widths[index]}
            </>
          ),
        }))}
        onChoose={setWidth}
      />
      <Choices
        legend={say.ink}
        group={`ink-${name}`}
        kind="in-a-row"
        chosen={ink}
        choices={inks.map((value) => ({
          value,
          name: (
            <>
              <svg class="ink-sample" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
                <path d="M3 9C2 3 8 1 13 3s6 8 2 12-11 2-12-6Z" fill={inkColours[value]} />
              </svg>
              {say.inks[value]}
            </>
          ),
        }))}
        onChoose={setInk}
      />
      <SetDown say={say} name={name} thing={thing} onThing={setThing} onPlace={setDown} onMove={marks.at(-1) && marks.at(-1)?.do !== 'line' ? moveLast : undefined} />
      <Lines label={say.about} text={about} rows={2} onText={(text) => onChange(marks, text)} />
      <p class="note small">{say.paperToo}</p>
    </div>
  );
}
