import { readdir, readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { readWholeLibrary } from '../build/read-library.ts';
import { csv } from '../classroom/csv.ts';
import { readStackFile } from '../classroom/read-stack-file.ts';
import { emptyStack, packBehind, packsAnswered, putBooklet, putPack, type Stack } from '../classroom/stack.ts';
import { stackTable } from '../classroom/stack-table.ts';
import type { ScoresFile } from '../classroom/scoring-files.ts';
import { limits } from '../core/booklet/booklet-schema.ts';
import { enBooklet } from '../core/languages/en-booklet.ts';
import { stackInEnglish } from '../core/languages/en-stack.ts';
import { stackPackOf } from '../core/pack/stack-pack.ts';
import { readArguments } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { figuresOf, markOf, stackInWords } from './stack-report.ts';
import { WrongUse } from './wrong-use.ts';

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
  readonly second: ScoresFile | undefined;
}

/** `bookfellow stack`: the booklets of a folder, counted; and where scores lie among them, how far two people agree. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content'], ['json', 'csv']);
  const [name, second] = rest;
  if (name === undefined || second !== undefined) throw new WrongUse('Name one folder of booklets: bookfellow stack ~/handed-in');
  if (flags.has('json') && flags.has('csv')) throw new WrongUse('Choose one of --json and --csv.');
  const folder = await folderThatExists(name);
  const read = await readFolder(folder, await libraryStack(values.content));
  if (read.stack.booklets.length === 0 && read.aside.length === 0) throw new WrongUse(`There is no booklet in ${folder}. Booklets are files whose names end in “.booklet.html”.`);
  if (flags.has('json')) console.log(JSON.stringify(figuresOf(read), null, 2));
  else if (flags.has('csv')) process.stdout.write(tableOf(read));
  else console.log(stackInWords(read));
  return 0;
}

/** The packs of the library, which hold rubrics and models. Without one the booklets' own questions do. */
async function libraryStack(content: string | undefined): Promise<Stack> {
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
async function readFolder(folder: string, begin: Stack): Promise<ReadStack> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && /\.(?:html?|json)$/i.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  let stack = begin;
  let [merged, first, second]: [number, ScoresFile | undefined, ScoresFile | undefined] = [0, undefined, undefined];
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
    else if (read.kind === 'scores') second = read.scores;
    else if (read.kind === 'booklet') {
      const after = putBooklet(stack, read.booklet, file, read.leftOut);
      stack = after.stack;
      if (after.put === 'merged') merged += 1;
    }
  }
  return { stack, files: paths.length, merged, aside, first, second };
}

/** All answers of all books as one table: each book's traits have columns of their own, so books follow each other with their heads. */
function tableOf({ stack, first, second }: ReadStack): string {
  const { second: secondHead, ...heads } = stackInEnglish.take.table;
  const rows = packsAnswered(stack).flatMap((name) =>
    stackTable(stack, packBehind(stack, name).pack, first?.scores ?? {}, second?.scores, {
      heads,
      second: secondHead,
      markOf,
      kinds: enBooklet.file.kinds,
      wholeBook: stackInEnglish.look.whole,
    }),
  );
  return csv(rows);
}
