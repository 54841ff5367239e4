import { realpath } from 'node:fs/promises';
import { isAbsolute, relative, resolve } from 'node:path';
import type { Root } from '../build/disk.ts';
import { readWholeLibrary } from '../build/read-library.ts';
import { inOrder, stops, type Finding } from '../core/finding.ts';
import { readArguments } from './arguments.ts';
import { changedSince, concernedBy, rootOfHistory } from './changed-since.ts';
import { folderThatExists } from './folders.ts';
import { asJson, asText, inSum, wantsColour } from './report.ts';
import { asSarif } from './sarif.ts';
import { version } from './version.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow check`: all findings, and nothing written. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'since'], ['json', 'sarif']);
  const content = await folderThatExists(values.content ?? 'content');
  const {
    findings,
    told,
    content: { roots },
  } = await readWholeLibrary(content);
  const changed = values.since === undefined ? undefined : await changedSince(content, values.since);
  const wanted = inOrder(findings.filter((found) => (rest.length === 0 || within(roots, rest)(found)) && (changed === undefined || concernedBy(changed)(found))));
  const known = [...told.map((each) => each.source.file), ...findings.map((each) => each.place.file)];
  for (const path of rest) {
    const inside = nameOf(roots, path);
    if (!known.some((file) => file === inside || file.startsWith(`${inside}/`))) throw new WrongUse(`There is no pack at "${path}" in ${content}.`);
  }
  if (flags.has('sarif')) console.log(asSarif(wanted, 'en', await belowRoot(content), version));
  else if (flags.has('json')) console.log(asJson(wanted, 'en'));
  else {
    if (wanted.length > 0) console.log(`${asText(wanted, 'en', wantsColour(process.stdout))}\n\n${whereSourcesLie(roots, wanted)}`.trimEnd() + '\n');
    console.log(`${lookedAt(told.length, rest.length, changed)}: ${inSum(wanted)}.`);
  }
  return stops(wanted) ? 1 : 0;
}

function within(roots: readonly Root[], paths: readonly string[]): (found: Finding) => boolean {
  const folders = paths.map((path) => nameOf(roots, path));
  return (found) => folders.some((folder) => found.place.file === folder || found.place.file.startsWith(`${folder}/`));
}

function lookedAt(all: number, named: number, changed: readonly string[] | undefined): string {
  if (changed?.length === 0) return 'Nothing was changed';
  if (changed !== undefined) return 'What was changed';
  return `${String(named === 0 ? all : named)} looked at`;
}

/** Where the content lies below the root of its history, or below the place where the command is called. */
async function belowRoot(content: string): Promise<string> {
  const inside = relative((await rootOfHistory(content)) ?? (await realpath(process.cwd())), await realpath(content)).replaceAll('\\', '/');
  return inside === '' || inside.startsWith('..') ? '' : `${inside}/`;
}

/** What findings call a path that a person typed: `content/packs/hen/`, plain `hen`, or a folder of a source. */
function nameOf(roots: readonly Root[], path: string): string {
  for (const { at, label } of [...roots].reverse()) {
    const inside = relative(at, resolve(path)).replaceAll('\\', '/');
    if (inside !== '' && !inside.startsWith('..') && !isAbsolute(inside)) return label + inside;
  }
  return `packs/${path}`;
}

/** Where the sources lie that findings speak of, for whoever has to open a file there. */
function whereSourcesLie(roots: readonly Root[], findings: readonly Finding[]): string {
  const named = roots.filter(({ label }) => label !== '' && findings.some(({ place }) => place.file.startsWith(label)));
  return named.map(({ at, label }) => `${label} is ${relative('.', at) || '.'}\n`).join('');
}
