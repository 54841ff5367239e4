import { resolve } from 'node:path';
import type { Built } from '../build/build.ts';
import { unchangedSince, watchOver, type Asked } from '../build/unchanged.ts';
import { stops } from '../core/finding.ts';
import { readArguments } from './arguments.ts';
import { cacheFolder, folderThatExists } from './folders.ts';
import { progressOn } from './progress.ts';
import { asText, inSum, onPages, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow build`: the site, or the reasons why not. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags, rest } = readArguments(args, ['content', 'site'], ['strict', 'no-pdf']);
  if (rest[0] !== undefined) throw new WrongUse(`"${rest[0]}" was not understood. Name the folders with --content and --site.`);
  const content = await folderThatExists(values.content ?? 'content');
  const site = resolve(values.site ?? 'site');
  const strict = flags.has('strict');
  const paper = !flags.has('no-pdf');
  const asked: Asked = { content, site, cache: cacheFolder, today: new Date().toISOString().slice(0, 10), how: { strict, paper } };
  const before = unchangedSince(asked);
  const built = before ? (before.told as Told) : await buildNow(asked, { strict, paper });
  if (built.findings.length > 0) console.log(asText(built.findings, 'en', wantsColour(process.stdout)));
  if (strict && stops(built.findings)) {
    console.log(`\nNothing was published, because of --strict: ${inSum(built.findings)}.`);
    return 1;
  }
  const leftOut = built.leftOut > 0 ? `${String(built.leftOut)} left out. ` : '';
  console.log(`\n${before ? 'Nothing has changed since the last build. ' : ''}${onPages(built)} in ${site}. ${leftOut}Findings: ${inSum(built.findings)}.`);
  return 0;
}

type Told = Pick<Built, 'findings' | 'published' | 'leftOut' | 'pages'>;

async function buildNow(asked: Asked, { strict, paper }: { readonly strict: boolean; readonly paper: boolean }): Promise<Told> {
  const { content, site, cache, today } = asked;
  const published = watchOver(asked);
  // Fetched only now: to read all that builds takes longer than to see that nothing changed.
  const { build } = await import('../build/build.ts');
  const built = await build({
    ...{ content, site, cache, today, strict, paper, folders: true },
    readProgress: progressOn(process.stderr, 'Reading packs'),
    progress: progressOn(process.stderr, 'Making pages'),
    paperProgress: progressOn(process.stderr, 'Setting sheets'),
  });
  const { findings, pages, leftOut, folders } = built;
  const told = { findings, pages, leftOut, published: built.published };
  if (!strict || !stops(findings)) published(folders.slice(1), told);
  return told;
}
