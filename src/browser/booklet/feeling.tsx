import type { JSX } from 'preact';
import type { FeelingData, StopData } from '../../outputs/booklet-data.ts';
import { useKeeper, type WholeDesk } from './desk.ts';
import { useOwnId } from './own-id.ts';

const cannotTell = 'cannot-tell';

/** Words for feelings, kin beside kin from mild to strong, each with a situation. "I can't tell" is one of the answers. */
export function Feeling({ desk, stop }: { readonly desk: WholeDesk; readonly stop: StopData }): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.feeling;
  const group = useOwnId();
  const kept = keeper.placed(stop.id, 'feeling', 'cannot-tell');
  const chosen = new Set(kept.map(({ entry: { value } }) => (value.kind === 'feeling' ? value.word : cannotTell)));
  const { near, other } = kinOf(desk, stop);
  const choose = ({ word, family, strength }: FeelingData) =>
    keeper.putOnly(stop.id, family === '' ? { kind: 'feeling', word } : { kind: 'feeling', word, family, strength }, 'feeling', 'cannot-tell');
  const row = (each: FeelingData) => (
    <label class="choice feeling-word">
      <input type="radio" name={group} value={each.word} checked={chosen.has(each.word)} onChange={() => choose(each)} />
      {each.face.length > 0 && (
        <svg class="face" viewBox="0 0 100 100" aria-hidden="true" focusable="false" fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round">
          {each.face.map(({ d, width, skin }) => (width === 0 ? <path d={d} fill="currentColor" stroke="none" /> : <path d={d} class={skin ? 'skin' : undefined} stroke-width={width} />))}
        </svg>
      )}
      <span class="choice-name">
        <span class="the-word">{each.word}</span>
        {each.family !== '' && <span class="how-strong">{say.strengths[each.strength - 1]}</span>}
        {each.situation !== '' && <span class="when">{each.situation}</span>}
      </span>
    </label>
  );
  const kin = (list: readonly (readonly FeelingData[])[]) =>
    list.map((members) => (
      <div class="kin" role="group" aria-label={members[0]?.kin || say.none}>
        {(members[0]?.kin ?? '') !== '' && (
          <p class="label" aria-hidden="true">
            {members[0]?.kin}
          </p>
        )}
        {members.map(row)}
      </div>
    ));
  return (
    <fieldset class="feeling">
      <legend>{stop.about === undefined ? say.none : say[stop.about]}</legend>
      {kin(near)}
      {other.length > 0 && (
        <details open={other.flat().some(({ word }) => chosen.has(word))}>
          <summary>{say.others}</summary>
          {kin(other)}
        </details>
      )}
      <label class="choice feeling-word">
        <input type="radio" name={group} value={cannotTell} checked={chosen.has(cannotTell)} onChange={() => keeper.putOnly(stop.id, { kind: 'cannot-tell' }, 'feeling', 'cannot-tell')} />
        <span class="choice-name">
          <span class="the-word">{say.cannotTell}</span>
          <span class="when">{say.cannotTellNote}</span>
        </span>
      </label>
      {kept.length > 0 && (
        <button type="button" class="quiet" onClick={() => keeper.putOnly(stop.id, undefined, 'feeling', 'cannot-tell')}>
          {say.rubOut}
        </button>
      )}
    </fieldset>
  );
}

/** Families that hold one of the stop's own words come first; the others are folded away. A word of the stop that has no family stands alone. */
function kinOf({ data }: WholeDesk, stop: StopData): { readonly near: readonly (readonly FeelingData[])[]; readonly other: readonly (readonly FeelingData[])[] } {
  const families = [...new Set(data.feelings.map(({ family }) => family))].map((family) => data.feelings.filter((each) => each.family === family).sort((a, b) => a.strength - b.strength));
  const isNear = (members: readonly FeelingData[]) => members.some(({ word }) => stop.words.includes(word));
  const alone = stop.feeling
    ? stop.words.filter((word) => !data.feelings.some((each) => each.word === word)).map((word): FeelingData => ({ word, family: '', kin: '', strength: 1, situation: '', face: [] }))
    : [];
  const near = [...families.filter(isNear), ...(alone.length > 0 ? [alone] : [])];
  return near.length > 0 ? { near, other: families.filter((members) => !isNear(members)) } : { near: families, other: [] };
}
