import { createRef, type JSX, type RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import { Frame } from '../../../layouts/parts/frame.tsx';
import type { StopData } from '../../outputs/booklet-data.ts';
import { useKeeper, type Desk } from './desk.ts';
import { insert, Lines, undo } from './lines.tsx';
import { TakeAway, usePlaces } from './text-answer.tsx';

/** Writing: frames and words to put in with a tap, lines, and one quiet look that asks and never corrects. */
export function Write({ desk, stop }: { readonly desk: Desk; readonly stop: StopData }): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.write;
  const areas = useRef(new Map<number, RefObject<HTMLTextAreaElement | null>>());
  const places = usePlaces(desk, keeper.placed(stop.id, 'written'));
  const areaOf = (place: number) => {
    const known = areas.current.get(place) ?? createRef<HTMLTextAreaElement>();
    areas.current.set(place, known);
    return known;
  };
  // Buttons write into the field that was used last, or else into the first.
  const used = useRef(0);
  const area = () => (areas.current.get(used.current)?.current ?? areas.current.get(places[0]?.place ?? 0)?.current) || undefined;
  const putIn = (piece: string, frame: boolean) => {
    const into = area();
    if (!into) return;
    const place = [...areas.current].find(([, { current }]) => current === into)?.[0];
    insert(into, piece);
    if (frame) keeper.put(stop.id, { kind: 'written', text: into.value, frames: [...new Set([...framesAt(place), piece])] }, place);
  };
  const framesAt = (place: number | undefined): readonly string[] => keeper.placed(stop.id, 'written').find((each) => each.place === place)?.entry.value.frames ?? [];
  return (
    <div class="write">
      {stop.frames.length > 0 && (
        <div class="frame-buttons">
          <p class="label">{say.frames}</p>
          <ul>
            {stop.frames.map((frame) => (
              <li>
                <button type="button" class="line-button" onClick={() => putIn(frame, true)}>
                  <Frame text={frame} blank={words.blank} />
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
      {stop.words.length > 0 && (
        <div class="word-buttons">
          <p class="label">{say.bank}</p>
          <ul>
            {stop.words.map((word) => (
              <li>
                <button type="button" class="line-button" onClick={() => putIn(word, false)}>
                  {word}
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
      {places.length > 1 && <p class="note">{say.two}</p>}
      {places.map(({ place, entry }) => (
        <div class="one-answer" key={place} onFocusIn={() => (used.current = place)}>
          <Lines label={say.label} field={areaOf(place)} text={entry?.value.text ?? ''} onText={(text) => keeper.put(stop.id, { kind: 'written', text, frames: [...framesAt(place)] }, place)} />
          {entry && places.length > 1 && <TakeAway label={say.takeAway} onTake={() => keeper.remove(entry)} />}
        </div>
      ))}
      <button
        type="button"
        class="quiet"
        onClick={() => {
          const at = area();
          if (at) undo(at);
        }}
      >
        {say.undo}
      </button>
      <details class="quiet-look">
        <summary>{say.look}</summary>
        <ul>
          {say.looks.map((look) => (
            <li>{look}</li>
          ))}
        </ul>
        <p class="note">{say.lookNote}</p>
      </details>
    </div>
  );
}
