/** The form that makes packs as a newcomer uses it: a whole pack from nothing by mouse, and again with the keys alone; the file goes into a library and is built. */
import { readFileSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Download, Page } from 'playwright-core';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { listAt, textAt, valueAt } from '../../src/browser/maker/words.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { readFrontMatter, type Raw } from '../../src/core/pack/front-matter.ts';
import { secondsOfStop } from '../../src/core/plan/seconds.ts';
import { zipEntries } from '../build/inside-files.ts';
import { buildSmall, smallLibrary, soundPack, type SmallLibrary } from '../build/small-library.ts';
import { axeObjects } from '../whole-site/axe.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { byKeys, byMouse, makePack, type Hand } from './maker/hand.ts';

const settings = 'name: The test shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: Each names its own.\n';
/** A pack of six stops, as it is to be typed. */
const wanted = (await readFile('test/packs/sound/the-kettle-band/pack.md', 'utf8')).replace(
  /\nwords:\n/,
  `
  - id: whistle
    at: { opening: 11, cue: and then the kettle sang }
    readings: [2]
    ask: Tell your partner how the kettle got its song back.
    kind: retell
    depth: 2
    answer: partner
    or: draw
    frames:
      - First ___, and then ___.
    models:
      - text: First she tapped, and then it sang.
        shows: [whole sentence]
      - text: First it was quiet, and then the street woke it because the noise was so big.
        shows: [whole sentence, gives a reason]
words:
`,
);

let library: SmallLibrary;
const here = siteInBrowser({
  site: async () => {
    library = await smallLibrary({ 'library.yaml': settings, 'packs/the-wheelbarrow-goes-home/pack.md': await soundPack() });
    await buildSmall(library);
    return library.site;
  },
});

async function opened(width = 1280): Promise<{ page: Page; faults: string[] }> {
  const context = await here.browser.newContext({ viewport: { width, height: 900 }, reducedMotion: 'reduce', acceptDownloads: true });
  const page = await context.newPage();
  const faults: string[] = [];
  // The page in the preview's frame runs no script on purpose; what a test asks of it counts as one, and the browser says so.
  page.on('console', (message) => message.type() === 'error' && !/about:srcdoc.*allow-scripts/.test(message.text()) && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => !/^(?:blob|data):/.test(request.url()) && !request.url().startsWith(here.server.address) && faults.push(`asked ${request.url()}`));
  page.on('request', (request) => request.method() !== 'GET' && faults.push(`sent to ${request.url()}`));
  await page.goto(`${here.server.address}make/`);
  await page.locator('.ways-to-begin').waitFor();
  return { page, faults };
}
const rawOf = (text: string): Raw => readFrontMatter(text, 'pack.md').value?.raw ?? {};
const plain = (raw: Raw | undefined): unknown => JSON.parse(JSON.stringify(raw));
const databases = (page: Page) => page.evaluate(async () => (await indexedDB.databases()).map((each) => each.name));
async function bytesOf(download: Download): Promise<Buffer> {
  return readFile(await download.path());
}
async function saved(page: Page, button: RegExp): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).first().click()]);
  return bytesOf(download);
}

/** Drops a zip into the packs of a new library, as whoever runs one would, and builds it. */
async function builtFrom(zip: Buffer): Promise<Awaited<ReturnType<typeof readWholeLibrary>>> {
  const other = await smallLibrary({ 'library.yaml': settings });
  for (const [name, bytes] of zipEntries(zip)) {
    const file = join(other.content, 'packs', name);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, bytes);
  }
  const built = await buildSmall(other, true);
  expect(built.findings).toEqual([]);
  expect(built.published).toBe(1);
  return readWholeLibrary(other.content);
}

/** What was typed stands in the file, and the form's minutes are those of the build, to the last digit. */
async function asWanted(zip: Buffer, shown: readonly number[]): Promise<void> {
  const { told } = await builtFrom(zip);
  const pack = told[0]?.pack;
  if (!pack) throw new Error('the pack was not read');
  const seconds = pack.plan.left.reduce((sum, stop) => sum + secondsOfStop(stop, 'class', pack.plan.durations).total, pack.plan.lesson.total);
  expect(shown).toEqual([seconds, pack.plan.lesson.total]);
  const file = zipEntries(zip).find(([name]) => name.endsWith('pack.md'));
  const raw = rawOf(file?.[1].toString('utf8') ?? '');
  const others = (of: Raw) => ({ ...(plain(of) as object), stops: listAt(of, ['stops']).map((_, index) => ({ ...(plain(valueAt(of, ['stops', index])) as object), id: '' })), pictures: undefined });
  expect(others(raw)).toEqual(others(rawOf(wanted)));
}

async function minutesShown(page: Page): Promise<readonly number[]> {
  await page.locator('.workbook button').nth(2).click();
  await page.waitForTimeout(1500);
  await page.locator('.minutes-box [data-seconds]').first().waitFor();
  return page.$$eval('.minutes-box [data-seconds]', (all) => all.map((each) => Number((each as HTMLElement).dataset['seconds'])));
}

/** The last chapter says that the check has nothing to say; where it has, the sentences are what fails. */
async function nothingToSay(page: Page): Promise<void> {
  await page.waitForTimeout(1500);
  expect(await page.locator('.before-you-share li').allInnerTexts()).toEqual([]);
  await page.locator('.ready').waitFor();
}

test('by mouse: six stops from nothing, and a photo that loses what it hides', async () => {
  const { page, faults } = await opened();
  expect(await databases(page), 'nothing is kept before somebody acts').toEqual([]);
  const hand: Hand = byMouse(page);
  await hand.press('Begin');
  await makePack(page, hand, rawOf(wanted), wanted.slice(wanted.indexOf('\n## ')));
  // A photo on its side, with its place in it.
  const photo = await sharp({ create: { width: 2400, height: 1200, channels: 3, background: '#c9b48a' } })
    .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  await page.locator('.workbook button').nth(7).click();
  await page.setInputFiles('#add-pictures', { name: 'Kettle on the Stove.JPG', mimeType: 'image/jpeg', buffer: photo });
  await page.locator('#field-pictures-0-alt').waitFor();
  await page.waitForFunction(() => document.activeElement?.id === 'field-pictures-0-alt');
  await page.keyboard.insertText('A round kettle with a dented lid stands on a small stove.');
  await page.locator('#field-pictures-0-credit').fill('The test shelf');
  await page.locator('#field-pictures-0-rights').fill('Drawn for this test, CC0 1.0');
  const shown = await minutesShown(page);
  await page.locator('.workbook button').nth(9).click();
  await nothingToSay(page);
  const zip = await saved(page, /\.zip/);
  const picture = zipEntries(zip).find(([name]) => name === 'the-kettle-band/pictures/kettle-on-the-stove.jpg');
  const { width, height, exif, orientation } = await sharp(picture?.[1]).metadata();
  expect({ width, height, exif, orientation }).toEqual({ width: 800, height: 1600, exif: undefined, orientation: undefined });
  await asWanted(zip, shown);
  expect(faults).toEqual([]);
  await page.context().close();
}, 240_000);

test('with the keys alone: six stops from nothing, and axe looks at every chapter', async () => {
  const { page, faults } = await opened();
  const hand: Hand = byKeys(page);
  expect(await axeObjects(page)).toEqual([]);
  await hand.press('Begin');
  await makePack(page, hand, rawOf(wanted), wanted.slice(wanted.indexOf('\n## ')), async (chapter) => {
    expect(await axeObjects(page), `chapter ${chapter}`).toEqual([]);
  });
  const shown = await minutesShown(page);
  await page.locator('.workbook button').nth(9).click();
  await nothingToSay(page);
  await asWanted(await saved(page, /\.zip/), shown);
  expect(faults).toEqual([]);
  await page.context().close();
}, 400_000);

describe('a file that somebody wrote by hand', () => {
  const file = 'content/packs/the-lamp-on-the-jetty/pack.md';
  const byHand = readFileSync(file, 'utf8').replace('\nfor:', '\n# my own remark\nmood board: on the blue wall\nfor:');
  test('is opened and saved without a byte changed; a change is kept, comes back after loading again, and can be taken back', async () => {
    const { page, faults } = await opened();
    await page.setInputFiles('#open-file', { name: 'pack.md', mimeType: 'text/markdown', buffer: Buffer.from(byHand) });
    await page.locator('#field-title').waitFor();
    await page.waitForFunction(() => (document.querySelector('#field-title') as HTMLInputElement).value !== '');
    expect((await saved(page, /^Take the file/)).toString('utf8')).toBe(byHand);
    expect(await databases(page), 'looking keeps nothing').toEqual([]);
    await page.fill('#field-book-author', 'Somebody Else');
    await page.locator('.desk-kept.is-kept').waitFor();
    expect((await saved(page, /^Take the file/)).toString('utf8')).toBe(byHand.replace(/\n {2}author: .*/, '\n  author: Somebody Else'));
    await page.reload();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#field-book-author')?.value === 'Somebody Else');
    await page.getByRole('button', { name: 'One step back' }).click();
    await page.waitForFunction((before) => (document.querySelector('#field-book-author') as HTMLInputElement).value === before, textAt(rawOf(byHand), ['book', 'author']));
    expect((await saved(page, /^Take the file/)).toString('utf8')).toBe(byHand);
    // It is erased by the one who made it, and nothing is left.
    await page.getByRole('button', { name: 'Another companion' }).click();
    await page.getByRole('button', { name: /^Erase/ }).click();
    await page.getByRole('button', { name: 'Yes, erase it' }).click();
    await page.waitForFunction(async () => (await indexedDB.databases()).length === 0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('is shown as text with what is wrong when it cannot be read, and opens once it is mended', async () => {
    const { page } = await opened();
    await page.setInputFiles('#open-file', { name: 'pack.md', mimeType: 'text/markdown', buffer: Buffer.from('---\ntitle: "Hat\nlanguage: en\n---\n') });
    await page.getByRole('heading', { name: 'This file cannot be read yet' }).waitFor();
    await page.locator('.before-you-share li').first().waitFor();
    await page.fill('#broken-text', '---\ntitle: "Hat"\nlanguage: en\n---\n');
    await page.getByRole('button', { name: 'Use this text' }).click();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#field-title')?.value === 'Hat');
    await page.context().close();
  });
});

test('a copy names the one who made it; a stop is moved by drawing and by keys; the pages stand beside the form; the book’s text is counted and not kept', async () => {
  const { page, faults } = await opened();
  await page.getByRole('button', { name: 'Take a copy' }).click();
  await page.locator('.workbook button').nth(2).click();
  // Drawn from opening 3 to 5, then one on with the keys.
  await page.locator('#mark-0').hover();
  const from = await page.locator('#mark-0').boundingBox();
  const to = await page.locator('[data-opening="5"]').boundingBox();
  if (!from || !to) throw new Error('no strip');
  await page.mouse.move(from.x + 20, from.y + 20);
  await page.mouse.down();
  await page.mouse.move(to.x + 20, to.y + 20, { steps: 5 });
  await page.mouse.up();
  await page.locator('[data-opening="5"] #mark-0').waitFor();
  await page.locator('#mark-0').press('ArrowRight');
  await page.locator('[data-opening="6"] #mark-0').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('mark-0');
  // And by typing its opening: beyond the next stop it changes places with it when the field is left, and stays open.
  const order = () => page.$$eval('.stop-ask', (all) => all.map((each) => each.textContent));
  const [first, second, ...others] = await order();
  await page.locator('#mark-0').click();
  const next = Number(await page.locator('li:has(> #mark-1)').getAttribute('data-opening'));
  await page.fill('#field-stops-0-at-opening', String(next + 1));
  await page.keyboard.press('Tab');
  await expect.poll(order).toEqual([second, first, ...others]);
  await expect.poll(() => page.inputValue('#field-stops-1-ask')).toBe(first);

  await page.locator('.workbook button').nth(0).click();
  await page.locator('.passage summary').click();
  await page.fill('#passage', '[opening 1]\nOdile went up the hill with a hubble-bubble stone.\n[opening 2]\nIt was only one stone.');
  await page.getByText(/14 words in 2 sentences/).waitFor();
  await page.click('#preview-button');
  const frame = page.frameLocator('.preview-page');
  await frame.getByRole('heading', { name: 'The Wheelbarrow Goes Home', level: 1 }).waitFor();
  await page.fill('#field-title', 'The Wheelbarrow Stays Out');
  await frame.getByRole('heading', { name: 'The Wheelbarrow Stays Out', level: 1 }).waitFor();
  await page.selectOption('#preview-which', 'lesson');
  await frame.getByText('Run sheet').first().waitFor();
  // As it comes out on paper: the styles of paper, and what is only for the screen is gone.
  await frame.getByRole('navigation').first().waitFor();
  await page.getByLabel('As it comes out on paper').check();
  await frame.getByRole('navigation').first().waitFor({ state: 'hidden' });

  const text = (await saved(page, /^Take the file/)).toString('utf8');
  const raw = rawOf(text);
  expect([textAt(raw, ['by', 'based on']), textAt(raw, ['by', 'name']), textAt(raw, ['stops', 1, 'at', 'opening'])]).toEqual([
    'The Wheelbarrow Goes Home, The test shelf, CC BY 4.0',
    '',
    String(next + 1),
  ]);
  expect(text).not.toContain('hubble');
  const kept = () =>
    page.evaluate(
      () =>
        new Promise<string>((done) => {
          const request = indexedDB.open('bookfellow-packs');
          request.onsuccess = () => {
            const all = request.result.transaction('packs').objectStore('packs').getAll();
            all.onsuccess = () => {
              request.result.close();
              done(JSON.stringify(all.result));
            };
          };
        }),
    );
  await expect.poll(kept).toContain('Stays Out');
  expect(await kept()).not.toContain('hubble');
  expect(faults).toEqual([]);
  await page.context().close();
});

test('the first screen asks for at most 60 kB of script, compressed', async () => {
  const context = await here.browser.newContext();
  const page = await context.newPage();
  const scripts: Promise<Buffer>[] = [];
  page.on('response', (response) => response.url().endsWith('.js') && scripts.push(response.body()));
  await page.goto(`${here.server.address}make/`, { waitUntil: 'networkidle' });
  const sizes = (await Promise.all(scripts)).map((each) => gzipSync(each).length);
  expect(sizes.length).toBeGreaterThan(1);
  expect(sizes.reduce((sum, each) => sum + each, 0)).toBeLessThan(60_000);
  await context.close();
});
