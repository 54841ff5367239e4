import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { useKeeper, type Desk } from './desk.ts';
import { Lines } from './lines.tsx';

type TextKind = 'said' | 'acted' | 'because';

interface Props {
  readonly desk: Desk;
  readonly to: string;
  readonly kind: TextKind;
  readonly label: string;
}

/** A plain text kept for a stop. When two devices wrote, both are there, each with a way to take it away. */
export function TextAnswer({ desk, to, kind, label }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const places = usePlaces(desk, keeper.placed(to, kind));
  return (
    <>
      {places.length > 1 && <p class="note">{words.screen.write.two}</p>}
      {places.map(({ place, entry }) => (
        <div class="one-answer" key={place}>
          <Lines label={label} text={entry?.value.text ?? ''} rows={2} onText={(text) => keeper.put(to, { kind, text }, place)} />
          {entry && places.length > 1 && <TakeAway label={words.screen.write.takeAway} onTake={() => keeper.remove(entry)} />}
        </div>
      ))}
    </>
  );
}

/** What is kept, or one empty place that stays the same while it is filled and emptied. */
export function usePlaces<E>({ keeper }: Desk, placed: readonly { readonly place: number; readonly entry: E }[]): readonly { readonly place: number; readonly entry: E | undefined }[] {
  const last = useRef(0);
  const [first] = placed;
  if (first) last.current = first.place;
  else if (last.current === 0) last.current = keeper.newPlace();
  return first ? placed : [{ place: last.current, entry: undefined }];
}

export function TakeAway({ label, onTake }: { readonly label: string; readonly onTake: () => void }): JSX.Element {
  return (
    <button type="button" class="quiet" onClick={onTake}>
      {label}
    </button>
  );
}
