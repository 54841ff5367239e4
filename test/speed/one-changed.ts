/**
 * A report, never a test: how long it takes, in the preview of a large library, from a pack's file being saved to its page being
 * served with what was changed; to the page of the index that lists it; and to the whole site. Beside it the time that a process needs to write the
 * file and to read it again. On two cores with nothing else to do.
 *
 *   node --import tsx test/speed/one-changed.ts [number of packs]
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from '../../src/build/preview.ts';
import { writePacks } from './invented-library.ts';

const count = Number(process.argv[2] ?? 1000);
const place = mkdtempSync(join(tmpdir(), 'bookfellow-changed-'));
const content = join(place, 'content');
writePacks(content, count);
writeFileSync(join(content, 'library.yaml'), 'name: The speed shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask at the desk.\nrights: Each names its own.\n');
const builds: number[] = [];
const shown = await preview({ content, site: join(place, 'site'), cache: join(place, 'cache'), port: 0, tell: (_, milliseconds) => builds.push(milliseconds) });
const file = join(content, 'packs/pack-00007/pack.md');

/** Milliseconds until a page of the preview holds a text. */
async function until(page: string, text: string, started: number, pause: number): Promise<number> {
  for (;;) {
    const html = await fetch(`${shown.address}/${page}`).then((response) => response.text());
    if (html.includes(text)) return performance.now() - started;
    await new Promise((done) => setTimeout(done, pause));
  }
}

const [toPage, toList, toSite, toDisk]: [number[], number[], number[], number[]] = [[], [], [], []];
for (let round = 0; round < 3; round++) {
  // The first under O, so that one page of the index is known to hold it.
  const title = `The oak of round ${String(round)}`;
  const text = readFileSync(file, 'utf8').replace(/^title: .*$/m, `title: "${title}"`);
  const started = performance.now();
  writeFileSync(file, text);
  readFileSync(file, 'utf8');
  toDisk.push(performance.now() - started);
  toPage.push(await until('packs/pack-00007/', title, started, 2));
  toList.push(await until('index/letter/o/', title, started, 2));
  // Asked seldom, since it is large, and whoever asks is the process that builds.
  toSite.push(await until('packs.json', title, started, 250));
  // The build has a little left to do after the sites changed places.
  while (builds.length < round + 2) await new Promise((done) => setTimeout(done, 20));
}
await shown.close();
const middle = (of: readonly number[]) => [...of].sort((a, b) => a - b)[of.length >> 1] ?? NaN;
console.log(`${count} packs, one pack's title changed three times in the preview, the middle of three, in milliseconds`);
console.log(`file written and read again   ${middle(toDisk).toFixed(1).padStart(8)}`);
console.log(`its page is served            ${middle(toPage).toFixed(0).padStart(8)}   (goal 100)`);
console.log(`a page of the index is served ${middle(toList).toFixed(0).padStart(8)}   (goal 300)`);
console.log(`the whole site is served      ${middle(toSite).toFixed(0).padStart(8)}   (goal 2,000)`);
console.log(`the first build took          ${(builds[0] ?? NaN).toFixed(0).padStart(8)}`);
rmSync(place, { recursive: true });
