import { relative, resolve } from 'node:path';
import { readWholeLibrary } from '../build/read-library.ts';
import { inOrder, stops, type Finding } from '../core/finding.ts';
import { readArguments } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { asJson, asText, inSum, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow check`: all findings, and nothing written. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content'], ['json']);
  const content = await folderThatExists(values.content ?? 'content');
  const { findings, told } = await readWholeLibrary(content);
  const wanted = inOrder(rest.length === 0 ? findings : findings.filter(within(content, rest)));
  const known = [...told.map((each) => each.source.file), ...findings.map((each) => each.place.file)];
  for (const path of rest) {
    const inside = insideContent(content, path);
    if (!known.some((file) => file === inside || file.startsWith(`${inside}/`))) throw new WrongUse(`There is no pack at "${path}" in ${content}.`);
  }
  if (flags.has('json')) console.log(asJson(wanted, 'en'));
  else {
    if (wanted.length > 0) console.log(`${asText(wanted, 'en', wantsColour(process.stdout))}\n`);
    console.log(`${String(rest.length === 0 ? told.length : rest.length)} looked at: ${inSum(wanted)}.`);
  }
  return stops(wanted) ? 1 : 0;
}

function within(content: string, paths: readonly string[]): (found: Finding) => boolean {
  const folders = paths.map((path) => insideContent(content, path));
  return (found) => folders.some((folder) => found.place.file === folder || found.place.file.startsWith(`${folder}/`));
}

/** A path that a person typed, relative to the content folder: `content/packs/hen/` or plain `hen`. */
function insideContent(content: string, path: string): string {
  const inside = relative(content, resolve(path)).replaceAll('\\', '/');
  return inside.startsWith('..') ? `packs/${path}` : inside;
}
