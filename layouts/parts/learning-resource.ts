import type { Owner } from '../../src/core/pack/library-sources.ts';
import type { PackView, PageOf } from '../../src/outputs/views.ts';

/** Usual ages of a grade in the United States (common practice, no source). */
const agesOf: Readonly<Record<string, readonly [number, number]>> = { PreK: [4, 5], K: [5, 6], '1': [6, 7], '2': [7, 8], '3': [8, 9], '4': [9, 10] };

/** What the family page says of itself to machines, in the vocabulary of schema.org. */
export function learningResource(page: PageOf<PackView>): object {
  const { pack, pictures, recording } = page.view.shown;
  const { book } = pack;
  const ages = pack.for.grades.flatMap((grade) => agesOf[grade] ?? []);
  const described = pictures.length > 0 && pictures.every((picture) => picture.decorative || picture.alt !== '');
  const alignments = (pack.aims ?? []).flatMap(({ standard }) =>
    standard === undefined
      ? []
      : {
          '@type': 'AlignmentObject',
          alignmentType: 'teaches',
          educationalFramework: standard.framework,
          targetName: standard.code ?? standard.paraphrase,
          targetDescription: standard.paraphrase,
          ...(standard.uri === undefined ? {} : { targetUrl: standard.uri }),
          // CASE (1EdTech) names each item by a UUID that holds wherever the item is published.
          ...(standard.uuid === undefined ? {} : { identifier: `urn:uuid:${standard.uuid.toLowerCase()}` }),
        },
  );
  return {
    '@context': 'https://schema.org',
    '@type': 'LearningResource',
    name: pack.title,
    description: pack.summary,
    inLanguage: pack.language,
    educationalLevel: pack.for.grades,
    ...(ages.length === 0 ? {} : { typicalAgeRange: `${String(Math.min(...ages))}-${String(Math.max(...ages))}` }),
    timeRequired: `PT${String(pack.for.minutes)}M`,
    learningResourceType: 'read-aloud companion',
    audience: { '@type': 'Audience', audienceType: 'families and teachers' },
    author: { '@type': 'Person', name: pack.by.name },
    ...(pack.owner && { provider: providerOf(pack.owner) }),
    license: licenceOf(pack.by.licence),
    isAccessibleForFree: true,
    ...(pack.by.reviewed === undefined ? {} : { dateModified: pack.by.reviewed }),
    ...(pack.aims ? { teaches: pack.aims.map((aim) => aim.skill) } : {}),
    ...(alignments.length === 0 ? {} : { educationalAlignment: alignments }),
    isBasedOn: {
      '@type': 'Book',
      name: book.title,
      author: { '@type': 'Person', name: book.author },
      ...(book.illustrator === undefined ? {} : { illustrator: { '@type': 'Person', name: book.illustrator } }),
      ...(book.kinds === undefined || book.kinds.length === 0 ? {} : { genre: book.kinds }),
      ...(book.isbn === undefined ? {} : { isbn: book.isbn }),
      ...(book.year === undefined ? {} : { datePublished: String(book.year) }),
    },
    accessMode: pictures.length > 0 ? ['textual', 'visual'] : ['textual'],
    ...(pictures.length === 0 || described ? { accessModeSufficient: [{ '@type': 'ItemList', itemListElement: ['textual'] }] } : {}),
    accessibilityFeature: ['structuralNavigation', ...(described ? ['alternativeText'] : [])],
    // A film may flash, and nobody has measured it: of a pack with one, nothing is said.
    ...(recording === undefined ? { accessibilityHazard: ['none'] } : {}),
  };
}

/** A licence is an address where it has one that everybody knows, and else a work with a name: a bare name is no value that schema.org allows. */
function licenceOf(licence: string): string | object {
  const [, kind, version] = /^CC[ -]((?:BY)(?:-(?:NC|ND|SA))*)[ -](\d\.\d)$/i.exec(licence.trim()) ?? [];
  if (kind !== undefined && version !== undefined) return `https://creativecommons.org/licenses/${kind.toLowerCase()}/${version}/`;
  if (/^CC0(?:[ -]1\.0)?$/i.test(licence.trim())) return 'https://creativecommons.org/publicdomain/zero/1.0/';
  return /^https?:\/\/[^\s<>"]+$/.test(licence) ? licence : { '@type': 'CreativeWork', name: licence };
}

/** Whose folder of the library it came from. A contact that is neither a mail nor a web address is for people alone. */
function providerOf({ name, contact = '' }: Owner): object {
  const reach = /^[^\s@]+@[^\s@]+$/.test(contact) ? { email: contact } : /^https?:\/\/\S+$/.test(contact) ? { url: contact } : {};
  return { '@type': 'Organization', name, ...reach };
}
