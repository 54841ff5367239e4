import type { Pack } from '../pack/pack.ts';
import { families, grades, kinds, kindsOfBook, rightsOf, ways } from '../pack/schema.ts';
import { schoolOf } from '../pack/school.ts';
import { daysOf } from './days.ts';
import { foldedWords } from './fold.ts';

/**
 * What a search over the packs of one language needs, cut into parts so that a phone fetches little: one `Words` file with all words and
 * with what packs are chosen by, then only the parts that a search touches. A pack's number is its place in the order of the titles.
 */
export interface Words {
  readonly language: string;
  readonly packs: number;
  /** Every word that can be found, folded, in the order of code units, one a line. */
  readonly words: string;
  /** The first word of each part of `Where`, by its place in `words`. */
  readonly parts: readonly number[];
  /** How many packs stand in one part of `Listed`. */
  readonly packsInPart: number;
  /** What the bits and numbers of the facets stand for, in order. */
  readonly lists: Lists;
  readonly facets: Facets;
}

export type Lists = Readonly<Record<'grades' | 'books' | 'ways' | 'kinds' | 'feelings' | 'rights', readonly string[]>>;

/** By what packs can be chosen: one value a pack in each list. Sets are bits, in the order of `Lists`. */
export interface Facets {
  readonly grades: readonly number[];
  /** Kinds of book. */
  readonly books: readonly number[];
  readonly minutes: readonly number[];
  readonly ways: readonly number[];
  readonly kinds: readonly number[];
  readonly feelings: readonly number[];
  readonly rights: readonly number[];
  /** 1 where there is a recording. */
  readonly recording: readonly number[];
  /** Days from 2000-01-01 to the last review; 0 where none is told. */
  readonly reviewed: readonly number[];
  /** Names of schools, and each pack's place in them from 1; 0 where none is told. */
  readonly schools: readonly string[];
  readonly school: readonly number[];
  /** The skills that most packs aim at, and of each pack which; a list of places from 0. */
  readonly skills: readonly string[];
  readonly skill: readonly (readonly number[])[];
}

/** For each word of a part of the index: number of a pack (less the one before), then how much the word says about it, in turn. */
export type Where = readonly (readonly number[])[];

/** What a result shows, in the pack's own language: its address, by whom it is, for whom and how long in words. */
export interface Listed {
  readonly title: string;
  /** Relative to the root of the site. */
  readonly url: string;
  readonly by: string;
  readonly summary: string;
  readonly who: string;
  readonly long: string;
}

export interface FindIndex {
  readonly words: Words;
  readonly where: readonly Where[];
  readonly listed: readonly (readonly Listed[])[];
}

/** A pack as it is put into the index. */
export interface ToFind {
  readonly pack: Pick<Pack, 'title' | 'book' | 'by' | 'for' | 'aims' | 'words' | 'feelings' | 'stops' | 'summary' | 'recording' | 'owner'>;
  readonly listed: Listed;
  /** More words that it can be found by: names of its feelings, of its kind and of its grades in its language. */
  readonly more: string;
}

/** So many numbers stand in one part of `Where`: some 10 kB as a server sends it. A frequent word may have a part to itself. */
const numbersInPart = 4000;
export const packsInPart = 12;
/** Skills that can be chosen: more would make a list that nobody reads. */
const mostSkills = 40;
/** A word that stands in more than this share of many packs tells nothing ("the", "de"), unless it stands there with at least this weight, as in a title. */
const tooCommon = { share: 0.4, from: 30, unless: 4 } as const;

/** Makes the index of packs of one language that stand in the order of their titles. */
export function makeIndex(language: string, packs: readonly ToFind[]): FindIndex {
  const weights = packs.map(({ pack, more }) => weightsOf(pack, more));
  const where = new Map<string, Stands[]>();
  for (const [number, words] of weights.entries()) {
    for (const [word, weight] of words) {
      const stands = where.get(word) ?? [];
      stands.push([number, weight]);
      where.set(word, stands);
    }
  }
  const words = [...where].map(([word, stands]) => [word, asSteps(tellingOf(stands, packs.length))] as const).filter(([, numbers]) => numbers.length > 0);
  words.sort(([a], [b]) => (a < b ? -1 : 1));
  const parts = partsOf(words.map(([, numbers]) => numbers.length));
  return {
    words: {
      language,
      packs: packs.length,
      words: words.map(([word]) => word).join('\n'),
      parts,
      packsInPart,
      lists: { grades, books: kindsOfBook, ways, kinds, feelings: families, rights: rightsOf },
      facets: facetsOf(packs),
    },
    where: parts.map((first, part) => words.slice(first, parts[part + 1]).map(([, numbers]) => numbers)),
    listed: inParts(
      packs.map(({ listed }) => listed),
      packsInPart,
    ),
  };
}

/** In which pack a word stands, and how much it says about it. */
type Stands = readonly [number: number, weight: number];

/** Where a word tells packs apart: everywhere, or of a common one where it weighs most, or nowhere. */
function tellingOf(stands: readonly Stands[], packs: number): readonly Stands[] {
  const most = packs < tooCommon.from ? Infinity : packs * tooCommon.share;
  if (stands.length <= most) return stands;
  const heavy = stands.filter(([, weight]) => weight >= tooCommon.unless);
  return heavy.length <= most ? heavy : [];
}

/** As `Where` has them: the number less the one before, then the weight. */
function asSteps(stands: readonly Stands[]): readonly number[] {
  return stands.flatMap(([number, weight], index) => [number - (stands[index - 1]?.[0] ?? 0), weight]);
}

/** How much each word says about a pack: most in its title, least in its summary. The weights are our own; the search's test holds them to account. */
function weightsOf(pack: ToFind['pack'], more: string): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const add = (text: string | undefined, weight: number) => {
    for (const word of foldedWords(text ?? '')) weights.set(word, Math.max(weights.get(word) ?? 0, weight));
  };
  add(more, 1);
  add(pack.summary, 2);
  add(`${pack.by.name} ${schoolOf(pack) ?? ''}`, 2);
  for (const { skill } of pack.aims ?? []) add(skill, 3);
  for (const { word } of pack.feelings ?? []) add(word, 3);
  for (const { word } of pack.words ?? []) add(word, 4);
  add(`${pack.book.author} ${pack.book.illustrator ?? ''}`, 6);
  add(`${pack.title} ${pack.book.title}`, 9);
  return weights;
}

function facetsOf(packs: readonly ToFind[]): Facets {
  const all = packs.map(({ pack }) => pack);
  const schools = [...new Set(all.flatMap((pack) => schoolOf(pack) ?? []))].sort((a, b) => (a < b ? -1 : 1));
  const placeOfSchool = new Map(schools.map((school, place) => [school, place]));
  const skills = mostOf(all.flatMap((pack) => [...new Set((pack.aims ?? []).map(({ skill }) => skill))]));
  return {
    grades: all.map((pack) => bits(grades, pack.for.grades)),
    books: all.map((pack) => bits(kindsOfBook, pack.book.kinds ?? [])),
    minutes: all.map((pack) => pack.for.minutes),
    ways: all.map((pack) =>
      bits(
        ways,
        pack.stops.flatMap(({ answer, or }) => (or === undefined ? [answer] : [answer, or])),
      ),
    ),
    kinds: all.map((pack) =>
      bits(
        kinds,
        pack.stops.map(({ kind }) => kind),
      ),
    ),
    feelings: all.map((pack) =>
      bits(
        families,
        (pack.feelings ?? []).map(({ family }) => family),
      ),
    ),
    rights: all.map((pack) => rightsOf.indexOf(pack.book.rights)),
    recording: all.map((pack) => (pack.recording === undefined ? 0 : 1)),
    reviewed: all.map((pack) => daysOf(pack.by.reviewed)),
    schools,
    school: all.map((pack) => 1 + (placeOfSchool.get(schoolOf(pack) ?? '') ?? -1)),
    skills,
    skill: all.map((pack) => [...new Set((pack.aims ?? []).map((aim) => skills.indexOf(aim.skill)).filter((place) => place >= 0))]),
  };
}

/** The texts that come most often, at most `mostSkills`, in the order of the alphabet. */
function mostOf(texts: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts]
    .sort(([a, first], [b, second]) => second - first || (a < b ? -1 : 1))
    .slice(0, mostSkills)
    .map(([text]) => text)
    .sort((a, b) => (a < b ? -1 : 1));
}

/** A set as a number: bit n stands for the n-th of `all`. */
export function bits<T>(all: readonly T[], some: readonly T[]): number {
  return some.reduce((sum, each) => sum | (1 << all.indexOf(each)), 0);
}

/** Where each part begins, when the words have so many numbers each. */
function partsOf(lengths: readonly number[]): readonly number[] {
  const parts: number[] = [];
  let room = 0;
  for (const [place, length] of lengths.entries()) {
    if (length > room) {
      parts.push(place);
      room = numbersInPart;
    }
    room -= length;
  }
  return parts;
}

function inParts<T>(all: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, part) => all.slice(part * size, (part + 1) * size));
}
