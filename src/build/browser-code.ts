import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Theme } from '../core/pack/theme.ts';
import { themeCss } from '../outputs/theme.ts';
import type { Assets } from '../outputs/views.ts';
import type { Asked, Bundle, Bundler } from './bundle.ts';
import { root } from './code-mark.ts';
import { licencesText } from './licences.ts';
import type { SiteFile } from './write-files.ts';

/** Styles and scripts for the browser, in files whose names hold a hash of their content. */

const require = createRequire(import.meta.url);

/** Scripts by name. The build bundles them by path and imports none of them. */
export const scriptPaths: Readonly<Record<string, string>> = {
  booklet: 'src/browser/booklet.tsx',
  recording: 'src/browser/stopping-video.ts',
  offline: 'src/browser/offline.ts',
  listen: 'src/browser/listen.ts',
  quality: 'src/browser/quality.ts',
  'stack-en': 'src/browser/stack-en.ts',
  'stack-es': 'src/browser/stack-es.ts',
  'stack-ar': 'src/browser/stack-ar.ts',
  maker: 'src/browser/maker.tsx',
  'maker-worker': 'src/browser/maker-worker.ts',
  find: 'src/browser/find.ts',
  retired: 'src/browser/retired.tsx',
  librarian: 'src/browser/librarian.ts',
  'lesson-en': 'src/browser/lesson-en.ts',
  'lesson-es': 'src/browser/lesson-es.ts',
  'lesson-ar': 'src/browser/lesson-ar.ts',
};

/** Letters of the two typefaces that pages use, and Arabic ones. All are under the SIL Open Font License, which is published beside them. */
const fonts: readonly (readonly [packageName: string, file: string])[] = [
  ['@fontsource/andika', 'andika-latin-400-normal.woff2'],
  ['@fontsource/andika', 'andika-latin-700-normal.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-400-normal.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-400-italic.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-700-normal.woff2'],
];
const arabicFonts: typeof fonts = [
  ['@fontsource/noto-naskh-arabic', 'noto-naskh-arabic-arabic-400-normal.woff2'],
  ['@fontsource/noto-naskh-arabic', 'noto-naskh-arabic-arabic-700-normal.woff2'],
];

/** Kinds of pages with a style sheet of their own, so that a phone loads no other kind's; `test/whole-site/kinds.test.ts` sees to it that nothing is missing in one. */
const ownStyles = ['screen-library', 'screen-prose', 'screen-family', 'screen-booklet', 'screen-lesson', 'screen-recording', 'print-family', 'print-booklet'] as const;

/** The site's styles, scripts and fonts, and the addresses that pages link to. */
export async function makeAssets(bundle: Bundler, theme?: Theme): Promise<{ assets: Assets; files: readonly SiteFile[] }> {
  const look = themeCss(theme);
  const css = (await bundledStyle('layouts/styles/screen.css', bundle)) + look;
  const printCss = await bundledStyle('layouts/styles/print.css', bundle);
  const own = await Promise.all(
    ownStyles.map(async (name) => [name, named(name, 'css', (await bundledStyle(`layouts/styles/${name}.css`, bundle)) + (name.startsWith('screen-') ? look : ''))] as const),
  );
  const code = await browserCode(bundle);
  const screen = named('screen', 'css', css);
  const print = named('print', 'css', printCss);
  const files: SiteFile[] = [screen, print, ...own.map(([, file]) => file), ...code.files];
  for (const [packageName, file] of [...fonts, ...arabicFonts]) files.push({ url: `assets/fonts/${file}`, from: join(folderOf(packageName), 'files', file) });
  const typefaces = [...new Set([...fonts, ...arabicFonts].map(([each]) => each))];
  for (const packageName of typefaces) files.push({ url: `assets/fonts/${packageName.slice('@fontsource/'.length)}-LICENSE.txt`, from: join(folderOf(packageName), 'LICENSE') });
  files.push({ url: licencesUrl, text: await licencesText([...code.packages, ...typefaces]) });
  const ofKinds = Object.fromEntries(own.map(([name, { url }]) => [name, url]));
  return {
    assets: {
      css: screen.url,
      printCss: print.url,
      ownStyles: ofKinds,
      scripts: code.scripts,
      preload: code.preload,
      later: [...fonts.map(fontUrl), ...code.parts],
      ofMaker: code.ofMaker,
      arabicLetters: arabicFonts.map(fontUrl),
    },
    files,
  };
}

/** What others made of all that is shipped, and under which licences. */
export const licencesUrl = 'assets/licences.txt';

const fontUrl = ([, file]: readonly [string, string]) => `assets/fonts/${file}`;

/** A script for the background, which is no module, with data that the build knows put in by name. */
export async function workerScript(path: string, data: Readonly<Record<string, unknown>>, bundle: Bundler): Promise<string> {
  const define = Object.fromEntries(Object.entries(data).map(([name, value]) => [name, JSON.stringify(value)]));
  const { files } = await bundle({
    entryPoints: [join(root, path)],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: ['chrome100', 'firefox100', 'safari15'],
    define,
    logLevel: 'silent',
  });
  return files[0]?.text ?? '';
}

/** A script of a page as one plain file, for pages that are opened from a disk: a browser runs no modules there. */
export async function plainScript(path: string, bundle: Bundler): Promise<string> {
  const { files } = await bundle({ ...settings, ...codeSettings, format: 'iife', entryPoints: [join(root, path)] });
  return files[0]?.text ?? '';
}

function folderOf(packageName: string): string {
  return dirname(require.resolve(`${packageName}/package.json`));
}

function named(name: string, ending: 'css', text: string): { url: string; text: string } {
  const hash = createHash('sha256').update(text).digest('hex').slice(0, 10);
  return { url: `assets/${name}-${hash}.${ending}`, text };
}

const settings = {
  bundle: true,
  minify: true,
  write: false as const,
  format: 'esm' as const,
  target: ['chrome100', 'firefox100', 'safari15'],
  legalComments: 'inline' as const,
  logLevel: 'silent' as const,
} satisfies Asked;

async function bundledStyle(path: string, bundle: Bundler): Promise<string> {
  const { files } = await bundle({ ...settings, entryPoints: [join(root, path)], external: ['*.woff2'] });
  return files[0]?.text ?? '';
}

/**
 * What several scripts use, and what one fetches only when it is needed, becomes a file of its own. Scripts of pages that a phone opens are
 * made apart from the makers' ones: what those share would be cut into many small files, each a way to the server and back. So is the stack's,
 * which may fetch nothing later and would carry what only the makers use of the parts they share.
 */
async function browserCode(bundle: Bundler): Promise<Code> {
  const there = Object.entries(scriptPaths).filter(([, path]) => existsSync(join(root, path)));
  const ofPhones = [/^(?:booklet|offline|listen|recording)$/, /^lesson-/].map((names) => there.filter(([name]) => names.test(name)));
  const groups = [...ofPhones, ...there.filter(([name]) => name.startsWith('stack-')).map((each) => [each])];
  const made = await Promise.all([...groups, there.filter((each) => !groups.flat().includes(each))].filter((group) => group.length > 0).map((group) => codeOf(group, bundle)));
  return {
    scripts: Object.fromEntries(made.flatMap((each) => Object.entries(each.scripts))),
    preload: Object.fromEntries(made.flatMap((each) => Object.entries(each.preload))),
    parts: [...new Set(made.flatMap(({ parts }) => parts))],
    ofMaker: made.flatMap(({ ofMaker }) => ofMaker),
    files: [...new Map(made.flatMap(({ files }) => files).map((file) => [file.url, file])).values()],
    packages: made.flatMap(({ packages }) => packages),
  };
}

interface Code {
  readonly scripts: Assets['scripts'];
  /** Of each script the parts that it loads at once; of `booklet-en` the part that a booklet in English needs as well. */
  readonly preload: Readonly<Record<string, readonly string[]>>;
  /** What the scripts of a pack's pages load at once or later. */
  readonly parts: readonly string[];
  /** The scripts of the form that makes packs, and what they load at once or later. */
  readonly ofMaker: readonly string[];
  readonly files: readonly SiteFile[];
  /** Packages that something of is in the files. */
  readonly packages: readonly string[];
}

async function codeOf(there: readonly (readonly [name: string, path: string])[], bundle: Bundler): Promise<Code> {
  const { files, outputs, packages } = await bundle({
    ...settings,
    ...codeSettings,
    entryPoints: there.map(([name, path]) => ({ in: join(root, path), out: name })),
    splitting: true,
    outdir: join(root, 'assets'),
    entryNames: '[name]-[hash]',
    chunkNames: 'part-[hash]',
    metafile: true,
  });
  const urlOf = (path: string) => `assets/${basename(path)}`;
  const entries = Object.entries(outputs).flatMap(([path, { entryPoint }]) => there.filter(([, source]) => source === entryPoint).map(([name, source]) => [name, path, source] as const));
  const phrases = Object.entries(outputs).flatMap(([path, { entryPoint = '' }]) => {
    const language = /^src\/core\/languages\/(\w+)-booklet-screen\.ts$/.exec(entryPoint)?.[1];
    return language === undefined ? [] : [[`booklet-${language}`, [path, ...partsOf(outputs, [entryPoint], ['import-statement'])].map(urlOf)] as const];
  });
  const ofForm = entries.filter(([name]) => /^maker(?:-|$)/.test(name));
  const ofPages = entries.filter(([name]) => ofPacks.test(name)).map(([, , source]) => source);
  return {
    scripts: Object.fromEntries(entries.map(([name, path]) => [name, urlOf(path)])),
    preload: Object.fromEntries([...entries.map(([name, , source]) => [name, partsOf(outputs, [source], ['import-statement']).map(urlOf)] as const), ...phrases]),
    parts: partsOf(outputs, ofPages, ['import-statement', 'dynamic-import']).map(urlOf),
    ofMaker: [
      ...ofForm.map(([, path]) => path),
      ...partsOf(
        outputs,
        ofForm.map(([, , source]) => source),
        ['import-statement', 'dynamic-import'],
      ),
    ].map(urlOf),
    files: files.map(({ name, text }) => ({ url: urlOf(name), text })),
    packages,
  };
}

const codeSettings = {
  absWorkingDir: root,
  jsx: 'automatic',
  jsxImportSource: 'preact',
  // The reader of packs runs in the browser too; there gray-matter, which is made for Node, is a few lines of ours.
  alias: { 'gray-matter': join(root, 'src/browser/maker/plain-matter.ts') },
} as const;

/** Scripts of the pages of a pack: what they may fetch later is kept with a pack that is to be read without a network. */
const ofPacks = /^(?:lesson|booklet|recording|offline)(?:-|$)/;

/** Every file that the scripts of some sources load in these ways, themselves left out. */
function partsOf(outputs: Bundle['outputs'], sources: readonly string[], ways: readonly string[]): readonly string[] {
  const isEntry = (path: string) => sources.includes(outputs[path]?.entryPoint ?? '');
  const seen = new Set(Object.keys(outputs).filter(isEntry));
  for (const path of seen) for (const { path: part, external, kind } of outputs[path]?.imports ?? []) if (external !== true && ways.includes(kind)) seen.add(part);
  return [...seen].filter((path) => !isEntry(path)).sort();
}
