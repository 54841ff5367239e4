import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Face } from '../../../layouts/parts/face.tsx';
import { bestOf, wholeBook } from '../../core/booklet/booklet.ts';
import { feelingCounts, feelingsNamed, nameOfFeeling } from '../../classroom/counts.ts';
import { isJudged } from '../../classroom/judging.ts';
import { answersIn, answersTo } from '../../classroom/stack.ts';
import { Choices } from '../booklet/choices.tsx';
import { AnswerCard, Values } from './answer.tsx';
import { ClassCounts } from './class-counts.tsx';
import type { Desk, Here } from './desk.ts';
import { Select } from './from-paper.tsx';
import { AloudTick } from './tomorrow.tsx';

type Way = 'stop' | 'mark' | 'feeling' | 'class';

/** Looking through the stack: all answers to one question, all of one bookmark, all with one feeling word, or counts of the whole class. */
export function Look({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const say = desk.words.stack.look;
  const [way, setWay] = useState<Way>('stop');
  const { here } = desk;
  if (!here) return null;
  return (
    <>
      <Choices legend={say.how} group="laid-out" kind="in-a-row" chosen={way} choices={(Object.keys(say.ways) as Way[]).map((value) => ({ value, name: say.ways[value] }))} onChoose={setWay} />
      {way === 'stop' && <ByStop desk={desk} here={here} />}
      {way === 'mark' && <ByMark desk={desk} here={here} />}
      {way === 'feeling' && <ByFeeling desk={desk} here={here} />}
      {way === 'class' && <ClassCounts desk={desk} here={here} />}
    </>
  );
}

interface Props {
  readonly desk: Desk;
  readonly here: Here;
}

/** The questions of the stops, and what was asked about the whole book and among a few. */
export function questionsOf({ pack, booklets }: Here): readonly { readonly to: string; readonly number: number; readonly ask: string }[] {
  const own = { [wholeBook]: pack.rating?.ask, [bestOf]: pack.bestOf?.ask };
  const atNoStop = ([wholeBook, bestOf] as const).flatMap((to) => {
    const ask = own[to] ?? booklets.flatMap(({ booklet }) => booklet.prompts.find(({ of }) => of === to)?.ask ?? [])[0];
    return ask === undefined ? [] : [{ to, ask }];
  });
  return [...pack.stops.map(({ id, ask }) => ({ to: id, ask })), ...atNoStop].map((each, index) => ({ ...each, number: index + 1 }));
}

function ByStop({ desk, here }: Props): JSX.Element {
  const say = desk.words.stack.look;
  const [place, setPlace] = useState(0);
  const { pack, booklets } = here;
  const questions = questionsOf(here);
  const at = Math.min(place, questions.length - 1);
  const question = questions[at];
  if (!question) return <p>{say.nobody}</p>;
  const stop = pack.stops.find(({ id }) => id === question.to);
  const answers = answersTo(desk.state.stack, pack, question.to);
  const { file } = desk.words.booklet;
  const passed = answers.filter(({ entries }) => entries.some(({ value }) => value.kind === 'passed')).length;
  const lang = desk.langOf(pack);
  return (
    <>
      <Select
        label={say.stop}
        name="stop"
        chosen={String(at)}
        choices={questions.map(({ number, ask }, index) => [String(index), say.stopOf(number, ask)])}
        onChoose={(chosen) => setPlace(Number(chosen))}
      />
      <section class="one-question" aria-labelledby="question">
        <p class="place">{stop ? say.place(question.number, stop.at.opening) : question.to === wholeBook ? file.whole : file.kinds.chosen}</p>
        <h3 id="question" lang={lang}>
          {question.ask}
        </h3>
        {stop && !isJudged(stop) && <p class="note">{say.aboutMe}</p>}
        <p>
          {answers.length === 0 ? say.nobody : say.answered(answers.length, booklets.length)} {passed > 0 && say.passed(passed)}
        </p>
        <ul class="side-by-side">
          {answers.map((answer) => (
            <li key={answer.key}>
              <AnswerCard desk={desk} answer={answer}>
                {stop && isJudged(stop) ? <AloudTick desk={desk} answer={answer} /> : undefined}
              </AnswerCard>
            </li>
          ))}
        </ul>
        <Onward back={say.back} next={say.next} at={at} of={questions.length} onTurn={setPlace} heading="question" />
      </section>
    </>
  );
}

function ByMark({ desk, here }: Props): JSX.Element {
  const say = desk.words.stack.look;
  const [place, setPlace] = useState(0);
  const { booklets } = here;
  const at = Math.min(place, booklets.length - 1);
  const one = booklets[at];
  if (!one) return <p>{say.nobody}</p>;
  const questions = questionsOf(here);
  const lang = desk.langOf(here.pack);
  return (
    <>
      <Select label={say.booklet} name="booklet" chosen={String(at)} choices={booklets.map((each, index) => [String(index), desk.markOf(each)])} onChoose={(chosen) => setPlace(Number(chosen))} />
      <section class="one-booklet" aria-labelledby="booklet">
        <h3 id="booklet">{desk.markOf(one)}</h3>
        <ol class="pages-of-answers">
          {answersIn(one).map((answer) => {
            const question = questions.find(({ to }) => to === answer.to);
            return (
              <li key={answer.key}>
                <h4 lang={lang}>{question ? say.stopOf(question.number, question.ask) : answer.to}</h4>
                <Values desk={desk} values={answer.entries.map(({ value }) => value)} lang={lang} />
              </li>
            );
          })}
        </ol>
        <Onward back={say.bookletBefore} next={say.nextBooklet} at={at} of={booklets.length} onTurn={setPlace} heading="booklet" />
      </section>
    </>
  );
}

function ByFeeling({ desk, here }: Props): JSX.Element {
  const say = desk.words.stack.look;
  const { pack } = here;
  const stops = feelingCounts(desk.state.stack, pack);
  const words = new Map(stops.flatMap(({ words }) => words.map((each) => [nameOfFeeling(each.word, pack), each] as const)).reverse());
  const lang = desk.langOf(pack);
  if (words.size === 0) return <p>{say.noFeelings}</p>;
  return (
    <>
      <p class="note">{say.feelingNote}</p>
      {[...words].reverse().map(([name, { word, feeling }]) => (
        <section class="one-feeling" key={name}>
          <h3 class="with-face">
            {feeling && <Face feeling={feeling} />}
            <span lang={lang}>{word}</span>
          </h3>
          {stops.flatMap(({ stop, number }) => {
            const answers = answersTo(desk.state.stack, pack, stop.id).filter((answer) => feelingsNamed(answer, pack, stop).has(name));
            return answers.length === 0
              ? []
              : [
                  <h4>
                    <span lang={lang}>{say.stopOf(number, stop.ask)}</span> <span class="less">{desk.words.stack.children(answers.length)}</span>
                  </h4>,
                  <ul class="side-by-side">
                    {answers.map((answer) => (
                      <li key={answer.key}>
                        <AnswerCard desk={desk} answer={answer} />
                      </li>
                    ))}
                  </ul>,
                ];
          })}
        </section>
      ))}
    </>
  );
}

interface OnwardProps {
  readonly back: string;
  readonly next: string;
  readonly at: number;
  readonly of: number;
  readonly onTurn: (to: number) => void;
  /** Id of the heading that the focus goes to. */
  readonly heading: string;
}

function Onward({ back, next, at, of, onTurn, heading }: OnwardProps): JSX.Element {
  const turn = (to: number) => {
    onTurn(to);
    setTimeout(() => {
      const title = document.getElementById(heading);
      title?.setAttribute('tabindex', '-1');
      title?.focus({ preventScroll: true });
      title?.scrollIntoView({ block: 'start' });
    });
  };
  return (
    <p class="button-row onward-row">
      {at > 0 && (
        <button type="button" class="page-button" onClick={() => turn(at - 1)}>
          {back}
        </button>
      )}
      {at < of - 1 && (
        <button type="button" class="page-button main-button" onClick={() => turn(at + 1)}>
          {next}
        </button>
      )}
    </p>
  );
}
