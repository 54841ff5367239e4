import { makeIndex, type FindIndex, type Listed, type ToFind } from '../core/find/find-index.ts';
import type { Phrases } from '../core/languages/en.ts';
import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { byTitle } from './by-title.ts';
import type { Output, ShownPack } from './views.ts';

/** The index of each language that there are packs in, as files that the search fetches bit by bit. */
export interface FindFiles {
  readonly language: string;
  readonly packs: number;
  /** Folder of the files, relative to the root; its name holds a hash of them, so that parts of two builds never mix. */
  readonly folder: string;
  readonly files: readonly Output[];
}

export function findFiles(library: Library, shown: readonly ShownPack[]): readonly FindFiles[] {
  const languages = [...new Set([...library.languages, ...shown.map(({ pack }) => pack.language)])];
  return languages.flatMap((language) => {
    const packs = byTitle(
      shown.filter(({ pack }) => pack.language === language),
      language,
    );
    if (packs.length === 0) return [];
    const index = makeIndex(
      language,
      packs.map(({ pack, urls }) => toFind(pack, urls.family)),
    );
    const parts = partsOf(index);
    const folder = `find/${language}-${hashOf(parts.map(([, text]) => text).join('\n'))}/`;
    return [{ language, packs: packs.length, folder, files: parts.map(([name, text]) => ({ url: folder + name, text })) }];
  });
}

/** A pack as it goes into the index. */
export function toFind(pack: Planned, url: string): ToFind {
  const say = phrasesFor(pack.language);
  return { pack, listed: listed(pack, url), more: moreWords(pack, say) };
}

/** Names of its feelings, of what kind of book it is, and of its grades. */
function moreWords(pack: Planned, say: Phrases): string {
  return [...(pack.feelings ?? []).map(({ family }) => say.families[family]), ...(pack.book.kinds ?? []).map((kind) => say.find.kindsOfBook[kind]), say.grades(pack.for.grades)].join(' ');
}

type Planned = ToFind['pack'] & Pick<ShownPack['pack'], 'language'>;

/** A pack as a result shows it, in its own language. */
function listed(pack: Planned, url: string): Listed {
  const say = phrasesFor(pack.language);
  return { title: pack.title, url, by: say.book.by(pack.book.author, pack.book.illustrator), summary: pack.summary, who: say.forGrades(pack.for.grades), long: say.minutesInWords(pack.for.minutes) };
}

function partsOf({ words, where, listed: packs }: FindIndex): readonly (readonly [name: string, text: string])[] {
  return [
    ['words.json', JSON.stringify(words)],
    ...where.map((part, number): [string, string] => [`where-${String(number)}.json`, JSON.stringify(part)]),
    ...packs.map((part, number): [string, string] => [`packs-${String(number)}.json`, JSON.stringify(part)]),
  ];
}

/** Two runs of FNV-1a with 32 bits: enough to tell two builds apart, and nobody has to trust it. Source: Fowler, Noll and Vo, from memory. */
function hashOf(text: string): string {
  return [0x811c9dc5, 0x01000193]
    .map((start) => {
      let hash = start;
      for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
      return (hash >>> 0).toString(36);
    })
    .join('');
}
