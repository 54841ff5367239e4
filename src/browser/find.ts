/**
 * The search at work. The address carries all that was asked, so a search can be sent on and the way back leads through what was asked
 * before. Nothing is fetched before somebody asks; then only the words of the index and the parts that the question touches.
 */
import { localeOf } from '../core/languages/about-language.ts';
import { choiceFields, choiceFrom, queryOf, type Choice } from '../core/find/choice.ts';
import { findPacks, meantBy, partsFor } from '../core/find/find.ts';
import type { Listed, Where, Words } from '../core/find/find-index.ts';

/** The page's own phrases, with {n} for numbers. */
type Say = Readonly<Record<'none' | 'one' | 'some' | 'failed' | 'page', string>>;

/** Results on a page. */
const onAPage = 12;

const form = document.querySelector<HTMLFormElement>('#find');
if (form) begin(form);

function begin(form: HTMLFormElement): void {
  const { root = '', folders: foldersText = '{}', words: wordsText = '{}' } = form.dataset;
  const folders = JSON.parse(foldersText) as Readonly<Record<string, string>>;
  const say = JSON.parse(wordsText) as Say;
  const section = document.querySelector<HTMLElement>('.find-results');
  const narrow = form.querySelector<HTMLDetailsElement>('.find-narrow');
  const fetched = new Map<string, Promise<unknown>>();
  let turn = 0;

  /** A file of the index, fetched once; one that did not come is asked for anew the next time. */
  const get = <T>(address: string): Promise<T> => {
    const asked =
      fetched.get(address) ??
      fetch(root + address).then((answer) => {
        if (!answer.ok) throw new Error(String(answer.status));
        return answer.json() as Promise<unknown>;
      });
    fetched.set(address, asked);
    asked.catch(() => fetched.delete(address));
    return asked as Promise<T>;
  };

  const languagesFor = ({ language }: Choice): readonly string[] => {
    if (language === 'any') return Object.keys(folders);
    const own = document.documentElement.lang;
    return language !== '' ? [language] : own in folders ? [own] : Object.keys(folders);
  };

  /** What answers the choice in one language, and how to fetch what is shown of it. */
  const findIn = async (language: string, choice: Choice): Promise<readonly (() => Promise<Shown>)[]> => {
    const folder = folders[language];
    if (folder === undefined) return [];
    const index = await get<Words>(`${folder}words.json`);
    offer(form, index);
    const meant = meantBy(choice.words, index.words.split('\n'));
    const parts = new Map(await Promise.all(partsFor(meant, index).map(async (part) => [part, await get<Where>(`${folder}where-${String(part)}.json`)] as const)));
    return findPacks(index, choice, meant, (part) => parts.get(part) ?? []).map((number) => async () => {
      const part = await get<readonly Listed[]>(`${folder}packs-${String(Math.floor(number / index.packsInPart))}.json`);
      const listed = part[number % index.packsInPart];
      if (!listed) throw new Error(`no pack ${String(number)}`);
      return { ...listed, language };
    });
  };

  const show = async (choice: Choice): Promise<void> => {
    const mine = ++turn;
    if (!section) return;
    const asks = queryOf({ ...choice, page: '', order: '', language: '' }) !== '' || choice.language !== '';
    section.hidden = !asks;
    if (!asks) return;
    try {
      const found = (await Promise.all(languagesFor(choice).map((language) => findIn(language, choice)))).flat();
      const pages = Math.max(1, Math.ceil(found.length / onAPage));
      const page = Math.min(pages, Math.max(1, Math.floor(Number(choice.page)) || 1));
      const shown = await Promise.all(found.slice((page - 1) * onAPage, page * onAPage).map((fetchIt) => fetchIt()));
      // Somebody may have asked anew while the files were on their way.
      if (mine !== turn) return;
      list(section, shown, root);
      turnPages(section, choice, page, pages, say);
      tell(section, found.length === 0 ? say.none : found.length === 1 ? say.one : say.some.replace('{n}', new Intl.NumberFormat(localeOf(document.documentElement.lang)).format(found.length)));
    } catch {
      if (mine !== turn) return;
      list(section, [], root);
      tell(section, say.failed);
    }
  };

  const chosen = (page = ''): Choice => choiceFrom({ get: (name) => (name === 'page' ? page : new FormData(form).get(name)) });
  const ask = (choice: Choice): void => {
    const query = queryOf(choice);
    if (query !== location.search) history.pushState(null, '', location.pathname + query);
    void show(choice);
  };
  const fromAddress = (): void => {
    const choice = choiceFrom(new URLSearchParams(location.search));
    fill(form, choice);
    if (narrow && queryOf({ ...choice, words: '', page: '', order: '' }) !== '') narrow.open = true;
    // The options of schools and skills come with the index, and the choice of the address has to wait for them.
    void show(choice).then(() => {
      fill(form, choice);
    });
  };

  form.hidden = false;
  document.querySelector('.without-script')?.remove();
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    ask(chosen());
    section?.querySelector<HTMLElement>('h2')?.focus();
  });
  form.addEventListener('change', (event) => {
    // A word is looked for when it is sent off, not at every way out of the field.
    if (!(event.target instanceof HTMLInputElement && event.target.type === 'search')) ask(chosen());
  });
  form.addEventListener('reset', () => {
    setTimeout(() => {
      ask(chosen());
    });
  });
  // The options that come with the index are there by the time somebody opens the fields.
  narrow?.addEventListener('toggle', () => {
    for (const language of languagesFor(chosen()))
      get<Words>(`${folders[language] ?? ''}words.json`).then(
        (index) => offer(form, index),
        () => undefined,
      );
  });
  section?.querySelector('nav')?.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    ask(choiceFrom(new URLSearchParams(link.search)));
    section.querySelector<HTMLElement>('h2')?.focus();
  });
  addEventListener('popstate', fromAddress);
  fromAddress();
}

interface Shown extends Listed {
  readonly language: string;
}

function tell(section: HTMLElement, sentence: string): void {
  const status = section.querySelector('.shown');
  if (status) status.textContent = sentence;
}

function list(section: HTMLElement, shown: readonly Shown[], root: string): void {
  section.querySelector('.found')?.replaceChildren(...shown.map((each) => entry(each, root)));
}

function entry({ title, url, by, summary, who, long, language }: Shown, root: string): HTMLElement {
  const link = element('a', title);
  link.href = root + url;
  const item = element('li');
  if (language !== document.documentElement.lang) item.lang = language;
  const heading = element('h3');
  heading.append(link);
  item.append(heading, element('p', by, 'by'), element('p', summary, 'found-summary'), element('p', `${who}, ${long}`, 'found-for'));
  return item;
}

function turnPages(section: HTMLElement, choice: Choice, page: number, pages: number, say: Say): void {
  const nav = section.querySelector<HTMLElement>('nav');
  if (!nav) return;
  nav.hidden = pages < 2;
  // The first, the last, and those around this one.
  const numbers = Array.from({ length: pages }, (_, index) => index + 1).filter((number) => number === 1 || number === pages || Math.abs(number - page) < 3);
  nav.querySelector('ol')?.replaceChildren(
    ...numbers.map((number) => {
      const link = element('a', String(number));
      link.href = queryOf({ ...choice, page: String(number) }) || location.pathname;
      link.setAttribute('aria-label', say.page.replace('{n}', String(number)));
      if (number === page) link.setAttribute('aria-current', 'page');
      const item = element('li');
      item.append(link);
      return item;
    }),
  );
}

/** Puts the schools and skills of an index among the options. */
function offer(form: HTMLFormElement, { facets }: Words): void {
  for (const [name, values] of [
    ['skill', facets.skills],
    ['school', facets.schools],
  ] as const) {
    const field = form.elements.namedItem(name);
    if (!(field instanceof HTMLSelectElement)) continue;
    const there = new Set([...field.options].map((option) => option.value));
    field.append(...values.filter((value) => !there.has(value)).map((value) => new Option(value, value)));
  }
}

/** Puts a choice into the form. A value that a field does not know is left. */
function fill(form: HTMLFormElement, choice: Choice): void {
  for (const name of choiceFields) {
    const field = form.elements.namedItem(name);
    if (field instanceof HTMLInputElement && field.type === 'checkbox') field.checked = choice[name] !== '';
    else if (field instanceof HTMLInputElement) field.value = choice[name];
    else if (field instanceof HTMLSelectElement) field.value = [...field.options].some((option) => option.value === choice[name]) ? choice[name] : '';
  }
}

function element<K extends keyof HTMLElementTagNameMap>(name: K, text = '', className = ''): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.textContent = text;
  if (className !== '') made.className = className;
  return made;
}
