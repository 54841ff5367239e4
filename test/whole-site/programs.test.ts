/** What other programs get: held against the JSON Schema that is published beside it, by somebody else's validator (ajv). */
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Ajv } from 'ajv';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { expect, test } from 'vitest';
import { builtSite } from './site.ts';

const site = await builtSite();
const json = async (path: string) => JSON.parse(await readFile(join(site, path), 'utf8')) as unknown;
const list = (await json('packs.json')) as {
  readonly schema: string;
  readonly packs: readonly { readonly title: string; readonly files: { readonly json: string; readonly text: string }; readonly pages: { readonly family: string } }[];
};
const fits = new Ajv({ strict: false, formats: fullFormats }).compile((await json(list.schema)) as object);

test.each(list.packs)('the front matter of "$title" has the published shape and leads to it, and its file is there', async ({ title, files }) => {
  const pack = (await json(files.json)) as { readonly $schema: string; readonly title: string; readonly book: object };
  expect(fits(pack), JSON.stringify(fits.errors)).toBe(true);
  expect([pack.title, join(dirname(files.json), pack.$schema)]).toEqual([title, list.schema]);
  expect(await readFile(join(site, files.text), 'utf8')).toMatch(/^---\n/);
  expect(fits({ ...pack, book: undefined }), 'the shape asks for something').toBe(false);
});

test('a family page names an aim by its framework, its code and its address, and claims no harmlessness of a film', async () => {
  const data = async (path: string) => JSON.parse(/application\/ld\+json">(.*?)<\/script>/.exec(await readFile(join(site, path, 'index.html'), 'utf8'))?.[1] ?? '{}') as Record<string, unknown>;
  expect((await data('packs/tomato-weather'))['educationalAlignment']).toContainEqual({
    '@type': 'AlignmentObject',
    alignmentType: 'teaches',
    educationalFramework: 'Dunmarrow reading aims',
    targetName: 'DR.1.3',
    targetDescription: "Names a character's feeling and points to the words or the picture that show it.",
    targetUrl: 'https://aims.dunmarrow.example/items/dr-1-3',
  });
  expect((await data('packs/tomato-weather'))['accessibilityHazard']).toEqual(['none']);
  expect(await data('packs/the-crow-and-the-tall-jar')).not.toHaveProperty('accessibilityHazard');
});
