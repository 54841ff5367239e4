/** A tab that dies in the middle of a line takes nothing with it but the last two seconds of that line. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowserIn } from '../whole-site/browser.ts';
import { builtSite, serveBelowRoot } from '../whole-site/site.ts';
import { begin, bookletPage, onDevice, scribble, turnTo } from './booklet-page.ts';

const site = await builtSite();
const phone = { viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', serviceWorkers: 'block' } as const;
let server: Awaited<ReturnType<typeof serveBelowRoot>>;
beforeAll(async () => {
  server = await serveBelowRoot(site);
});
afterAll(() => server.close());

/** Points of each line that is on the device. */
async function linesOnDevice(page: Page): Promise<readonly number[]> {
  const { entries } = await onDevice(page);
  return entries.flatMap(({ value }) => (value.kind === 'drawing' ? value.marks : [])).map((mark) => (mark.do === 'line' ? mark.points.length / 3 : 0));
}

test('the tab dies in the middle of a line, the browser is closed and started again: all lines that were finished are there, and the long one as far as it was kept', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'bookfellow-profile-'));
  let context = await startBrowserIn(profile, phone);
  const { page } = await bookletPage(context, server.address);
  await begin(page);
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  for (const seed of [1, 2, 3]) await scribble(page, seed, 8);
  await expect.poll(async () => (await linesOnDevice(page)).length).toBe(3);
  const finished = await linesOnDevice(page);

  const box = await page.locator('.is-open canvas').boundingBox();
  if (!box) throw new Error('no paper');
  await page.mouse.move(box.x + 20, box.y + 20);
  await page.mouse.down();
  // The line grows until some of it is on the device, however slow the machine is, and then goes on; the hand is never lifted.
  const grow = async (from: number, steps: number) => {
    for (let step = from; step < from + steps; step++) await page.mouse.move(box.x + 20 + ((step * 5) % 250), box.y + 20 + ((step * 7) % 150));
  };
  let step = 0;
  await expect
    .poll(
      async () => {
        await grow(step, 6);
        step += 6;
        return (await linesOnDevice(page)).length;
      },
      { timeout: 60_000, interval: 150 },
    )
    .toBe(4);
  const kept = await linesOnDevice(page);
  await grow(step, 6);

  const killer = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  // A tab that is dead gives no answer to this.
  killer.send('Page.crash').catch(() => undefined);
  await crashed;
  await context.close();

  context = await startBrowserIn(profile, phone);
  const again = await bookletPage(context, server.address);
  const found = await linesOnDevice(again.page);
  // eslint-disable-next-line no-console -- the counts are to be read
  console.log(`points of the lines before the tab died in the fourth: ${kept.join(' ')}; after: ${found.join(' ')}`);
  expect(found.slice(0, 3)).toEqual(finished);
  expect(found).toHaveLength(4);
  expect(found[3]).toBeGreaterThanOrEqual(kept[3] ?? Infinity);
  await again.page.locator('.reader').first().click();
  await turnTo(again.page, 'stop-still-walking');
  await expect.poll(() => again.page.locator('.is-open canvas').getAttribute('aria-label')).toContain('4 lines');
  expect(again.faults).toEqual([]);
  await context.close();
  await rm(profile, { recursive: true, force: true });
});
