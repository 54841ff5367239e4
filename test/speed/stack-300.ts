/**
 * How the stack bears three hundred booklets with drawings. A report, never a test:
 *   node --import tsx test/speed/stack-300.ts
 * Each booklet has five texts and two drawings of sixty lines with forty points. "Held" is the longest time in which the page answered nobody.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bookmarkColours, bookmarkPatterns, newBooklet, put, type Value } from '../../src/core/booklet/booklet.ts';
import { writeBookletFile } from '../../src/core/booklet/write-booklet-file.ts';
import { enBooklet } from '../../src/core/languages/en-booklet.ts';
import { startBrowser } from '../whole-site/browser.ts';
import { builtSite, serveBelowRoot } from '../whole-site/site.ts';

const howMany = 300;

const drawing = (seed: number): Value => ({
  kind: 'drawing',
  about: `Drawing ${String(seed)}`,
  marks: Array.from({ length: 60 }, (_, line) => ({
    do: 'line' as const,
    ink: 'blue' as const,
    width: 24,
    points: Array.from({ length: 40 }, (_, point) => [Math.round(600 + 500 * Math.sin(seed + line + point / 7)), Math.round(450 + 400 * Math.cos(seed * line + point / 5)), 50]).flat(),
  })),
});

const folder = await mkdtemp(join(tmpdir(), 'bookfellow-stack-'));
const paths: string[] = [];
let bytes = 0;
for (let child = 0; child < howMany; child++) {
  const pack = { slug: 'the-lamp-on-the-jetty', language: 'en', title: 'The Lamp on the Jetty' };
  const bookmark = { pattern: bookmarkPatterns[child % 5] ?? 'waves', colour: bookmarkColours[Math.floor(child / 5) % 5] ?? 'red' };
  let booklet = newBooklet(`child${String(child).padStart(6, '0')}`, pack, bookmark, []);
  for (const stop of ['not-home', 'see-the-end', 'next-plank', 'still-turning', 'window-to-lamp'])
    booklet = put(booklet, 'writer000001', stop, { kind: 'written', text: `Joss feels worried because of number ${String(child)}.`, frames: [] });
  for (const stop of ['still-walking', 'heavy-handle']) booklet = put(booklet, 'writer000001', stop, drawing(child));
  const text = writeBookletFile(booklet, enBooklet.file);
  bytes += text.length;
  const path = join(folder, `${String(child)}.booklet.html`);
  await writeFile(path, text);
  paths.push(path);
}

const server = await serveBelowRoot(await builtSite());
const browser = await startBrowser();
const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
await page.goto(`${server.address}stack/`);
await page.evaluate(() => {
  const held: number[] = [];
  Object.assign(window, { held });
  new PerformanceObserver((list) => held.push(...list.getEntries().map(({ duration }) => Math.round(duration)))).observe({ type: 'longtask' });
});
const held = async (): Promise<string> => {
  const tasks = await page.evaluate(() => (window as unknown as { held: number[] }).held.splice(0));
  return `held ${String(Math.max(0, ...tasks))} ms at most, ${String(tasks.length)} times over 50 ms`;
};
const timed = async (what: string, work: () => Promise<unknown>): Promise<void> => {
  const from = performance.now();
  await work();
  const took = Math.round(performance.now() - from);
  await page.waitForTimeout(300);
  console.log(`${what.padEnd(34)} ${String(took).padStart(6)} ms   ${await held()}`);
};
console.log(`${String(howMany)} booklets, ${(bytes / 1e6).toFixed(1)} MB`);
await timed('put on the pile', async () => {
  await page.setInputFiles('#stack-files', paths);
  await page.locator('.stack-told', { hasText: '300 booklets were put on the pile.' }).waitFor({ timeout: 120_000 });
});
await timed('look, three hundred texts', async () => {
  await page.locator('.stack-contents a[href="#look"]').click();
  await page.locator('.side-by-side > li').nth(299).waitFor({ state: 'attached' });
});
await timed('look, three hundred drawings', async () => {
  await page.getByLabel('Question', { exact: true }).selectOption({ index: 3 });
  await page.locator('.kept-paper').first().waitFor();
});
await timed('scroll through the drawings', async () => {
  for (let step = 0; step < 60; step++) {
    await page.mouse.wheel(0, 700);
    await page.waitForTimeout(50);
  }
});
await timed('the whole class, counted', async () => {
  await page.locator('input[value=class]').check();
  await page.locator('#class-feelings-text').waitFor();
});
await timed('judge, the first answer', async () => {
  await page.locator('.stack-contents a[href="#judge"]').click();
  await page.locator('.to-judge').waitFor();
});
await timed('a score, and the next answer', async () => {
  await page.locator('.to-judge').focus();
  for (const key of ['1', '1', '0', '1', 'Enter']) await page.keyboard.press(key);
  await page.locator('#to-judge', { hasText: 'Answer 2 of' }).waitFor();
});
await browser.close();
await server.close();
await rm(folder, { recursive: true });
