import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type BuildOptions, type Metafile } from 'esbuild';
import type { Assets } from '../outputs/views.ts';
import type { SiteFile } from './publish.ts';

/** The only door to esbuild: styles and scripts for the browser, in files whose names hold a hash of their content. */

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const require = createRequire(import.meta.url);

/** Scripts by name. The build bundles them by path and imports none of them. */
const scripts: Readonly<Record<string, string>> = {
  booklet: 'src/browser/booklet.tsx',
  recording: 'src/browser/stopping-video.ts',
  offline: 'src/browser/offline.ts',
  listen: 'src/browser/listen.ts',
  quality: 'src/browser/quality.ts',
  'stack-en': 'src/browser/stack-en.ts',
  'stack-es': 'src/browser/stack-es.ts',
  maker: 'src/browser/maker.tsx',
  'maker-worker': 'src/browser/maker-worker.ts',
  find: 'src/browser/find.ts',
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

/** The site's styles, scripts and fonts, and the addresses that pages link to. */
export async function makeAssets(): Promise<{ assets: Assets; files: readonly SiteFile[] }> {
  const css = await bundledStyle('layouts/styles/screen.css');
  const printCss = await bundledStyle('layouts/styles/print.css');
  const code = await browserCode();
  const screen = named('screen', 'css', css);
  const print = named('print', 'css', printCss);
  const files: SiteFile[] = [screen, print, ...code.files];
  for (const [packageName, file] of [...fonts, ...arabicFonts]) files.push({ url: `assets/fonts/${file}`, from: join(folderOf(packageName), 'files', file) });
  for (const packageName of new Set([...fonts, ...arabicFonts].map(([each]) => each))) {
    files.push({ url: `assets/fonts/${packageName.slice('@fontsource/'.length)}-LICENSE.txt`, from: join(folderOf(packageName), 'LICENSE') });
  }
  return { assets: { css: screen.url, printCss: print.url, scripts: code.scripts, later: [...fonts.map(fontUrl), ...code.parts], arabicLetters: arabicFonts.map(fontUrl) }, files };
}

const fontUrl = ([, file]: readonly [string, string]) => `assets/fonts/${file}`;

/** A script for the background, which is no module, with data that the build knows put in by name. */
export async function workerScript(path: string, data: Readonly<Record<string, unknown>>): Promise<string> {
  const define = Object.fromEntries(Object.entries(data).map(([name, value]) => [name, JSON.stringify(value)]));
  const result = await build({
    entryPoints: [join(root, path)],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: ['chrome100', 'firefox100', 'safari15'],
    define,
    logLevel: 'silent',
  });
  return result.outputFiles[0]?.text ?? '';
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
} satisfies BuildOptions & { readonly write: false };

async function bundledStyle(path: string): Promise<string> {
  const result = await build({ ...settings, entryPoints: [join(root, path)], external: ['*.woff2'] });
  return result.outputFiles[0]?.text ?? '';
}

/** All scripts in one go: what several use, and what one fetches only when it is needed, becomes a file of its own. */
async function browserCode(): Promise<{ readonly scripts: Assets['scripts']; readonly parts: readonly string[]; readonly files: readonly SiteFile[] }> {
  const there = Object.entries(scripts).filter(([, path]) => existsSync(join(root, path)));
  const result = await build({
    ...settings,
    entryPoints: there.map(([name, path]) => ({ in: join(root, path), out: name })),
    splitting: true,
    outdir: join(root, 'assets'),
    entryNames: '[name]-[hash]',
    chunkNames: 'part-[hash]',
    metafile: true,
    absWorkingDir: root,
    jsx: 'automatic',
    jsxImportSource: 'preact',
    // The reader of packs runs in the browser too; there gray-matter, which is made for Node, is a few lines of ours.
    alias: { 'gray-matter': join(root, 'src/browser/maker/plain-matter.ts') },
  });
  const urlOf = (path: string) => `assets/${basename(path)}`;
  const entries = Object.entries(result.metafile.outputs).flatMap(([path, { entryPoint }]) => there.filter(([, source]) => source === entryPoint).map(([name]) => [name, urlOf(path)] as const));
  return {
    scripts: Object.fromEntries(entries),
    parts: partsOf(
      result.metafile.outputs,
      there.filter(([name]) => ofPacks.test(name)).map(([, source]) => source),
    ).map(urlOf),
    files: result.outputFiles.map(({ path, text }) => ({ url: urlOf(path), text })),
  };
}

/** Scripts of the pages of a pack: what they may fetch later is kept with a pack that is to be read without a network. */
const ofPacks = /^(?:lesson|booklet|recording|offline)(?:-|$)/;

/** Every file that the scripts of some sources load at once or later, themselves left out. */
function partsOf(outputs: Metafile['outputs'], sources: readonly string[]): readonly string[] {
  const isEntry = (path: string) => sources.includes(outputs[path]?.entryPoint ?? '');
  const seen = new Set(Object.keys(outputs).filter(isEntry));
  for (const path of seen) for (const { path: part, external } of outputs[path]?.imports ?? []) if (external !== true) seen.add(part);
  return [...seen].filter((path) => !isEntry(path)).sort();
}
