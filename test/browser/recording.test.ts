/** The recording as a family meets it: it waits at each stop, in whatever order they move about in it, and with captions on. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeObjects } from '../whole-site/axe.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';

const address = 'packs/the-crow-and-the-tall-jar/recording/';
const here = siteInBrowser();

async function opened(options: { width?: number; javaScriptEnabled?: boolean } = {}): Promise<Page> {
  const context = await here.browser.newContext({ viewport: { width: options.width ?? 1280, height: 800 }, javaScriptEnabled: options.javaScriptEnabled ?? true });
  const page = await context.newPage();
  await page.goto(here.server.address + address);
  return page;
}
const stopsOf = (page: Page) => page.$$eval('.film-stop', (boxes) => boxes.map((box) => Number((box as HTMLElement).dataset['at'])));
const now = (page: Page) => page.$eval('video', (video) => ({ paused: video.paused, at: video.currentTime }));
const playFrom = (page: Page, at: number) =>
  page.$eval(
    'video',
    async (video, from) => {
      video.muted = true;
      video.currentTime = from;
      await video.play();
    },
    at,
  );
const waitsAt = async (page: Page, number: number) => {
  await page.waitForFunction((wanted) => document.querySelector('.film-status')?.textContent.includes(` ${String(wanted)}.`) === true && document.querySelector('video')?.paused === true, number, {
    timeout: 20_000,
  });
};

describe('the film waits', () => {
  test('at each of its seven stops, at the second that the pack tells, and goes on when asked, with captions on', { timeout: 120_000 }, async () => {
    const page = await opened();
    const requests: string[] = [];
    page.on('request', (request) => requests.push(request.url()));
    const stops = await stopsOf(page);
    expect(stops).toEqual([55, 73, 117, 162, 183, 210, 241]);
    await page.$eval('video', (video) => {
      for (const track of video.textTracks) if (track.kind === 'captions') track.mode = 'showing';
    });
    for (const [index, at] of stops.entries()) {
      await playFrom(page, at - 1);
      await waitsAt(page, index + 1);
      expect(Math.abs((await now(page)).at - at)).toBeLessThan(0.3);
      expect(await page.evaluate(() => document.activeElement?.getAttribute('data-act'))).toBe('go-on');
      expect(await page.$$eval('.film-stop:not([hidden])', (boxes) => boxes.length)).toBe(1);
      await page.keyboard.press('Enter');
      await page.waitForFunction((from) => (document.querySelector('video')?.currentTime ?? 0) > from + 0.2, at);
      expect(await page.$$eval('.film-stop:not([hidden])', (boxes) => boxes.length)).toBe(0);
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('VIDEO');
    }
    expect(requests.filter((url) => !url.startsWith(here.server.address))).toEqual([]);
    await page.context().close();
  });

  test('not when somebody jumps over a stop, forwards or back, and again when they play into it once more', { timeout: 60_000 }, async () => {
    const page = await opened();
    await playFrom(page, 57);
    await page.waitForTimeout(400);
    expect((await now(page)).paused).toBe(false);
    await playFrom(page, 180.5);
    await page.waitForTimeout(300);
    expect((await now(page)).paused).toBe(false);
    await playFrom(page, 54.2);
    await waitsAt(page, 1);
    await page.click('.film-stop:not([hidden]) [data-act="again"]');
    await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 99) < 50);
    expect((await now(page)).paused).toBe(false);
    await playFrom(page, 54.2);
    await waitsAt(page, 1);
    // Moving away while it waits puts the question away.
    await page.$eval('video', (video) => (video.currentTime = 100));
    await page.waitForFunction(() => document.querySelectorAll('.film-stop:not([hidden])').length === 0);
    await page.context().close();
  });

  test('not when the box is unticked', { timeout: 60_000 }, async () => {
    const page = await opened();
    await page.uncheck('.film-switch input');
    await playFrom(page, 54.4);
    await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 0) > 55.6);
    expect((await now(page)).paused).toBe(false);
    await page.context().close();
  });
});

test.each([360, 1280])('axe has no objection while it waits, %i pixels wide', { timeout: 60_000 }, async (width) => {
  const page = await opened({ width });
  await playFrom(page, 54.2);
  await waitsAt(page, 1);
  expect(await axeObjects(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  await page.context().close();
});

test('the chapters are the stops, and end where the film ends', async () => {
  const page = await opened();
  const chapters = await page.evaluate(async () => {
    const track = [...(document.querySelector('video')?.textTracks ?? [])].find((each) => each.kind === 'chapters');
    if (!track) return [];
    track.mode = 'hidden';
    for (let tries = 0; tries < 50 && (track.cues?.length ?? 0) === 0; tries++) await new Promise((done) => setTimeout(done, 100));
    return [...(track.cues ?? [])].map((cue) => [cue.startTime, (cue as VTTCue).text.slice(0, 6)] as const);
  });
  expect(chapters.map(([at]) => at)).toEqual(await stopsOf(page));
  expect(chapters.map(([, text]) => text)).toEqual(['Stop 1', 'Stop 2', 'Stop 3', 'Stop 4', 'Stop 5', 'Stop 6', 'Stop 7']);
  await page.context().close();
});

test('nothing plays by itself, and without scripts the times and the text to read along are there, and no control that does nothing', async () => {
  const page = await opened({ javaScriptEnabled: false });
  expect(await page.$$eval('video[autoplay]', (films) => films.length)).toBe(0);
  expect(await page.isVisible('.film-switch')).toBe(false);
  expect(await page.$$eval('.film-times li', (items) => items.length)).toBe(7);
  expect(await page.$$eval('.transcript-stop', (items) => items.length)).toBe(7);
  expect(await page.textContent('.transcript')).toContain('And she kicked a pebble.');
  await page.context().close();
});
