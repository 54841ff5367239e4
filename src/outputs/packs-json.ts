import { retiredFields } from './retired.ts';
import type { OutputInput } from './views.ts';

/** The list of packs for other programs: what each is, for whom, and where its pages are, relative to this file. */
export function packsJson({ library, shown, retired = [] }: Pick<OutputInput, 'library' | 'shown' | 'retired'>): string {
  const packs = shown.map(({ pack, urls, lineage }) => ({
    title: pack.title,
    language: pack.language,
    summary: pack.summary,
    book: { title: pack.book.title, author: pack.book.author, kinds: pack.book.kinds, rights: pack.book.rights, isbn: pack.book.isbn },
    grades: pack.for.grades,
    minutes: pack.for.minutes,
    licence: pack.by.licence,
    provider: pack.owner && { name: pack.owner.name, contact: pack.owner.contact },
    reviewed: pack.by.reviewed,
    version: pack.by.version,
    'based on': pack.by.basedOn,
    parent: lineage?.parent?.url,
    forks: lineage && lineage.forks.length > 0 ? lineage.forks.map(({ url }) => url) : undefined,
    aims: pack.aims,
    pages: urls,
    files: { json: `${urls.family}pack.json`, text: `${urls.family}pack.md` },
  }));
  return `${JSON.stringify({ library: library.name, schema: 'schema/pack.json', packs, ...(retired.length > 0 && { retired: retired.map(retiredFields) }) }, null, 2)}\n`;
}
