import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { entriesOf, type Kind } from '../../core/booklet/booklet.ts';
import type { Way } from '../../core/pack/pack.ts';
import type { StopData } from '../../outputs/booklet-data.ts';
import { useKeeper, type Desk } from './desk.ts';
import { DrawingAgain } from './drawing-again.tsx';
import { Late } from './late.tsx';
import { parts } from './parts.ts';
import { TextAnswer } from './text-answer.tsx';
import { Write } from './write.tsx';

type Room = 'write' | 'draw' | 'feeling' | 'say' | 'act' | 'pass';

const rooms: readonly Room[] = ['write', 'draw', 'feeling', 'say', 'act', 'pass'];

/** The room in which a way to answer is at home on the screen: telling a partner is a way of saying. */
const roomOf: Readonly<Record<Way, Room>> = { write: 'write', draw: 'draw', say: 'say', act: 'act', partner: 'say' };

const kindsIn: Readonly<Record<Room, readonly Kind[]>> = { write: ['written'], draw: ['drawing'], feeling: ['feeling', 'cannot-tell'], say: ['said', 'voice'], act: ['acted'], pass: ['passed'] };

interface Props {
  readonly desk: Desk;
  readonly stop: StopData;
}

/** The part of a page on which a child answers: choose a way, then its room. What is in one room stays when another is chosen. */
export function Answering({ desk, stop }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen;
  const entries = keeper.booklet ? entriesOf(keeper.booklet, stop.id) : [];
  const isFilled = (room: Room) => entries.some(({ value }) => kindsIn[room].includes(value.kind) || (value.kind === 'photo' && room === photoRoom(stop)));
  const first = firstRooms(stop);
  const offered = [...first, ...rooms.filter((room) => !first.includes(room))].filter((room) => room !== 'feeling' || hasFeelings(desk, stop));
  const [room, setRoom] = useState<Room>(() => offered.find(isFilled) ?? offered[0] ?? 'write');
  const answered = entries.length > 0;
  return (
    <>
      <fieldset class="choices ways">
        <legend>{say.how}</legend>
        <div class="choice-list">
          {offered.map((each) => (
            <label class="choice">
              <input type="radio" name={`way-${stop.id}`} value={each} checked={each === room} onChange={() => setRoom(each)} />
              {first.includes(each) && each !== 'feeling' && <DrawingAgain like={drawingOf(stop, each === 'say' && stop.ways.includes('partner') ? 'partner' : each)} />}
              <span class="choice-name">
                {say.ways[each]}
                {isFilled(each) && (
                  <>
                    <span class="has-answer" aria-hidden="true" />
                    <span class="unseen"> ({say.has})</span>
                  </>
                )}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <div class={`room room-${room}`} key={room}>
        <RoomInside desk={desk} stop={stop} room={room} />
      </div>
      {(stop.models.length > 0 || stop.expand !== undefined) && (
        <details class="others-say">
          <summary>{answered ? say.models : say.modelsFirst}</summary>
          <ul>
            {stop.models.map((model) => (
              <li>{model}</li>
            ))}
          </ul>
          {stop.expand !== undefined && (
            <p>
              <span class="label">{say.expand}</span> {stop.expand}
            </p>
          )}
        </details>
      )}
    </>
  );
}

/** The ways that the stop names; at a stop about a feeling, its words stand among the first. */
function firstRooms(stop: StopData): readonly Room[] {
  const named = stop.ways.map((way) => roomOf[way]);
  return [...new Set(stop.feeling ? [...named.slice(0, 1), 'feeling' as const, ...named.slice(1)] : named)];
}

/** Where the sheet for paper shows a way that the stop names: there they stand in the same order. */
const drawingOf = ({ id, ways }: StopData, way: Room | 'partner') => `#stop-${id} .answer-ways svg:nth-of-type(${String(ways.findIndex((each) => each === way) + 1)})`;

/** Where a photo belongs: with what was acted, when the stop asks to act; else with the drawing. */
const photoRoom = (stop: StopData): Room => (stop.ways.includes('act') ? 'act' : 'draw');

function RoomInside({ desk, stop, room }: Props & { readonly room: Room }): JSX.Element {
  const say = desk.words.screen;
  switch (room) {
    case 'write':
      return <Write desk={desk} stop={stop} />;
    case 'draw':
      return (
        <>
          <Late desk={desk} load={parts.draw} props={{ to: stop.id }} />
          {photoRoom(stop) === 'draw' && <Late desk={desk} load={parts.photo} props={{ to: stop.id, of: 'paper' as const }} />}
        </>
      );
    case 'feeling':
      return <Late desk={desk} load={parts.feeling} props={{ stop }} />;
    case 'say':
      return (
        <>
          <p class="note">{stop.ways.includes('partner') ? say.say.partner : say.say.aloud}</p>
          <TextAnswer desk={desk} to={stop.id} kind="said" label={say.say.label} />
          {desk.keeper.settings.microphone ? <Late desk={desk} load={parts.record} props={{ to: stop.id }} /> : <p class="note small">{say.say.micOff}</p>}
        </>
      );
    case 'act':
      return (
        <>
          <p class="note">{say.act.note}</p>
          <TextAnswer desk={desk} to={stop.id} kind="acted" label={say.act.label} />
          {photoRoom(stop) === 'act' && <Late desk={desk} load={parts.photo} props={{ to: stop.id, of: 'acting' as const }} />}
        </>
      );
    case 'pass':
      return <Pass desk={desk} stop={stop} />;
  }
}

function Pass({ desk, stop }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.pass;
  const passed = keeper.placed(stop.id, 'passed').length > 0;
  return (
    <>
      <p class="note">{passed ? say.done : say.note}</p>
      <button type="button" class="page-button" onClick={() => keeper.putOnly(stop.id, passed ? undefined : { kind: 'passed' }, 'passed')}>
        {passed ? say.undo : say.do}
      </button>
    </>
  );
}

/** Whether there is any word to choose at a stop. */
const hasFeelings = ({ data }: Desk, stop: StopData): boolean => data.feelings.length > 0 || (stop.feeling && stop.words.length > 0);
