/** What leaves the device, and what comes back: the file, the photo, the voice, the device's own sheet; and files that are not what they seem. */
import { mkdtemp, open, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContextOptions, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { limits } from '../../src/core/booklet/booklet-schema.ts';
import { put, type Booklet } from '../../src/core/booklet/booklet.ts';
import { readBooklet } from '../../src/core/booklet/read-booklet.ts';
import { writeBookletFile } from '../../src/core/booklet/write-booklet-file.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { axe, begin, bookletPage, chooseWay, kept, onDevice, openAgain, pack, scribble, turnTo } from './booklet-page.ts';

const phone = { viewport: { width: 360, height: 640 }, reducedMotion: 'reduce', serviceWorkers: 'block', acceptDownloads: true } as const;
const words = phrasesFor('en').booklet;
// A microphone that hums by itself.
const here = siteInBrowser({ flags: ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'] });
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-hand-over-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

async function device(options: BrowserContextOptions = {}) {
  const context = await here.browser.newContext({ ...phone, ...options });
  return { context, ...(await bookletPage(context, here.server.address)) };
}

/** Saves the file as a person would; gives its path. */
async function saved(page: Page): Promise<string> {
  await turnTo(page, 'my-page');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  const path = join(folder, (await download).suggestedFilename());
  await (await download).saveAs(path);
  return path;
}
const bookletIn = (text: string): Booklet => {
  const read = readBooklet(text);
  if (!read.booklet) throw new Error(read.reason);
  return read.booklet;
};
const chooseFile = (page: Page, file: string | { name: string; mimeType: string; buffer: Buffer }) => page.locator('.read-back input[type=file]').setInputFiles(file);

/** A photo as a phone takes it: large, on its side, with the place where it was taken and a make of camera. */
const photo = await sharp({ create: { width: 3000, height: 2000, channels: 3, background: '#cc7755' } })
  .withExif({ IFD0: { Make: 'Canarycam', Model: 'Canary 1' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' } })
  .withMetadata({ orientation: 6 })
  .jpeg()
  .toBuffer();

test('a photo is turned upright, made smaller, and loses what the camera wrote into it', async () => {
  const { context, page, faults } = await device();
  expect(photo.includes('Canarycam') && photo.includes('Exif')).toBe(true);
  await begin(page);
  await turnTo(page, 'stop-heavy-handle');
  const field = page.getByLabel('Add a photo of what you did, without a face in it');
  await field.setInputFiles({ name: 'hand.jpg', mimeType: 'image/jpeg', buffer: photo });
  await page.locator('.photos img').waitFor();
  await page.getByLabel('Words about the photo').fill('My hands on the handle.');
  await kept(page);
  const [entry] = (await onDevice(page)).entries;
  if (entry?.value.kind !== 'photo') throw new Error('no photo');
  const bytes = Buffer.from(entry.value.data, 'base64');
  // A browser may put its own note of what its colours mean beside the picture; that comes from no camera.
  const { width, height, exif, xmp, iptc, format } = await sharp(bytes).metadata();
  expect({ width, height, exif, xmp, iptc, format }).toEqual({ width: 853, height: 1280, exif: undefined, xmp: undefined, iptc: undefined, format: 'jpeg' });
  for (const trace of ['Canary', 'Exif', 'GPS', '<x:xmpmeta']) expect(bytes.includes(trace), trace).toBe(false);
  expect(entry.value).toMatchObject({ width: 853, height: 1280, about: 'My hands on the handle.' });
  // What is no photo is told, and what is there stays.
  await field.setInputFiles({ name: 'letter.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('Dear teacher') });
  await page.getByText('This file could not be read as a photo').waitFor();
  expect((await onDevice(page)).entries).toHaveLength(1);
  expect(faults).toEqual([]);
  await context.close();
});

test('a voice is recorded only where a grown-up allowed it, is kept, can be heard, and goes into the file; a refusal is told', async () => {
  const { context, page, faults } = await device();
  await begin(page);
  await turnTo(page, 'stop-not-home');
  expect(await page.getByRole('button', { name: 'Begin to record' }).count()).toBe(0);
  await turnTo(page, 'cover');
  await page.locator('.grown-up summary').click();
  await page.getByLabel('This booklet may use the microphone').check();
  await turnTo(page, 'stop-not-home');
  await page.getByRole('button', { name: 'Begin to record' }).click();
  await page.getByText('Recording. Speak when you are ready').waitFor();
  await axe(page, 'recording');
  await page.waitForTimeout(1200);
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await page.locator('.voice audio').waitFor();
  await kept(page);
  const [entry] = (await onDevice(page)).entries;
  if (entry?.value.kind !== 'voice') throw new Error('no voice');
  expect(entry.value.type).toBe('audio/webm');
  expect(Buffer.from(entry.value.data, 'base64').length).toBeGreaterThan(1000);
  expect(
    await page.locator('.voice audio').evaluate((audio: HTMLAudioElement) => new Promise<boolean>((done) => (audio.readyState > 0 ? done(true) : (audio.onloadedmetadata = () => done(true))))),
  ).toBe(true);
  expect(bookletIn(await readFile(await saved(page), 'utf8')).entries[0]?.value).toEqual(entry.value);
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await turnTo(page, 'stop-not-home');
  await page.getByRole('button', { name: 'Begin to record' }).click();
  await page.getByText('The browser did not give the microphone. A grown-up can write down what you say.').waitFor();
  expect(faults).toEqual([]);
  await context.close();
});

test('the file opens by itself, without a network and without a script, and read in on another device it is handed over again byte for byte', async () => {
  const { context, page, faults } = await device();
  await begin(page, { pattern: 'rain', colour: 'blue' });
  await turnTo(page, 'stop-see-the-end');
  await page.locator('.is-open textarea').first().fill('Joss is <b>cold</b> & wet. مرحبا 👩🏽‍🚀');
  await turnTo(page, 'stop-still-walking');
  await page.locator('.is-open canvas').waitFor();
  await scribble(page, 1, 8);
  await turnTo(page, 'stop-heavy-handle');
  await page.getByLabel('Add a photo of what you did, without a face in it').setInputFiles({ name: 'hand.jpg', mimeType: 'image/jpeg', buffer: photo });
  await page.locator('.photos img').waitFor();
  await turnTo(page, 'rating');
  await page.locator('.star-choices label').nth(2).click();
  await kept(page);
  const path = await saved(page);
  const first = await readFile(path, 'utf8');
  expect(faults).toEqual([]);
  await context.close();

  const elsewhere = await here.browser.newContext({ offline: true, javaScriptEnabled: false, colorScheme: 'dark', viewport: phone.viewport });
  const asked: string[] = [];
  elsewhere.on('request', (request) => {
    if (!/^(?:file|data):/.test(request.url())) asked.push(request.url());
  });
  const reading = await elsewhere.newPage();
  await reading.goto(pathToFileURL(path).href);
  expect(await reading.textContent('h1')).toBe('The Lamp on the Jetty: my page of answers');
  const seen = await reading.evaluate(() => ({
    drawings: document.querySelectorAll('svg path').length,
    photos: [...document.images].filter((image) => image.naturalWidth > 0).length,
    text: document.querySelector('main')?.innerText ?? '',
    wide: document.documentElement.scrollWidth,
    sections: document.querySelectorAll('section').length,
  }));
  expect(seen).toMatchObject({ drawings: 1, photos: 1, wide: 360, sections: 9 });
  expect(seen.text).toContain('Joss is <b>cold</b> & wet. مرحبا 👩🏽‍🚀');
  expect(seen.text).toContain('3 of 5: I liked it');
  expect(asked).toEqual([]);
  await elsewhere.close();

  const other = await device();
  await begin(other.page, { pattern: 'waves', colour: 'red' });
  await turnTo(other.page, 'my-page');
  await chooseFile(other.page, path);
  await other.page.getByText('This file belongs to another reader.').waitFor();
  await turnTo(other.page, 'cover');
  await other.page.getByRole('button', { name: 'Put it away, and choose another bookmark' }).click();
  await openAgain(other.page, 'The blue bookmark with rain');
  const second = await readFile(await saved(other.page), 'utf8');
  expect(second === first, 'byte for byte').toBe(true);
  expect(other.faults).toEqual([]);
  await other.context.close();
});

test('two devices that both wrote are put together without loss by reading each other’s files', async () => {
  const one = await device();
  await begin(one.page, { pattern: 'leaves', colour: 'green' });
  await turnTo(one.page, 'stop-see-the-end');
  await one.page.locator('.is-open textarea').first().fill('First words.');
  await kept(one.page);
  const path = await saved(one.page);
  const two = await device();
  await begin(two.page, { pattern: 'waves', colour: 'red' });
  await turnTo(two.page, 'my-page');
  await chooseFile(two.page, path);
  await two.page.getByText('This file belongs to another reader.').waitFor();
  await turnTo(two.page, 'cover');
  await two.page.getByRole('button', { name: 'Put it away, and choose another bookmark' }).click();
  await openAgain(two.page, 'The green bookmark with leaves');
  for (const [each, text] of [
    [one, 'Changed on the one.'],
    [two, 'Changed on the other.'],
  ] as const) {
    await turnTo(each.page, 'stop-see-the-end');
    await chooseWay(each.page, 'write');
    await each.page.locator('.is-open textarea').first().fill(text);
    await kept(each.page);
  }
  await turnTo(one.page, 'my-page');
  await chooseFile(one.page, await saved(two.page));
  await one.page.getByText('Read in: 1 answer from the file.').waitFor();
  await kept(one.page);
  expect((await onDevice(one.page)).entries.map(({ value }) => ('text' in value ? value.text : '')).sort()).toEqual(['Changed on the one.', 'Changed on the other.']);
  await one.context.close();
  await two.context.close();
});

test('the device’s own sheet gets the same file; turning it down says nothing, a failure is told, and without one there is no button', async () => {
  const { context, page } = await device();
  expect(await page.getByRole('button', { name: 'Hand it on to another program' }).count()).toBe(0);
  const sharing = await context.newPage();
  await sharing.addInitScript(() => {
    const got: { name: string; text: string }[] = [];
    let answer = 'done';
    Object.assign(window, { got, answerWith: (text: string) => (answer = text) });
    Object.assign(navigator, {
      canShare: ({ files }: { files: File[] }) => files.length === 1,
      share: async ({ files }: { files: File[] }) => {
        for (const file of files) got.push({ name: file.name, text: await file.text() });
        if (answer !== 'done') throw new DOMException('', answer);
      },
    });
  });
  await bookletPage(context, here.server.address, pack, sharing);
  await begin(sharing);
  await turnTo(sharing, 'stop-see-the-end');
  await sharing.locator('.is-open textarea').first().fill('Joss is cold.');
  await kept(sharing);
  const path = await saved(sharing);
  const button = sharing.getByRole('button', { name: 'Hand it on to another program' });
  const failed = sharing.getByText('It was not handed on.');
  await button.click();
  await expect.poll(() => sharing.evaluate(() => (window as unknown as { got: unknown[] }).got.length)).toBe(1);
  const [got] = await sharing.evaluate(() => (window as unknown as { got: { name: string; text: string }[] }).got);
  expect(got).toEqual({ name: basename(path), text: await readFile(path, 'utf8') });
  expect(await failed.count()).toBe(0);
  for (const [answer, told] of [
    ['AbortError', 0],
    ['NotAllowedError', 1],
  ] as const) {
    await sharing.evaluate((name) => (window as unknown as { answerWith: (name: string) => void }).answerWith(name), answer);
    await button.click();
    if (told > 0) await failed.waitFor();
    expect(await failed.count(), answer).toBe(told);
  }
  await context.close();
});

test('files that are not what they seem: a clear sentence each, nothing run, nothing lost', async () => {
  const { context, page, faults } = await device();
  await page.evaluate(() => Object.assign(window, { hacked: 0 }));
  page.on('dialog', (dialog) => void faults.push(`dialog: ${dialog.message()}`));
  await begin(page, { pattern: 'waves', colour: 'red' });
  await turnTo(page, 'stop-see-the-end');
  await page.locator('.is-open textarea').first().fill('Mine.');
  await kept(page);
  const html = await readFile(await saved(page), 'utf8');
  const booklet = bookletIn(html);
  const changed = (change: (data: Record<string, unknown>) => void): string => {
    const data = JSON.parse(JSON.stringify(booklet)) as Record<string, unknown>;
    change(data);
    return JSON.stringify(data);
  };
  const huge = join(folder, 'huge.booklet.html');
  const file = await open(huge, 'w');
  await file.truncate(limits.file + 1_000_000_000);
  await file.close();
  const told = (reason: keyof typeof words.unreadable) => words.unreadable[reason];
  const cases: readonly (readonly [string, string | Buffer, string])[] = [
    ['empty', '', told('empty')],
    ['a page with a script', '<!DOCTYPE html><script>window.hacked = 1; alert(1)</script><img src=x onerror="window.hacked = 2">', told('not-a-booklet')],
    ['a picture', photo, told('not-a-booklet')],
    ['cut short', html.slice(0, -40).slice(0, html.indexOf('"entries"')), told('cut-short')],
    ['of a later version', changed((data) => (data['version'] = 2)), told('newer')],
    ['damaged', html.replace('"entries":', '"entries"'), told('damaged')],
    ['of another book', changed((data) => (data['pack'] = { slug: 'another', language: 'en', title: '<img src=x onerror=alert(1)>' })), words.screen.mine.otherBook('<img src=x onerror=alert(1)>')],
    ['brackets without end', `{"format":${'['.repeat(300_000)}`, told('not-a-booklet')],
  ];
  await turnTo(page, 'my-page');
  let tried = 0;
  for (const [name, content, sentence] of cases) {
    await chooseFile(page, { name: `${name}.booklet.html`, mimeType: 'text/html', buffer: Buffer.from(content) });
    await page.locator('.told').getByText(sentence, { exact: true }).waitFor();
    tried += 1;
  }
  await chooseFile(page, huge);
  await page.locator('.told').getByText(told('too-big'), { exact: true }).waitFor();

  // A booklet that can be read, full of code: it is text on the page, on the sheets and in the file.
  const code = '</script><script>window.hacked = 3; alert(1)</script><img src=x onerror="window.hacked = 4"><svg onload="window.hacked = 5">javascript:alert(1)';
  let made = booklet;
  made = put(made, 'badwriter1', 'see-the-end', { kind: 'written', text: code, frames: [code] });
  made = put(made, 'badwriter1', code, { kind: 'said', text: code });
  made = put(made, 'badwriter1', 'still-walking', { kind: 'photo', about: `" onerror="window.hacked = 6" x="${code}`, type: 'image/png', width: 1, height: 1, data: 'AAAA' });
  made = put(made, 'badwriter1', 'whole book', { kind: 'stars', stars: 3, of: 5, words: code });
  const wild = {
    ...made,
    prompts: [...made.prompts, { of: 'window-to-lamp', number: 9, ask: code }],
    entries: [...made.entries, { to: 'not-home', writer: 'badwriter2', count: 1, order: 9, value: { kind: 'photo', about: '', type: 'text/html', width: 1, height: 1, data: 'PHNjcmlwdD4=' } }],
  } as Booklet;
  await chooseFile(page, {
    name: 'wild.booklet.html',
    mimeType: 'text/html',
    buffer: Buffer.from(
      writeBookletFile({ ...wild, entries: made.entries }, words.file).replace(
        /(<script type="application\/json"[^>]*>)[^]*?(<\/script>)/,
        (_, begin: string, end: string) => begin + JSON.stringify(wild).replaceAll('<', '\\u003c') + end,
      ),
    ),
  });
  await page.locator('.told').getByText('Read in: ').waitFor();
  await page.locator('.told').getByText('could not be read and').waitFor();
  await page.locator('.my-answers').getByText('javascript:alert(1)').first().waitFor();
  await kept(page);
  const path = await saved(page);
  await page.emulateMedia({ media: 'print' });
  await page.waitForTimeout(200);
  await page.emulateMedia({ media: 'screen' });
  for (const stop of ['see-the-end', 'still-walking', 'window-to-lamp']) await turnTo(page, `stop-${stop}`);
  await turnTo(page, 'rating');
  expect(await page.evaluate(() => (window as unknown as { hacked: number }).hacked)).toBe(0);
  expect(
    (await onDevice(page)).entries.some(({ value }) => value.kind === 'written' && value.text === 'Mine.'),
    'nothing is lost',
  ).toBe(true);
  // The refusal of what a hostile picture is made of is no fault of the page.
  expect(faults).toEqual([]);
  const reading = await context.newPage();
  await writeFile(join(folder, 'again.html'), await readFile(path));
  await reading.goto(pathToFileURL(join(folder, 'again.html')).href);
  expect(await reading.evaluate(() => (window as unknown as { hacked?: number }).hacked)).toBeUndefined();
  expect(await reading.textContent('main')).toContain('<script>window.hacked = 3');
  expect(tried).toBe(cases.length);
  await context.close();
});
