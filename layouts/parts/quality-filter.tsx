import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { grades } from '../../src/core/pack/schema.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import { kindOf } from '../../src/outputs/quality-figures.ts';
import type { PageOf, QualityView } from '../../src/outputs/views.ts';
import { languageName } from './language-name.ts';

type Option = readonly [value: string, name: string];

/** Chooses which packs are seen. Hidden until the script that makes it work has come; `src/browser/quality.ts`. */
export function QualityFilter({ page, say }: { readonly page: PageOf<QualityView>; readonly say: Phrases }): JSX.Element {
  const { totals, numbered, number } = page.view;
  const { filter } = say.quality;
  const present = (grade: string) => totals.coverage.some(({ byGrade }) => (byGrade[grade] ?? 0) > 0);
  const kinds = [...new Set(totals.byCode.map(({ code }) => kindOf(code)))].map((kind): Option => [kind, say.quality.kinds[kind] ?? kind]);
  return (
    <form
      id="choice"
      class="choice"
      hidden
      data-here={number}
      data-count={totals.packs}
      data-first={linkFrom(page.url, numbered[0] ?? page.url)}
      data-all={numbered.length > 1 ? linkFrom(page.url, 'quality.json') : undefined}
      data-words={JSON.stringify({ ...filter.shown, failed: filter.failed, page: say.quality.page })}
    >
      <fieldset>
        <legend>{filter.legend}</legend>
        <Select name="language" label={filter.language} any={filter.any} options={totals.languages.map((language) => [language, languageName(language, page.language)])} />
        <Select name="grade" label={filter.grade} any={filter.any} options={grades.filter(present).map((grade) => [grade, say.quality.gradeShort(grade)])} />
        <Select
          name="level"
          label={filter.level}
          any={filter.any}
          options={(['stop', 'warn', 'note'] as const).filter((level) => totals.byLevel[level] > 0).map((level) => [level, say.quality.levels[level]])}
        />
        <Select name="kind" label={filter.kind} any={filter.any} options={kinds.sort((a, b) => a[1].localeCompare(b[1], page.language))} />
        <p class="tick">
          <input type="checkbox" id="choice-findings" name="findings" value="1" />
          <label for="choice-findings">{filter.findings}</label>
        </p>
        <p>
          <button type="reset">{filter.all}</button>
        </p>
      </fieldset>
      <p role="status" class="shown" />
      <div class="elsewhere" hidden>
        <h3>{filter.elsewhere}</h3>
        <ul />
      </div>
    </form>
  );
}

function Select({ name, label, any, options }: { readonly name: string; readonly label: string; readonly any: string; readonly options: readonly Option[] }): JSX.Element {
  return (
    <p>
      <label for={`choice-${name}`}>{label}</label>
      <select id={`choice-${name}`} name={name}>
        <option value="">{any}</option>
        {options.map(([value, text]) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </p>
  );
}
