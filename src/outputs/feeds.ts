import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { rootOf } from './addresses.ts';
import type { Output, OutputInput, ShownPack, ShownRetired } from './views.ts';
import { xml } from './xml.ts';

/** So many packs stand in a feed: those that were looked over last. */
const mostEntries = 50;

/**
 * What is new and what was changed, for each language of the library, as JSON Feed 1.1 and as Atom (RFC 4287). Both ask for
 * addresses that hold anywhere, so there are feeds only when `library.yaml` says where the site will live. A pack without
 * a day of review is left out: a feed without days tells nobody what is new.
 */
export function feeds({ library, shown, retired = [] }: Pick<OutputInput, 'library' | 'shown' | 'retired'>): readonly Output[] {
  const { address } = library;
  if (address === undefined) return [];
  const root = address.endsWith('/') ? address : `${address}/`;
  return library.languages.flatMap((language) => {
    const own = rootOf(language, library.language);
    const entries = latest(
      shown.filter(({ pack }) => pack.language === language),
      retired.filter(({ pack }) => pack.language === language),
    );
    const feed: Feed = {
      title: library.names?.[language] ?? library.name,
      description: library.welcome?.[language] ?? phrasesFor(language).library.welcome,
      language,
      home: root + own,
      root,
      library,
      entries,
    };
    return [
      { url: `${own}feed.json`, text: jsonFeed(feed, `${root}${own}feed.json`) },
      { url: `${own}feed.xml`, text: atom(feed, `${root}${own}feed.xml`) },
    ];
  });
}

interface Feed {
  readonly title: string;
  readonly description: string;
  readonly language: string;
  readonly home: string;
  readonly root: string;
  readonly library: Library;
  readonly entries: readonly Entry[];
}

interface Entry {
  /** Relative to the root of the site. */
  readonly url: string;
  readonly title: string;
  readonly summary: string;
  readonly maker: string;
  readonly licence: string | undefined;
  readonly language: string;
  readonly tags: readonly string[];
  readonly file: string;
  /** RFC 3339, at midnight in Greenwich: a pack tells a day and no hour. */
  readonly changed: string;
}

function latest(shown: readonly ShownPack[], retired: readonly ShownRetired[]): readonly Entry[] {
  const packs = shown.flatMap(({ pack, urls }): readonly Entry[] => {
    const { title, summary, by, language, file } = pack;
    return by.reviewed === undefined ? [] : [{ url: urls.family, title, summary, maker: by.name, licence: by.licence, language, tags: pack.for.grades, file, changed: dayOf(by.reviewed) }];
  });
  // Who follows the library hears, too, of what was taken out: its address is in their own lists.
  const gone = retired.map(({ pack: { title, language, file, retired: why, owner }, urls }): Entry => {
    const news = phrasesFor(language).retired.news(title);
    return { url: urls.family, title: news, summary: why.because, maker: owner?.name ?? '', licence: undefined, language, tags: [], file, changed: dayOf(why.on) };
  });
  return [...packs, ...gone].sort((a, b) => (a.changed < b.changed ? 1 : a.changed > b.changed ? -1 : a.file < b.file ? -1 : 1)).slice(0, mostEntries);
}

function dayOf(day: string): string {
  return `${day}T00:00:00Z`;
}

/** Source: JSON Feed version 1.1, jsonfeed.org. */
function jsonFeed({ title, description, language, home, root, entries }: Feed, url: string): string {
  const feed = {
    version: 'https://jsonfeed.org/version/1.1',
    title,
    home_page_url: home,
    feed_url: url,
    description,
    language,
    items: entries.map((entry) => ({
      id: root + entry.url,
      url: root + entry.url,
      title: entry.title,
      summary: entry.summary,
      content_text: entry.summary,
      date_modified: entry.changed,
      authors: entry.maker === '' ? undefined : [{ name: entry.maker }],
      language: entry.language,
      tags: entry.tags,
    })),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

/** Source: RFC 4287, The Atom Syndication Format. */
function atom({ title, description, language, home, root, library, entries }: Feed, url: string): string {
  const updated = entries[0]?.changed ?? '2000-01-01T00:00:00Z';
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${xml(language)}">`,
    `<title>${xml(title)}</title>`,
    `<subtitle>${xml(description)}</subtitle>`,
    `<id>${xml(url)}</id>`,
    `<link rel="self" type="application/atom+xml" href="${xml(url)}"/>`,
    `<link rel="alternate" type="text/html" href="${xml(home)}"/>`,
    `<updated>${updated}</updated>`,
    `<author><name>${xml(library.name)}</name></author>`,
    `<rights>${xml(library.rights)}</rights>`,
    ...entries.map((entry) =>
      [
        '<entry>',
        `<title>${xml(entry.title)}</title>`,
        `<id>${xml(root + entry.url)}</id>`,
        `<link rel="alternate" type="text/html" href="${xml(root + entry.url)}"/>`,
        `<updated>${entry.changed}</updated>`,
        ...(entry.maker === '' ? [] : [`<author><name>${xml(entry.maker)}</name></author>`]),
        ...(entry.licence === undefined ? [] : [`<rights>${xml(entry.licence)}</rights>`]),
        `<summary>${xml(entry.summary)}</summary>`,
        '</entry>',
      ].join('\n'),
    ),
    '</feed>',
  ];
  return `${lines.join('\n')}\n`;
}
