import type { JSX } from 'preact';
import { FeelingPath } from '../../../layouts/parts/feeling-path.tsx';
import { feelingPath } from '../../core/measure/feeling-path.ts';
import { feelingCounts, framesUsed, starsGiven, stopCounts } from '../../classroom/counts.ts';
import { booksChosen } from '../../classroom/best-of.ts';
import { ChosenFigure } from './chosen-figure.tsx';
import type { Desk, Here } from './desk.ts';
import { FeelingsFigure } from './feelings-figure.tsx';
import { StarsFigure } from './stars-figure.tsx';

/** Counts of the whole class, for the teacher alone: who answered, feeling words along the story, frames, stars. */
export function ClassCounts({ desk, here }: { readonly desk: Desk; readonly here: Here }): JSX.Element {
  const say = desk.words.stack.counts;
  const { pack } = here;
  const { stack } = desk.state;
  const lang = desk.langOf(pack);
  const frames = framesUsed(stack, pack).filter(({ wrote }) => wrote > 0);
  const given = starsGiven(stack, pack);
  const chosen = booksChosen(stack, pack);
  const { kinds } = desk.words.booklet.file;
  return (
    <>
      <p class="note">{say.onlyYou}</p>
      <section class="counted" aria-labelledby="ways-counted">
        <h3 id="ways-counted">{say.ways}</h3>
        <div class="wide-enough" role="group" aria-label={say.ways} tabIndex={0}>
          <table>
            <thead>
              <tr>
                {say.waysHeads.map((head) => (
                  <th scope="col">{head}</th>
                ))}
              </tr>
            </thead>
            <tbody>
              {stopCounts(stack, pack).map(({ stop, number, answered, kinds: found }) => (
                <tr>
                  <th scope="row">
                    <span lang={lang}>{desk.words.stack.look.stopOf(number, stop.ask)}</span>
                  </th>
                  <td>{answered}</td>
                  <td>{found.map(({ kind, children }) => say.way(kind === 'cannot-tell' ? say.couldNotTell : kinds[kind], children)).join(desk.words.comma)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </section>
      <section class="counted beside-path" aria-label={say.feelings}>
        <FeelingsFigure id="class-feelings" desk={desk} pack={pack} stops={feelingCounts(stack, pack)} />
        {here.known && feelingPath(pack).length > 0 && (
          <div>
            <FeelingPath id="pack-path" pack={pack} say={desk.words} headingLevel={3} lang={lang} />
            <p class="note">{say.besidePath}</p>
          </div>
        )}
      </section>
      <section class="counted" aria-labelledby="frames-counted">
        <h3 id="frames-counted">{say.frames}</h3>
        <p class="note">{frames.length === 0 ? say.noFrames : say.framesNote}</p>
        {frames.map(({ number, wrote, ownWay, frames: used }) => (
          <table class="frames-table">
            <caption>{say.framesCaption(number, wrote)}</caption>
            <thead>
              <tr>
                {say.framesHeads.map((head) => (
                  <th scope="col">{head}</th>
                ))}
              </tr>
            </thead>
            <tbody>
              {used.map(({ frame, children }) => (
                <tr>
                  <th scope="row">
                    <span lang={lang}>{frame}</span>
                  </th>
                  <td>{children}</td>
                </tr>
              ))}
              <tr>
                <th scope="row">
                  <em>{say.ownWay}</em>
                </th>
                <td>{ownWay}</td>
              </tr>
            </tbody>
          </table>
        ))}
      </section>
      <div class="beside-path">
        <section class="counted">
          {given.stars.n === 0 ? (
            <>
              <h3>{say.stars}</h3>
              <p>{say.starsNone}</p>
            </>
          ) : (
            <StarsFigure id="class-stars" desk={desk} stars={given.stars} words={given.words} note={say.starsNote} />
          )}
          {given.because.length > 0 && (
            <>
              <h4>{say.because}</h4>
              <ul class="because-list" lang={lang}>
                {given.because.map((text) => (
                  <li dir="auto">{text}</li>
                ))}
              </ul>
            </>
          )}
        </section>
        {(pack.bestOf ?? chosen.n > 0) && (
          <section class="counted">
            {chosen.n + chosen.nLast === 0 ? (
              <>
                <h3>{say.chosen.title}</h3>
                <p>{say.chosen.none}</p>
              </>
            ) : (
              <ChosenFigure id="class-chosen" desk={desk} chosen={chosen} lang={lang} />
            )}
          </section>
        )}
      </div>
    </>
  );
}
