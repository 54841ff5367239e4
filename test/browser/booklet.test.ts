/** A whole booklet as a child would make it: by touch on a phone, and with the keys alone; axe looks at every step. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { axe, begin, bookletPage, chooseWay, kept, onDevice, opened, scribble, turnTo } from './booklet-page.ts';

const here = siteInBrowser();

/** Text boxes cut off, or targets smaller than a finger, on the page as it stands. Source: WCAG 2.2, 1.4.10 and 2.5.5. */
async function tooSmallOrCutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    if (document.documentElement.scrollWidth > innerWidth) faults.push(`the page is ${String(document.documentElement.scrollWidth)} wide`);
    for (const each of document.querySelectorAll<HTMLElement>('main button, main summary, main textarea, main label.choice, main .tick')) {
      const box = each.getBoundingClientRect();
      if (box.width > 0 && (box.height < 44 || box.width < 44)) faults.push(`${each.textContent.trim().slice(0, 30)}: ${String(Math.round(box.width))} by ${String(Math.round(box.height))}`);
    }
    return faults;
  });
}

test('by touch, on a phone: every stop in another way, stars, and the page of answers', async () => {
  const context = await here.browser.newContext({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2, reducedMotion: 'reduce' });
  const { page, faults } = await bookletPage(context, here.server.address);
  const look = async (where: string) => {
    await axe(page, where);
    expect(await tooSmallOrCutOff(page), where).toEqual([]);
    expect(await page.locator('h1:visible').count(), where).toBe(1);
  };
  await page.locator('.main-button').waitFor();
  expect(await onDevice(page), 'nothing is kept before somebody acts').toEqual({ databases: [], entries: [], texts: [] });
  await look('the cover');
  await page.locator('label.choice', { hasText: 'leaves' }).tap();
  await page.locator('label.choice', { hasText: 'green' }).tap();
  await page.locator('.main-button').tap();
  await opened(page);
  await look('the first stop');

  // Stop 1: a grown-up writes down what was said.
  await page.getByLabel('A grown-up can write down what you say').fill('They will make a big light.');
  await page.locator('.turn-on').tap();

  // Stop 2: a frame put in, the blank written over, a word of the bank, the look that asks.
  const frame = page.locator('.is-open .frame-buttons button').first();
  expect(await frame.evaluate((each) => each.textContent)).toContain('Joss feels');
  await frame.tap();
  const field = page.locator('.is-open textarea').first();
  expect(await field.inputValue()).toBe('Joss feels ___.');
  await page.keyboard.type('frightened');
  expect(await field.inputValue()).toBe('Joss feels frightened.');
  await page.locator('.is-open .quiet-look summary').tap();
  await look('writing');
  await chooseWay(page, 'feeling');
  await page.locator('.is-open .feeling-word', { hasText: 'terrified' }).tap();
  await look('feeling words');
  await page.locator('.turn-on').tap();

  // Stop 3: passed, and answered after all, and passed again.
  await chooseWay(page, 'pass');
  await page.getByRole('button', { name: 'I pass on this one' }).tap();
  await page.getByRole('button', { name: 'Answer after all' }).tap();
  await page.getByRole('button', { name: 'I pass on this one' }).tap();
  await look('passing');
  await page.locator('.turn-on').tap();

  // Stop 4: drawn with a finger, a face set down with a tap, told about.
  await page.locator('.is-open canvas').waitFor();
  const paper = page.locator('.is-open canvas');
  await paper.scrollIntoViewIfNeeded();
  const box = await paper.boundingBox();
  if (!box) throw new Error('no paper');
  const finger = await context.newCDPSession(page);
  const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number, y: number) => {
    await finger.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: box.x + x, y: box.y + y }] });
  };
  const scrolled = await page.evaluate(() => scrollY);
  await touch('touchStart', 30, 40);
  for (let step = 1; step < 20; step++) await touch('touchMove', 30 + step * 10, 40 + step * 5);
  await touch('touchEnd', 0, 0);
  expect(await page.evaluate(() => scrollY), 'the page does not move under a drawing finger').toBe(scrolled);
  expect(box.height, 'a paper of at most 80 % of a small screen').toBeLessThanOrEqual(0.8 * 640);
  // A browser takes a tap right after a quick stroke for the end of it; a child needs longer than that to find the next thing.
  await page.waitForTimeout(1500);
  await page.locator('.is-open .set-down summary').tap();
  await page.locator('.is-open .things .choice', { hasText: 'a face' }).tap();
  await page.locator('.is-open .features .choice', { hasText: 'corners down' }).tap();
  await paper.tap({ position: { x: 200, y: 60 } });
  await page.getByLabel('Tell about your drawing').fill('Me on the bus. I was scared.');
  expect(await paper.getAttribute('aria-label')).toBe('Your drawing paper. Me on the bus. I was scared.');
  await look('drawing');
  await page.locator('.turn-on').tap();

  // Stop 5: acted.
  await page.getByLabel('What did you do?').fill('I turned it.');
  await look('acting');
  await turnTo(page, 'stop-window-to-lamp');
  await page.locator('.turn-on').tap();

  // Stars: real radio buttons with words. Their part of the script comes when they are turned to.
  await page.locator('.star-choices input[type=radio]').first().waitFor({ state: 'attached' });
  expect(await page.locator('.star-choices input[type=radio]').count()).toBe(5);
  await page.locator('.star-choices label', { hasText: 'I liked it very much' }).tap();
  await page.getByLabel('And because').fill('of the gull');
  await look('stars');
  await page.locator('.turn-on').tap();

  // One of a few books: the first choice, then the one that could wait, which is never the same.
  await page.locator('.is-open label', { hasText: 'Tomato Weather' }).tap();
  expect(await page.getByRole('group', { name: 'Which one could wait until spring?' }).locator('.choice').allTextContents()).toEqual(['The Lamp on the Jetty', 'The Cloud Keeper']);
  await page.getByRole('group', { name: 'Which one could wait until spring?' }).getByText('The Cloud Keeper').tap();
  await look('one of a few books');
  await page.locator('.turn-on').tap();
  await page.locator('.hand-over').waitFor();
  await look('the page of answers');
  await kept(page);

  const { entries } = await onDevice(page);
  const byStop = Object.fromEntries(entries.map(({ to, value }) => [`${to} ${value.kind}`, value]));
  expect(byStop).toMatchObject({
    'best of chosen': { best: 'Tomato Weather', last: 'The Cloud Keeper', of: ['The Lamp on the Jetty', 'Tomato Weather', 'The Cloud Keeper'] },
    'not-home said': { text: 'They will make a big light.' },
    'see-the-end written': { text: 'Joss feels frightened.', frames: ['Joss feels ___.'] },
    'see-the-end feeling': { word: 'terrified', strength: 3, family: 'afraid' },
    'next-plank passed': {},
    'still-walking drawing': {
      about: 'Me on the bus. I was scared.',
      marks: [
        { do: 'line', width: 24 },
        { do: 'face', mouth: 'down' },
      ],
    },
    'heavy-handle acted': { text: 'I turned it.' },
    'whole book stars': { stars: 4, of: 5, words: 'I liked it very much' },
    'whole book because': { text: 'of the gull' },
  });
  expect(Object.keys(byStop)).toHaveLength(9);
  expect(entries.every(({ of }) => of === 'the-lamp-on-the-jetty en leaves green')).toBe(true);
  expect(page.url(), 'nothing of an answer in the address').toMatch(/booklet\/#my-page$/);
  expect(faults).toEqual([]);
  await context.close();
});

test('with the keys alone: choose, write, draw without a line, rate, save, erase', async () => {
  const context = await here.browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce', acceptDownloads: true });
  const { page, faults } = await bookletPage(context, here.server.address);
  await page.locator('.main-button').waitFor();
  const press = (key: string) => page.keyboard.press(key);
  /** Tabs until the focus is on what the test looks for. */
  const tabTo = async (selector: string) => {
    for (let step = 0; step < 150; step++) {
      await press('Tab');
      if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
    }
    throw new Error(`The Tab key never came to ${selector}`);
  };
  await tabTo('input[name=pattern]');
  await press('ArrowDown');
  await press('ArrowDown');
  await tabTo('.main-button');
  await press('Enter');
  await opened(page);
  expect(await page.evaluate(() => document.activeElement?.className), 'the focus is on the new page').toBe('ask');

  await tabTo('.turn-on');
  await press('Enter');
  await tabTo('.is-open .frame-buttons button');
  await press('Enter');
  await page.keyboard.type('cold');
  expect(await page.locator('.is-open textarea').inputValue()).toBe('Joss feels cold.');
  await press('Control+z');
  await press('Control+z');
  expect(await page.locator('.is-open textarea').inputValue(), 'Ctrl+Z takes a frame back').toBe('');
  await page.keyboard.type('Joss is cold.');

  // A drawing without a pointer: a thing, a place, set down, moved, taken back.
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  const pixels = () => page.locator('.is-open canvas').evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
  /** What the paper looks like once it looks otherwise than before; a screen needs a moment to draw. */
  const pixelsAfter = async (before: string) => {
    await page.waitForFunction((old) => document.querySelector<HTMLCanvasElement>('.is-open canvas')?.toDataURL() !== old, before, { timeout: 20_000 });
    return pixels();
  };
  const blank = await pixels();
  await tabTo('.is-open .set-down summary');
  await press('Enter');
  await tabTo('.is-open .things input');
  await press('Space');
  await tabTo('.is-open .set-down .page-button');
  await press('Enter');
  const face = await pixelsAfter(blank);
  await tabTo('.is-open .moves button');
  await press('Enter');
  const moved = await pixelsAfter(face);
  expect(moved).not.toBe(face);
  await axe(page, 'drawing without lines');
  for (let step = 0; step < 2; step++) {
    await page.locator('.is-open .drawing-desk .button-row button').first().focus();
    await press('Enter');
  }
  expect(await pixels(), 'Undo takes both steps back').toBe(blank);
  await page.locator('.is-open .drawing-desk .button-row button').nth(1).focus();
  await press('Enter');
  expect(await pixels(), 'and they can be done again').toBe(face);

  // No single letter does anything by itself: WCAG 2.2, 2.1.4.
  await kept(page);
  await page.locator('.is-open h2').focus();
  const before = await page.locator('main').innerHTML();
  for (const key of 'abcdefghijklmnopqrstuvwxyz0123456789') await press(key);
  expect(await page.locator('main').innerHTML()).toBe(before);

  await turnTo(page, 'rating');
  await page.locator('.star-choices input').first().waitFor({ state: 'attached' });
  await tabTo('.star-choices input');
  await press('Space');
  await tabTo('.turn-on');
  await press('Enter');
  await page.locator('.is-open .asked-above input').first().waitFor({ state: 'attached' });
  await tabTo('.asked-above input');
  await press('Space');
  await press('ArrowDown');
  expect(await page.locator('.asked-above input:checked').inputValue()).toBe('Tomato Weather');
  await tabTo('.turn-on');
  await press('Enter');
  await page.locator('.hand-over').waitFor();
  await kept(page);
  await tabTo('.hand-over .page-button');
  const download = page.waitForEvent('download');
  await press('Enter');
  expect((await download).suggestedFilename()).toBe('the-lamp-on-the-jetty-en-red-stitches.booklet.html');

  // Erasing asks first; Escape keeps, and the focus comes back.
  await turnTo(page, 'cover');
  await tabTo('.grown-up summary');
  await press('Enter');
  await tabTo('.grown-up button');
  await press('Enter');
  expect(await page.evaluate(() => document.activeElement?.textContent), 'the focus begins on what keeps').toBe('Keep it');
  await axe(page, 'the question before erasing');
  await press('Escape');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Erase this booklet');
  expect((await onDevice(page)).entries.length).toBeGreaterThan(0);
  await press('Enter');
  await press('Tab');
  await press('Enter');
  await page.locator('.main-button').waitFor();
  await expect.poll(() => onDevice(page)).toEqual({ databases: [], entries: [], texts: [] });
  expect(await page.evaluate(() => document.activeElement === document.body), 'the focus is never lost').toBe(false);
  expect(faults).toEqual([]);
  await context.close();
});

test('first the whole story: one page more, and no stop to read to', async () => {
  const context = await here.browser.newContext({ viewport: { width: 360, height: 640 } });
  const { page, faults } = await bookletPage(context, here.server.address, 'es/packs/tomato-weather/booklet/');
  await page.locator('.main-button').waitFor();
  await page.locator('input[name=flow][value=end]').check();
  await page.locator('.main-button').click();
  await page.getByRole('heading', { name: 'Primero, el cuento entero' }).waitFor();
  await axe(page, 'read first');
  await page.getByRole('button', { name: 'Se acabó el cuento' }).click();
  expect(await page.locator('.read-to:visible').count()).toBe(0);
  await axe(page, 'a Spanish stop');
  expect(faults).toEqual([]);
  await context.close();
});

test('dark, at 320 pixels, and in forced colours: nothing that axe objects to, no sideways scroll, the chosen one still shows', async () => {
  const context = await here.browser.newContext({ viewport: { width: 320, height: 640 }, colorScheme: 'dark', reducedMotion: 'reduce' });
  const { page } = await bookletPage(context, here.server.address);
  await begin(page);
  for (const name of ['cover', 'stop-see-the-end', 'stop-still-walking', 'rating', 'my-page']) {
    await turnTo(page, name);
    if (name === 'stop-see-the-end') await chooseWay(page, 'feeling');
    if (name === 'stop-still-walking') {
      await page.locator('.is-open canvas').waitFor();
      await scribble(page, 1);
      await page.locator('.is-open .set-down summary').click();
    }
    await axe(page, `dark ${name}`);
    expect(await tooSmallOrCutOff(page), name).toEqual([]);
  }
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'light' });
  await turnTo(page, 'rating');
  const shot = async () => (await page.locator('.star-choices label').nth(1).screenshot()).toString('base64');
  const plain = await shot();
  await page.locator('.star-choices input').nth(1).check();
  expect(await shot()).not.toBe(plain);
  await context.close();
});

test('without a script, or with one that does not come, the page is the booklet for paper and nothing on it is dead', async () => {
  for (const options of [{ javaScriptEnabled: false }, {}]) {
    const context = await here.browser.newContext({ viewport: { width: 360, height: 640 }, ...options });
    const page = await context.newPage();
    await page.route(/\.js$/, (route) => route.abort());
    await page.goto(`${here.server.address}packs/the-lamp-on-the-jetty/booklet/`);
    expect(await page.locator('main button:visible, main input:visible, main textarea:visible, main canvas').count()).toBe(0);
    expect(await page.locator('.sheet:visible').count()).toBe(7);
    expect(await page.locator('.ruling:visible').count()).toBeGreaterThan(0);
    await context.close();
  }
});
