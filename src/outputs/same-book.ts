import { alike, type Ground, type Pair } from '../core/find/alike.ts';
import { promptsOf, type Compared } from '../core/find/compared.ts';
import { resemblance, shinglesOf } from '../core/find/shingles.ts';
import type { Phrases } from '../core/languages/en.ts';
import type { Library } from '../core/pack/library.ts';
import { meantBy } from '../core/pack/lineage.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import { schoolOf } from '../core/pack/school.ts';
import { byTitle as inOrderOfTitles } from './by-title.ts';
import { namesIn } from './lineage.ts';
import type { RelatedPacks, SameBookCase, ShownPack } from './views.ts';

/** Packs of one book, beside each other for whoever settles which of them stay. */

export interface SameBooks {
  readonly cases: readonly SameBookCase[];
  readonly related: readonly RelatedPacks[];
}

/** Cases on one page. */
export const casesOnAPage = 30;
/** More than these beside each other and nobody sees a difference. */
const mostBeside = 8;
/** Two questions are one when at least half of their runs of words are the same. Our own choice. */
const sameQuestion = 0.5;
const mostQuestions = 12;

export function sameBooks(library: Library, shown: readonly ShownPack[], retired: readonly RetiredPack[]): SameBooks {
  const packs = inOrderOfTitles(shown, library.language);
  const stay = (library.bothStay ?? []).map((slugs) => new Set(slugs));
  const names = namesIn(shown, retired, library);
  const parents = new Map<Compared, string>();
  for (const { pack } of packs) {
    const meant = pack.by.basedOn === undefined ? undefined : meantBy(pack.by.basedOn, pack.owner?.prefix, names);
    if (meant?.kind === 'here') parents.set(pack, meant.slug);
  }
  const said = (a: Compared, b: Compared): 'fork' | 'both stay' | undefined => {
    const [mother, other] = [parents.get(a), parents.get(b)];
    if (mother === b.slug || other === a.slug || (mother !== undefined && mother === other)) return 'fork';
    return stay.some((slugs) => slugs.has(a.slug) && slugs.has(b.slug)) ? 'both stay' : undefined;
  };
  const { unsettled, related } = alike(
    packs.map(({ pack }) => pack),
    said,
  );
  const at = (place: number) => packs[place] as ShownPack;
  return {
    cases: unsettled.map((book) => {
      const all = book.packs.map(at);
      const beside = all.slice(0, mostBeside);
      return { packs: beside, others: all.slice(mostBeside), grounds: groundsOf(book.pairs), shared: sharedQuestions(beside) };
    }),
    related: related.map(({ a, b, related: how }) => ({ first: at(a), second: at(b), how: how ?? 'fork' })),
  };
}

function groundsOf(pairs: readonly Pair[]): readonly Ground[] {
  return (['isbn', 'title', 'prompts'] as const).filter((ground) => pairs.some(({ grounds }) => grounds.includes(ground)));
}

function sharedQuestions(packs: readonly ShownPack[]): readonly string[] {
  const asked = packs.flatMap(({ pack }, place) => promptsOf(pack).map((text) => ({ text, place, runs: shinglesOf([text]) })));
  const shared = asked.filter((one, index) => asked.some((other, at) => other.place > one.place && at > index && resemblance(one.runs, other.runs) >= sameQuestion));
  return shared.filter(({ runs }, index) => !shared.slice(0, index).some((before) => resemblance(before.runs, runs) >= sameQuestion)).map(({ text }) => text);
}

export const shownQuestions = (questions: readonly string[]): readonly string[] => questions.slice(0, mostQuestions);

/** What is known of a pack, by the name of the field and in words; the same fields for every pack. */
export function factsOf({ pack }: ShownPack, say: Phrases, date: (day: string) => string): readonly (readonly [name: string, value: string])[] {
  const { facts } = say.sameBook;
  const { book, by } = pack;
  const school = schoolOf(pack);
  return [
    [facts.book, book.title],
    [facts.author, book.author],
    [facts.illustrator, book.illustrator ?? ''],
    [
      facts.edition,
      [book.publisher, book.year === undefined ? undefined : String(book.year), book.isbn === undefined ? undefined : say.book.isbn(book.isbn)].filter((part) => part !== undefined).join(say.comma),
    ],
    [facts.maker, school === undefined ? by.name : `${by.name}${say.comma}${school}`],
    [facts.grades, say.grades(pack.for.grades)],
    [facts.minutes, say.minutes(pack.for.minutes)],
    [facts.stops, String(pack.stops.length)],
    [facts.reviewed, by.reviewed === undefined ? '' : date(by.reviewed)],
    [facts.version, by.version ?? ''],
    [facts.licence, by.licence],
    [facts.from, by.basedOn ?? ''],
  ];
}

/** Facts that all packs have alike, and of each pack those in which they differ; a fact that nobody gave is left out. */
export function compared(packs: readonly (readonly (readonly [name: string, value: string])[])[]): {
  readonly alike: readonly (readonly [string, string])[];
  readonly differing: readonly (readonly (readonly [string, string])[])[];
} {
  const [first = []] = packs;
  const isAlike = first.map(([, value], index) => packs.every((facts) => facts[index]?.[1] === value));
  return {
    alike: first.filter(([, value], index) => isAlike[index] === true && value !== ''),
    differing: packs.map((facts) => facts.filter((_, index) => isAlike[index] === false)),
  };
}
