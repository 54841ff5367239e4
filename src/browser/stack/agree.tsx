import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Coefficient } from '../../classroom/agreement.ts';
import type { CrossTable } from '../../classroom/cohen-kappa.ts';
import { compare, type Compared } from '../../classroom/compare.ts';
import { judgeables, type Judgeable } from '../../classroom/judging.ts';
import { writeScores, writeSheet } from '../../classroom/scoring-files.ts';
import { saveFile } from '../booklet/hand-over.ts';
import { Values } from './answer.tsx';
import { Together, TraitTable } from './agree-table.tsx';
import type { Desk } from './desk.ts';
import { Select } from './from-paper.tsx';
import { readFiles } from './read-files.ts';

/** Two people's scores of the same answers: a sheet goes out, scores come back, and what they say stands here. */
export function Agree({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.stack.agree;
  const { stack, scoring, others } = desk.state;
  const [which, setWhich] = useState(0);
  const { here } = desk;
  const judged = here ? judgeables(stack, here.pack, scoring.seed) : [];
  if (judged.length === 0) return <p>{desk.words.stack.judge.none}</p>;
  const known = new Set(judged.map(({ key }) => key));
  const at = Math.min(which, others.length - 1);
  const second = others[at];
  const theirs = second ? Object.keys(second.scores).filter((key) => known.has(key)).length : 0;
  const save = (text: string, name: string) => {
    saveFile(new File([text], name, { type: 'application/json' }));
    desk.announce(desk.words.stack.judge.saved(name));
  };
  return (
    <>
      {others.length > 1 && (
        <Select label={say.with} name="colleague" chosen={String(at)} choices={others.map((_, index) => [String(index), say.colleague(index + 1)])} onChoose={(chosen) => setWhich(Number(chosen))} />
      )}
      {second && (theirs === 0 ? <p>{say.nothing}</p> : second.steps !== scoring.steps ? <p>{say.stepsDiffer}</p> : <Result desk={desk} judged={judged} second={second.scores} key={at} />)}
      {others.length > 1 && <Together desk={desk} judged={judged} />}
      {second && (
        <p>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              desk.set({ others: others.filter((each) => each !== second) });
              document.getElementById('view-title')?.focus();
            }}
          >
            {say.takeAway}
          </button>
        </p>
      )}
      <section class="out-and-in" aria-labelledby="second-out">
        <h3 id="second-out">{say.out}</h3>
        <p>{say.outNote}</p>
        <p class="button-row">
          <button type="button" class="page-button main-button" onClick={() => save(writeSheet(judged, scoring.steps, scoring.seed), `${here?.pack.slug ?? 'answers'}-scoring-sheet.json`)}>
            {say.sheet(judged.length)}
          </button>
          <button
            type="button"
            class="page-button"
            onClick={() => save(writeScores({ sheet: '', by: 'first', steps: scoring.steps, scores: scoring.scores }), `${here?.pack.slug ?? 'answers'}-my-scores.json`)}
          >
            {say.mine}
          </button>
        </p>
        <p class="note small">{say.mineNote}</p>
      </section>
      <section class="out-and-in" aria-labelledby="second-in">
        <h3 id="second-in">{say.in}</h3>
        <p class="file-field">
          <label for="scores-file">{say.choose}</label>
          <input
            id="scores-file"
            type="file"
            accept=".json,application/json"
            aria-describedby="scores-note"
            onChange={(event) => {
              const files = [...(event.currentTarget.files ?? [])];
              event.currentTarget.value = '';
              if (files.length > 0) void readFiles(desk, files);
            }}
          />
        </p>
        <p class="note small" id="scores-note">
          {say.inNote}
        </p>
      </section>
    </>
  );
}

interface ResultProps {
  readonly desk: Desk;
  readonly judged: readonly Judgeable[];
  readonly second: Parameters<typeof compare>[2];
}

function Result({ desk, judged, second }: ResultProps): JSX.Element | null {
  const say = desk.words.stack.agree;
  const { scoring } = desk.state;
  const [place, setPlace] = useState<number>();
  const [own, setOwn] = useState<{ readonly trait: string | undefined; readonly table: CrossTable }>();
  const lines = compare(judged, scoring, second, own);
  const at = place ?? lines.length - 1;
  const line = lines[at];
  if (!line) return null;
  const lang = desk.here && desk.langOf(desk.here.pack);
  return (
    <section class="result" aria-labelledby="result">
      <h3 id="result">{say.result}</h3>
      <TraitTable desk={desk} lines={lines} lang={lang} />
      <Talk desk={desk} judged={judged} lines={lines} />
      {lines.length > 1 && (
        <Select label={say.detail} name="trait" chosen={String(at)} choices={lines.map(({ trait }, index) => [String(index), trait ?? say.all])} onChoose={(chosen) => setPlace(Number(chosen))} />
      )}
      <InFull desk={desk} line={line} />
      <OwnWeights key={`${String(at)} ${String(line.most)}`} desk={desk} line={line} onWeights={(table) => setOwn({ trait: line.trait, table })} />
      <h4>{say.means}</h4>
      <ul class="what-it-means">
        {say.notMeans.map((sentence) => (
          <li>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/** A coefficient with its n, or why there is none. */
function told(desk: Desk, coefficient: Coefficient): string {
  const say = desk.words.stack.agree;
  if (coefficient.kind === 'too few') return say.tooFew(coefficient.n, coefficient.least);
  if (coefficient.kind === 'cannot be computed') return say.cannot;
  return say.withN(desk.decimal(coefficient.value), coefficient.n);
}

function InFull({ desk, line: { agreement } }: { readonly desk: Desk; readonly line: Compared }): JSX.Element {
  const say = desk.words.stack.agree;
  const { n, exact, withinOne, kappa, linearKappa, quadraticKappa, givenKappa, alphas } = agreement;
  const rows: readonly (readonly [string, string])[] = [
    [say.exact, say.ofN(exact, n)],
    [say.withinOne, say.ofN(withinOne, n)],
    [say.kappa, told(desk, kappa)],
    [say.linear, told(desk, linearKappa)],
    [say.quadratic, told(desk, quadraticKappa)],
    ...(givenKappa ? [[say.given, told(desk, givenKappa)] as const] : []),
    ...(['nominal', 'ordinal', 'interval', 'ratio'] as const).map((scale) => [say.alphas[scale], told(desk, alphas[scale])] as const),
  ];
  return (
    <>
      <p class="agree-sentence">{say.sentence(exact, n, kappa.kind === 'value' ? desk.decimal(kappa.value) : undefined)}</p>
      <dl class="figures measures">
        {rows.map(([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** A table of weights to fill in: 0 on the diagonal, distances to begin with. More than five scores would make it a task of its own. */
function OwnWeights({ desk, line: { most }, onWeights }: { readonly desk: Desk; readonly line: Compared; readonly onWeights: (table: CrossTable) => void }): JSX.Element | null {
  const say = desk.words.stack.agree;
  const scores = Array.from({ length: most + 1 }, (_, score) => score);
  const [table, setTable] = useState<CrossTable>(() => scores.map((row) => scores.map((column) => Math.abs(row - column))));
  if (most > 4) return null;
  const change = (row: number, column: number, value: number) => {
    if (!Number.isFinite(value) || value < 0) return;
    const next = table.map((cells, i) => cells.map((cell, j) => (i === row && j === column ? value : cell)));
    setTable(next);
    onWeights(next);
  };
  return (
    <details class="own-weights">
      <summary>{say.weights}</summary>
      <p class="note small">{say.weightsNote}</p>
      <table>
        <thead>
          <tr>
            <td />
            {scores.map((column) => (
              <th scope="col">{column}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {scores.map((row) => (
            <tr>
              <th scope="row">{row}</th>
              {scores.map((column) => (
                <td>
                  {row === column ? (
                    0
                  ) : (
                    <input
                      type="number"
                      min="0"
                      step="any"
                      inputMode="decimal"
                      aria-label={say.weight(row, column)}
                      value={table[row]?.[column]}
                      onChange={(event) => change(row, column, event.currentTarget.valueAsNumber)}
                    />
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** The answers that were scored furthest apart, with both scores of each trait. */
function Talk({ desk, judged, lines }: { readonly desk: Desk; readonly judged: readonly Judgeable[]; readonly lines: readonly Compared[] }): JSX.Element {
  const say = desk.words.stack.agree;
  const judge = desk.words.stack.judge;
  const { scoring } = desk.state;
  const names = scoring.steps === 1 ? judge.scores : judge.scoresOfThree;
  const traits = lines.filter(({ trait }) => trait !== undefined);
  // How far apart in all traits together: "yes, no" against "no, yes" adds up to the same and is far apart.
  const distance = new Map<string, number>();
  for (const { agreement } of traits) for (const { answer, first, second } of agreement.talkAbout) distance.set(answer, (distance.get(answer) ?? 0) + Math.abs((first ?? 0) - (second ?? 0)));
  const first = [...distance].sort(([, a], [, b]) => b - a).slice(0, 10);
  return (
    <>
      <h4>{say.talk}</h4>
      <p class="note">{first.length === 0 ? say.noTalk : say.talkNote}</p>
      <ol class="talk-list">
        {first.flatMap(([key]) => {
          const answer = judged.find((each) => each.key === key);
          if (!answer) return [];
          const lang = desk.langOf(answer.pack);
          return [
            <li key={key}>
              <p class="place" lang={lang}>
                {answer.pack.stops.find(({ id }) => id === answer.stop)?.ask}
              </p>
              <Values desk={desk} values={answer.values} lang={lang} />
              <ul class="apart">
                {traits.flatMap(({ trait, agreement }) =>
                  agreement.talkAbout.filter((each) => each.answer === key).map((each) => <li>{say.apart(trait ?? '', names[each.first ?? 0] ?? '', names[each.second ?? 0] ?? '')}</li>),
                )}
              </ul>
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  desk.judging = key;
                  desk.turnTo('judge');
                }}
              >
                {say.judgeAgain}
              </button>
            </li>,
          ];
        })}
      </ol>
    </>
  );
}
