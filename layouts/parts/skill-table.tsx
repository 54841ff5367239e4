import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { grades } from '../../src/core/pack/schema.ts';
import type { SkillRow, SkillTable as Table } from '../../src/outputs/views.ts';
import { languageName } from './language-name.ts';

interface Props {
  readonly table: Table;
  readonly pageLanguage: string;
  readonly say: Phrases;
}

/** For which grades and skills there are companions: a table whose figures are drawn as squares, so that gaps are seen before they are read. */
export function SkillTable({ table, pageLanguage, say }: Props): JSX.Element {
  const { language, skills, others, without, all } = table;
  const id = `skills-${language}`;
  const other = language === pageLanguage ? undefined : language;
  const most = Math.max(1, ...[...skills, ...(others ? [others] : []), ...(without ? [without] : [])].flatMap(({ byGrade }) => byGrade));
  const rest = [
    { name: say.librarian.otherSkills, row: others },
    { name: say.librarian.noSkill, row: without },
  ];
  return (
    <section class="counts skill-counts" aria-labelledby={id} tabIndex={0}>
      <table>
        <caption id={id}>{say.librarian.coverageIn(languageName(language, pageLanguage))}</caption>
        <thead>
          <tr>
            <th scope="col">{say.librarian.skill}</th>
            {grades.map((grade) => (
              <th scope="col">{say.quality.gradeShort(grade)}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {skills.map((row) => (
            <Row name={row.skill ?? ''} lang={other} row={row} most={most} />
          ))}
          {rest.map(({ name, row }) => row && <Row name={name} row={row} most={most} />)}
          <tr class="total">
            <th scope="row">{say.librarian.allPacks}</th>
            {all.byGrade.map((packs) => (
              <td>{packs === 0 ? '–' : packs}</td>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function Row({ name, lang, row, most }: { readonly name: string; readonly lang?: string | undefined; readonly row: SkillRow; readonly most: number }): JSX.Element {
  return (
    <tr>
      <th scope="row">{lang === undefined ? name : <span lang={lang}>{name}</span>}</th>
      {row.byGrade.map((packs) => (
        <td>{packs === 0 ? '–' : <Square packs={packs} most={most} />}</td>
      ))}
    </tr>
  );
}

/** Side of the largest square, in pixels. The area stands for the number. */
const largest = 22;

function Square({ packs, most }: { readonly packs: number; readonly most: number }): JSX.Element {
  const side = Math.max(3, Math.round(largest * Math.sqrt(packs / most)));
  const at = (largest - side) / 2;
  return (
    <span class="squared">
      <svg viewBox={`0 0 ${String(largest)} ${String(largest)}`} aria-hidden="true" focusable="false">
        <rect x={at} y={at} width={side} height={side} fill="currentColor" />
      </svg>
      {packs}
    </span>
  );
}
