/** A library's own look: its logo, and parts of pages that it puts in place of the usual ones. What is refused is told with its line, and the usual part stands there. */
import { readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { sayFinding } from '../../src/core/languages/say-finding.ts';
import { defaultLibrary, readLibrary } from '../../src/core/pack/library.ts';
import { pagesOf } from '../../src/outputs/pages.ts';
import { readOwnLayouts, soundLayouts } from '../../src/build/own-layouts.ts';
import type { Finding } from '../../src/core/finding.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { buildSmall, filesIn, smallLibrary, soundPack, textsIn } from './small-library.ts';

const said = (found: Finding) => `${found.place.file}:${String(found.place.line)}:${String(found.place.column)} ${sayFinding(found, 'en')}`;
const settings = (more: string) => `name: Saltgate shelf\nlanguage: en\nlanguages: [en, es]\ncontact: desk@saltgate.example\nrights: Saltgate schools\n${more}`;
/** A ring of dark ink on nothing, three times as wide as high. */
const ring = await sharp(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="900" height="300"><circle cx="450" cy="150" r="120" fill="none" stroke="#123" stroke-width="40"/></svg>'))
  .png()
  .withMetadata({ exif: { IFD0: { Artist: 'Somebody in particular' } } })
  .toBuffer();
const withLogo = 'theme:\n  logo: { file: ring.png, alt: { en: A ring of rope, es: Un aro de cuerda } }\n';

describe('a logo', () => {
  test('is written anew, small, stands on each page with its alt text in the page’s language, and lies on the paper by lamplight', async () => {
    const library = await smallLibrary({ 'library.yaml': settings(withLogo), 'ring.png': ring, 'packs/barrow/pack.md': await soundPack() });
    const { findings } = await buildSmall(library, true);
    expect(findings).toEqual([]);
    const files = (await filesIn(join(library.site, 'assets'))).filter((each) => each.startsWith('logo-'));
    expect(files).toHaveLength(2);
    const read = await Promise.all(files.map(async (file) => ({ bytes: await readFile(join(library.site, 'assets', file)), file })));
    for (const { bytes } of read) {
      expect(bytes.length).toBeLessThan(10_000);
      expect(bytes.includes('Somebody')).toBe(false);
      expect(await sharp(bytes).metadata()).toMatchObject({ format: 'webp', width: 264, height: 88 });
    }
    const opaque = await Promise.all(read.map(async ({ bytes }) => (await sharp(bytes).stats()).isOpaque));
    const [light, dark] = [read[opaque.indexOf(false)]?.file, read[opaque.indexOf(true)]?.file];
    const pages = await textsIn(library.site);
    // 44 pixels high, the height of a link that can be tapped.
    const shown = (path: string, alt: string) => `<source media="(prefers-color-scheme: dark)" srcset="${path}assets/${dark}"><img src="${path}assets/${light}" width="132" height="44" alt="${alt}">`;
    expect(pages.get('packs/barrow/index.html')).toContain(shown('../../', 'A ring of rope'));
    expect(pages.get('es/index.html')).toContain(shown('../', 'Un aro de cuerda'));
    const offline = JSON.parse(pages.get('packs/barrow/offline.json') ?? '') as { readonly files: readonly string[] };
    expect(offline.files).toEqual(expect.arrayContaining([`assets/${light}`, `assets/${dark}`]));
  });

  test.each([
    ['that is not there', withLogo, {}, '7:17 The logo "ring.png" does not lie beside library.yaml. Until that is mended, pages have no logo.'],
    [
      'that is a drawing and no picture',
      withLogo,
      { 'ring.png': '<svg xmlns="http://www.w3.org/2000/svg"/>' },
      '7:17 The logo "ring.png" is not a PNG, JPEG or WebP picture. Until that is mended, pages have no logo.',
    ],
    [
      'from a pack’s folder',
      'theme:\n  logo: { file: packs/barrow/pictures/ring.png, decorative: true }\n',
      { 'packs/barrow/pictures/ring.png': ring },
      '7:17 "theme: logo: file" is "packs/barrow/pictures/ring.png", which is not in the form that is needed.',
    ],
    ['without alt text in one language', 'theme:\n  logo: { file: ring.png, alt: { en: A ring } }\n', { 'ring.png': ring }, '7:27 The logo has no alt text in es.'],
  ])('%s is told, and pages have none', async (_, theme, files, told) => {
    const library = await smallLibrary({ 'library.yaml': settings(theme), ...files });
    const { findings, library: read } = await readWholeLibrary(library.content);
    expect(findings.map(said).join('\n')).toContain(`library.yaml:${told}`);
    expect(findings.every(({ code }) => code === 'library/logo' || code === 'library/logo-alt' || code === 'pack/bad-format' || code === 'folder/no-pack')).toBe(true);
    expect(read.theme?.logo).toBeUndefined();
  });

  test('is never taken through a link', async () => {
    const library = await smallLibrary({ 'library.yaml': settings(withLogo) });
    await writeFile(join(library.folder, 'elsewhere.png'), ring);
    await symlink(join(library.folder, 'elsewhere.png'), join(library.content, 'ring.png'));
    expect((await readWholeLibrary(library.content)).findings.map(({ code }) => code)).toEqual(['library/logo']);
  });
});

const footer = `import { FooterInside, linkFrom, rootOf, type Page } from 'bookfellow/layouts';

/** The school's own line, then the usual foot. */
export default function (page: Page) {
  const own: Readonly<Record<string, string>> = { es: 'Escuelas de Saltgate' };
  return (
    <>
      <p>
        {own[page.language] ?? 'Saltgate schools'} & friends, <a href={linkFrom(page.url, \`\${rootOf(page.language, page.library.language)}index/\`)}>index</a>
      </p>
      <FooterInside page={page} />
    </>
  );
}
`;
const layouts = 'layouts: [footer]\n';

describe('a layout of the library’s own', () => {
  test('takes the place of the usual part on every page, and the pages are sound HTML under the same policy', async () => {
    const library = await smallLibrary({ 'library.yaml': settings(layouts), 'layouts/footer.tsx': footer, 'packs/barrow/pack.md': await soundPack() });
    expect((await buildSmall(library, true)).findings).toEqual([]);
    const pages = await textsIn(library.site);
    expect(pages.get('packs/barrow/lesson/index.html')).toMatch(/<footer class="foot"><p>Saltgate schools &amp; friends, <a href="..\/..\/..\/index\/">index<\/a><\/p><svg/);
    expect(pages.get('es/index.html')).toContain('<footer class="foot"><p>Escuelas de Saltgate &amp; friends, <a href="../es/index/">');
    const validator = new HtmlValidate(new StaticConfigLoader(JSON.parse(await readFile(new URL('../../.config/html-validate.json', import.meta.url), 'utf8')) as ConfigData));
    for (const path of ['index.html', 'packs/barrow/index.html', '404.html']) {
      const html = pages.get(path) ?? '';
      expect(html.split('<footer').length - 1, path).toBe(1);
      expect(html).toContain("default-src 'none'");
      expect(
        (await validator.validateString(html, path)).results.flatMap(({ messages }) => messages),
        path,
      ).toEqual([]);
    }
  });

  const own = (body: string, head = '') => `import { linkFrom } from 'bookfellow/layouts';\n${head}\nexport default (page) => (\n  <>\n    ${body}\n  </>\n);\n`;
  test.each([
    ['a mark that is not closed', own('<p>Saltgate'), '6:5 This cannot be read as TSX: Unexpected closing fragment tag does not match opening "p" tag.'],
    ['an import of something else', own('<p>Ours</p>', "import { readFileSync } from 'node:fs'; readFileSync('/etc/hosts');"), '2:31 "node:fs" cannot be imported here.'],
    ['no function', 'export const footer = 1;\n', '1:1 This file has no "export default function"'],
    ['a slip in the code', own('<p>{page.libary.name}</p>'), "5:21 The layout fails: Cannot read properties of undefined (reading 'name')"],
    ['a reach for the machine', own('<p>{process.env.HOME}</p>'), '5:9 The layout fails: process is not defined'],
    ['a script', own('<script src="count.js" />'), '5:5 <script> may not stand in a layout'],
    ['a style of its own', own('<p style="color: red">Ours</p>'), '5:5 "style" on <p> may not stand in a layout'],
    ['HTML as it is', own('<p dangerouslySetInnerHTML={{ __html: "<img>" }} />'), '5:5 "dangerouslySetInnerHTML" on <p> may not stand in a layout'],
    ['a script in a link', own('<a href="javascript:alert(1)">Ours</a>'), '5:5 a link to "javascript:alert(1)" may not stand'],
    ['a link out of the library’s folder', own('<a href="/packs/">Ours</a>'), '5:5 a link to "/packs/" may not stand'],
    ['a link to no page', own('<a href={linkFrom(page.url, "pakcs/")}>Ours</a>'), '1:1 The link "pakcs/" leads to no page of the site.'],
    ['a heading of the first rank', own('<h1>Ours</h1>'), '1:1 <h1> may not stand in a layout'],
  ])('with %s is told with its line and used nowhere', async (_, text, told) => {
    const { value: library = defaultLibrary } = readLibrary(settings(layouts), 'library.yaml');
    const read = await readOwnLayouts(new Map([['footer', text]]), library);
    const pages = pagesOf({ library, shown: [], findingsOf: new Map(), keptOff: 0, prose: [], assets: { css: '', printCss: '', scripts: {}, later: [] }, find: [] });
    const sound = soundLayouts(read.own, pages);
    expect([...read.findings, ...sound.findings].map(said).join('\n')).toContain(`layouts/footer.tsx:${told}`);
    expect(sound.own).toEqual({});
  });

  test('that is named and not there is told; one that is there and not named is not run; a pack’s is never looked at', async () => {
    const there = await smallLibrary({
      'library.yaml': settings('layouts: [welcome]\n'),
      'layouts/footer.tsx': 'throw new Error("run");',
      'packs/barrow/layouts/welcome.tsx': footer,
      'packs/barrow/pack.md': await soundPack(),
    });
    const { findings, own: used } = await readWholeLibrary(there.content);
    expect(findings.map((each) => `${each.place.file}: ${sayFinding(each, 'en')}`)).toEqual([
      'library.yaml: "layouts" names welcome, and there is no file layouts/welcome.tsx. Until that is mended, the usual welcome is used.',
    ]);
    expect(used).toEqual({});
  });

  test('is not taken through a link, neither its file nor its folder', async () => {
    const library = await smallLibrary({ 'library.yaml': settings(layouts) });
    await writeFile(join(library.folder, 'footer.tsx'), footer);
    await symlink(library.folder, join(library.content, 'layouts'));
    const { findings, own: used } = await readWholeLibrary(library.content);
    expect([findings.map(({ code }) => code), used]).toEqual([['library/layout'], {}]);
  });

  test('is not taken from a folder that is a source, since a source is others’', async () => {
    const library = await smallLibrary({
      'library.yaml': settings(`${layouts}sources: [{ folder: layouts, owner: Saltmarsh school }]\n`),
      'layouts/footer.tsx': footer,
      'layouts/packs/barrow/pack.md': await soundPack(),
    });
    const { findings, own: used } = await readWholeLibrary(library.content);
    expect([findings.filter(({ code }) => code.startsWith('library/')).map(({ place, facts }) => [place.file, facts]), used]).toEqual([
      [['library.yaml', { part: 'footer', problem: 'missing', detail: '' }]],
      {},
    ]);
  });

  test('for the beginning of the first page has one heading', async () => {
    const library = await smallLibrary({ 'library.yaml': settings('layouts: [welcome]\n'), 'layouts/welcome.tsx': own('<p>Ours</p>') });
    const { findings } = await buildSmall(library);
    expect(await readFile(join(library.site, 'index.html'), 'utf8')).toContain('<h1>Saltgate shelf</h1>');
    expect(findings.map((each) => sayFinding(each, 'en'))).toEqual(['The beginning of the first page needs one <h1>, and this has 0. Until that is mended, the usual welcome is used.']);
  });
});
