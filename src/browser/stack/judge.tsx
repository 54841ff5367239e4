import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { directionOf } from '../../core/languages/about-language.ts';
import { hintsFor, type Hint } from '../../classroom/hints.ts';
import { isJudgedWhole, judgeables, withScore, type Judgeable, type Scoring } from '../../classroom/judging.ts';
import { writeScores } from '../../classroom/scoring-files.ts';
import { AskFirst } from '../booklet/ask-first.tsx';
import { Choices } from '../booklet/choices.tsx';
import { saveFile } from '../booklet/hand-over.ts';
import { Values } from './answer.tsx';
import type { Desk } from './desk.ts';

/** Judging with the rubric: one answer at a time, of nobody, with the companion's model answers beside it; all of it from the keyboard. */
export function Judge({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.judge;
  const { sheet, sheetScoring, scoring: own, stack } = desk.state;
  const pack = desk.here?.pack;
  const judged = sheet ? sheet.answers : pack ? judgeables(stack, pack, own.seed) : [];
  const scoring = sheet ? sheetScoring : own;
  const change = (next: Scoring) => desk.set(sheet ? { sheetScoring: next } : { scoring: next });
  return (
    <>
      {sheet && <SecondPerson desk={desk} />}
      {judged.length === 0 ? (
        <p>{say.none}</p>
      ) : (
        <>
          <OneByOne desk={desk} judged={judged} scoring={scoring} change={change} key={sheet?.id ?? pack?.slug} />
          <p class="note small">{say.never}</p>
          {!sheet && <Steps desk={desk} />}
        </>
      )}
    </>
  );
}

/** Two steps or three; scores above the last step go. */
function Steps({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.judge;
  const { scoring } = desk.state;
  const choose = (value: '1' | '2') => {
    const steps = value === '1' ? 1 : 2;
    // "Partly" and "there" are other things in the other steps; only "not yet" stays what it was.
    const kept = Object.entries(scoring.scores).flatMap(([key, traits]) => {
      const zeros = Object.entries(traits).filter(([, score]) => score === 0);
      return zeros.length === 0 ? [] : [[key, Object.fromEntries(zeros)] as const];
    });
    desk.set({ scoring: { ...scoring, steps, scores: Object.fromEntries(kept) } });
  };
  return (
    <div class="how-finely">
      <Choices
        legend={say.steps}
        group="steps"
        kind="in-a-row"
        chosen={scoring.steps === 1 ? '1' : '2'}
        choices={(['1', '2'] as const).map((value) => ({ value, name: say.stepsOf[value] }))}
        onChoose={choose}
      />
      <p class="note small">{say.stepsNote}</p>
    </div>
  );
}

interface OneByOneProps {
  readonly desk: Desk;
  readonly judged: readonly Judgeable[];
  readonly scoring: Scoring;
  readonly change: (scoring: Scoring) => void;
}

function OneByOne({ desk, judged, scoring, change }: OneByOneProps): JSX.Element | null {
  const say = desk.words.stack.judge;
  const { judging } = desk;
  const firstOpen = () =>
    Math.max(
      0,
      judged.findIndex((each) => (judging === undefined ? !isJudgedWhole(scoring.scores, each) : each.key === judging)),
    );
  const [place, setPlace] = useState(firstOpen);
  const answer = useRef<HTMLElement>(null);
  useEffect(() => {
    desk.judging = undefined;
  }, []);
  const at = Math.min(place, judged.length - 1);
  const now = judged[at];
  if (!now) return null;
  const done = judged.filter((each) => isJudgedWhole(scoring.scores, each)).length;
  const stop = now.pack.stops.find(({ id }) => id === now.stop);
  const lang = desk.langOf(now.pack);
  const turn = (to: number) => {
    setPlace(to);
    // The answer is read out, and the digits work from it.
    setTimeout(() => answer.current?.focus());
  };
  const nextOpen = judged.findIndex((each, index) => index > at && !isJudgedWhole(scoring.scores, each));
  const open = nextOpen >= 0 ? nextOpen : judged.findIndex((each) => !isJudgedWhole(scoring.scores, each));
  const traits = now.pack.rubric ?? [];
  const score = (trait: string, value: number | undefined) => change({ ...scoring, scores: withScore(scoring.scores, now.key, trait, value) });

  /** A digit is the score of the trait that the focus is on; from the answer itself, of the first trait without one. */
  const onKey = (event: KeyboardEvent & { readonly currentTarget: HTMLElement }) => {
    const value = Number(event.key);
    if (!/^[0-9]$/.test(event.key) || value > scoring.steps || event.ctrlKey || event.altKey || event.metaKey) return;
    const groups = [...event.currentTarget.querySelectorAll<HTMLElement>('.trait')];
    const inside = groups.findIndex((group) => group.contains(document.activeElement));
    const which =
      inside >= 0
        ? inside
        : Math.max(
            0,
            traits.findIndex(({ trait }) => scoring.scores[now.key]?.[trait] === undefined),
          );
    const trait = traits[which];
    if (!trait) return;
    event.preventDefault();
    score(trait.trait, value);
    const next = groups[which + 1]?.querySelector<HTMLElement>('input') ?? event.currentTarget.querySelector<HTMLElement>('.go-on');
    next?.focus();
  };
  return (
    <div class="judging" onKeyDown={onKey}>
      <p class="judged-so-far">
        {say.done(done, judged.length)} {done === judged.length && <strong>{say.allDone}</strong>}
      </p>
      <div class="question-and-models">
        <div class="answer-and-traits">
          <section class="to-judge" ref={answer} tabIndex={-1} aria-labelledby="to-judge">
            <p class="place" id="to-judge">
              {say.answer(at + 1, judged.length)}
            </p>
            <h3 lang={lang}>{stop?.ask}</h3>
            <div class="the-answer">
              <Values desk={desk} values={now.values} lang={lang} />
            </div>
          </section>
          <div class="traits">
            {traits.map(({ trait, meets, notYet }) => (
              <Trait
                key={`${now.key} ${trait}`}
                desk={desk}
                name={`${now.key} ${trait}`}
                trait={trait}
                meets={meets}
                notYet={notYet}
                lang={lang}
                steps={scoring.steps}
                score={scoring.scores[now.key]?.[trait]}
                onScore={(value) => score(trait, value)}
              />
            ))}
          </div>
          <p class="note small">{say.keys(scoring.steps)}</p>
          <p class="button-row">
            <button type="button" class="page-button" disabled={at === 0} onClick={() => turn(at - 1)}>
              {say.back}
            </button>
            <button type="button" class="page-button main-button go-on" onClick={() => turn(at < judged.length - 1 ? at + 1 : Math.max(0, open))}>
              {say.next}
            </button>
            {open >= 0 && open !== at + 1 && open !== at && (
              <button type="button" class="page-button" onClick={() => turn(open)}>
                {say.nextOpen}
              </button>
            )}
          </p>
          {stop && (
            <details class="hints">
              <summary>{say.hints}</summary>
              <Hints desk={desk} hints={hintsFor(now.values, stop, now.pack)} />
            </details>
          )}
        </div>
        {stop && (stop.models ?? []).length > 0 && (
          <aside class="models-beside" aria-label={say.models}>
            <p class="label">{say.models}</p>
            <ul lang={lang}>
              {(stop.models ?? []).map(({ text, shows }) => (
                <li>
                  {text}
                  {shows && shows.length > 0 && (
                    <>
                      {' '}
                      <span class="shows" lang={lang && desk.language} dir={lang === undefined ? undefined : directionOf(desk.language)}>
                        {say.shows(shows.join(desk.words.comma))}
                      </span>
                    </>
                  )}
                </li>
              ))}
            </ul>
            {stop.listenFor !== undefined && (
              <p>
                <span class="label">{say.listenFor}: </span>
                <span lang={lang}>{stop.listenFor}</span>
              </p>
            )}
          </aside>
        )}
      </div>
    </div>
  );
}

interface TraitProps {
  readonly desk: Desk;
  readonly name: string;
  readonly trait: string;
  readonly meets: string;
  readonly notYet: string;
  readonly lang: string | undefined;
  readonly steps: 1 | 2;
  readonly score: number | undefined;
  readonly onScore: (score: number | undefined) => void;
}

/** One trait: its words in the rubric, and a score as radio buttons, the highest first as the rubric has it. */
function Trait({ desk, name, trait, meets, notYet, lang, steps, score, onScore }: TraitProps): JSX.Element {
  const say = desk.words.stack.judge;
  const names = steps === 1 ? say.scores : say.scoresOfThree;
  const texts = steps === 1 ? [notYet, meets] : [notYet, '', meets];
  return (
    <fieldset class="trait">
      <legend lang={lang}>{trait}</legend>
      {names
        .map((words, value) => (
          <label class="choice">
            <input type="radio" name={name} value={value} checked={score === value} onChange={() => onScore(value)} />
            <span>
              <span class="choice-name">{words}</span>
              {texts[value] !== '' && (
                <span class="trait-words" lang={lang}>
                  {texts[value]}
                </span>
              )}
            </span>
          </label>
        ))
        .reverse()}
      {score !== undefined && (
        <button
          type="button"
          class="quiet"
          aria-label={`${say.rubOut}: ${trait}`}
          onClick={(event) => {
            event.currentTarget.closest('fieldset')?.querySelector('input')?.focus();
            onScore(undefined);
          }}
        >
          {say.rubOut}
        </button>
      )}
    </fieldset>
  );
}

function Hints({ desk, hints }: { readonly desk: Desk; readonly hints: readonly Hint[] }): JSX.Element {
  const say = desk.words.stack.judge;
  const inWords = (hint: Hint): string => {
    switch (hint.kind) {
      case 'end mark':
      case 'book':
        return say.hint[hint.kind];
      case 'reason':
        return say.hint.reason(hint.word);
      case 'feeling':
        return say.hint.feeling(hint.words);
      case 'offered':
        return say.hint.offered(hint.words);
    }
  };
  return (
    <>
      {hints.length === 0 ? (
        <p>{say.noHints}</p>
      ) : (
        <ul>
          {hints.map((hint) => (
            <li>{inWords(hint)}</li>
          ))}
        </ul>
      )}
      <p class="note small">{say.hintsNote}</p>
    </>
  );
}

/** What the second scorer is told, and the way for the scores back to the first. */
function SecondPerson({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const say = desk.words.stack.judge;
  const { sheet, sheetScoring } = desk.state;
  if (!sheet) return null;
  const save = () => {
    const name = `scores-${sheet.id.slice(0, 6)}.json`;
    saveFile(new File([writeScores({ sheet: sheet.id, by: 'second', scorer: sheetScoring.seed, steps: sheetScoring.steps, scores: sheetScoring.scores })], name, { type: 'application/json' }));
    desk.announce(say.saved(name));
  };
  return (
    <div class="second-person">
      <p>{say.second}</p>
      <p class="button-row">
        <button type="button" class="page-button" onClick={save}>
          {say.saveSecond}
        </button>
      </p>
      <AskFirst
        label={say.leave}
        question={say.leaveAsk}
        yes={say.leaveYes}
        no={say.leaveNo}
        onYes={() => {
          desk.set({ sheet: undefined });
          document.getElementById('view-title')?.focus();
        }}
      />
    </div>
  );
}
