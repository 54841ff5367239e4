/** What a child did is never lost: the page loaded anew, the window closed, the server gone, storage blocked or full, two windows, sixty drawings. `tab-dies.test.ts` has the tab that dies. */
import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { put, type Booklet, type Entry } from '../../src/core/booklet/booklet.ts';
import { readBooklet } from '../../src/core/booklet/read-booklet.ts';
import { writeBookletFile } from '../../src/core/booklet/write-booklet-file.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { serveBelowRoot } from '../whole-site/site.ts';
import { begin, bookletPage, chooseWay, kept, onDevice, openAgain, pack, scribble, turnTo } from './booklet-page.ts';

const phone = { viewport: { width: 360, height: 640 }, reducedMotion: 'reduce' } as const;
const desk = { viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' } as const;
const here = siteInBrowser();

/** Texts that have been lost by programs before: long, in several scripts, with marks that join, right to left, and what looks like code. */
const marker = ['Ñandú, ¿qué? é vs é', '👩🏽‍🚀👨‍👩‍👧‍👦', 'مرحبا، أنا خائف', '猫が こわがっている', '</script><b>&lt;', `${'long and longer '.repeat(700)}end`].join('\n');

/** What stands in the entries, in an order that does not depend on who wrote when. */
const values = (entries: readonly Entry[]) => entries.map(({ to, value }) => ({ to, value })).sort((a, b) => (`${a.to}${a.value.kind}` < `${b.to}${b.value.kind}` ? -1 : 1));
const written = (page: Page) => page.locator('.is-open textarea').first();
/** Marks of the drawings on the device. */
const marksOf = (entries: readonly Entry[]) => entries.flatMap(({ value }) => (value.kind === 'drawing' ? value.marks : []));
const told = (what: string, ...numbers: readonly unknown[]) => {
  // eslint-disable-next-line no-console -- the counts are to be read
  console.log(`${what}: ${numbers.join(', ')}`);
};

/** A text, a drawing of two lines, a feeling word, stars: four things kept. */
async function answerFour(page: Page): Promise<void> {
  await turnTo(page, 'stop-see-the-end');
  await written(page).fill(marker);
  await chooseWay(page, 'feeling');
  await page.locator('.is-open .feeling-word').first().click();
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  await scribble(page, 1, 8);
  await scribble(page, 2, 8);
  await turnTo(page, 'rating');
  await page.locator('.star-choices label').nth(2).click();
  await kept(page);
}

test('loaded anew, then without a server, then more is added and loaded anew again', async () => {
  const own = await serveBelowRoot(here.site);
  const context = await here.browser.newContext(phone);
  const { page, faults } = await bookletPage(context, own.address);
  await begin(page);
  await answerFour(page);
  const before = (await onDevice(page)).entries;
  expect(before).toHaveLength(4);
  expect(before.find(({ value }) => value.kind === 'written')?.value).toMatchObject({ text: marker });
  // The copy of the book is whole before the server goes.
  await page.waitForSelector('[data-part="kept"]:not([hidden])', { timeout: 20_000, state: 'attached' });
  await page.reload();
  await page.locator('.rating.is-open').waitFor();
  expect(values((await onDevice(page)).entries)).toEqual(values(before));
  await own.close();
  await page.reload();
  await turnTo(page, 'stop-see-the-end');
  await chooseWay(page, 'write');
  expect(await written(page).inputValue()).toBe(marker);
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  await scribble(page, 3);
  await turnTo(page, 'stop-heavy-handle');
  await page.getByLabel('What did you do?').fill('I turned it.');
  await kept(page);
  await page.reload();
  await page.locator('#stop-heavy-handle.is-open').waitFor();
  const after = (await onDevice(page)).entries;
  told('entries before, after without a server; lines drawn', before.length, after.length, marksOf(after).length);
  expect(after).toHaveLength(5);
  expect(marksOf(after)).toHaveLength(3);
  expect(faults).toEqual([]);
  await context.close();
});

/** A browser that refuses its database, or every storage there is. */
async function refusing(context: BrowserContext, what: 'database' | 'everything'): Promise<void> {
  await context.addInitScript((all) => {
    const refuse = () => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    IDBFactory.prototype.open = refuse;
    IDBFactory.prototype.deleteDatabase = refuse;
    if (!all) return;
    for (const name of ['localStorage', 'sessionStorage', 'caches']) Object.defineProperty(window, name, { get: refuse });
    Object.defineProperty(navigator, 'serviceWorker', { get: refuse });
  }, what === 'everything');
}

test('a browser without a database keeps the booklet in its plain storage', async () => {
  const context = await here.browser.newContext({ ...phone, serviceWorkers: 'block' });
  await refusing(context, 'database');
  const { page, faults } = await bookletPage(context, here.server.address);
  await begin(page);
  await answerFour(page);
  await page.reload();
  await turnTo(page, 'stop-see-the-end');
  await chooseWay(page, 'write');
  expect(await written(page).inputValue()).toBe(marker);
  await turnTo(page, 'my-page');
  const answers = await page.locator('.my-answers > li').count();
  told('questions with an answer, from the plain storage', answers);
  expect(answers).toBe(3);
  // Erasing empties this storage too.
  await turnTo(page, 'cover');
  await page.locator('.grown-up summary').click();
  await page.getByRole('button', { name: 'Erase all booklets on this device' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await page.locator('.main-button').waitFor();
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('booklet')))).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
});

test('a browser that lets nothing be kept: the page says so and goes on, and the file holds everything', async () => {
  const context = await here.browser.newContext({ ...desk, serviceWorkers: 'block', acceptDownloads: true });
  await refusing(context, 'everything');
  const { page, faults } = await bookletPage(context, here.server.address);
  await begin(page);
  await turnTo(page, 'stop-see-the-end');
  await written(page).fill(marker);
  await page.locator('.keeping-line.is-failed').waitFor();
  expect(await page.locator('.keeping-line [role=status]').textContent()).toContain('does not let the booklet keep anything');
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  await scribble(page, 1);
  await page.locator('.keeping-line a').click();
  const file = await handedOver(page);
  told('entries in the file of a device that keeps nothing', file.entries.length);
  expect(file.entries.map(({ value }) => value.kind).sort()).toEqual(['drawing', 'written']);
  expect(await page.getByRole('button', { name: 'Print it' }).isVisible()).toBe(true);
  expect(faults).toEqual([]);
  await context.close();
});

/** Saves the file as a person would and reads it. */
async function handedOver(page: Page): Promise<Booklet> {
  await turnTo(page, 'my-page');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  const read = readBooklet(await readFile(await (await download).path(), 'utf8'));
  if (!read.booklet) throw new Error(read.reason);
  return read.booklet;
}

test('a full device: told in words, everything is in the file, and all is kept as soon as there is room', async () => {
  const context = await here.browser.newContext({ ...phone, serviceWorkers: 'block', acceptDownloads: true });
  // The browser remembers for half a minute how much room there was, so the device is small from the beginning.
  const page = await context.newPage();
  const quota = await context.newCDPSession(page);
  await quota.send('Storage.overrideQuotaForOrigin', { origin: new URL(here.server.address).origin, quotaSize: 250_000 });
  const { faults } = await bookletPage(context, here.server.address, pack, page);
  await begin(page);
  await answerFour(page);
  await turnTo(page, 'stop-not-home');
  const said = page.getByLabel('A grown-up can write down what you say');
  await said.fill('wet '.repeat(50_000));
  await page.locator('.keeping-line.is-failed').waitFor();
  expect(await page.locator('.keeping-line [role=status]').textContent()).toContain('no room left on this device');
  expect((await onDevice(page)).entries, 'what was kept before is kept still').toHaveLength(4);
  const file = await handedOver(page);
  expect(file.entries).toHaveLength(5);
  await quota.send('Storage.overrideQuotaForOrigin', { origin: new URL(here.server.address).origin });
  await turnTo(page, 'stop-not-home');
  await said.press('Control+End');
  await said.press('!');
  await kept(page);
  await page.reload();
  await page.locator('#stop-not-home.is-open').waitFor();
  const { entries } = await onDevice(page);
  told('entries when full: on the device, in the file; when there is room', 4, file.entries.length, entries.length);
  expect(entries).toHaveLength(5);
  expect((await said.inputValue()).length).toBe(200_001);
  expect(faults).toEqual([]);
  await context.close();
});

test('two windows at once: each sees what the other keeps, what both wrote is kept twice, and what one erases is closed in the other', async () => {
  const context = await here.browser.newContext(desk);
  const one = await bookletPage(context, here.server.address);
  await begin(one.page, { pattern: 'waves', colour: 'red' });
  const two = await bookletPage(context, here.server.address);
  await openAgain(two.page, 'The red bookmark with waves');
  await turnTo(one.page, 'stop-see-the-end');
  await turnTo(two.page, 'stop-see-the-end');
  // Both write into the same empty field before either has kept anything.
  await Promise.all([written(one.page).fill('From the one.'), written(two.page).fill('From the other.')]);
  await expect.poll(async () => (await onDevice(one.page)).entries.length).toBe(2);
  await expect.poll(() => one.page.locator('.is-open textarea').count()).toBe(2);
  await expect.poll(() => two.page.locator('.is-open textarea').count()).toBe(2);
  // Each goes on at another stop.
  await turnTo(one.page, 'stop-heavy-handle');
  await turnTo(two.page, 'stop-still-walking');
  await two.page.locator('.is-open canvas').waitFor();
  for (let turn = 0; turn < 3; turn++) {
    await one.page.getByLabel('What did you do?').fill(`I turned it ${String(turn)} times.`);
    await scribble(two.page, turn, 8);
  }
  await kept(one.page);
  await kept(two.page);
  const { entries } = await onDevice(one.page);
  told('entries of two windows, lines drawn in one', entries.length, marksOf(entries).length);
  expect(values(entries).map(({ value }) => (value.kind === 'drawing' ? value.marks.length : 'text' in value ? value.text : value.kind))).toEqual(
    expect.arrayContaining(['I turned it 2 times.', 'From the one.', 'From the other.', 3]),
  );
  expect(entries).toHaveLength(4);
  await turnTo(one.page, 'cover');
  await one.page.locator('.grown-up summary').click();
  await one.page.getByRole('button', { name: 'Erase this booklet' }).click();
  await one.page.getByRole('button', { name: 'Erase', exact: true }).click();
  await two.page.getByText('This booklet was erased in another window.').waitFor();
  await expect.poll(() => onDevice(two.page)).toEqual({ databases: [], entries: [], texts: [] });
  expect([...one.faults, ...two.faults]).toEqual([]);
  await context.close();
});

/** A booklet of some drawings, of 24 lines with 30 points each, as a busy child's. */
function withDrawings(booklet: Booklet, number: number): Booklet {
  const stops = booklet.prompts.map(({ of }) => of).filter((of) => of !== 'whole book');
  let made = booklet;
  for (let drawing = 0; drawing < number; drawing++) {
    const marks = Array.from({ length: 24 }, (_, line) => ({
      do: 'line' as const,
      ink: 'blue' as const,
      width: 24,
      points: Array.from({ length: 30 }, (_, point) => [Math.round(600 + 500 * Math.sin(point + line + drawing)), Math.round(450 + 400 * Math.cos(point * line)), 50]).flat(),
    }));
    made = put(made, 'bookofsixty', stops[drawing % stops.length] ?? '', { kind: 'drawing', about: `Drawing ${String(drawing)}`, marks });
  }
  return made;
}

test('sixty drawings: read in, loaded anew, one line more, handed over', async () => {
  const context = await here.browser.newContext({ ...phone, acceptDownloads: true });
  const { page, faults } = await bookletPage(context, here.server.address);
  await begin(page);
  const file = writeBookletFile(withDrawings(await handedOver(page), 60), phrasesFor('en').booklet.file);
  await page.locator('.read-back input[type=file]').setInputFiles({ name: 'sixty.booklet.html', mimeType: 'text/html', buffer: Buffer.from(file) });
  await page.getByText('Read in: 60 answers from the file.').waitFor();
  await kept(page);
  await page.reload();
  await turnTo(page, 'my-page');
  expect(await page.locator('.my-answers svg[viewBox="0 0 1200 900"], .my-answers canvas, .my-answers img').count()).toBe(60);
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').first().waitFor();
  await scribble(page, 1);
  await kept(page);
  await page.reload();
  const { entries } = await onDevice(page);
  const after = await handedOver(page);
  told('drawings on the device, in the file, lines in all; kB of the file', entries.length, after.entries.length, marksOf(entries).length, Math.round(file.length / 1000));
  expect(entries).toHaveLength(60);
  expect(marksOf(entries)).toHaveLength(60 * 24 + 1);
  expect(values(after.entries)).toEqual(expect.arrayContaining(values(entries)));
  expect(faults).toEqual([]);
  await context.close();
});

test('the browser is asked not to clear the booklet away when the first answer is kept, not before, and what it said is told', async () => {
  for (const promised of [true, false]) {
    const context = await here.browser.newContext({ ...phone, serviceWorkers: 'block' });
    await context.addInitScript((answer) => {
      const asked = { persist: 0 };
      Object.assign(window, { asked });
      StorageManager.prototype.persist = () => {
        asked.persist += 1;
        return Promise.resolve(answer);
      };
      StorageManager.prototype.persisted = () => Promise.resolve(answer && asked.persist > 0);
    }, promised);
    const { page } = await bookletPage(context, here.server.address, pack);
    const asked = () => page.evaluate(() => (window as unknown as { asked: { persist: number } }).asked.persist);
    await begin(page);
    expect(await asked()).toBe(0);
    await turnTo(page, 'stop-see-the-end');
    await written(page).fill('She is cold.');
    await kept(page);
    expect(await asked()).toBe(1);
    await written(page).fill('She is cold and wet.');
    await kept(page);
    expect(await asked()).toBe(1);
    await turnTo(page, 'my-page');
    await expect.poll(() => page.locator('.hand-over').textContent()).toContain(promised ? 'promised not to clear' : 'may clear out');
    await context.close();
  }
});
