/**
 * A family on a slow phone: 400 kbps, 400 ms to the server and back, a processor six times slower. A report, never a test.
 * Run: `node --import tsx test/speed/slow-phone.ts`. The goals are this project's own; the network is a common picture of a cheap phone.
 */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { startBrowser } from '../whole-site/browser.ts';
import { buildDemo } from '../whole-site/site.ts';

const scratch = await mkdtemp(join(tmpdir(), 'bookfellow-slow-'));
const made = process.env['BOOKFELLOW_TEST_SITE'];
const site = made === undefined || made === '' ? await buildDemo(scratch) : made;

/** Serves compressed, as every host does. */
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};
const server = createServer((request, response) => {
  void (async () => {
    const path = decodeURIComponent((request.url ?? '/').split(/[?#]/, 1)[0] ?? '/');
    const file = join(site, path, path.endsWith('/') ? 'index.html' : '');
    if (path.includes('..') || !(await stat(file).catch(() => undefined))?.isFile()) return response.writeHead(404).end();
    const bytes = await readFile(file);
    const type = types[extname(file)] ?? 'application/octet-stream';
    return /text|json/.test(type)
      ? response.writeHead(200, { 'content-type': type, 'content-encoding': 'gzip' }).end(gzipSync(bytes, { level: 9 }))
      : response.writeHead(200, { 'content-type': type }).end(bytes);
  })();
});
await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
const bound = server.address();
const address = `http://127.0.0.1:${String(typeof bound === 'object' && bound ? bound.port : 0)}/`;
const browser = await startBrowser();

interface Seen {
  readonly paint: number;
  readonly largest: number;
  readonly ready: number;
  readonly longest: number;
  readonly shift: number;
  readonly bytes: number;
}

async function look(path: string, ready: string, act?: string): Promise<Seen> {
  const context = await browser.newContext({ viewport: { width: 360, height: 640 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', { offline: false, latency: 400, downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8 });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  let bytes = 0;
  session.on('Network.loadingFinished', ({ encodedDataLength }) => (bytes += encodedDataLength));
  await page.addInitScript(() => {
    const seen = { largest: 0, longest: 0, shift: 0 };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const each of list.getEntries()) seen.largest = each.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
    new PerformanceObserver((list) => {
      for (const each of list.getEntries()) seen.longest = Math.max(seen.longest, each.duration);
    }).observe({ type: 'longtask', buffered: true });
    new PerformanceObserver((list) => {
      for (const each of list.getEntries() as (PerformanceEntry & { readonly value: number; readonly hadRecentInput: boolean })[]) if (!each.hadRecentInput) seen.shift += each.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(address + path, { waitUntil: 'commit' });
  await page.locator(ready).first().waitFor({ timeout: 60_000 });
  const readyAt = await page.evaluate(() => performance.now());
  if (act !== undefined) {
    await page.locator(act).first().click();
    await page.locator('.sheet.is-open').first().waitFor();
  }
  await page.waitForTimeout(4000);
  const figures = await page.evaluate(() => ({
    paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0,
    ...(window as unknown as { readonly seen: { readonly largest: number; readonly longest: number; readonly shift: number } }).seen,
  }));
  await context.close();
  return { ...figures, ready: readyAt, bytes };
}

/** The middle of three looks. */
async function middle(path: string, ready: string, act?: string): Promise<Seen> {
  const all = [await look(path, ready, act), await look(path, ready, act), await look(path, ready, act)];
  return all.sort((a, b) => a.ready - b.ready)[1] as Seen;
}

const line = (name: string, value: string, goal: string) => console.log(`  ${name.padEnd(34)}${value.padStart(9)}   ${goal}`);
const seconds = (milliseconds: number) => `${(milliseconds / 1000).toFixed(2)} s`;
console.log('400 kbps, 400 ms, six-fold slow-down; the middle of three looks; text compressed');
for (const [name, path, ready, act] of [
  ['family page', 'packs/the-crow-and-the-tall-jar/', '.prompts li'],
  ['booklet', 'packs/the-lamp-on-the-jetty/booklet/', 'main.on-screen .main-button', 'main.on-screen .main-button'],
] as const) {
  const seen = await middle(path, ready, act);
  console.log(name);
  if (act === undefined) line('readable (first text painted)', seconds(seen.paint), 'goal 2.5 s');
  else line('answerable (can be opened)', seconds(seen.ready), 'goal 4 s');
  if (act !== undefined) line('first text painted', seconds(seen.paint), '');
  line('largest piece painted', seconds(seen.largest), '');
  line('longest task', `${String(Math.round(seen.longest))} ms`, 'goal 200 ms; 0 is below 50');
  line('layout shift', seen.shift.toFixed(3), 'goal 0.05');
  line('fetched in all, after 4 s more', `${String(Math.round(seen.bytes / 1000))} kB`, '');
}
await browser.close();
server.closeAllConnections();
server.close();
await rm(scratch, { recursive: true, force: true });
