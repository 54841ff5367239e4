import type { Finding, Level } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { schoolOf } from '../core/pack/school.ts';
import { grades } from '../core/pack/schema.ts';
import { byTitle } from './by-title.ts';
import type { LibrarianView, OwnerRow, Related, ShownPack, ShownRetired, SkillTable } from './views.ts';

/**
 * What the page for whoever looks after a library is made of. Of packs that are kept off the site there are numbers and no more, as
 * on the page about quality: what is unpublished stays so. `bookfellow check` tells the rest on the machine of who builds.
 */

/** As many of each list stand on the page; the rest are counted. */
const mostListed = 60;
/** Owners on one page: each has a text of some lines. */
export const ownersOnAPage = 20;
/** Findings in one owner's text: a letter, and no ledger. */
const mostInText = 12;
/** Skills that are named in a table; the others are one row. */
const mostSkills = 12;

export interface ForLibrarian {
  readonly library: Library;
  readonly shown: readonly ShownPack[];
  readonly retired: readonly ShownRetired[];
  readonly findingsOf: ReadonlyMap<string, readonly Finding[]>;
  /** How many packs a finding keeps off the site, by whose they are; the library's own under its empty name. */
  readonly keptOffOf: ReadonlyMap<string, number>;
  /** The day on which a pack's page came into the site, by its address; a pack that was there from the beginning has none. */
  readonly arrivals: ReadonlyMap<string, string>;
}

/** The pages of one language: the first with the whole library in sum, and each with some of its owners. */
export function librarianViews(input: ForLibrarian, numbered: (pages: number) => readonly string[]): readonly LibrarianView[] {
  const owners = ownerRows(input);
  const urls = numbered(Math.max(1, Math.ceil(owners.length / ownersOnAPage)));
  const first = sumOf(input);
  return urls.map((_, index) => ({
    kind: 'librarian',
    number: index + 1,
    numbered: urls,
    owners: owners.slice(index * ownersOnAPage, (index + 1) * ownersOnAPage),
    sum: index === 0 ? first : undefined,
  }));
}

function sumOf({ library, shown, retired, findingsOf, keptOffOf, arrivals }: ForLibrarian): NonNullable<LibrarianView['sum']> {
  const dated = [
    ...shown.flatMap((each) => [
      ...(arrivals.has(each.urls.family) ? [{ pack: related(each), day: arrivals.get(each.urls.family) ?? '', what: 'came in' as const }] : []),
      ...(each.pack.by.reviewed === undefined ? [] : [{ pack: related(each), day: each.pack.by.reviewed, what: 'looked over' as const }]),
    ]),
    ...retired.map(({ pack, urls }) => ({ pack: { title: pack.title, language: pack.language, url: urls.family, from: pack.owner?.name }, day: pack.retired.on, what: 'taken out' as const })),
  ].sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : a.pack.url < b.pack.url ? -1 : 1));
  const past = shown
    .filter(({ pack }) => (findingsOf.get(pack.file) ?? []).some(({ code }) => code === 'by/review-past'))
    .map((each) => ({ pack: related(each), day: each.pack.by.reviewed ?? '' }))
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.pack.url < b.pack.url ? -1 : 1));
  return {
    packs: shown.length,
    news: dated.slice(0, mostListed),
    moreNews: Math.max(0, dated.length - mostListed),
    keptOff: [...keptOffOf].map(([owner, packs]) => ({ owner, packs })).sort((a, b) => b.packs - a.packs || (a.owner < b.owner ? -1 : 1)),
    past: past.slice(0, mostListed),
    morePast: Math.max(0, past.length - mostListed),
    never: shown.filter(({ pack }) => pack.by.reviewed === undefined).length,
    coverage: [...new Set([...library.languages, ...shown.map(({ pack }) => pack.language)])].flatMap((language) => {
      const own = shown.filter(({ pack }) => pack.language === language);
      return own.length === 0 ? [] : [skillTable(language, own)];
    }),
  };
}

function related({ pack, urls }: ShownPack): Related {
  return { title: pack.title, language: pack.language, url: urls.family, from: schoolOf(pack) };
}

/** Packs for each skill and grade of one language; one for two grades is counted in both, one without a skill in a row of its own. */
function skillTable(language: string, shown: readonly ShownPack[]): SkillTable {
  const skillsOf = ({ pack }: ShownPack) => [...new Set((pack.aims ?? []).map(({ skill }) => skill))];
  const times = new Map<string, number>();
  for (const skill of shown.flatMap(skillsOf)) times.set(skill, (times.get(skill) ?? 0) + 1);
  const named = [...times]
    .sort(([a, first], [b, second]) => second - first || (a < b ? -1 : 1))
    .slice(0, mostSkills)
    .map(([skill]) => skill)
    .sort((a, b) => a.localeCompare(b, language));
  const row = (skill: string | undefined, of: readonly ShownPack[]) => ({ skill, byGrade: grades.map((grade) => of.filter(({ pack }) => pack.for.grades.includes(grade)).length) });
  const others = shown.filter((each) => skillsOf(each).some((skill) => !named.includes(skill)));
  const without = shown.filter((each) => skillsOf(each).length === 0);
  return {
    language,
    skills: named.map((skill) =>
      row(
        skill,
        shown.filter((each) => skillsOf(each).includes(skill)),
      ),
    ),
    others: others.length === 0 ? undefined : row(undefined, others),
    without: without.length === 0 ? undefined : row(undefined, without),
    all: row(undefined, shown),
  };
}

/** Whose packs need what, those with most to do first. */
function ownerRows({ library, shown, findingsOf, keptOffOf }: ForLibrarian): readonly OwnerRow[] {
  const packsOf = new Map<string, ShownPack[]>([...keptOffOf.keys()].map((owner) => [owner, []]));
  for (const each of byTitle(shown, library.language)) {
    const owner = ownerOf(each.pack);
    const packs = packsOf.get(owner) ?? [];
    packs.push(each);
    packsOf.set(owner, packs);
  }
  const contactOf = new Map((library.sources ?? []).map(({ owner, contact }) => [owner, contact]));
  const rows = [...packsOf].map(([owner, packs]): OwnerRow => {
    const told = packs.flatMap((each) => (findingsOf.get(each.pack.file) ?? []).map((finding) => ({ pack: related(each), finding })));
    const levels: Readonly<Record<Level, number>> = { stop: 0, warn: 0, note: 0 };
    const byLevel = told.reduce((sum, { finding }) => ({ ...sum, [finding.level]: sum[finding.level] + 1 }), levels);
    const sorted = [...told].sort((a, b) => rank(a.finding.level) - rank(b.finding.level));
    return { owner, contact: contactOf.get(owner), packs: packs.length, keptOff: keptOffOf.get(owner) ?? 0, byLevel, told: sorted.slice(0, mostInText), more: Math.max(0, told.length - mostInText) };
  });
  return rows
    .filter(({ keptOff, told }) => keptOff + told.length > 0)
    .sort((a, b) => b.keptOff - a.keptOff || b.byLevel.warn - a.byLevel.warn || b.byLevel.note - a.byLevel.note || (a.owner < b.owner ? -1 : 1));
}

const rank = (level: Level): number => ['stop', 'warn', 'note'].indexOf(level);

/** Whose a pack is, as far as letters about it go: of the folder it lies in, or of the school it names; empty for the library itself. */
export function ownerOf(pack: Parameters<typeof schoolOf>[0]): string {
  return pack.owner?.name ?? pack.by.school ?? '';
}
