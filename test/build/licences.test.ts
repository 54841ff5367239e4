/** What is shipped to browsers carries its licence along, and no package with another one gets in. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { licenceOf } from '../../src/build/licences.ts';
import { builtSite } from '../whole-site/site.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-licences-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('a package that would be shipped', () => {
  const made = async (name: string, licence: unknown, files: Readonly<Record<string, string>>) => {
    const place = join(folder, name);
    await mkdir(place);
    await writeFile(join(place, 'package.json'), JSON.stringify({ name, version: '1.0.0', license: licence }));
    for (const [file, text] of Object.entries(files)) await writeFile(join(place, file), text);
    return licenceOf(name, place);
  };
  test('goes along with the words of its licence', async () => {
    expect(await made('fine', 'MIT', { 'LICENCE.md': 'Copyright A. Maker\r\nYou may.\n' })).toEqual({ name: 'fine', version: '1.0.0', licence: 'MIT', text: 'Copyright A. Maker\nYou may.' });
  });
  test.each([
    ['with-strings', 'GPL-3.0-only'],
    ['of-nobody', undefined],
    ['odd', { type: 'MIT' }],
  ])('"%s", whose licence is not allowed, stops the build', async (name, licence) => {
    await expect(made(name, licence, { LICENSE: 'text' })).rejects.toThrow(`"${name}" would be shipped to browsers, and its licence`);
  });
  test('without the words of its licence is named with its maker, and without a maker stops the build', async () => {
    await expect(made('wordless', 'MIT', { 'readme.md': '# Wordless\n' })).rejects.toThrow('neither the text of its licence nor its maker is in the package');
    expect((await made('worded-within', 'MIT', { 'readme.md': '# Worded\n\n## License\n\nMIT, by A. Maker\n' })).text).toBe('MIT, by A. Maker');
  });
});

test("the site names what it ships: the pages' library, the reader of Markdown and YAML, the typefaces, and nothing that only tests use", async () => {
  const text = await readFile(join(await builtSite(), 'assets/licences.txt'), 'utf8');
  for (const name of ['preact', 'markdown-it', 'yaml', 'js-yaml', 'valibot', 'fflate', '@fontsource/andika', '@fontsource/noto-naskh-arabic']) {
    const { version, licence } = await licenceOf(name);
    expect(text).toContain(`${name} ${version}: ${licence}\n`);
  }
  for (const name of ['vitest', 'playwright-core', 'gray-matter', 'esbuild']) expect(text).not.toContain(`${name} `);
  expect(text.match(/SIL OPEN FONT LICENSE/g)?.length).toBeGreaterThan(2);
});
