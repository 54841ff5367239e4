import { csv } from '../classroom/csv.ts';
import { packBehind, packsAnswered } from '../classroom/stack.ts';
import { stackTable } from '../classroom/stack-table.ts';
import { enBooklet } from '../core/languages/en-booklet.ts';
import { stackInEnglish } from '../core/languages/en-stack.ts';
import { readArguments } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { figuresOf, markOf, stackInWords } from './stack-report.ts';
import { libraryStack, readFolder, type ReadStack } from './read-stack.ts';
import { WrongUse } from './wrong-use.ts';

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

/** All answers of all books as one table: each book's traits have columns of their own, so books follow each other with their heads. */
function tableOf({ stack, first, others }: ReadStack): string {
  const { colleague, ...heads } = stackInEnglish.take.table;
  const rows = packsAnswered(stack).flatMap((name) =>
    stackTable(
      stack,
      packBehind(stack, name).pack,
      first?.scores ?? {},
      others.map(({ scores }) => scores),
      {
        heads,
        colleague,
        markOf,
        file: enBooklet.file,
      },
    ),
  );
  return csv(rows);
}
