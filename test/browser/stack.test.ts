/** The stack as two teachers use it: twenty-four booklets made on the booklet's own page, looked through, judged from the keyboard by two people, compared. */
import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { booksChosen } from '../../src/classroom/best-of.ts';
import { compare, compareAll } from '../../src/classroom/compare.ts';
import { feelingCounts, framesUsed, starsGiven } from '../../src/classroom/counts.ts';
import { judgeables, traitCounts } from '../../src/classroom/judging.ts';
import { readStackFile } from '../../src/classroom/read-stack-file.ts';
import { readScores, readSheet, writeScores, type ScoresFile } from '../../src/classroom/scoring-files.ts';
import { answersTo, emptyStack, putBooklet, putPack, type Stack } from '../../src/classroom/stack.ts';
import { readPack } from '../../src/core/pack/read-pack.ts';
import type { StackPack } from '../../src/core/pack/stack-pack.ts';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';
import { axe } from './booklet-page.ts';
import { makeBooklets, type SavedFile } from './stack-booklets.ts';

const here = siteInBrowser();
let folder: string;
let files: readonly SavedFile[];
let context: BrowserContext;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bookfellow-stack-'));
  // Small windows: what is painted is most of what a step costs, and nothing here is about how wide a page is but the last test.
  const desks = await here.browser.newContext({ viewport: { width: 400, height: 300 }, reducedMotion: 'reduce', serviceWorkers: 'block' });
  files = await makeBooklets(desks, here.server.address, folder, 24);
  await desks.close();
  context = await here.browser.newContext({ viewport: { width: 640, height: 400 }, reducedMotion: 'reduce', acceptDownloads: true, serviceWorkers: 'block' });
}, 240_000);

/** The page of the stack. Once it is loaded, whatever it asks for is a fault, and so is every error. */
async function stackPage(of: BrowserContext, path = 'stack/'): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const page = await of.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('console', (message) => message.type() === 'error' && faults.push(`console: ${message.text()}`));
  await page.goto(here.server.address + path, { waitUntil: 'networkidle' });
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url())) faults.push(`asked after it was loaded: ${request.url()}`);
  });
  await page.locator('.blotter').waitFor();
  return { page, faults };
}

async function view(page: Page, name: string): Promise<void> {
  await page.locator(`.stack-contents a[href="#${name}"]`).click();
  await page.locator(`.showing-${name}`).waitFor();
}

async function download(page: Page, button: string): Promise<string> {
  const [saved] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  const path = join(folder, saved.suggestedFilename());
  await saved.saveAs(path);
  return path;
}

/** The same stack as the page should have, by the library alone. */
async function stackByLibrary(page: Page): Promise<{ readonly stack: Stack; readonly pack: StackPack }> {
  const { packs } = JSON.parse((await page.locator('#stack-data').textContent()) ?? '') as { packs: readonly StackPack[] };
  const pack = packs.find(({ slug, language }) => slug === 'the-lamp-on-the-jetty' && language === 'en');
  if (!pack) throw new Error('The page does not carry the pack.');
  const stack = files.reduce<Stack>(
    (sofar, { text, name }) => {
      const read = readStackFile(text);
      return read.kind === 'booklet' ? putBooklet(sofar, read.booklet, name).stack : sofar;
    },
    putPack(emptyStack, pack),
  );
  return { stack, pack };
}

const rowsOf = (page: Page, table: string) => page.locator(table).evaluate((each) => [...each.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent.trim())));

/** Judges so many answers from the keyboard alone: a digit for each trait, and Enter. */
async function judgeFirst(page: Page, many: number, rule: (text: string, index: number) => readonly number[]): Promise<void> {
  await page.locator('.to-judge').focus();
  for (let index = 0; index < many; index++) {
    const ready = await page.waitForFunction(
      (n) =>
        document.querySelector('#to-judge')?.textContent.startsWith(`Answer ${String(n)} `) === true && document.activeElement?.className === 'to-judge'
          ? { text: document.querySelector('.the-answer')?.textContent ?? '' }
          : undefined,
      index + 1,
    );
    const { text } = (await ready.jsonValue()) ?? { text: '' };
    await page.keyboard.type(`${rule(text, index).join('')}${index < many - 1 ? '\n' : ''}`);
  }
}

const byWords = (text: string): number[] => [/feels|They/.test(text), /because/i.test(text), /book says/.test(text), /worried|frightened|terrified/.test(text)].map(Number);

test('twenty-four booklets are read, looked through, judged by two people and compared', { timeout: 180_000 }, async () => {
  const { page, faults } = await stackPage(context);
  // axe reads the whole page anew each time, and that is dear: it looks where parts stand that stood nowhere before.
  const look = async (where: string) => {
    await axe(page, where);
    expect(await page.locator('h1:visible').count(), where).toBe(1);
  };
  const { stack, pack } = await stackByLibrary(page);
  expect(stack.booklets).toHaveLength(24);

  // Read: one damaged, one copied under another name, and one letter among them.
  const [first] = files;
  if (!first) throw new Error('no booklet');
  const copy = join(folder, 'copy (1).html');
  const cut = join(folder, 'cut.booklet.html');
  const letter = join(folder, 'letter.html');
  await writeFile(copy, first.text);
  await writeFile(cut, first.text.slice(0, first.text.length - 400));
  await writeFile(letter, '<p>Dear teacher</p>');
  await page.setInputFiles('#stack-files', [...files.map(({ path }) => path), copy, cut, letter]);
  await page.locator('.covers li').nth(23).waitFor();
  await page.locator('.stack-told', { hasText: '24 booklets were put on the pile. One was a copy of a booklet already here, and the two were put together. 2 files are set aside.' }).waitFor();
  expect(await page.locator('.set-aside dt').allTextContents()).toEqual(['cut.booklet.html', 'letter.html']);
  await look('the pile');

  // Look: what stands on the screen is what the library counts.
  await view(page, 'look');
  await page.getByLabel('Question', { exact: true }).selectOption({ index: 1 });
  expect(await page.locator('.side-by-side > li').count()).toBe(answersTo(stack, pack, 'see-the-end').length);
  await page.getByLabel('Question', { exact: true }).selectOption({ index: 3 });
  await page.locator('.kept-paper').first().waitFor();
  expect(await page.locator('.one-question').textContent()).toContain('It is never judged');
  await page.locator('input[value=mark]').check();
  await page.locator('input[value=feeling]').check();
  await page.locator('input[value=class]').check();
  await page.locator('.figure-table summary').evaluateAll((each) => each.forEach((summary) => (summary as HTMLElement).click()));
  const feelings = feelingCounts(stack, pack);
  expect(await rowsOf(page, '.figure:has(> svg[aria-label="Feeling words along the story"]) table')).toEqual(
    feelings.flatMap(({ number, answered, words }) => words.map(({ word, children, chose }) => [number, word, children, chose, answered].map(String))),
  );
  expect(feelings.reduce((sum, { words }) => sum + words.length, 0)).toBeGreaterThan(2);
  const frames = framesUsed(stack, pack).filter(({ wrote }) => wrote > 0);
  for (const [index, { frames: used, ownWay }] of frames.entries())
    expect((await rowsOf(page, `.frames-table >> nth=${String(index)}`)).map((row) => row.at(-1))).toEqual([...used.map(({ children }) => children), ownWay].map(String));
  const { stars } = starsGiven(stack, pack);
  expect((await rowsOf(page, '.figure:has(> svg[aria-label="Stars for the book"]) table')).map((row) => row.at(-1))).toEqual([...stars.counts].reverse().map(String));
  expect(await page.locator('#class-stars-text').textContent()).toContain(`${String((stars.counts[3] ?? 0) + (stars.counts[4] ?? 0))} of 24 gave 4 or 5 stars.`);
  const chosen = booksChosen(stack, pack);
  expect(await rowsOf(page, '.figure:has(> svg[aria-label="One of a few books"]) table')).toEqual(chosen.books.map(({ book, best, last }) => [book, String(best), String(last)]));
  expect([chosen.n, chosen.nLast]).toEqual([12, 6]);
  expect(await page.locator('main').textContent()).not.toMatch(/%|average of|mean of/);
  await look('the whole class');

  // Judge, from the keyboard.
  await view(page, 'judge');
  await look('judging');
  const n = judgeables(stack, pack, 'any').length;
  // As far as a teacher gets in one evening: all of the first question, and some of the second.
  const evening = 32;
  await judgeFirst(page, evening, byWords);
  expect(evening).toBeLessThan(n);
  expect(await page.locator('.judged-so-far').textContent()).toContain(`${String(evening)} of ${String(n)} answers judged.`);

  // Agree: out, judged by somebody who sees nothing of the first, and in again.
  await view(page, 'agree');
  const sheetFile = await download(page, `Save the scoring sheet (${String(n)} answers)`);
  const sheetText = await readFile(sheetFile, 'utf8');
  expect(sheetText).not.toMatch(/"bookmark"|"scores"|stitches/);
  const other = await here.browser.newContext({ viewport: { width: 600, height: 400 }, reducedMotion: 'reduce', acceptDownloads: true, serviceWorkers: 'block' });
  const second = await stackPage(other);
  await second.page.setInputFiles('#stack-files', sheetFile);
  await second.page.locator('.stack-contents').waitFor();
  await view(second.page, 'judge');
  // The second person stops halfway: what only one of them scored says nothing of agreement, and alpha can do with gaps.
  const half = 16;
  await judgeFirst(second.page, half, (text, index) => byWords(text).map((score, trait) => ([7, 5, 40, 4][trait] === index % 9 ? 1 - score : score)));
  const scoresFile = await download(second.page, 'Save my scores for the first person');
  expect(second.faults).toEqual([]);
  await other.close();
  await page.setInputFiles('#scores-file', scoresFile);
  await page.locator('.result').waitFor();
  await look('agreement');

  // The numbers on the screen are the library's.
  const mine = readScores(JSON.parse(await readFile(await download(page, 'Save my own scores'), 'utf8')));
  const theirs = readScores(JSON.parse(await readFile(scoresFile, 'utf8')));
  const sheet = readSheet(JSON.parse(sheetText));
  if (!mine || !theirs || !sheet) throw new Error('a file cannot be read');
  const lines = compare(sheet.answers, { steps: 1, seed: '', scores: mine.scores }, theirs.scores);
  const shown = (coefficient: { kind: string; value?: number }) => (coefficient.kind === 'value' ? (coefficient.value ?? 0).toFixed(2).replace('-', '−') : 'cannot be computed');
  expect(await rowsOf(page, '.agree-table table')).toEqual(
    lines.map(({ trait, agreement }) => [trait ?? 'all traits added up', String(agreement.n), `${String(agreement.exact)} of ${String(agreement.n)}`, shown(agreement.kappa)]),
  );
  const sum = lines.at(-1)?.agreement;
  const wanted = [sum?.kappa, sum?.linearKappa, sum?.quadraticKappa, sum?.alphas.nominal, sum?.alphas.ordinal, sum?.alphas.interval, sum?.alphas.ratio];
  expect((await page.locator('.measures dd').allTextContents()).slice(2)).toEqual(wanted.map((each) => `${each ? shown(each) : ''} (n = ${String(half)})`));
  expect(sum?.n).toBe(half);
  expect(sum?.exact).toBeLessThan(half);

  // A third person's file stands beside the second's, and alpha takes all three.
  if (theirs.scorer === undefined) throw new Error('the file does not say whose it is');
  const third: ScoresFile = { ...theirs, scorer: 'thirdperson1', scores: Object.fromEntries(Object.entries(mine.scores).slice(4)) };
  await writeFile(join(folder, 'third.json'), writeScores(third));
  await page.setInputFiles('#scores-file', join(folder, 'third.json'));
  await page.locator('.together').waitFor();
  const all = compareAll(sheet.answers, { steps: 1, seed: '', scores: mine.scores }, [theirs.scores, third.scores]);
  expect(await rowsOf(page, '.together table')).toEqual(all.map(({ trait, alpha }) => [trait ?? 'all traits added up', String(alpha.n), shown(alpha)]));
  expect(all.at(-1)?.alpha.n).toBeGreaterThan(half);
  await page.getByLabel('You and').selectOption('colleague 2');
  expect(await page.locator('.measures dd').first().textContent()).toBe(`${String(evening - 4)} of ${String(evening - 4)}`);
  await page.getByRole('button', { name: 'Take these scores away' }).click();
  expect(await page.locator('.together').count()).toBe(0);

  // Tomorrow: three to read aloud and no fourth, and a note that the pack's own reader understands.
  await view(page, 'look');
  await page.locator('input[value=stop]').check();
  await page.getByLabel('Question', { exact: true }).selectOption({ index: 5 });
  for (const place of [0, 1, 2]) await page.locator('.side-by-side .tick input').nth(place).check();
  await page.locator('.side-by-side .tick input').nth(3).focus();
  await page.keyboard.press('Space');
  await page.locator('.stack-told', { hasText: 'Three are chosen.' }).waitFor();
  await view(page, 'tomorrow');
  expect(await page.locator('section:has(#aloud) .side-by-side > li').count()).toBe(3);
  const counts = traitCounts(sheet.answers, { steps: 1, seed: '', scores: mine.scores });
  expect((await rowsOf(page, '.agree-table table')).map((row) => row.slice(0, 2))).toEqual(counts.map(({ trait, counts: by, n: all }) => [trait, `${String(by[1])} of ${String(all)}`]));
  await page.locator('#flat-next-plank').fill('Two questions at once: ask "why" first.');
  const packFile = fileURLToPath(new URL('../../content/packs/the-lamp-on-the-jetty/pack.md', import.meta.url));
  const [written] = await Promise.all([page.waitForEvent('download'), page.setInputFiles('#pack-file', packFile)]);
  await written.saveAs(join(folder, 'pack.md'));
  const text = await readFile(join(folder, 'pack.md'), 'utf8');
  const after = readPack({ slug: 'x', file: 'packs/x/pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
  expect(after.value?.whatFellFlat).toMatchObject([{ stop: 'next-plank', note: 'Two questions at once: ask "why" first.' }]);
  expect(after.findings.filter(({ level }) => level === 'stop')).toEqual([]);

  // Take away: a table in which nothing is a formula, and a page that points at nobody, on the screen and on paper.
  await view(page, 'take');
  // Lists skip what is out of sight, so axe gets a window that shows all of it.
  await page.setViewportSize({ width: 640, height: 2600 });
  await page.locator('.choose-answers summary').first().click();
  for (const place of [0, 1]) await page.locator('.choose-answers').first().locator('.tick input').nth(place).check();
  expect(await page.locator('.wall-answers > li').count()).toBe(2);
  await look('take away');
  const wall = (await page.locator('.wall-page').textContent()) ?? '';
  expect(wall).not.toMatch(/bookmark|waves|leaves|stitches|rooftops|not yet|proud/);
  const table = await readFile(await download(page, 'Save a table of all answers (CSV)'), 'utf8');
  expect(table.split('\r\n')).toHaveLength(2 + stack.booklets.reduce((all, { booklet }) => all + booklet.entries.length, 0));
  expect(table).toContain(`"'=the gull"`);
  expect(table).not.toMatch(/(?:^|,)"?[=+@]/m);
  const printed = await page.evaluate(() => {
    const sheets: string[] = [];
    window.print = () => {
      dispatchEvent(new Event('beforeprint'));
      sheets.push(document.querySelector('#stack-room > div')?.textContent ?? '');
      dispatchEvent(new Event('afterprint'));
    };
    for (const button of document.querySelectorAll<HTMLElement>('main button')) if (/^Print/.test(button.textContent)) button.click();
    return sheets;
  });
  expect(printed[0]).toContain('Sentence frames');
  expect(printed[1]).toBe(wall);
  expect(faults).toEqual([]);
  await page.close();
});

test('nothing is kept until the teacher says so, and one button erases it', { timeout: 60_000 }, async () => {
  const { page, faults } = await stackPage(context);
  const kept = () => page.evaluate(async () => (await indexedDB.databases()).some(({ name }) => name === 'bookfellow-stack'));
  await page.setInputFiles(
    '#stack-files',
    files.slice(0, 5).map(({ path }) => path),
  );
  await page.locator('.covers li').nth(4).waitFor();
  // A booklet that came back on paper is typed in, by the keys alone.
  await page.getByRole('button', { name: 'Add a booklet from paper' }).press('Enter');
  await page.getByLabel('Book', { exact: true }).selectOption({ label: 'The Lamp on the Jetty' });
  await page.getByLabel('Bookmark', { exact: true }).selectOption('rain');
  await page.getByLabel('Colour', { exact: true }).selectOption('brown');
  await page.getByLabel('Written').nth(1).fill('Joss is  wurrid');
  await page.getByLabel('Feeling word').selectOption('worried');
  await page.getByLabel('Stars').selectOption('4');
  await page.getByLabel('Chosen first').selectOption('Tomato Weather');
  await page.getByRole('button', { name: 'Put it on the pile' }).press('Enter');
  await page.locator('.covers li', { hasText: 'The brown bookmark with rain' }).getByText('3 answers, typed from paper').waitFor();
  await page.getByRole('button', { name: 'Take The brown bookmark with rain off the pile' }).click();
  expect(await page.locator('.covers li').count()).toBe(5);
  expect(await kept()).toBe(false);
  await page.getByLabel('Keep this stack on this device').check();
  await page.getByText('Kept on this device, with your scores and notes.').waitFor();
  await page.waitForFunction(async () => (await indexedDB.databases()).some(({ name }) => name === 'bookfellow-stack'));
  await page.waitForTimeout(300);
  expect(faults).toEqual([]);
  await page.reload();
  await page.locator('.covers li').nth(4).waitFor();
  await page.getByRole('button', { name: 'Clear the desk and erase what is kept' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await page.getByText('The desk is clear, and nothing is kept.').waitFor();
  await page.waitForFunction(async () => !(await indexedDB.databases()).some(({ name }) => name === 'bookfellow-stack'));
  expect(await page.locator('.covers').count()).toBe(0);
  await page.close();
});

test('on a narrow screen, in Spanish and in the dark: no sideways scroll, and targets for fingers', { timeout: 60_000 }, async () => {
  const narrow = await here.browser.newContext({ viewport: { width: 320, height: 640 }, colorScheme: 'dark', reducedMotion: 'reduce' });
  const { page, faults } = await stackPage(narrow, 'es/stack/');
  await page.setInputFiles(
    '#stack-files',
    files.slice(0, 12).map(({ path }) => path),
  );
  await page.locator('.covers li').nth(11).waitFor();
  for (const name of ['pile', 'look', 'judge', 'agree', 'tomorrow', 'take']) {
    await view(page, name);
    for (const way of name === 'look' ? ['mark', 'feeling', 'class', 'stop'] : ['']) {
      if (way !== '') await page.locator(`input[value=${way}]`).check();
      const { wide, small } = await page.evaluate(() => ({
        wide: document.documentElement.scrollWidth,
        small: [...document.querySelectorAll<HTMLElement>('.stack-desk button, .stack-desk summary, .stack-desk select, .stack-desk label.choice, .stack-desk .tick')].flatMap((each) => {
          const box = each.getBoundingClientRect();
          return box.width > 0 && (box.height < 44 || box.width < 44) ? [`${each.textContent.trim().slice(0, 30)} ${String(box.width)} by ${String(box.height)}`] : [];
        }),
      }));
      expect([wide, small], `${name} ${way}`).toEqual([320, []]);
      if (`${name} ${way}` === 'look class') await axe(page, 'the whole class, narrow and dark');
    }
  }
  expect(faults).toEqual([]);
  await narrow.close();
});
