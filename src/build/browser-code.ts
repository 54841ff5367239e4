import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Assets } from '../outputs/views.ts';
import type { SiteFile } from './publish.ts';

/** The only door to esbuild: styles and scripts for the browser, in files whose names hold a hash of their content. */

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const require = createRequire(import.meta.url);

/** Scripts by name. The build bundles them by path and imports none of them. */
const scripts: Readonly<Record<string, string>> = {
  booklet: 'src/browser/booklet.ts',
  recording: 'src/browser/stopping-video.ts',
  offline: 'src/browser/offline.ts',
  listen: 'src/browser/listen.ts',
  quality: 'src/browser/quality.ts',
  'lesson-en': 'src/browser/lesson-en.ts',
  'lesson-es': 'src/browser/lesson-es.ts',
};

/** Letters of the two typefaces that pages use. Both are under the SIL Open Font License, which is published beside them. */
const fonts: readonly (readonly [packageName: string, file: string])[] = [
  ['@fontsource/andika', 'andika-latin-400-normal.woff2'],
  ['@fontsource/andika', 'andika-latin-700-normal.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-400-normal.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-400-italic.woff2'],
  ['@fontsource/gentium-book-plus', 'gentium-book-plus-latin-700-normal.woff2'],
];

/** The site's styles, scripts and fonts, and the addresses that pages link to. */
export async function makeAssets(): Promise<{ assets: Assets; files: readonly SiteFile[] }> {
  const css = await bundled('layouts/styles/screen.css', 'css');
  const printCss = await bundled('layouts/styles/print.css', 'css');
  const made: { name: string; url: string; text: string }[] = [];
  for (const [name, path] of Object.entries(scripts)) {
    if (existsSync(join(root, path))) made.push({ name, ...named(name, 'js', await bundled(path, 'js')) });
  }
  const screen = named('screen', 'css', css);
  const print = named('print', 'css', printCss);
  const files: SiteFile[] = [screen, print, ...made.map(({ url, text }) => ({ url, text }))];
  for (const [packageName, file] of fonts) files.push({ url: `assets/fonts/${file}`, from: join(folderOf(packageName), 'files', file) });
  for (const packageName of new Set(fonts.map(([each]) => each))) {
    files.push({ url: `assets/fonts/${packageName.slice('@fontsource/'.length)}-LICENSE.txt`, from: join(folderOf(packageName), 'LICENSE') });
  }
  return { assets: { css: screen.url, printCss: print.url, scripts: Object.fromEntries(made.map(({ name, url }) => [name, url])), later: fonts.map(([, file]) => `assets/fonts/${file}`) }, files };
}

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

function named(name: string, ending: string, text: string): { url: string; text: string } {
  const hash = createHash('sha256').update(text).digest('hex').slice(0, 10);
  return { url: `assets/${name}-${hash}.${ending}`, text };
}

async function bundled(path: string, kind: 'css' | 'js'): Promise<string> {
  const result = await build({
    entryPoints: [join(root, path)],
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    target: ['chrome100', 'firefox100', 'safari15'],
    external: kind === 'css' ? ['*.woff2'] : [],
    legalComments: 'inline',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'silent',
  });
  return result.outputFiles[0]?.text ?? '';
}
