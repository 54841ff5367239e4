/**
 * A family on a slow phone: 400 kbps, 400 ms to the server and back, a processor six times slower. A report, never a test.
 * Run: `node --import tsx test/speed/slow-phone.ts`. The goals are this project's own; the network is a common picture of a cheap phone.
 * Beside each page stands a floor, seen in turn with it: an empty page whose text, style and script weigh the same. On a machine with other
 * work the fastest look comes nearest to a quiet one; of tasks the time of the processor is told as well, in which other programs have no part.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startBrowser } from '../whole-site/browser.ts';
import { buildDemo } from '../whole-site/site.ts';
import { serveCompressed } from './serve-compressed.ts';
import { longestTasks } from './longest-tasks.ts';

const looks = Number(process.env['BOOKFELLOW_LOOKS'] ?? 5);
const scratch = await mkdtemp(join(tmpdir(), 'bookfellow-slow-'));
const made = process.env['BOOKFELLOW_TEST_SITE'];
const site = made === undefined || made === '' ? await buildDemo(scratch) : made;
const server = await serveCompressed(site);
const browser = await startBrowser();

interface Seen {
  readonly paint: number;
  readonly largest: number;
  readonly ready: number;
  readonly shift: number;
  /** Milliseconds of the longest task by the clock, and of the processor. */
  readonly task: number;
  readonly work: number;
  readonly bytes: number;
}

/** Looks at a page until `ready` is in it, opens it where there is something to press, and waits four seconds. Nothing asks the page where things stand: that alone would make it reckon. */
async function look(path: string, ready: string, act: boolean): Promise<Seen> {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', { offline: false, latency: 400, downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8 });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  let bytes = 0;
  session.on('Network.loadingFinished', ({ encodedDataLength }) => (bytes += encodedDataLength));
  await page.addInitScript((wanted) => {
    const seen = { largest: 0, shift: 0, ready: 0 };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const each of list.getEntries()) seen.largest = each.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
    new PerformanceObserver((list) => {
      for (const each of list.getEntries() as (PerformanceEntry & { readonly value: number; readonly hadRecentInput: boolean })[]) if (!each.hadRecentInput) seen.shift += each.value;
    }).observe({ type: 'layout-shift', buffered: true });
    new MutationObserver((_, watch) => {
      if (!document.querySelector(wanted)) return;
      watch.disconnect();
      // Ready is what has been painted.
      requestAnimationFrame(() => setTimeout(() => (seen.ready = performance.now())));
    }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });
  }, ready);
  const tasks = await longestTasks(browser, server.address + path);
  await page.goto(server.address + path, { waitUntil: 'commit' });
  await page.waitForFunction(() => (window as unknown as { readonly seen: { readonly ready: number } }).seen.ready > 0, undefined, { polling: 100, timeout: 60_000 });
  if (act) {
    // By a finger, since a page may move when it is touched.
    await page.locator(ready).first().tap();
    await page.locator('.sheet.is-open').first().waitFor({ state: 'attached' });
  }
  await page.waitForTimeout(4000);
  const { task, work } = await tasks.stop();
  const figures = await page.evaluate(() => ({
    paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0,
    ...(window as unknown as { readonly seen: { readonly largest: number; readonly shift: number; readonly ready: number } }).seen,
  }));
  await context.close();
  return { ...figures, task, work, bytes };
}

const least = (all: readonly Seen[], of: keyof Seen) => Math.min(...all.map((each) => each[of]));
const seconds = (milliseconds: number) => `${(milliseconds / 1000).toFixed(2)} s`;
const whole = (milliseconds: number) => `${String(Math.round(milliseconds))} ms`;
const line = (name: string, of: string, floor: string, goal: string) => console.log(`  ${name.padEnd(36)}${of.padStart(8)}${floor.padStart(10)}   ${goal}`);

console.log(`400 kbps, 400 ms, six-fold slow-down; the fastest of ${String(looks)} looks; text compressed; beside it an empty page of the same weight`);
// A browser that was just started is busy with itself.
await look(server.floorOf('packs/the-crow-and-the-tall-jar/'), 'p', false);
for (const [name, path, ready, act] of [
  ['family page', 'packs/the-crow-and-the-tall-jar/', '.prompts li', false],
  ['booklet', 'packs/the-lamp-on-the-jetty/booklet/', 'main.on-screen .main-button', true],
] as const) {
  const [all, floors]: [Seen[], Seen[]] = [[], []];
  for (let each = 0; each < looks; each += 1) {
    floors.push(await look(server.floorOf(path), 'p', false));
    all.push(await look(path, ready, act));
  }
  console.log(name);
  line(act ? 'first text painted' : 'readable (first text painted)', seconds(least(all, 'paint')), seconds(least(floors, 'paint')), act ? '' : 'goal 2.5 s');
  if (act) line('answerable (can be opened)', seconds(least(all, 'ready')), seconds(least(floors, 'ready')), 'goal 4 s');
  line('largest piece painted', seconds(least(all, 'largest')), seconds(least(floors, 'largest')), '');
  line('longest task, of the processor', whole(least(all, 'work')), whole(least(floors, 'work')), 'goal 200 ms');
  line('longest task, by the clock', whole(least(all, 'task')), whole(least(floors, 'task')), '');
  line('layout shift, at most', Math.max(...all.map(({ shift }) => shift)).toFixed(3), '', 'goal 0.05');
  line('fetched in all, after 4 s more', `${String(Math.round(least(all, 'bytes') / 1000))} kB`, `${String(Math.round(least(floors, 'bytes') / 1000))} kB`, '');
}
await browser.close();
await server.close();
await rm(scratch, { recursive: true, force: true });
