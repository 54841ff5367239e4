import { readdir, readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readWholeLibrary } from '../build/read-library.ts';
import { readStackFile } from '../classroom/read-stack-file.ts';
import { withColleague, type ScoresFile } from '../classroom/scoring-files.ts';
import { emptyStack, putBooklet, putPack, type Stack } from '../classroom/stack.ts';
import { limits } from '../core/booklet/booklet-schema.ts';
import { enBooklet } from '../core/languages/en-booklet.ts';
import { stackPackOf } from '../core/pack/stack-pack.ts';
import { folderThatExists } from './folders.ts';

/** A file that nobody could read, and why, in words. */
export interface Aside {
  readonly file: string;
  readonly why: string;
}

export interface ReadStack {
  readonly stack: Stack;
  readonly files: number;
  readonly merged: number;
  readonly aside: readonly Aside[];
  readonly first: ScoresFile | undefined;
  /** Colleagues' scores, a file for each. */
  readonly others: readonly ScoresFile[];
}

/** The packs of the library, which hold rubrics and models. Without one the booklets' own questions do. */
export async function libraryStack(content: string | undefined): Promise<Stack> {
  const folder = resolve(content ?? 'content');
  const there = await stat(folder).then(
    (status) => status.isDirectory(),
    () => false,
  );
  if (!there) {
    if (content !== undefined) await folderThatExists(content);
    return emptyStack;
  }
  const { told } = await readWholeLibrary(folder);
  return told.reduce<Stack>((stack, { pack }) => (pack ? putPack(stack, stackPackOf(pack)) : stack), emptyStack);
}

/** Every file of a folder and of those in it, in the order of their names. Hidden ones and links are passed over. */
export async function readFolder(folder: string, begin: Stack): Promise<ReadStack> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && /\.(?:html?|json)$/i.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  let stack = begin;
  let [merged, first, others]: [number, ScoresFile | undefined, readonly ScoresFile[]] = [0, undefined, []];
  const aside: Aside[] = [];
  for (const path of paths) {
    const file = path.slice(folder.length + 1).replaceAll('\\', '/');
    if ((await stat(path)).size > limits.file) {
      aside.push({ file, why: enBooklet.unreadable['too-big'] });
      continue;
    }
    const read = readStackFile(await readFile(path, 'utf8'));
    if (read.kind === 'unreadable') aside.push({ file, why: enBooklet.unreadable[read.reason] });
    else if (read.kind === 'pack') stack = putPack(stack, read.pack);
    else if (read.kind === 'scores' && read.scores.by === 'first') first = read.scores;
    else if (read.kind === 'scores') others = withColleague(others, read.scores);
    else if (read.kind === 'booklet') {
      const after = putBooklet(stack, read.booklet, file, read.leftOut);
      stack = after.stack;
      if (after.put === 'merged') merged += 1;
    }
  }
  return { stack, files: paths.length, merged, aside, first, others };
}
