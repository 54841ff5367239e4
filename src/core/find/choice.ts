import { daysOf } from './days.ts';
import type { Words } from './find-index.ts';

/** What a visitor looks for. An empty field means any; the address carries all of it: `?words=lamp&grade=K&minutes=15`. */
export interface Choice {
  readonly words: string;
  /** Tag of a language, or `any`; empty: the page's own. */
  readonly language: string;
  readonly grade: string;
  /** At most so many minutes. */
  readonly minutes: string;
  /** The kind of book; `kind` is what a stop asks for. */
  readonly book: string;
  readonly way: string;
  readonly kind: string;
  readonly feeling: string;
  readonly skill: string;
  readonly school: string;
  readonly rights: string;
  readonly recording: string;
  /** Looked over on this day or later: `2026-01-01`. */
  readonly since: string;
  readonly order: string;
  /** Which page of the results, from 1. */
  readonly page: string;
}

export const choiceFields = [
  'words',
  'language',
  'grade',
  'minutes',
  'book',
  'way',
  'kind',
  'feeling',
  'skill',
  'school',
  'rights',
  'recording',
  'since',
  'order',
  'page',
] as const satisfies readonly (keyof Choice)[];
export const orders = ['title', 'minutes', 'reviewed'] as const;

export function choiceFrom(fields: { get(name: string): unknown }): Choice {
  const text = (name: string): string => {
    const value = fields.get(name);
    return typeof value === 'string' ? value.slice(0, 200).trim() : '';
  };
  return Object.fromEntries(choiceFields.map((name) => [name, text(name)])) as unknown as Choice;
}

/** The choice as the end of an address: "" or "?words=lamp". */
export function queryOf(choice: Choice): string {
  const parts = choiceFields.filter((name) => choice[name] !== '' && !(name === 'page' && choice.page === '1')).map((name) => `${name}=${encodeURIComponent(choice[name])}`);
  return parts.length === 0 ? '' : `?${parts.join('&')}`;
}

/** Whether a pack, by its number, has all that was chosen apart from the words. What the index does not know lets nothing through. */
export function isChosen({ lists, facets }: Pick<Words, 'lists' | 'facets'>, number: number, choice: Choice): boolean {
  const has = (all: readonly string[], of: readonly number[], wanted: string) => wanted === '' || (all.includes(wanted) && ((of[number] ?? 0) & (1 << all.indexOf(wanted))) !== 0);
  return (
    has(lists.grades, facets.grades, choice.grade) &&
    has(lists.books, facets.books, choice.book) &&
    has(lists.ways, facets.ways, choice.way) &&
    has(lists.kinds, facets.kinds, choice.kind) &&
    has(lists.feelings, facets.feelings, choice.feeling) &&
    (choice.minutes === '' || (facets.minutes[number] ?? Infinity) <= Number(choice.minutes)) &&
    (choice.skill === '' || (facets.skill[number] ?? []).some((place) => facets.skills[place] === choice.skill)) &&
    (choice.school === '' || facets.schools[(facets.school[number] ?? 0) - 1] === choice.school) &&
    (choice.rights === '' || lists.rights[facets.rights[number] ?? -1] === choice.rights) &&
    (choice.recording === '' || facets.recording[number] === 1) &&
    (choice.since === '' || (facets.reviewed[number] ?? 0) >= (daysOf(choice.since) || Infinity))
  );
}
