import { resolve } from 'node:path';
import { brokenLinks } from '../build/check-links.ts';
import { preview } from '../build/preview.ts';
import { readArguments, wholeNumber } from './arguments.ts';
import { cacheFolder, folderThatExists } from './folders.ts';
import { asText, inSum, onPages, wantsColour } from './report.ts';

/** `bookfellow preview`: builds, serves on this machine only, rebuilds on change. Runs until it is stopped. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, flags } = readArguments(args, ['content', 'site', 'port'], ['no-pdf']);
  const port = wholeNumber(values.port ?? process.env['PORT'], 'port', 0, 65_535) ?? 4321;
  const content = await folderThatExists(values.content ?? 'content');
  console.log('Building the library …');
  const shown = await preview({
    content,
    site: resolve(values.site ?? 'site'),
    cache: cacheFolder,
    paper: !flags.has('no-pdf'),
    port,
    tell: (built, milliseconds) => {
      if (built instanceof Error) {
        console.error(`This change could not be built: ${built.message}\nThe site is as it was.`);
        return;
      }
      if (built.findings.length > 0) console.log(asText(built.findings, 'en', wantsColour(process.stdout)));
      console.log(`${onPages(built)} in ${(milliseconds / 1000).toFixed(1)} s. Findings: ${inSum(built.findings)}.`);
    },
  });
  console.log(`\nThe library is open at ${shown.address}\nIt changes as you save. Stop it with Ctrl+C.`);
  const broken = await brokenLinks(shown.address);
  console.log(broken.length === 0 ? 'Every link of the site leads somewhere.' : broken.map(({ page, link }) => `Broken link on ${page}: ${link}`).join('\n'));
  await new Promise<void>((done) => {
    process.once('SIGINT', done);
    process.once('SIGTERM', done);
  });
  await shown.close();
  return 0;
}
