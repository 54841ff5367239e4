import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { clock } from '../../../layouts/parts/minutes.ts';
import { localeOf } from '../../core/languages/about-language.ts';
import { judgeables, traitCounts, type TraitCounts } from '../../classroom/judging.ts';
import { noteField, withNotes, type Note } from '../../classroom/note.ts';
import { answersIn, type Answer } from '../../classroom/stack.ts';
import { saveFile } from '../booklet/hand-over.ts';
import { keptLessons } from '../kept-storage.ts';
import { AnswerCard } from './answer.tsx';
import type { Desk, Here } from './desk.ts';

interface Props {
  readonly desk: Desk;
  readonly here: Here;
}

/** What to do next: what the answers had and lacked, three to read aloud, the minutes, and a note for the next reading. */
export function Tomorrow({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const { here } = desk;
  if (!here) return null;
  return (
    <>
      <TraitsHad desk={desk} here={here} />
      <Aloud desk={desk} here={here} />
      <Minutes desk={desk} here={here} />
      {here.known && <FellFlat desk={desk} here={here} />}
    </>
  );
}

/** By trait, and question by question: what most answers had, and what the rubric says to do about what they lacked. */
export function TraitsHad({ desk, here }: Props): JSX.Element {
  const say = desk.words.stack.tomorrow;
  const { scoring, stack } = desk.state;
  const { pack } = here;
  const lang = desk.langOf(pack);
  const judged = judgeables(stack, pack, scoring.seed);
  const counts = traitCounts(judged, scoring).filter(({ n }) => n > 0);
  const full = ({ counts: by }: TraitCounts) => by.at(-1) ?? 0;
  const had = counts.filter((each) => full(each) * 2 > each.n).map(({ trait }) => trait);
  const lacked = counts.filter((each) => full(each) * 2 <= each.n).sort((a, b) => full(a) / a.n - full(b) / b.n);
  const next = pack.rubric?.find(({ trait }) => trait === lacked[0]?.trait);
  const stops = pack.stops.flatMap((stop, index) => {
    const here = traitCounts(
      judged.filter((each) => each.stop === stop.id),
      scoring,
    ).filter(({ n }) => n > 0);
    return here.length === 0 ? [] : [{ number: index + 1, counts: here }];
  });
  return (
    <section class="counted" aria-labelledby="traits-had">
      <h3 id="traits-had">{say.traits}</h3>
      {counts.length === 0 ? (
        <p>{say.notJudged}</p>
      ) : (
        <>
          <p class="agree-sentence">
            {had.length > 0 && say.had(had)} {lacked.length > 0 && say.lacked(lacked.map(({ trait }) => trait))}
          </p>
          {next && (
            <p>
              <span class="label">{say.teach}: </span>
              <span lang={lang}>
                {next.trait}. {next.notYet}
              </span>
            </p>
          )}
          <div class="wide-enough agree-table" role="group" aria-label={say.traits} tabIndex={0}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{say.heads[0]}</th>
                  <th scope="col">{say.heads[1]}</th>
                  {scoring.steps === 2 && <th scope="col">{say.partly}</th>}
                  {stops.map(({ number }) => (
                    <th scope="col">{say.stop(number)}</th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {counts.map((each) => (
                  <tr>
                    <th scope="row">
                      <span lang={lang}>{each.trait}</span>
                    </th>
                    <td>{say.ofN(full(each), each.n)}</td>
                    {scoring.steps === 2 && <td>{each.counts[1]}</td>}
                    {stops.map(({ counts: at }) => {
                      const one = at.find(({ trait }) => trait === each.trait);
                      return <td>{one ? say.ofN(full(one), one.n) : ''}</td>;
                    })}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </section>
  );
}

/** The answers of the booklets that are looked at, by their keys, in the order in which they were chosen. */
function byKeys(here: Here, keys: readonly string[]): readonly Answer[] {
  const all = new Map(here.booklets.flatMap((each) => answersIn(each).map((answer) => [answer.key, answer] as const)));
  return keys.flatMap((key) => all.get(key) ?? []);
}

export function Aloud({ desk, here }: Props): JSX.Element {
  const say = desk.words.stack.tomorrow;
  const chosen = byKeys(here, desk.state.aloud);
  const lang = desk.langOf(here.pack);
  return (
    <section class="counted" aria-labelledby="aloud">
      <h3 id="aloud">{say.aloud}</h3>
      <p class="note">{say.aloudNote}</p>
      {chosen.length === 0 && <p>{say.noAloud}</p>}
      <ul class="side-by-side">
        {chosen.map((answer) => (
          <li key={answer.key}>
            <p class="place" lang={lang}>
              {here.pack.stops.find(({ id }) => id === answer.to)?.ask}
            </p>
            <AnswerCard desk={desk} answer={answer}>
              <AloudTick desk={desk} answer={answer} />
            </AnswerCard>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** So many are read aloud; more would be a reading of its own. */
const mostAloud = 3;

export function AloudTick({ desk, answer: { key, from } }: { readonly desk: Desk; readonly answer: Answer }): JSX.Element {
  const say = desk.words.stack.tomorrow;
  const { aloud } = desk.state;
  const here = new Set(desk.here?.booklets.flatMap((each) => answersIn(each).map((answer) => answer.key)));
  const chosen = aloud.includes(key);
  const full = !chosen && aloud.filter((each) => here.has(each)).length >= mostAloud;
  const id = `aloud-${key}`;
  return (
    <p class="tick">
      <input
        id={id}
        type="checkbox"
        checked={chosen}
        aria-disabled={full}
        onClick={(event) => {
          if (!full) return;
          event.preventDefault();
          desk.announce(say.aloudFull);
        }}
        onChange={() => desk.set({ aloud: chosen ? aloud.filter((each) => each !== key) : [...aloud, key] })}
      />
      <label for={id}>
        {say.aloudTick} <span class="unseen">{desk.markOf(from)}</span>
      </label>
    </p>
  );
}

/** Planned beside taken, where the lesson was followed and kept on this device. */
function Minutes({ desk, here: { pack } }: Props): JSX.Element {
  const say = desk.words.stack.tomorrow;
  const lessons = keptLessons()
    .filter((each) => each.pack === pack.slug && each.language === pack.language)
    .slice(-3)
    .reverse();
  const nameOf = (key: string) => {
    if (key === 'opening' || key === 'closing') return say[key];
    const index = pack.stops.findIndex(({ id }) => id === key);
    return index < 0 ? key : say.stop(index + 1);
  };
  const day = new Intl.DateTimeFormat(localeOf(desk.language), { dateStyle: 'long' });
  return (
    <section class="counted" aria-labelledby="minutes-taken">
      <h3 id="minutes-taken">{say.minutes}</h3>
      {lessons.length === 0 && <p>{say.noMinutes}</p>}
      {lessons.map((lesson) => (
        <table class="frames-table minutes-taken">
          <caption>{say.lesson(day.format(new Date(`${lesson.day}T12:00:00`)), lesson.reading)}</caption>
          <thead>
            <tr>
              {say.minuteHeads.map((head) => (
                <th scope="col">{head}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lesson.parts.map(({ key, planned, took }) => (
              <tr>
                <th scope="row">{nameOf(key)}</th>
                <td>{clock(planned)}</td>
                <td>{clock(took)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}

/** Notes for the next reading, stop by stop, as lines to paste or straight into the pack's file. */
function FellFlat({ desk, here: { pack } }: Props): JSX.Element {
  const say = desk.words.stack.tomorrow;
  const { notes } = desk.state;
  const lang = desk.langOf(pack);
  const nameOf = (stop: string) => `${pack.slug} ${pack.language} ${stop}`;
  const now = new Date();
  const seen = `${String(now.getFullYear())}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
  const written = pack.stops.flatMap(({ id }): readonly Note[] => {
    const note = notes[nameOf(id)]?.trim() ?? '';
    return note === '' ? [] : [{ stop: id, note, seen }];
  });
  const piece = written.length === 0 ? '' : noteField(written);
  const [told, setTold] = useState('');
  const copy = () => {
    // Some browsers have no clipboard for pages that do not come over a safe line.
    const { clipboard } = navigator as { readonly clipboard?: Clipboard };
    void (clipboard ? clipboard.writeText(piece) : Promise.reject(new Error('no clipboard'))).then(
      () => setTold(say.copied),
      () => setTold(say.cannotCopy),
    );
  };
  const intoFile = async (field: HTMLInputElement) => {
    const file = field.files?.[0];
    field.value = '';
    if (!file) return;
    const changed = withNotes(await file.text(), written);
    if (changed === undefined) setTold(say.wrongFile);
    else {
      saveFile(new File([changed], file.name, { type: 'text/markdown' }));
      setTold(say.fileSaved(file.name));
    }
  };
  return (
    <section class="counted fell-flat" aria-labelledby="fell-flat">
      <h3 id="fell-flat">{say.flat}</h3>
      <p class="note">{say.flatNote}</p>
      {pack.stops.map(({ id, ask }, index) => (
        <p class="typed-field" key={id}>
          <label for={`flat-${id}`} lang={lang}>
            {say.flatAt(index + 1, ask)}
          </label>
          <textarea
            id={`flat-${id}`}
            rows={1}
            maxLength={300}
            value={notes[nameOf(id)] ?? ''}
            dir="auto"
            onInput={(event) => desk.set({ notes: { ...notes, [nameOf(id)]: event.currentTarget.value } })}
          />
        </p>
      ))}
      <h4>{say.piece}</h4>
      {piece === '' ? (
        <p class="note">{say.noPiece}</p>
      ) : (
        <>
          <p class="note">{say.pieceNote}</p>
          <pre class="piece" dir="ltr" role="group" aria-label={say.piece} tabIndex={0}>
            {piece}
          </pre>
          <p class="button-row">
            <button type="button" class="page-button" onClick={copy}>
              {say.copy}
            </button>
          </p>
          <p class="file-field">
            <label for="pack-file">{say.intoFile}</label>
            <input id="pack-file" type="file" accept=".md,text/markdown" onChange={(event) => void intoFile(event.currentTarget)} />
          </p>
        </>
      )}
      <p role="status">{told}</p>
    </section>
  );
}
