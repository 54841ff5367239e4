/**
 * The filter of the page about quality. Without it the whole list is there; with it, the list can be narrowed, the
 * address carries what was chosen, and the way back works. Packs on other pages of a long list are found in
 * `quality.json`, which is asked for only when somebody chooses something.
 */
import { localeOf } from '../core/languages/about-language.ts';
import { choiceFields, choiceFrom, isChosen, queryOf, type Choice } from '../outputs/quality-choice.ts';
import type { Facets } from '../outputs/quality-figures.ts';

/** The page's own phrases: for none, one, some and all of the packs, with {n} and {all} for the numbers. */
interface Words {
  readonly none: string;
  readonly one: string;
  readonly some: string;
  readonly all: string;
  readonly failed: string;
  readonly page: string;
}

/** What is needed of a pack in `quality.json`. */
interface Listed {
  readonly title: string;
  readonly language: string;
  readonly number: number;
  readonly id: string;
  readonly facets: Facets;
}

const form = document.querySelector<HTMLFormElement>('#choice');
if (form) begin(form);

function begin(form: HTMLFormElement): void {
  const { here = '1', count = '0', first = './', all, words = '{}' } = form.dataset;
  const say = JSON.parse(words) as Words;
  const entries = [...document.querySelectorAll<HTMLElement>('.ledger-entry')];
  const status = form.querySelector('.shown');
  const elsewhere = form.querySelector<HTMLElement>('.elsewhere');
  const onOtherPages = otherPages(all, Number(here));
  let turn = 0;

  const show = async (choice: Choice): Promise<void> => {
    const mine = ++turn;
    const query = queryOf(choice);
    let shown = 0;
    for (const entry of entries) {
      entry.hidden = !isChosen(facetsOf(entry), choice);
      if (!entry.hidden) shown += 1;
    }
    for (const link of document.querySelectorAll<HTMLAnchorElement>('.numbered-pages a')) link.search = query;
    const others = query === '' ? [] : await onOtherPages();
    // Somebody may have chosen anew while the file was on its way.
    if (mine !== turn || !status || !elsewhere) return;
    const found = (others ?? []).filter((each) => isChosen(each.facets, choice));
    status.textContent = (others ? '' : `${say.failed} `) + sentence(say, query === '' ? Number(count) : shown + found.length, Number(count));
    elsewhere.hidden = found.length === 0;
    elsewhere.querySelector('ul')?.replaceChildren(...found.map((each) => linkTo(each, first, query, say)));
  };
  const chosen = (): Choice => choiceFrom(new FormData(form));
  const choose = (): void => {
    history.pushState(null, '', `${location.pathname}${queryOf(chosen())}`);
    void show(chosen());
  };
  const fromAddress = (): void => {
    fill(form, choiceFrom(new URLSearchParams(location.search)));
    // A field that does not know a value of the address shows any, and so does the list.
    void show(chosen());
  };

  form.hidden = false;
  form.addEventListener('change', choose);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  form.addEventListener('reset', () => {
    // The fields are emptied only after this event.
    setTimeout(choose);
  });
  addEventListener('popstate', fromAddress);
  fromAddress();
  if (location.hash !== '') document.getElementById(location.hash.slice(1))?.scrollIntoView();
}

function facetsOf({ dataset }: HTMLElement): Facets {
  const list = (text: string | undefined) => (text ?? '').split(' ').filter(Boolean);
  return { language: dataset['language'] ?? '', grades: list(dataset['grades']), levels: list(dataset['levels']), kinds: list(dataset['kinds']) };
}

/** Puts a choice into the form. */
function fill(form: HTMLFormElement, choice: Choice): void {
  for (const name of choiceFields) {
    const field = form.elements.namedItem(name);
    if (field instanceof HTMLSelectElement) field.value = [...field.options].some((option) => option.value === choice[name]) ? choice[name] : '';
  }
  const findings = form.elements.namedItem('findings');
  if (findings instanceof HTMLInputElement) findings.checked = choice.findings;
}

/** The packs of the other pages of the list, asked for once; undefined when they did not come. */
function otherPages(address: string | undefined, here: number): () => Promise<readonly Listed[] | undefined> {
  if (address === undefined) return () => Promise.resolve([]);
  let asked: Promise<readonly Listed[] | undefined> | undefined;
  const ask = async (): Promise<readonly Listed[] | undefined> => {
    try {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(String(answer.status));
      const { packs } = (await answer.json()) as { readonly packs: readonly Listed[] };
      return packs.filter((each) => each.number !== here);
    } catch {
      asked = undefined;
      return undefined;
    }
  };
  return () => (asked ??= ask());
}

function sentence(say: Words, shown: number, all: number): string {
  const pattern = shown === all ? say.all : shown === 0 ? say.none : shown === 1 ? say.one : say.some;
  const number = new Intl.NumberFormat(localeOf(document.documentElement.lang));
  return pattern.replace('{n}', number.format(shown)).replace('{all}', number.format(all));
}

function linkTo(each: Listed, first: string, query: string, say: Words): HTMLLIElement {
  const item = document.createElement('li');
  const link = document.createElement('a');
  link.href = `${first}${each.number === 1 ? '' : `${String(each.number)}/`}${query}#${each.id}`;
  link.textContent = each.title;
  if (each.language !== document.documentElement.lang) link.lang = each.language;
  item.append(link, `, ${say.page} ${String(each.number)}`);
  return item;
}
