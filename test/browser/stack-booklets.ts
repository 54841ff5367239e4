/**
 * A class of booklets, made on the booklet's own page by its own controls, and saved by its own button. All of it happens in one visit inside
 * the page: a step from outside costs more than the page's whole answer to it.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { bookmarkColours, bookmarkPatterns } from '../../src/core/booklet/booklet.ts';
import { bookletPage } from './booklet-page.ts';

export interface SavedFile {
  readonly name: string;
  readonly path: string;
  readonly text: string;
}

const feelings = ['worried', 'frightened', 'terrified'] as const;
const seen = ['could not see the end', 'heard the water slap', 'was all alone out there', 'thought of a hole'] as const;
const reasons = ['They go on because Aunt Lo is out there.', 'They are strong.', 'They go on because the lamp needs hands, and the book says it shines only while you turn it.', 'Because.'] as const;
const books = ['Tomato Weather', 'The Lamp on the Jetty', 'The Cloud Keeper'] as const;

/** What one child answers; where a text is missing, the child chooses or passes. */
interface Child {
  readonly pattern: string;
  readonly colour: string;
  /** A feeling word from the list, or `cannot-tell`. */
  readonly picked: string | undefined;
  readonly frame: number;
  readonly feels: string;
  readonly reason: string | undefined;
  readonly drawing: string | undefined;
  readonly stars: number;
  readonly why: string;
  readonly best: string | undefined;
  readonly last: string | undefined;
}

function childOf(n: number): Child {
  const word = feelings[n % feelings.length] ?? 'worried';
  const because = seen[n % seen.length] ?? '';
  return {
    pattern: bookmarkPatterns[n % bookmarkPatterns.length] ?? 'waves',
    colour: bookmarkColours[Math.floor(n / bookmarkPatterns.length) % bookmarkColours.length] ?? 'red',
    picked: n % 6 === 5 ? (n % 12 === 11 ? 'cannot-tell' : word) : undefined,
    frame: n % 3,
    feels: [`Joss feels ${word}.`, `Joss feels ${word} because she ${because}.`, `She ${because}`][n % 3] ?? '',
    reason: n % 8 === 7 ? undefined : reasons[n % reasons.length],
    drawing: n % 4 === 0 ? `Me on the wall, number ${String(n)}. I was proud.` : undefined,
    stars: [4, 4, 3, 4, 2, 3, 4, 0][n % 8] ?? 4,
    why: n % 5 === 0 ? '=the gull' : '',
    best: n % 2 === 0 ? books[n % 3] : undefined,
    last: n % 4 === 0 ? books[(n + 1) % 3] : undefined,
  };
}

/** Makes and saves so many booklets of The Lamp on the Jetty, each with another bookmark and other answers; every fourth with a drawing, some pass, half of them choose a book. */
export async function makeBooklets(context: BrowserContext, address: string, folder: string, howMany: number): Promise<readonly SavedFile[]> {
  const { page } = await bookletPage(context, address);
  const made = await page.evaluate(
    async (children) => {
      const there = async <E extends HTMLElement>(selector: string): Promise<E> => {
        for (let tries = 0; tries < 3000; tries++) {
          const found = document.querySelector<E>(selector);
          if (found) return found;
          await new Promise((next) => setTimeout(next, 5));
        }
        throw new Error(`not there: ${selector}`);
      };
      const press = async (selector: string) => (await there(selector)).click();
      const turn = async (name: string, has: string) => {
        location.hash = name;
        await there(name === 'cover' || name === 'my-page' ? `.${name}.is-open ${has}` : `#${name}.is-open ${has}`);
      };
      const type = async (words: string, selector = '.is-open textarea') => {
        const field = await there<HTMLTextAreaElement>(selector);
        field.focus();
        field.setRangeText(words, 0, field.value.length, 'end');
        field.dispatchEvent(new Event('input', { bubbles: true }));
      };
      // What the page's own button gives to be saved is kept here instead of on a disk.
      const saved: File[] = [];
      const own = URL.createObjectURL.bind(URL);
      URL.createObjectURL = (what) => {
        if (what instanceof File && what.name.endsWith('.booklet.html')) saved.push(what);
        return own(what);
      };
      // Nothing on the page presses a link but what saves a file.
      HTMLAnchorElement.prototype.click = () => undefined;

      for (const child of children) {
        await there('.cover.is-open .main-button, .cover.is-open .readers');
        if (!document.querySelector('.cover .main-button')) await press('.readers + .button-row button');
        await press(`input[name=pattern][value=${child.pattern}]`);
        await press(`input[name=colour][value=${child.colour}]`);
        await press('.cover .main-button');
        await there('.sheet.is-open');

        await turn('stop-see-the-end', '.ways');
        if (child.picked !== undefined) {
          await press('.is-open .ways input[value=feeling]');
          await press(`.is-open .feeling input[value="${child.picked}"]`);
        } else {
          // A frame is put in and written over, or left alone.
          if (child.frame < 2) document.querySelectorAll<HTMLElement>('.is-open .frame-buttons button')[child.frame]?.click();
          await type(child.feels);
        }
        if (child.drawing !== undefined) {
          await turn('stop-still-walking', '.set-down');
          await press('.is-open .set-down input[value=person]');
          await press('.is-open .set-down .page-button[aria-disabled=false]');
          await type(child.drawing, '.is-open .room-draw textarea');
        }
        await turn('stop-still-turning', '.ways');
        if (child.reason === undefined) {
          await press('.is-open .ways input[value=pass]');
          await press('.is-open .room-pass button');
        } else await type(child.reason);
        await turn('rating', '.star-choices');
        document.querySelectorAll<HTMLElement>('.star-choices input')[child.stars]?.click();
        if (child.why !== '') await type(child.why);
        if (child.best !== undefined) {
          await turn('best-of', '.choices');
          await press(`.is-open input[name=best-of][value="${child.best}"]`);
          if (child.last !== undefined) await press(`.is-open input[name=last-of][value="${child.last}"]`);
        }
        await turn('my-page', '.hand-over');
        await press('.my-page .hand-over .page-button');
        await turn('cover', '.screen-room .button-row .quiet');
        await press('.cover .screen-room .button-row .quiet');
      }
      return Promise.all(saved.map(async (file) => ({ name: file.name, text: await file.text() })));
    },
    Array.from({ length: howMany }, (_, n) => childOf(n)),
  );
  await page.close();
  return Promise.all(
    made.map(async ({ name, text }) => {
      const path = join(folder, name);
      await writeFile(path, text);
      return { name, path, text };
    }),
  );
}
