import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { root } from './code-mark.ts';

/** Licences that whatever reaches a visitor's browser may have, by their SPDX names: each allows copying when its text and the names in it go along. */
const allowed: ReadonlySet<string> = new Set(['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0', 'OFL-1.1', 'CC0-1.0', 'Unlicense']);

export interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/**
 * The licence of a package that is shipped to browsers.
 *
 * @throws When the package names no licence, one that is not allowed, or comes with neither the text that has to go along nor the name of its maker.
 */
export async function licenceOf(name: string, folder = join(root, 'node_modules', name)): Promise<Licensed> {
  const {
    version,
    license: licence,
    author,
  } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8')) as {
    readonly version: string;
    readonly license?: unknown;
    readonly author?: string | { readonly name?: string };
  };
  if (typeof licence !== 'string' || !allowed.has(licence)) {
    throw new Error(
      `"${name}" would be shipped to browsers, and its licence ${JSON.stringify(licence)} is not among those allowed in src/build/licences.ts. Read it, and allow it there or do without the package.`,
    );
  }
  const file = (await readdir(folder)).find((each) => /^licen[cs]e(?:\.(?:md|txt))?$/i.test(each));
  const readme = file === undefined ? await readFile(join(folder, 'readme.md'), 'utf8').catch(() => '') : '';
  const text = file === undefined ? (/^#+ License\s*\n+([^]*?)(?=^#|(?![^]))/m.exec(readme)?.[1] ?? '') : await readFile(join(folder, file), 'utf8');
  const maker = typeof author === 'string' ? author : author?.name;
  if (text.trim() === '' && maker === undefined) throw new Error(`"${name}" would be shipped to browsers, and neither the text of its licence nor its maker is in the package.`);
  if (text.trim() === '') return { name, version, licence, text: `Copyright ${maker ?? ''}. The package names the licence ${licence} and holds no text of it.` };
  return { name, version, licence, text: text.replace(/\r\n?/g, '\n').trim() };
}

/** The licences of packages as one text, by name: what is shipped, and under which words. */
export async function licencesText(names: readonly string[]): Promise<string> {
  const all = await Promise.all([...new Set(names)].sort().map((name) => licenceOf(name)));
  const line = '-'.repeat(72);
  return [
    'What this site ships that others made. The software that made the site is under the MIT licence; the companions name their own.',
    ...all.map(({ name, version, licence }) => `${name} ${version}: ${licence}`),
    ...all.map(({ name, version, text }) => `${line}\n${name} ${version}\n\n${text}`),
  ]
    .join('\n\n')
    .concat('\n');
}
