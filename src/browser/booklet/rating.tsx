import type { JSX } from 'preact';
import { Star } from '../../../layouts/parts/ornaments.tsx';
import { wholeBook } from '../../core/booklet/booklet.ts';
import { useKeeper, type WholeDesk } from './desk.ts';
import { TextAnswer } from './text-answer.tsx';

/** Stars for the whole book: real radio buttons, each with its words, and a line for the reason. */
export function Rating({ desk, rating }: { readonly desk: WholeDesk; readonly rating: NonNullable<WholeDesk['data']['rating']> }): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.rating;
  const kept = keeper.placed(wholeBook, 'stars').map(({ entry }) => entry.value.stars);
  return (
    <>
      <fieldset class="choices star-choices">
        <legend>{say.legend}</legend>
        <div class="choice-list">
          {rating.words.map((name, index) => (
            <label class="choice">
              <input
                type="radio"
                name="stars"
                value={index + 1}
                checked={kept.includes(index + 1)}
                onChange={() => keeper.putOnly(wholeBook, { kind: 'stars', stars: index + 1, of: rating.words.length, words: name }, 'stars')}
              />
              <span class="stars" aria-hidden="true">
                {Array.from({ length: index + 1 }, () => (
                  <Star />
                ))}
              </span>
              <span class="choice-name">
                <span class="unseen">{words.stars(index + 1)}: </span>
                {name}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <TextAnswer desk={desk} to={wholeBook} kind="because" label={say.because} />
      {rating.reasons.length > 0 && (
        <>
          <p class="label">{say.reasons}</p>
          <ul class="reasons">
            {rating.reasons.map((reason) => (
              <li>{reason}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
