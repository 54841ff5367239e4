import type { JSX } from 'preact';
import type { Compared } from '../../classroom/compare.ts';
import type { Desk } from './desk.ts';

/** Each trait in a line: how many both scored, how many alike, and kappa. */
export function TraitTable({ desk, lines, lang }: { readonly desk: Desk; readonly lines: readonly Compared[]; readonly lang: string | undefined }): JSX.Element {
  const say = desk.words.stack.agree;
  return (
    <div class="wide-enough agree-table" role="group" aria-label={say.result} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {say.heads.map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ trait, agreement: { n, exact, kappa } }) => (
            <tr>
              <th scope="row" lang={trait === undefined ? undefined : lang}>
                {trait ?? <em>{say.all}</em>}
              </th>
              <td>{n}</td>
              <td>{say.ofN(exact, n)}</td>
              <td>{kappa.kind === 'value' ? desk.decimal(kappa.value) : kappa.kind === 'too few' ? say.tooFewShort : say.cannotShort}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
