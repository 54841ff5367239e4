import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { orders } from '../src/core/find/choice.ts';
import { families, grades, kinds, kindsOfBook, rightsOf, ways } from '../src/core/pack/schema.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import type { FindView, PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { languageName } from './parts/language-name.ts';

type Option = readonly [value: string, name: string];

/** The search: one field for words, and what narrows the answer. It works by `src/browser/find.ts`; without it the index leads on. */
export function Find(page: PageOf<FindView>): JSX.Element {
  const say = phrasesFor(page.language);
  const { indexes, count } = page.view;
  const index = linkFrom(page.url, `${rootOf(page.language, page.library.language)}index/`);
  return (
    <Document page={page} title={say.find.title} description={say.find.description(count)} script="find">
      <header class="book-head">
        <h1>{say.find.title}</h1>
        <p class="lead">{say.find.lead}</p>
      </header>
      <p class="without-script">{say.find.withoutScript}</p>
      <search>
        <form
          id="find"
          class="find-form"
          hidden
          data-root={linkFrom(page.url, '')}
          data-folders={JSON.stringify(Object.fromEntries(indexes.map((each) => [each.language, each.folder])))}
          data-words={JSON.stringify({ ...say.find.found, page: say.find.page(0).replace('0', '{n}') })}
        >
          <p class="find-words">
            <label for="find-words">{say.find.words}</label>
            <input id="find-words" name="words" type="search" maxLength={200} autocomplete="off" enterkeyhint="search" />
            <button type="submit">{say.find.look}</button>
          </p>
          <Narrow page={page} say={say} />
        </form>
      </search>
      <section class="find-results" aria-labelledby="results" hidden>
        <h2 id="results" tabIndex={-1}>
          {say.find.results}
        </h2>
        <p role="status" class="shown" />
        <ol class="found" />
        <nav class="numbered-pages" aria-label={say.find.pages} hidden>
          <ol />
        </nav>
      </section>
      <p>
        <a class="onward" href={index}>
          {say.find.toIndex}
        </a>
      </p>
    </Document>
  );
}

function Narrow({ page, say }: { readonly page: PageOf<FindView>; readonly say: Phrases }): JSX.Element {
  const { fields, any, anyLanguage, orders: orderNames } = say.find;
  const languages = page.view.indexes.map(({ language }): Option => [language, languageName(language, page.language)]);
  const own = page.view.indexes.some(({ language }) => language === page.language) ? page.language : '';
  return (
    <details class="find-narrow">
      <summary>{say.find.narrow}</summary>
      <div class="find-fields">
        <Select name="grade" label={fields.grade} any={any} options={grades.map((grade) => [grade, say.grades([grade])])} />
        <Select name="minutes" label={fields.minutes} any={any} options={['10', '15', '20', '25', '30', '45'].map((minutes) => [minutes, minutes])} />
        <Select name="book" label={fields.book} any={any} options={kindsOfBook.map((kind) => [kind, say.find.kindsOfBook[kind]])} />
        <Select name="way" label={fields.way} any={any} options={ways.map((way) => [way, say.ways[way]])} />
        <Select name="kind" label={fields.kind} any={any} options={kinds.map((kind) => [kind, say.kinds[kind]])} />
        <Select name="feeling" label={fields.feeling} any={any} options={families.map((family) => [family, say.families[family]])} />
        <Select name="rights" label={fields.rights} any={any} options={rightsOf.map((rights) => [rights, say.rightsOf[rights]])} />
        {/* Schools and skills come with the index. */}
        <Select name="skill" label={fields.skill} any={any} options={[]} />
        <Select name="school" label={fields.school} any={any} options={[]} />
        <Select
          name="language"
          label={fields.language}
          any={own === '' ? any : languageName(own, page.language)}
          options={[...languages.filter(([tag]) => tag !== own), ...(languages.length > 1 ? [['any', anyLanguage] as const] : [])]}
        />
        <p>
          <label for="find-since">{fields.since}</label>
          <input id="find-since" name="since" type="date" />
        </p>
        <Select name="order" label={fields.order} any={orderNames.best} options={orders.map((order) => [order, orderNames[order]])} />
        <p class="tick">
          <input type="checkbox" id="find-recording" name="recording" value="1" />
          <label for="find-recording">{say.find.recording}</label>
        </p>
        <p>
          <button type="reset" class="quiet">
            {say.find.all}
          </button>
        </p>
      </div>
    </details>
  );
}

function Select({ name, label, any, options }: { readonly name: string; readonly label: string; readonly any: string; readonly options: readonly Option[] }): JSX.Element {
  return (
    <p>
      <label for={`find-${name}`}>{label}</label>
      <select id={`find-${name}`} name={name}>
        <option value="">{any}</option>
        {options.map(([value, text]) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </p>
  );
}
