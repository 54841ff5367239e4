/** Makes small libraries in a temporary folder, builds them, and clears them away when its process ends. */
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';
import { build, type Built } from '../../src/build/build.ts';
import { main } from '../../src/cli/main.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folders: string[] = [];
// A process runs the tests of many files, and this file is read once for all of them.
process.once('exit', () => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

export interface SmallLibrary {
  /** The folder that holds everything: nothing may be written in it but `site` and `cache`. */
  readonly folder: string;
  readonly content: string;
  readonly site: string;
  readonly cache: string;
}

/** A content folder with these files, by their paths in it. */
export async function smallLibrary(files: Readonly<Record<string, string | Buffer>>): Promise<SmallLibrary> {
  const folder = await mkdtemp(join(tmpdir(), 'bookfellow-small-'));
  folders.push(folder);
  const content = join(folder, 'content');
  await mkdir(join(content, 'packs'), { recursive: true });
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(content, path)), { recursive: true });
    await writeFile(join(content, path), text);
  }
  return { folder, content, site: join(folder, 'site'), cache: join(folder, 'cache') };
}

export async function buildSmall(library: SmallLibrary, strict = false): Promise<Built> {
  // The code for browsers is the same for every library: it is bundled once for all of them.
  await mkdir(library.cache, { recursive: true });
  await mkdir(join(root, '.cache/code'), { recursive: true });
  await symlink(join(root, '.cache/code'), join(library.cache, 'code'), 'junction').catch(() => undefined);
  return build({ content: library.content, site: library.site, cache: library.cache, strict });
}

/** Paths of all files below a folder, with forward slashes, sorted. */
export async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();
}

/** Files that tell what has come since the site before: they follow from it as well as from the content. */
export const tellsOfBefore = (file: string): boolean => /^(?:arrivals\.json$|(?:[a-z]{2}\/)?librarian\/)/.test(file);

/** All text files of a site, by path: pictures and fonts are left out. */
export async function textsIn(site: string): Promise<ReadonlyMap<string, string>> {
  const texts = new Map<string, string>();
  for (const file of await filesIn(site)) if (!/\.(?:jpg|webp|png|woff2|pdf|zip)$/.test(file)) texts.set(file, await readFile(join(site, file), 'utf8'));
  return texts;
}

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command as a person would, in its own process, and in another folder than the project's where one is named. */
export async function bookfellowAlone(args: readonly string[], cwd = root): Promise<Ended> {
  const child = spawn(process.execPath, [join(root, 'src/cli/bookfellow.js'), ...args], { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
  const code = await new Promise<number | null>((done, failed) => {
    child.once('error', failed).once('close', done);
  });
  return { code, out, err };
}

/** Runs the command within this process, which costs a fiftieth: what it prints is kept, and nothing else differs. */
export async function bookfellow(args: readonly string[]): Promise<Ended> {
  let out = '';
  let err = '';
  const spies = [
    vi.spyOn(console, 'log').mockImplementation((...said: readonly unknown[]) => void (out += `${said.map(String).join(' ')}\n`)),
    vi.spyOn(console, 'error').mockImplementation((...said: readonly unknown[]) => void (err += `${said.map(String).join(' ')}\n`)),
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => ((out += String(text)), true)),
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => ((err += String(text)), true)),
  ];
  try {
    const code = await main(args);
    return { code, out, err };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

/** The text of a pack that nothing is told about. `change` replaces parts of it; each part must be there. */
export async function soundPack(...change: readonly (readonly [part: string, by: string])[]): Promise<string> {
  const text = await readFile(join(root, 'test/packs/sound/the-wheelbarrow-goes-home/pack.md'), 'utf8');
  return change.reduce((changed, [part, by]) => {
    if (!changed.includes(part)) throw new Error(`"${part}" is not in the sound pack`);
    return changed.replace(part, () => by);
  }, text);
}
