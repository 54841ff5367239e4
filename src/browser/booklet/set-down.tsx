import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { brows, eyes, mouths, paper, stamps, type Mark } from '../../core/booklet/booklet-schema.ts';
import { pathsOf, type Stamp } from '../../core/booklet/drawing.ts';
import { Choices } from './choices.tsx';
import type { WholeDesk } from './desk.ts';

type Set = Exclude<Mark, { do: 'line' }>;
/** A thing to set down: what it is, and its name in words. */
export interface Thing {
  readonly mark: Omit<Extract<Set, { do: 'stamp' }>, 'ink' | 'x' | 'y'> | Omit<Extract<Set, { do: 'face' }>, 'ink' | 'x' | 'y'>;
  readonly name: string;
}

interface Props {
  readonly say: WholeDesk['words']['screen']['draw'];
  readonly name: string;
  readonly thing: Thing | undefined;
  readonly onThing: (thing: Thing | undefined) => void;
  readonly onPlace: (x: number, y: number, thing: Thing) => void;
  /** Moves the last thing, when the last mark is one. */
  readonly onMove: ((acrossBy: number, downBy: number) => void) | undefined;
}

/** Sizes in units of the paper, and how far one move goes. */
const sizes = { '0': 140, '1': 260, '2': 460 } as const;
type Size = keyof typeof sizes;
const oneMove = 60;

type Chosen = Stamp | 'face';

/** Drawing without a line: a face with its features, or a shape, set down with a tap or by choosing a place. All of it works with keys alone. */
export function SetDown({ say, name, thing, onThing, onPlace, onMove }: Props): JSX.Element {
  const [size, setSize] = useState<Size>('1');
  const [face, setFace] = useState<{ readonly eyes: (typeof eyes)[number]; readonly brows: (typeof brows)[number]; readonly mouth: (typeof mouths)[number] }>({
    eyes: 'open',
    brows: 'level',
    mouth: 'flat',
  });
  const [place, setPlace] = useState('4');
  const chosen: Chosen | undefined = thing?.mark.do === 'face' ? 'face' : thing?.mark.shape;
  const choose = (what: Chosen, how = face, large = size) =>
    onThing(what === 'face' ? { mark: { do: 'face', ...how, size: sizes[large] }, name: say.face } : { mark: { do: 'stamp', shape: what, size: sizes[large] }, name: say.things[what] });
  const feature = (part: Partial<typeof face>) => {
    const next = { ...face, ...part };
    setFace(next);
    choose('face', next);
  };
  return (
    <details class="set-down" onToggle={(event) => !event.currentTarget.open && onThing(undefined)}>
      <summary>{say.without}</summary>
      <p class="note">{say.withoutNote}</p>
      <Choices
        legend={say.thing}
        group={`thing-${name}`}
        kind="in-a-row things"
        chosen={chosen}
        choices={(['face', ...stamps] as const).map((value) => ({
          value,
          name: (
            <>
              <Sample mark={value === 'face' ? { do: 'face', ...face, ink: 'black', x: 50, y: 50, size: 100 } : { do: 'stamp', shape: value, ink: 'black', x: 50, y: 50, size: 100 }} />
              {value === 'face' ? say.face : say.things[value]}
            </>
          ),
        }))}
        onChoose={(value) => choose(value)}
      />
      {chosen === 'face' && (
        <div class="features">
          <Choices
            legend={say.eyes}
            group={`eyes-${name}`}
            kind="in-a-row"
            chosen={face.eyes}
            choices={eyes.map((value) => ({ value, name: say.eyeNames[value] }))}
            onChoose={(value) => feature({ eyes: value })}
          />
          <Choices
            legend={say.brows}
            group={`brows-${name}`}
            kind="in-a-row"
            chosen={face.brows}
            choices={brows.map((value) => ({ value, name: say.browNames[value] }))}
            onChoose={(value) => feature({ brows: value })}
          />
          <Choices
            legend={say.mouth}
            group={`mouth-${name}`}
            kind="in-a-row"
            chosen={face.mouth}
            choices={mouths.map((value) => ({ value, name: say.mouthNames[value] }))}
            onChoose={(value) => feature({ mouth: value })}
          />
        </div>
      )}
      <Choices
        legend={say.size}
        group={`size-${name}`}
        kind="in-a-row"
        chosen={size}
        choices={(Object.keys(sizes) as Size[]).map((value, index) => ({ value, name: say.sizes[index] ?? '' }))}
        onChoose={(value) => {
          setSize(value);
          if (chosen) choose(chosen, face, value);
        }}
      />
      <Choices legend={say.place} group={`place-${name}`} kind="nine" chosen={place} choices={say.places.map((each, index) => ({ value: String(index), name: each }))} onChoose={setPlace} />
      <p class="button-row">
        <button
          type="button"
          class="page-button"
          aria-disabled={!thing}
          onClick={() => thing && onPlace((((Number(place) % 3) + 0.5) * paper.width) / 3, ((Math.floor(Number(place) / 3) + 0.5) * paper.height) / 3, thing)}
        >
          {say.set}
        </button>
      </p>
      {onMove && (
        <div class="moves" role="group" aria-label={say.move}>
          <p class="label" aria-hidden="true">
            {say.move}
          </p>
          <p class="button-row">
            {(
              [
                ['left', -oneMove, 0],
                ['right', oneMove, 0],
                ['up', 0, -oneMove],
                ['down', 0, oneMove],
              ] as const
            ).map(([to, acrossBy, downBy]) => (
              <button type="button" class="quiet" onClick={() => onMove(acrossBy, downBy)}>
                {say.moves[to]}
              </button>
            ))}
          </p>
        </div>
      )}
    </details>
  );
}

function Sample({ mark }: { readonly mark: Mark }): JSX.Element {
  return (
    <svg class="thing-sample" viewBox="-4 -4 108 108" aria-hidden="true" focusable="false" fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round">
      {pathsOf(mark).map(({ d, width, filled }) => (
        <path d={d} transform="translate(50 50)" stroke-width={width} fill={filled ? 'currentColor' : 'none'} />
      ))}
    </svg>
  );
}
