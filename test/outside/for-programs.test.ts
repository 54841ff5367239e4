/** The checks of what other programs are told find what is wrong: each case has one mistake, and the sound one beside it has none. */
import { describe, expect, test } from 'vitest';
import { jsonLdFaults } from '../whole-site/json-ld.ts';
import { xmlFaults } from '../whole-site/xml-schemas.ts';

describe('what a page says of itself', () => {
  const sound = {
    '@context': 'https://schema.org',
    '@type': 'LearningResource',
    name: 'Boats',
    license: 'https://creativecommons.org/licenses/by/4.0/',
    timeRequired: 'PT20M',
    dateModified: '2026-03-01',
    isAccessibleForFree: true,
    isBasedOn: { '@type': 'Book', name: 'Boats', author: { '@type': 'Person', name: 'A. Nobody' } },
    accessibilityFeature: ['structuralNavigation'],
    accessibilityHazard: ['none'],
    accessModeSufficient: [{ '@type': 'ItemList', itemListElement: ['textual'] }],
  };
  test('is sound', () => {
    expect(jsonLdFaults(sound)).toEqual([]);
  });
  test.each([
    ['a property that nobody has', { minutes: 20 }, 'minutes: no property we know'],
    ['a property of another type', { isbn: '123' }, 'isbn: a LearningResource has no such property'],
    ['a licence that is a bare name', { license: 'CC BY 4.0' }, 'license: "CC BY 4.0" is none of CreativeWork, URL'],
    ['minutes in plain words', { timeRequired: '20 minutes' }, 'timeRequired: "20 minutes" is none of Duration'],
    ['a day that is none', { dateModified: '2026-13-01' }, 'dateModified: "2026-13-01" is none of Date, DateTime'],
    ['a book by a list', { isBasedOn: { '@type': 'ItemList', itemListElement: 'Boats' } }, 'isBasedOn: a ItemList is none of CreativeWork, Product, URL'],
    ['a feature of nobody’s list', { accessibilityFeature: ['easy'] }, 'accessibilityFeature: "easy" is not of the published vocabulary'],
    ['no hazard beside one', { accessibilityHazard: ['none', 'sound'] }, 'accessibilityHazard: "none" beside others'],
    ['a hazard and its opposite', { accessibilityHazard: ['sound', 'noSoundHazard'] }, 'accessibilityHazard: "sound" and its opposite'],
  ])('with %s is told', (_, wrong, told) => {
    expect(jsonLdFaults({ ...sound, ...wrong }).join('\n')).toContain(told);
  });
});

const atom = (inside: string) =>
  `<?xml version="1.0"?><feed xmlns="http://www.w3.org/2005/Atom"><title>Shelf</title><id>https://shelf.example/feed.xml</id>${inside}<author><name>Desk</name></author></feed>`;
const sitemap = (inside: string) => `<?xml version="1.0"?><urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:xhtml="http://www.w3.org/1999/xhtml">${inside}</urlset>`;
const day = '<updated>2026-03-01T00:00:00Z</updated>';
const place = (path: string) => `<url><loc>https://shelf.example/${path}</loc></url>`;

test.each([
  ['atom.rng', atom(day), true],
  ['atom.rng', atom(''), false],
  ['atom.rng', atom('<updated>1 March 2026</updated>'), false],
  ['atom.rng', atom(`${day}<pubDate>2026</pubDate>`), false],
  ['atom.rng', atom(`${day}<entry><title>Boats</title><id>https://shelf.example/boats/</id>${day}</entry>`), false],
  ['sitemap.xsd', sitemap(place('a/') + place('b/')), true],
  ['sitemap.xsd', sitemap(place('a/') + place('a/')), false],
  ['sitemap.xsd', sitemap('<url><loc>/books/boats/</loc></url>'), false],
  ['sitemap.xsd', sitemap('<url><loc>https://shelf.example/a/</loc><xhtml:link rel="alternate" hreflang="es" href="https://shelf.example/es/a/"/></url>'), true],
  ['sitemap.xsd', sitemap('<url><loc>https://shelf.example/a/</loc><xhtml:link rel="alternate" href="https://shelf.example/es/a/"/></url>'), false],
] as const)('%s takes %s: %s', async (schema, text, sound) => {
  expect((await xmlFaults(text, schema)).length === 0).toBe(sound);
});
