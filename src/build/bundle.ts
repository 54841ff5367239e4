import { createHash } from 'node:crypto';
import { mkdir, utimes } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { build, transform, type BuildOptions, type Metafile, type TransformFailure } from 'esbuild';
import { contentOf, root } from './code-mark.ts';
import { readSealed, sealed, writeWhole } from './kept.ts';

/** The only door to esbuild. What it made is kept by the content of everything it was made from: most builds change a pack and no code. */

export interface Bundle {
  /** Names without folders, and their text. */
  readonly files: readonly { readonly name: string; readonly text: string }[];
  /** Packages that something of is in the files, when `metafile` was asked for. */
  readonly packages: readonly string[];
  /** What the files load, when `metafile` was asked for. */
  readonly outputs: Readonly<Record<string, Pick<Metafile['outputs'][string], 'imports' | 'entryPoint'>>>;
}

/** Folders with everything a bundle can be made from, and the list of exact versions of all that comes from outside. */
const sources = [
  'src/browser',
  'src/classroom',
  'src/core',
  'src/outputs',
  'layouts',
  'package-lock.json',
  'src/build/browser-code.ts',
  'src/build/text-worker.ts',
  'src/build/text-work.ts',
  'src/build/look-at.ts',
];

export type Asked = BuildOptions & { readonly write: false };

/** Makes a bundle, or takes the one that was kept. */
export type Bundler = (options: Asked) => Promise<Bundle>;

/**
 * A bundler for one build: the code is looked at once.
 *
 * @param cache The library's folder for what can be made again; bundles are kept in its `code/`. Nothing is kept where it is undefined.
 * @returns A function that throws when the code cannot be bundled; nothing is kept then.
 */
export async function bundler(cache: string | undefined): Promise<Bundler> {
  const code = await contentOf(sources);
  const folder = cache === undefined ? undefined : join(cache, 'code');
  return async (options) => {
    const asked = JSON.stringify(options).replaceAll(JSON.stringify(root).slice(1, -1), '');
    const file = join(folder ?? '', `${createHash('sha256').update(code).update(asked).digest('hex').slice(0, 32)}.json`);
    const kept = folder === undefined ? undefined : await readSealed(file);
    if (kept !== undefined) {
      const now = new Date();
      await utimes(file, now, now).catch(() => undefined);
      return JSON.parse(kept) as Bundle;
    }
    const { outputFiles, metafile } = await build(options);
    const outputs = Object.entries(metafile?.outputs ?? {}).map(([path, { entryPoint, imports }]) => [path, { imports, ...(entryPoint !== undefined && { entryPoint }) }] as const);
    const made: Bundle = { files: outputFiles.map(({ path, text }) => ({ name: basename(path), text })), packages: packagesIn(metafile), outputs: Object.fromEntries(outputs) };
    if (folder === undefined) return made;
    await mkdir(folder, { recursive: true });
    await writeWhole(file, sealed(JSON.stringify(made)));
    return made;
  };
}

/** One file of TSX as plain code for Node, with its map of lines; or the first thing that is wrong with it. Lines and columns count from 1. */
export async function compileTsx(text: string, file: string): Promise<{ readonly code: string; readonly map: string } | TsxFault> {
  try {
    const { code, map } = await transform(text, {
      loader: 'tsx',
      format: 'cjs',
      jsx: 'automatic',
      jsxImportSource: 'preact',
      target: 'node20',
      sourcemap: 'external',
      sourcefile: file,
      logLevel: 'silent',
    });
    return { code, map };
  } catch (error) {
    const [first] = (error as TransformFailure).errors;
    if (!first) throw error;
    return { text: first.text, line: first.location?.line ?? 1, column: (first.location?.column ?? 0) + 1 };
  }
}

export interface TsxFault {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export function isTsxFault(made: object): made is TsxFault {
  return 'line' in made;
}

/** Names of the packages of which a bundle holds anything; a package within a package is named by its own name. */
function packagesIn(metafile: Metafile | undefined): readonly string[] {
  const paths = Object.values(metafile?.outputs ?? {}).flatMap(({ inputs }) => Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])));
  const names = paths.flatMap((path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []);
  return [...new Set(names)].sort();
}
