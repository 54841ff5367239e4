import type { ComponentChildren, JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { grades } from '../../src/core/pack/schema.ts';
import { kindOf, type QualityTotals } from '../../src/outputs/quality-figures.ts';
import type { PageOf, QualityView } from '../../src/outputs/views.ts';
import { languageName, localeOf } from './language-name.ts';
import { numbersIn } from '../../src/core/languages/formats.ts';

interface Props {
  readonly page: PageOf<QualityView>;
  readonly say: Phrases;
}

/** The whole library in sum: figures, which grades and languages there are companions for, and what the checks say. */
export function QualitySum({ page, say }: Props): JSX.Element {
  const { totals } = page.view;
  const number = numbersIn(localeOf(page.language));
  const figures: readonly (readonly [string, string])[] = [
    [say.quality.companions, `${number.format(totals.packs)}${say.comma}${say.quality.inLanguages(totals.languages.length)}`],
    [say.quality.familyWords, number.format(totals.familyWords)],
    [say.quality.stops, number.format(totals.stops)],
    [say.quality.pictures, say.quality.ofPictures(totals.pictures.described, totals.pictures.all)],
    [say.quality.withFindings, say.quality.ofAll(totals.withFindings, totals.packs)],
    ...(totals.keptOff > 0 ? [[say.quality.keptOff, say.quality.keptOffNote(totals.keptOff)] as const] : []),
  ];
  return (
    <section class="sum" aria-labelledby="sum">
      <h2 id="sum">{say.quality.sum}</h2>
      <dl class="sums">
        {figures.map(([name, figure]) => (
          <div>
            <dt>{name}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      <Coverage page={page} totals={totals} say={say} />
      <AllFindings totals={totals} say={say} />
    </section>
  );
}

/** A small table of figures; on a narrow screen its box scrolls and the page does not. */
function Counts({ by, heads, children }: { readonly by: string; readonly heads: readonly string[]; readonly children: ComponentChildren }): JSX.Element {
  return (
    <section class="counts" aria-labelledby={by} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  );
}

function Coverage({ page, totals, say }: Props & { readonly totals: QualityTotals }): JSX.Element {
  return (
    <>
      <h3 id="coverage">{say.quality.coverage}</h3>
      <Counts by="coverage" heads={[say.quality.language, ...grades.map(say.quality.gradeShort)]}>
        {totals.coverage.map(({ language, byGrade }) => (
          <tr>
            <th scope="row">{languageName(language, page.language)}</th>
            {grades.map((grade) => (
              <td>{byGrade[grade] === 0 ? '–' : byGrade[grade]}</td>
            ))}
          </tr>
        ))}
      </Counts>
      <p class="less">{say.quality.coverageNote}</p>
    </>
  );
}

function AllFindings({ totals, say }: { readonly totals: QualityTotals; readonly say: Phrases }): JSX.Element {
  const { byCode, byLevel } = totals;
  const levels = (['stop', 'warn', 'note'] as const).filter((level) => byLevel[level] > 0);
  return (
    <>
      <h3 id="all-findings">{say.quality.allFindings}</h3>
      {byCode.length === 0 ? (
        <p>{say.quality.noFindingsAtAll}</p>
      ) : (
        <Counts by="all-findings" heads={[say.quality.code, ...levels.map((level) => say.quality.levels[level])]}>
          {byCode.map((each) => (
            <tr>
              <th scope="row">
                {say.quality.kinds[kindOf(each.code)] ?? kindOf(each.code)} <span class="code">{each.code}</span>
              </th>
              {levels.map((level) => (
                <td>{each.byLevel[level] === 0 ? '–' : each.byLevel[level]}</td>
              ))}
            </tr>
          ))}
          <tr class="total">
            <th scope="row">{say.quality.together}</th>
            {levels.map((level) => (
              <td>{byLevel[level]}</td>
            ))}
          </tr>
        </Counts>
      )}
    </>
  );
}
