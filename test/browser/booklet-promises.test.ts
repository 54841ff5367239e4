/** Small promises of the booklet, each looked at by itself: fifty steps back, "I can't tell", the seated way, folded models, saying that something was kept. */
import { expect, test } from 'vitest';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { begin, bookletPage, chooseWay, kept, onDevice, turnTo } from './booklet-page.ts';

const here = siteInBrowser();

test('fifty steps can be taken back, also after the page was opened anew', async () => {
  const context = await here.browser.newContext({ viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', serviceWorkers: 'block' });
  const { page, faults } = await bookletPage(context, here.server.address);
  await begin(page);
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open .set-down summary').click();
  await page.locator('.is-open .things input[value=dot]').check();
  const marks = async () => (await onDevice(page)).entries.flatMap(({ value }) => (value.kind === 'drawing' ? value.marks : [])).length;
  const press = (selector: string) => page.evaluate((button) => document.querySelector<HTMLElement>(`.is-open ${button}`)?.click(), selector);
  for (let each = 0; each < 53; each++) await press('.set-down .page-button');
  await kept(page);
  expect(await marks()).toBe(53);
  await page.reload();
  await page.locator('.is-open canvas').waitFor();
  const undo = page.locator('.is-open .drawing-desk .button-row button').first();
  let steps = 0;
  for (; steps < 60 && (await undo.getAttribute('aria-disabled')) !== 'true'; steps++) await press('.drawing-desk .button-row button');
  // eslint-disable-next-line no-console -- the count is to be read
  console.log(`things set down: 53; steps taken back after the page was opened anew: ${String(steps)}`);
  expect(steps).toBe(50);
  await expect.poll(marks).toBe(3);
  expect(faults).toEqual([]);
  await context.close();
});

test('a word that cannot be found is an answer; models stay folded; acting has a seated way; keeping is said once, after the writing', async () => {
  const context = await here.browser.newContext({ viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', serviceWorkers: 'block' });
  const { page, faults } = await bookletPage(context, here.server.address);
  await begin(page);
  await turnTo(page, 'stop-see-the-end');
  const models = page.locator('.is-open .others-say');
  expect(await models.getAttribute('open')).toBeNull();
  expect(await models.locator('summary').textContent()).toBe('What others might answer: best after your own');
  await chooseWay(page, 'feeling');
  await page.locator('.is-open .feeling-word', { hasText: 'I can’t tell' }).click();
  await kept(page);
  expect((await onDevice(page)).entries.map(({ to, value }) => [to, value.kind])).toEqual([['see-the-end', 'cannot-tell']]);
  expect(await models.locator('summary').textContent()).toBe('What others might answer');
  expect(await models.getAttribute('open'), 'nobody asked').toBeNull();

  await turnTo(page, 'stop-heavy-handle');
  expect(await page.locator('.is-open .seated').textContent()).toMatch(/^Sitting down: ./);
  expect(await page.locator('.is-open .ways input[value=act]').isChecked()).toBe(true);

  // WCAG 2.2, 4.1.3: a status; and at most one a pause. A busy machine may make a pause between two letters, so pauses are counted.
  await page.evaluate(() => {
    const status = document.querySelector('.keeping-line [role=status]');
    const seen: { readonly said: string[]; last: number; pauses: number } = { said: [], last: Infinity, pauses: 1 };
    Object.assign(window, { seen });
    if (status) new MutationObserver(() => status.textContent !== '' && seen.said.push(status.textContent)).observe(status, { childList: true, characterData: true, subtree: true });
    document.addEventListener('input', () => {
      if (performance.now() - seen.last >= 500) seen.pauses += 1;
      seen.last = performance.now();
    });
  });
  const seen = () => page.evaluate(() => (window as unknown as { readonly seen: { readonly said: readonly string[]; readonly pauses: number } }).seen);
  const sentence = 'I turned it with both hands, and it groaned.';
  await page.locator('.is-open textarea').focus();
  for (const letter of sentence) await page.keyboard.type(letter);
  await expect.poll(async () => (await seen()).said.length, { timeout: 20_000 }).toBeGreaterThan(0);
  const { said, pauses } = await seen();
  expect(new Set(said)).toEqual(new Set(['Kept on this device.']));
  expect(said.length).toBeLessThanOrEqual(pauses);
  expect(pauses).toBeLessThan(sentence.length / 2);
  expect(faults).toEqual([]);
  await context.close();
});
