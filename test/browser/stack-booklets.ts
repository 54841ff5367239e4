/** A class of booklets, made on the booklet's own page by its own controls, and saved as a family would save them. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { bookmarkColours, bookmarkPatterns } from '../../src/core/booklet/booklet.ts';
import { begin, bookletPage, chooseWay, scribble, turnTo } from './booklet-page.ts';

export interface SavedFile {
  readonly name: string;
  readonly path: string;
  readonly text: string;
}

const feelings = ['worried', 'frightened', 'terrified'] as const;
const seen = ['could not see the end', 'heard the water slap', 'was all alone out there', 'thought of a hole'] as const;
const reasons = ['They go on because Aunt Lo is out there.', 'They are strong.', 'They go on because the lamp needs hands, and the book says it shines only while you turn it.', 'Because.'] as const;

/** Makes and saves so many booklets of The Lamp on the Jetty, each with another bookmark and other answers; every fourth with a drawing, some pass. */
export async function makeBooklets(context: BrowserContext, address: string, folder: string, howMany: number): Promise<readonly SavedFile[]> {
  const { page } = await bookletPage(context, address);
  const saved: SavedFile[] = [];
  for (let child = 0; child < howMany; child++) {
    const pattern = bookmarkPatterns[child % bookmarkPatterns.length] ?? 'waves';
    const colour = bookmarkColours[Math.floor(child / bookmarkPatterns.length) % bookmarkColours.length] ?? 'red';
    await begin(page, { pattern, colour });
    await answer(page, child);
    saved.push(await save(page, folder));
    await putAway(page);
  }
  await page.close();
  return saved;
}

async function answer(page: Page, child: number): Promise<void> {
  await turnTo(page, 'stop-see-the-end');
  const word = feelings[child % feelings.length] ?? 'worried';
  if (child % 6 === 5) {
    await chooseWay(page, 'feeling');
    await page.locator(child % 12 === 11 ? '.is-open input[value=cannot-tell]' : `.is-open input[value=${word}]`).check();
  } else {
    // A frame is put in and written over, or left alone.
    const frame = child % 3;
    if (frame < 2) await page.locator('.is-open .frame-buttons button').nth(frame).click();
    const because = seen[child % seen.length] ?? '';
    await page.locator('.is-open textarea').fill(['Joss feels ' + word + '.', `Joss feels ${word} because she ${because}.`, `She ${because}`][frame] ?? '');
  }
  await turnTo(page, 'stop-still-turning');
  if (child % 8 === 7) {
    await chooseWay(page, 'pass');
    await page.getByRole('button', { name: 'I pass on this one' }).click();
  } else await page.locator('.is-open textarea').fill(reasons[child % reasons.length] ?? '');
  if (child % 4 === 0) {
    await turnTo(page, 'stop-still-walking');
    await page.locator('.is-open canvas').waitFor();
    await scribble(page, child, 12);
    await page.getByLabel('Tell about your drawing').fill(`Me on the wall, number ${String(child)}. I was proud.`);
  }
  await turnTo(page, 'rating');
  await page
    .locator('.star-choices input')
    .nth([4, 4, 3, 4, 2, 3, 4, 0][child % 8] ?? 4)
    .check();
  if (child % 5 === 0) await page.getByLabel('And because').fill('=the gull');
}

async function save(page: Page, folder: string): Promise<SavedFile> {
  await turnTo(page, 'my-page');
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save it as a file' }).click()]);
  const name = download.suggestedFilename();
  const path = join(folder, name);
  await download.saveAs(path);
  return { name, path, text: await readFile(path, 'utf8') };
}

async function putAway(page: Page): Promise<void> {
  await turnTo(page, 'cover');
  await page.getByRole('button', { name: 'Put it away, and choose another bookmark' }).click();
}
