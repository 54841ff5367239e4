import { resolve } from 'node:path';
import { build } from '../build/build.ts';
import { stops } from '../core/finding.ts';
import { readArguments } from './arguments.ts';
import { cacheFolder, folderThatExists } from './folders.ts';
import { progressOn } from './progress.ts';
import { asText, inSum, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow build`: the site, or the reasons why not. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'site'], ['strict', 'no-pdf']);
  if (rest[0] !== undefined) throw new WrongUse(`"${rest[0]}" was not understood. Name the folders with --content and --site.`);
  const content = await folderThatExists(values.content ?? 'content');
  const site = resolve(values.site ?? 'site');
  const strict = flags.has('strict');
  const built = await build({
    content,
    site,
    cache: cacheFolder,
    strict,
    paper: !flags.has('no-pdf'),
    folders: true,
    progress: progressOn(process.stderr, 'Making pages'),
    paperProgress: progressOn(process.stderr, 'Setting sheets'),
  });
  if (built.findings.length > 0) console.log(asText(built.findings, 'en', wantsColour(process.stdout)));
  if (strict && stops(built.findings)) {
    console.log(`\nNothing was published, because of --strict: ${inSum(built.findings)}.`);
    return 1;
  }
  console.log(`\n${String(built.published)} packs on ${String(built.pages)} pages in ${site}. ${built.leftOut > 0 ? `${String(built.leftOut)} left out. ` : ''}Findings: ${inSum(built.findings)}.`);
  return 0;
}
