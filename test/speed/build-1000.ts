/**
 * A report, never a test: how long our build takes for 1,000 packs: from nothing, again with nothing touched, with nothing changed though all is looked at, and with one pack
 * changed; beside Hugo (Debian's package, left out where it is not installed) making three plain pages of each pack, and the bare
 * engine making as many plain pages of the same size. Then how long the stages that only look take, how large the pages about
 * quality are, and how long `bookfellow --help` takes beside an empty Node. Each is run in its own process. On Linux only.
 *
 *   node --import tsx test/speed/build-1000.ts [number of packs]
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { writeHugoSite } from './hugo-peer.ts';
import { writePacks } from './invented-library.ts';
import { runProgram, type Cost } from './run-program.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [count, task, folder = ''] = [Number(process.argv[2] ?? 1000), process.argv[3], process.argv[4]];

if (task === 'ours') await buildOurs();
else if (task === 'command') await asTheCommand();
else if (task === 'bare') await buildBare();
else if (task === 'stages') await runStages();
else await report();

async function buildOurs(): Promise<void> {
  const { build } = await import('../../src/build/build.ts');
  const built = await build({ content: join(folder, 'content'), site: join(folder, 'site'), cache: join(folder, 'cache'), strict: false });
  if (built.published !== count) throw new Error(`${built.published} of ${count} packs were published: ${JSON.stringify(built.findings[0])}`);
}

/** As `bookfellow build` does: nothing is begun where nothing was touched. */
async function asTheCommand(): Promise<void> {
  const { unchangedSince, watchOver } = await import('../../src/build/unchanged.ts');
  const asked = { content: join(folder, 'content'), site: join(folder, 'site'), cache: join(folder, 'cache'), today: new Date().toISOString().slice(0, 10), how: {} };
  if (unchangedSince(asked)) return;
  const published = watchOver(asked);
  await buildOurs();
  published([], {});
}

/** The peer: the engine alone, with plain text functions for templates and pages of the number and sizes that ours came to. */
async function buildBare(): Promise<void> {
  const { default: Eleventy } = await import('@11ty/eleventy');
  const pages = JSON.parse(readFileSync(join(folder, 'sizes.json'), 'utf8')) as readonly { url: string; bytes: number }[];
  mkdirSync(join(folder, 'empty'), { recursive: true });
  const paragraph = '<p>The ferry waits for the kettle, and the lantern follows the sparrow to the orchard.</p>\n';
  const engine = new Eleventy(join(folder, 'empty'), join(folder, 'bare'), {
    quietMode: true,
    configPath: false,
    config(config) {
      config.setUseGitIgnore(false);
      config.addTemplate<{ each: { url: string; bytes: number } }>('pages.11ty.js', {
        data: { pages, pagination: { data: 'pages', size: 1, alias: 'each' }, permalink: (data: { each: { url: string } }) => data.each.url },
        render: ({ each }) =>
          `<!doctype html><html lang="en"><head><title>${each.url}</title></head><body><h1>${each.url}</h1>\n${paragraph.repeat(Math.ceil(each.bytes / paragraph.length))}</body></html>`,
      });
    },
  });
  engine.disableLogger();
  await engine.write();
}

/** The stages that `bookfellow check` goes through, one after the other over all packs, each with its time. */
async function runStages(): Promise<void> {
  const { readContent } = await import('../../src/build/read-content.ts');
  const { defaultLibrary } = await import('../../src/core/pack/library.ts');
  const { readPack } = await import('../../src/core/pack/read-pack.ts');
  const { checkPack } = await import('../../src/core/check/check-pack.ts');
  const { measurePack } = await import('../../src/core/measure/measure-pack.ts');
  const { planLesson } = await import('../../src/core/plan/plan-lesson.ts');
  const timed = async <T>(name: string, work: () => T | Promise<T>): Promise<T> => {
    const started = performance.now();
    const made = await work();
    const milliseconds = performance.now() - started;
    console.log(`  ${name.padEnd(14)} ${milliseconds.toFixed(0).padStart(6)} ms  ${(milliseconds / count).toFixed(2).padStart(6)} ms a pack`);
    return made;
  };
  console.log('stages that only look, over all packs');
  const { sources } = await timed('from the disk', () => readContent(join(folder, 'content')));
  const packs = await timed('read', () => sources.flatMap((source) => readPack(source).value ?? []));
  const checked = await timed('check', () => packs.map((pack) => checkPack(pack).value));
  const measured = await timed('measure', () => checked.map((pack) => measurePack(pack).value));
  await timed('plan', () => measured.map((pack) => planLesson(pack, defaultLibrary).value));
}

async function inOwnProcess(what: string, at: string): Promise<Cost> {
  const cost = await runProgram(process.execPath, ['--import', 'tsx', fileURLToPath(import.meta.url), String(count), what, at], root);
  if (cost.out.trim() !== '') console.log(cost.out.trimEnd());
  return cost;
}

async function report(): Promise<void> {
  const place = mkdtempSync(join(tmpdir(), 'bookfellow-speed-'));
  const content = join(place, 'content');
  writePacks(content, count);
  const cold = await inOwnProcess('command', place);
  const sizes = readdirSync(join(place, 'site'), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.html'))
    .map((url) => ({ url, bytes: statSync(join(place, 'site', url)).size }));
  writeFileSync(join(place, 'sizes.json'), JSON.stringify(sizes));
  const untouched = await inOwnProcess('command', place);
  const unchanged = await inOwnProcess('ours', place);
  const one = join(content, 'packs/pack-00000/pack.md');
  writeFileSync(one, readFileSync(one, 'utf8').replace(/^title: "The /m, 'title: "Another '));
  const oneChanged = await inOwnProcess('ours', place);
  const bare = await inOwnProcess('bare', place);
  const hugo = await hugoOf(place, content);
  const line = (name: string, { seconds, cpuSeconds, peakMegabytes }: Cost) => {
    const times = (of: number, by: number | undefined) => (by === undefined ? '     -' : (of / by).toFixed(2).padStart(6));
    console.log(
      `${name.padEnd(28)} ${seconds.toFixed(1).padStart(7)} s ${cpuSeconds.toFixed(1).padStart(7)} CPU s ${peakMegabytes.toFixed(0).padStart(6)} MB  to Hugo: ${times(cpuSeconds, hugo?.cpuSeconds)} in CPU ${times(peakMegabytes, hugo?.peakMegabytes)} in memory  to cold: ${times(cpuSeconds, cold.cpuSeconds)} in CPU`,
    );
  };
  console.log(`${count} packs, ${sizes.length} pages, ${(sizes.reduce((sum, each) => sum + each.bytes, 0) / 1e6).toFixed(1)} MB of HTML, Node ${process.versions.node}`);
  line('bookfellow, from nothing', cold);
  line('bookfellow, nothing touched', untouched);
  line('bookfellow, nothing changed', unchanged);
  line('bookfellow, one pack changed', oneChanged);
  line('bare engine, pages alone', bare);
  if (hugo) line('Hugo, three plain pages each', hugo);
  else console.log('Hugo is not installed here.');
  await inOwnProcess('stages', place);
  tellQuality(join(place, 'site'));
  const [help, empty] = [
    ['src/cli/bookfellow.js', '--help'],
    ['-e', '0'],
  ].map((args) => fastest(() => spawnSync(process.execPath, args, { cwd: root, stdio: 'ignore' })));
  console.log(`start-up     bookfellow --help ${help?.toFixed(0) ?? ''} ms, an empty Node ${empty?.toFixed(0) ?? ''} ms (fastest of 5)`);
  rmSync(place, { recursive: true });
}

async function hugoOf(place: string, content: string): Promise<Cost | undefined> {
  if (spawnSync('hugo', ['version'], { stdio: 'ignore' }).status !== 0) return undefined;
  writeHugoSite(join(place, 'hugo'), content);
  return runProgram('hugo', ['--quiet', '--source', join(place, 'hugo')], place);
}

/** How large the pages about quality are, as they are and as a server sends them. */
function tellQuality(site: string): void {
  const sizeOf = (text: string) => `${(text.length / 1024).toFixed(0)} kB, ${(gzipSync(text).length / 1024).toFixed(0)} kB compressed`;
  const pages = ['quality/index.html', ...readdirSync(join(site, 'quality')).flatMap((name) => (/^\d+$/.test(name) ? [`quality/${name}/index.html`] : []))].map((page) =>
    readFileSync(join(site, page), 'utf8'),
  );
  const largest = pages.reduce((most, page) => (page.length > most.length ? page : most), '');
  console.log(
    `quality      ${pages.length} pages, the largest ${sizeOf(largest)}; as one page it would be ${sizeOf(pages.join(''))}; quality.json ${sizeOf(readFileSync(join(site, 'quality.json'), 'utf8'))}`,
  );
}

function fastest(work: () => void): number {
  return Math.min(
    ...Array.from({ length: 5 }, () => {
      const started = performance.now();
      work();
      return performance.now() - started;
    }),
  );
}
