/**
 * The lesson page at work, in a browser: the sheet that is chosen, the lesson followed step by step with the keyboard alone,
 * without a network, and the page without scripts. The numbers are held against the same reckoning that the command uses.
 */
import { readFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { choicesFrom } from '../../src/outputs/lesson-choices.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { sheetOf } from '../../src/outputs/lesson-sheet.ts';
import { axeObjects } from './axe.ts';
import { siteInBrowser } from './site-in-browser.ts';
import { builtSite } from './site.ts';

const site = await builtSite();
const path = 'packs/the-lamp-on-the-jetty/lesson/';
const here = siteInBrowser();

const monday = new Date('2026-11-30T09:05:00');

async function open(query: string, options: Parameters<Browser['newContext']>[0] = {}): Promise<{ page: Page; context: BrowserContext; faults: string[]; requests: string[] }> {
  const context = await here.browser.newContext({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce', timezoneId: 'UTC', ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(error.message));
  if (options.javaScriptEnabled !== false) await page.clock.install({ time: monday });
  // Letters come whenever a page first shows one of theirs; what was fetched once is asked of the browser's own memory.
  const known = new Set<string>();
  page.on('request', (request) => {
    if (!known.has(request.url()) && !request.url().endsWith('.woff2')) requests.push(request.url());
    known.add(request.url());
  });
  await page.goto(here.server.address + path + query, { waitUntil: 'load' });
  requests.length = 0;
  return { page, context, faults, requests };
}

/** The page's own data, and from it what the sheet should show. */
async function expected(page: Page, query: string) {
  const data = JSON.parse((await page.locator('#lesson-data').textContent()) ?? '') as LessonData;
  const sheet = sheetOf(data, choicesFrom(query, data));
  return { sheet, stops: sheet.stops.map(({ id }) => id), total: Math.round(sheet.lesson.total) };
}

const shownStops = (page: Page) => page.locator('section.run [data-stop]').evaluateAll((stops) => stops.map((stop) => (stop as HTMLElement).dataset['stop']));
const shownTotal = async (page: Page) => {
  const [minutes = '', seconds = ''] = ((await page.locator('section.minutes tfoot td').textContent()) ?? '').split(':');
  return Number(minutes) * 60 + Number(seconds);
};

/** Presses Tab until the focus is on an element that the question holds for. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let press = 0; press < 120; press++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((wanted) => (document.activeElement?.textContent === wanted && document.activeElement.tagName === 'BUTTON') || document.activeElement?.id === wanted, name)) return;
  }
  throw new Error(`"${name}" cannot be reached with Tab`);
}

describe('the sheet', () => {
  test.each(['', '?minutes=12', '?minutes=9', '?start=9.05&minutes=25&reading=2', '?reading=3&with=group&pace=110', '?with=child', '?minutes=8&ends=short', '?openings=1-6&minutes=10'])(
    'for "%s" shows the stops and the seconds that the reckoning gives',
    async (query) => {
      const { page, context, faults, requests } = await open(query);
      const { stops, total, sheet } = await expected(page, query);
      expect(await shownStops(page)).toEqual(stops);
      expect(await shownTotal(page)).toBe(total);
      expect(await page.locator('section.rest [data-stop]').count()).toBe(sheet.rest.length);
      expect([faults, requests]).toEqual([[], []]);
      await context.close();
    },
  );

  test('a start, twelve minutes, another reading and a small group are chosen with the keyboard, stand in the address, and a reload gives the same', async () => {
    const { page, context, faults, requests } = await open('');
    const field = async (label: string) => tabTo(page, (await page.getByLabel(label, { exact: true }).getAttribute('id')) ?? '');
    await field('Begins at');
    await page.keyboard.type('0905AM');
    await field('Minutes');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('12');
    await field('Reading');
    await page.keyboard.press('ArrowDown');
    await field('With');
    await page.keyboard.press('ArrowDown');
    expect(new URL(page.url()).search).toBe('?start=9.05&minutes=12&reading=2&with=group');
    const { stops } = await expected(page, '?start=9.05&minutes=12&reading=2&with=group');
    expect(await shownStops(page)).toEqual(stops);
    expect(await page.locator('section.run .clock').first().textContent()).toBe('9:05');
    expect(await axeObjects(page)).toEqual([]);
    // The note about the saved copy comes when the copy is there, which is no part of the sheet.
    const texts = () => page.locator('main > :not(.offline-note)').allInnerTexts();
    const before = await texts();
    await page.reload();
    expect(await texts()).toEqual(before);
    expect(requests.filter((url) => !url.startsWith(here.server.address))).toEqual([]);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('a number that is none leaves the sheet as it is and says what the field takes', async () => {
    const { page, context } = await open('');
    const before = await shownStops(page);
    await page.getByLabel('Minutes', { exact: true }).fill('500');
    expect(await page.getByText('Write a number from 3 to 120.').isVisible()).toBe(true);
    expect([await shownStops(page), new URL(page.url()).search]).toEqual([before, '']);
    await context.close();
  });

  test('what cannot fit says so, and what would help can be taken', async () => {
    const { page, context } = await open('?minutes=8');
    expect(await page.locator('.fit').textContent()).toContain('It does not fit');
    const remedies = page.locator('.remedies button');
    expect(await remedies.count()).toBeGreaterThan(0);
    const name = (await remedies.first().textContent()) ?? '';
    await remedies.first().focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('.fit').textContent(), name).not.toContain('It does not fit');
    expect(await page.locator('.narrowed').isVisible()).toBe(true);
    await context.close();
  });

  test('one practice reading sets the pace', async () => {
    const { page, context } = await open('');
    await page.locator('.practice summary').click();
    await page.getByLabel('My reading took (minutes:seconds)').fill('6:30');
    await page.keyboard.press('Enter');
    const pace = /about (\d+) words/.exec((await page.locator('.practice [role="status"]').textContent()) ?? '')?.[1];
    expect(new URL(page.url()).search).toBe(`?pace=${pace ?? 'none'}`);
    await context.close();
  });

  test('single letters do nothing', async () => {
    const { page, context } = await open('');
    const sections = () => page.locator('main > section').evaluateAll((all) => all.map((each) => each.innerHTML).join('').length);
    const before = await sections();
    for (const key of 'abcdefghijklmnopqrstuvwxyz0123456789') await page.keyboard.press(key);
    expect(await sections()).toBe(before);
    expect(await page.locator('dialog').count()).toBe(0);
    await context.close();
  });
});

describe('without scripts', () => {
  test("the page is the lesson for the pack's own minutes, with every stop on it and no control that does nothing", async () => {
    const { page, context } = await open('', { javaScriptEnabled: false });
    const html = await readFile(join(site, path, 'index.html'), 'utf8');
    const data = JSON.parse(/id="lesson-data">(.*?)<\/script>/.exec(html)?.[1] ?? '') as LessonData;
    const sheet = sheetOf(data, choicesFrom('', data));
    expect(await page.locator('section.run [data-stop]').count()).toBe(sheet.stops.length);
    expect(await page.locator('[data-stop]').count()).toBe(data.stops.length);
    expect(await page.locator('main :is(button, input, select):visible').count()).toBe(0);
    await context.close();
  });
});

describe('followed step by step', () => {
  test('with the keyboard alone, with no network, from the opening to the end; nothing is kept before it is asked for', async () => {
    const { page, context, faults, requests } = await open('?start=9.05&minutes=12');
    const { sheet } = await expected(page, '?start=9.05&minutes=12');
    const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
    const heading = () => page.locator('#follow-step').innerText();
    const kept = () => page.evaluate(() => localStorage.length + sessionStorage.length);
    await tabTo(page, 'Follow along');
    await page.keyboard.press('Enter');
    // What is needed has come when it is opened; from here on there is no network.
    await page.waitForFunction(() => [...document.querySelectorAll<HTMLImageElement>('section.run img')].every((picture) => picture.complete));
    await context.setOffline(true);
    requests.length = 0;
    expect(await focused()).toBe('follow-step');
    expect(await axeObjects(page)).toEqual([]);
    await tabTo(page, 'Begin');
    await page.keyboard.press('Enter');
    expect([await heading(), await focused()]).toEqual(['Opening', 'follow-step']);
    expect(await page.locator('.pace [role="status"]').innerText()).toContain('On time');

    const steps = sheet.stops.length + 2;
    for (let step = 1; step < steps; step++) {
      await page.clock.runFor(step === 2 ? 200_000 : 20_000);
      await page.keyboard.press(step % 2 === 0 ? 'ArrowRight' : ' ');
      expect(await focused()).toBe('follow-step');
      // A picture that is in the browser's memory needs a moment as well.
      await expect.poll(() => page.locator('dialog img').evaluateAll((all) => all.filter((each) => (each as HTMLImageElement).naturalWidth === 0).length), { message: 'a picture is missing' }).toBe(0);
      expect(await axeObjects(page)).toEqual([]);
    }
    expect(await heading()).toBe('Closing');
    await page.keyboard.press('ArrowLeft');
    expect(await heading()).not.toBe('Closing');
    await page.keyboard.press('ArrowRight');
    await tabTo(page, 'Finish');
    await page.keyboard.press('Enter');
    expect(await heading()).toBe('The lesson is over');
    expect(await axeObjects(page)).toEqual([]);
    expect(await kept()).toBe(0);

    await tabTo(page, 'Keep these times on this device');
    await page.keyboard.press('Enter');
    expect(await page.getByText('Kept on this device.', { exact: true }).isVisible()).toBe(true);
    expect(await kept()).toBe(1);
    expect(await page.evaluate(() => localStorage.getItem(localStorage.key(0) ?? ''))).toMatch(
      /^\[\{"version":1,"pack":"the-lamp-on-the-jetty","language":"en","day":"2026-11-30","reading":1,"minutes":12,"parts":\[/,
    );
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Follow along');

    await page.getByRole('button', { name: 'Erase the lessons kept here' }).click();
    await page.getByRole('button', { name: 'Erase them now' }).click();
    expect(await kept()).toBe(0);
    expect([faults, requests]).toEqual([[], []]);
    await context.close();
  });

  test('behind by minutes, it says what to leave out, and leaving it out is one press', async () => {
    const { page, context } = await open('?minutes=12');
    await page.getByRole('button', { name: 'Follow along' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.clock.runFor(5 * 60_000);
    const line = page.locator('.pace [role="status"]');
    expect(await line.innerText()).toMatch(/^About four minutes behind: leave out stops? \d/);
    const all = await page.locator('.follow-head span').innerText();
    await page.locator('.pace button').click();
    expect(await line.innerText()).not.toContain('leave out');
    expect(await page.locator('.follow-head span').innerText()).not.toBe(all);
    await context.close();
  });

  test('counts who has spoken as two numbers', async () => {
    const { page, context } = await open('');
    await page.getByRole('button', { name: 'Follow along' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByLabel('Children in the room').fill('3');
    const told = page.locator('.tally [role="status"]');
    for (const words of ['One has spoken, 2 not yet', '2 have spoken, 1 not yet', 'Everybody has spoken']) {
      await page.getByRole('button', { name: 'One more has spoken' }).click();
      expect(await told.innerText()).toBe(words);
    }
    await page.getByRole('button', { name: 'Take one back' }).click();
    expect(await told.innerText()).toBe('2 have spoken, 1 not yet');
    await context.close();
  });

  test('closed by mistake, it goes on where it was', async () => {
    const { page, context } = await open('');
    await page.getByRole('button', { name: 'Follow along' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.keyboard.press('ArrowRight');
    const step = await page.locator('#follow-step').innerText();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Go on with the lesson' }).click();
    expect(await page.locator('#follow-step').innerText()).toBe(step);
    await context.close();
  });

  test.each([
    ['a small phone', 320, 640],
    ['a phone on its side', 640, 320],
    ['four times enlarged', 320, 256],
  ])('on %s nothing is cut off and the words are large', async (_, width, height) => {
    const { page, context } = await open('', { viewport: { width, height } });
    await page.getByRole('button', { name: 'Follow along' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.keyboard.press('ArrowRight');
    const measured = await page.evaluate(() => ({
      wide: document.querySelector('.follow-page')?.scrollWidth ?? 0,
      foot: document.querySelector('.follow-foot')?.getBoundingClientRect().height ?? 0,
      letters: parseFloat(getComputedStyle(document.querySelector('.follow .say-words') ?? document.body).fontSize),
      small: [...document.querySelectorAll('.follow button')].filter((button) => button.getBoundingClientRect().height < 44).map((button) => button.textContent),
    }));
    expect(measured.wide).toBeLessThanOrEqual(width);
    expect(measured.foot).toBeLessThanOrEqual(height / 4);
    expect(measured.letters).toBeGreaterThanOrEqual(28);
    expect(measured.small).toEqual([]);
    await context.close();
  });
});

test('the week becomes a calendar file, made in the browser', async () => {
  const { page, context, requests } = await open('?start=9.05');
  await page.getByLabel('First day').fill('2026-11-30');
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the calendar file' }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toBe('the-lamp-on-the-jetty-week.ics');
  const text = await readFile(await download.path(), 'utf8');
  expect(text).toContain('\r\nDTSTART:20261130T090500\r\n');
  expect(requests.filter((url) => !url.startsWith('blob:'))).toEqual([]);
  await context.close();
});

test('the script weighs at most 25 kB with every part that it loads, compressed', async () => {
  const html = await readFile(join(site, path, 'index.html'), 'utf8');
  const files = new Set([/assets\/lesson-en-\w+\.js/.exec(html)?.[0] ?? '']);
  let weight = 0;
  for (const file of files) {
    const text = await readFile(join(site, file), 'utf8');
    for (const [, part = ''] of text.matchAll(/(?:from|import) ?"\.\/([^"]+)"/g)) files.add(`assets/${part}`);
    weight += gzipSync(text, { level: 9 }).length;
  }
  expect(files.size).toBeGreaterThan(1);
  expect(weight).toBeLessThanOrEqual(25_000);
});
