/** A class of booklets, made on the booklet's own page by its own controls, and saved as a family would save them. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { bookmarkColours, bookmarkPatterns } from '../../src/core/booklet/booklet.ts';
import { begin, bookletPage, scribble, turnTo } from './booklet-page.ts';

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

/** One child's answers. All of it goes through the page's own fields and buttons; what needs no pen is done inside the page, since each step from outside costs a tenth of a second. */
async function answer(page: Page, child: number): Promise<void> {
  const word = feelings[child % feelings.length] ?? 'worried';
  const frame = child % 3;
  const because = seen[child % seen.length] ?? '';
  await page.evaluate(
    async ({ picked, frame, text, reason, stars, why }) => {
      const there = async <E extends HTMLElement>(selector: string): Promise<E> => {
        for (let tries = 0; tries < 500; tries++) {
          const found = document.querySelector<E>(selector);
          if (found) return found;
          await new Promise((next) => setTimeout(next, 10));
        }
        throw new Error(`not there: ${selector}`);
      };
      const turn = async (name: string) => {
        location.hash = name;
        await there(name === 'rating' ? '.rating.is-open .star-choices' : `#${name}.is-open .ways`);
      };
      const type = async (words: string) => {
        const field = await there<HTMLTextAreaElement>('.is-open textarea');
        field.focus();
        field.setRangeText(words, 0, field.value.length, 'end');
        field.dispatchEvent(new Event('input', { bubbles: true }));
      };
      await turn('stop-see-the-end');
      if (picked !== undefined) {
        (await there('.is-open .ways input[value=feeling]')).click();
        (await there(`.is-open .feeling input[value="${picked}"]`)).click();
      } else {
        // A frame is put in and written over, or left alone.
        if (frame < 2) document.querySelectorAll<HTMLElement>('.is-open .frame-buttons button')[frame]?.click();
        await type(text);
      }
      await turn('stop-still-turning');
      if (reason === undefined) {
        (await there('.is-open .ways input[value=pass]')).click();
        (await there('.is-open .room-pass button')).click();
      } else await type(reason);
      await turn('rating');
      document.querySelectorAll<HTMLElement>('.star-choices input')[stars]?.click();
      if (why !== '') await type(why);
    },
    {
      picked: child % 6 === 5 ? (child % 12 === 11 ? 'cannot-tell' : word) : undefined,
      frame,
      text: [`Joss feels ${word}.`, `Joss feels ${word} because she ${because}.`, `She ${because}`][frame] ?? '',
      reason: child % 8 === 7 ? undefined : (reasons[child % reasons.length] ?? ''),
      stars: [4, 4, 3, 4, 2, 3, 4, 0][child % 8] ?? 4,
      why: child % 5 === 0 ? '=the gull' : '',
    },
  );
  if (child % 4 === 0) {
    await turnTo(page, 'stop-still-walking');
    await page.locator('.is-open canvas').waitFor();
    await scribble(page, child, 12);
    await page.getByLabel('Tell about your drawing').fill(`Me on the wall, number ${String(child)}. I was proud.`);
  }
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
