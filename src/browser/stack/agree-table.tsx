import type { JSX } from 'preact';
import type { Coefficient } from '../../classroom/agreement.ts';
import { compareAll, type Compared } from '../../classroom/compare.ts';
import type { Judgeable } from '../../classroom/judging.ts';
import type { Desk } from './desk.ts';

interface TableProps {
  readonly name: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly [trait: string | undefined, ...cells: (string | number)[]])[];
  readonly desk: Desk;
  readonly lang: string | undefined;
}

/** A line for each trait, the last one for all of them added up. */
function ByTrait({ name, heads, rows, desk, lang }: TableProps): JSX.Element {
  return (
    <div class="wide-enough agree-table" role="group" aria-label={name} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([trait, ...cells]) => (
            <tr>
              <th scope="row">{trait === undefined ? <em>{desk.words.stack.agree.all}</em> : <span lang={lang}>{trait}</span>}</th>
              {cells.map((cell) => (
                <td>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function short(desk: Desk, coefficient: Coefficient): string {
  const say = desk.words.stack.agree;
  return coefficient.kind === 'value' ? desk.decimal(coefficient.value) : coefficient.kind === 'too few' ? say.tooFewShort : say.cannotShort;
}

/** Each trait in a line: how many both scored, how many alike, and kappa. */
export function TraitTable({ desk, lines, lang }: { readonly desk: Desk; readonly lines: readonly Compared[]; readonly lang: string | undefined }): JSX.Element {
  const say = desk.words.stack.agree;
  const rows = lines.map(({ trait, agreement: { n, exact, kappa } }) => [trait, n, say.ofN(exact, n), short(desk, kappa)] as const);
  return <ByTrait name={say.result} heads={say.heads} rows={rows} desk={desk} lang={lang} />;
}

/** Three or more people: alpha of all of them, those who judged in other steps left out. */
export function Together({ desk, judged }: { readonly desk: Desk; readonly judged: readonly Judgeable[] }): JSX.Element | null {
  const say = desk.words.stack.agree;
  const { scoring, others } = desk.state;
  const alike = others.filter(({ steps }) => steps === scoring.steps).map(({ scores }) => scores);
  if (alike.length < 2) return null;
  const rows = compareAll(judged, scoring, alike).map(({ trait, alpha }) => [trait, alpha.n, short(desk, alpha)] as const);
  const name = say.together(alike.length + 1);
  return (
    <section class="together" aria-labelledby="together">
      <h3 id="together">{name}</h3>
      <ByTrait name={name} heads={say.togetherHeads} rows={rows} desk={desk} lang={desk.here && desk.langOf(desk.here.pack)} />
      <p class="note small">{say.togetherNote}</p>
    </section>
  );
}
