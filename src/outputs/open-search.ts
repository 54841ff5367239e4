import { phrasesFor } from '../core/languages/pick-language.ts';
import { rootOf } from './addresses.ts';
import type { Output, OutputInput } from './views.ts';
import { xml } from './xml.ts';

/**
 * Tells a browser how to search the library from its own address line, one file a language. It needs whole addresses, so there are such
 * files only when `library.yaml` says where the site will live. Source: OpenSearch 1.1, draft 6: a short name has 16 characters at most, a description 1,024.
 */
export function openSearch({ library }: Pick<OutputInput, 'library'>): readonly Output[] {
  const { address } = library;
  if (address === undefined) return [];
  const root = address.endsWith('/') ? address : `${address}/`;
  return library.languages.map((language) => {
    const own = rootOf(language, library.language);
    const name = library.names?.[language] ?? library.name;
    const text = [
      '<?xml version="1.0" encoding="UTF-8"?>',
      '<OpenSearchDescription xmlns="http://a9.com/-/spec/opensearch/1.1/">',
      `<ShortName>${xml([...name].slice(0, 16).join('').trim())}</ShortName>`,
      `<Description>${xml(`${name}. ${phrasesFor(language).find.lead}`.slice(0, 1000))}</Description>`,
      `<Language>${xml(language)}</Language>`,
      '<InputEncoding>UTF-8</InputEncoding>',
      `<Url type="text/html" template="${xml(`${root}${own}find/?words={searchTerms}`)}"/>`,
      '</OpenSearchDescription>',
    ].join('\n');
    return { url: `${own}opensearch.xml`, text: `${text}\n` };
  });
}
