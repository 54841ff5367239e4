/** Two hands for the form: one holds a mouse, one has only keys. And the way a newcomer goes through the chapters. */
import type { Page } from 'playwright-core';
import { idOf, listAt, textAt, valueAt } from '../../../src/browser/maker/words.ts';
import type { Raw } from '../../../src/core/pack/front-matter.ts';
import type { Step } from '../../../src/core/pack/pack.ts';
import { phrasesFor } from '../../../src/core/languages/pick-language.ts';
import { makerForm, type FormNode } from '../../../src/outputs/maker-form.ts';

const phrases = phrasesFor('en');
const { maker: say } = phrases;
const chapters = makerForm(phrases);

export interface Hand {
  /** Presses the button with this name. */
  press(name: string): Promise<void>;
  /** Turns to a chapter, by its number from 0. */
  turnTo(chapter: number): Promise<void>;
  /** Is done with the stop that is open. */
  closeStop(): Promise<void>;
  type(id: string, text: string): Promise<void>;
  choose(id: string, value: string): Promise<void>;
  /** Ticks the box with this name within an element; without a name, the element itself. */
  tick(id: string, name?: string): Promise<void>;
  date(id: string, day: string): Promise<void>;
}

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).first();

export function byMouse(page: Page): Hand {
  const unfold = async (id: string): Promise<void> => {
    const folded = page.locator(`details:not([open]):has(#${id}) > summary`);
    while ((await folded.count()) > 0) await folded.first().click();
  };
  return {
    press: (name) => button(page, name).click(),
    turnTo: (chapter) => page.locator('.workbook button').nth(chapter).click(),
    closeStop: () => Promise.resolve(),
    type: async (id, text) => {
      await unfold(id);
      await page.locator(`#${id}`).click();
      await page.keyboard.insertText(text);
    },
    choose: async (id, value) => {
      await unfold(id);
      await page.locator(`#${id}`).selectOption(value);
    },
    tick: async (id, name) => {
      await unfold(id);
      const found = page.locator(`#${id}`);
      await (name === undefined ? found : found.getByLabel(name, { exact: true })).click();
    },
    date: (id, day) => page.locator(`#${id}`).fill(day),
  };
}

export function byKeys(page: Page): Hand {
  /** As many Tabs, or Shift and Tabs, as there are stops on the way, until what is wanted has the focus: no click and no script's help. */
  const goTo = async (selector: string): Promise<void> => {
    for (let round = 0; round < 60; round++) {
      const way = await page.evaluate((wanted) => {
        const target = document.querySelector(wanted);
        const here = document.activeElement;
        if (!target) return undefined;
        if (target === here) return 0;
        const stops = [...document.querySelectorAll('a[href], button:not(:disabled), input, select, textarea, summary, iframe')].filter((each) => each.checkVisibility());
        const goal = stops.indexOf(target);
        // What has the focus may be no stop of its own, as a heading is: then count from the last stop before it.
        const from = here && here !== document.body ? stops.findLastIndex((each) => each === here || here.compareDocumentPosition(each) & Node.DOCUMENT_POSITION_PRECEDING) : -1;
        return goal === from ? (stops[from] === here ? 0 : -1) : goal - from;
      }, selector);
      if (way === 0) return;
      if (way === undefined) await page.waitForSelector(selector, { state: 'attached', timeout: 10_000 });
      // A field for a day has three stops of its own, so the last steps are looked at one by one.
      else for (let step = Math.max(1, Math.abs(way) - 2); step > 0; step--) await page.keyboard.press(way < 0 ? 'Shift+Tab' : 'Tab');
    }
    throw new Error(`no way with the keys to ${selector}`);
  };
  const unfold = async (id: string): Promise<void> => {
    for (;;) {
      const folded = await page.evaluate((wanted) => {
        const found = [...document.querySelectorAll('details:not([open])')].find((each) => each.querySelector(wanted));
        document.querySelector('[data-test-fold]')?.removeAttribute('data-test-fold');
        found?.querySelector('summary')?.setAttribute('data-test-fold', '');
        return found !== undefined;
      }, `#${id}`);
      if (!folded) return;
      await goTo('[data-test-fold]');
      await page.keyboard.press('Enter');
    }
  };
  const marked = async (find: () => Promise<void>): Promise<void> => {
    await page.evaluate(() => document.querySelector('[data-test-goal]')?.removeAttribute('data-test-goal'));
    await find();
    await goTo('[data-test-goal]');
  };
  return {
    press: async (name) => {
      await marked(() => button(page, name).evaluate((each) => each.setAttribute('data-test-goal', '')));
      await page.keyboard.press('Enter');
    },
    turnTo: async (chapter) => {
      // Who comes to the end of a chapter turns the page there; the contents are a long way back.
      const onward = say.desk.next.replace('{title}', chapters[chapter]?.title ?? '');
      const goal = (await page.getByRole('button', { name: onward, exact: true }).count()) > 0 ? button(page, onward) : page.locator('.workbook button').nth(chapter);
      await marked(() => goal.evaluate((each) => each.setAttribute('data-test-goal', '')));
      await page.keyboard.press('Enter');
    },
    // The focus then stands on the stop's line, near the openings; the next stop is a few keys from there.
    closeStop: async () => {
      await marked(() => button(page, say.strip.close).evaluate((each) => each.setAttribute('data-test-goal', '')));
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => document.activeElement?.classList.contains('stop-line'));
    },
    type: async (id, text) => {
      await unfold(id);
      await goTo(`#${id}`);
      await page.keyboard.insertText(text);
    },
    choose: async (id, value) => {
      await unfold(id);
      await goTo(`#${id}`);
      for (let step = 0; step < 20; step++) {
        if ((await page.locator(`#${id}`).inputValue()) === value) return;
        await page.keyboard.press('ArrowDown');
      }
      throw new Error(`no choice ${value} at ${id}`);
    },
    tick: async (id, name) => {
      await unfold(id);
      const found = page.locator(`#${id}`);
      await marked(() => (name === undefined ? found : found.getByLabel(name, { exact: true })).evaluate((each) => each.setAttribute('data-test-goal', '')));
      await page.keyboard.press('Space');
    },
    date: async (id, day) => {
      await goTo(`#${id}`);
      const [year = '', month = '', date = ''] = day.split('-');
      await page.keyboard.type(`${month}${date}${year}`);
    },
  };
}

/** Makes a whole pack: chapter by chapter, each field that the wanted pack has. `after` looks at each chapter when it is filled in. */
export async function makePack(page: Page, hand: Hand, wanted: Raw, body: string, after: (chapter: number) => Promise<void> = () => Promise.resolve()): Promise<void> {
  await page.locator('#field-title').waitFor();
  for (const [index, chapter] of chapters.entries()) {
    // The readings come first, since each stop belongs to some.
    await hand.turnTo(index);
    await page.getByRole('heading', { level: 2, name: chapter.title, exact: true }).waitFor();
    if (chapter.id === 'stops') await fillStops(page, hand, wanted, chapter.fields[0]);
    else
      for (const node of chapter.fields)
        if (node.kind === 'body') await hand.type('field-body', body);
        else await fill(page, hand, wanted, node, node.path.split('.'));
    await after(index + 1);
  }
}

async function fillStops(page: Page, hand: Hand, wanted: Raw, node: FormNode | undefined): Promise<void> {
  const { item } = node ?? {};
  if (!item) throw new Error('no stops in the form');
  for (const index of listAt(wanted, ['stops']).keys()) {
    const opening = textAt(wanted, ['stops', index, 'at', 'opening']);
    await hand.press(say.strip.put.replace('{n}', opening));
    await page.waitForFunction((id) => document.activeElement?.id === id, idOf(['stops', index, 'at', 'cue']));
    for (const each of item.fields ?? []) {
      if (each.name === 'at') await hand.type(idOf(['stops', index, 'at', 'cue']), textAt(wanted, ['stops', index, 'at', 'cue']));
      else if (each.name !== 'id') await fill(page, hand, wanted, each, ['stops', index, each.name]);
    }
    await hand.closeStop();
  }
}

async function fill(page: Page, hand: Hand, wanted: Raw, node: FormNode, steps: readonly Step[]): Promise<void> {
  const value = valueAt(wanted, steps);
  const id = idOf(steps);
  if (value === undefined || (node.path === 'language' && value === 'en')) return;
  if (node.kind === 'group') {
    for (const each of node.fields ?? []) await fill(page, hand, wanted, each, [...steps, each.name]);
  } else if (node.kind === 'list' && node.item) {
    const { item } = node;
    const list = listAt(wanted, steps);
    if (item.choices) for (const each of list) await hand.tick(id, item.choices.find(([choice]) => choice === each)?.[1] ?? '');
    else
      for (const index of list.keys()) {
        if (item.kind === 'group') {
          await hand.press(say.items[node.path]?.[1] ?? '');
          const first = item.fields?.find((each) => !each.folded && each.name !== 'reading')?.name ?? '';
          await page.waitForFunction((wantedId) => document.activeElement?.id === wantedId, idOf([...steps, index, first]));
          for (const each of item.fields ?? []) if (each.name !== 'reading') await fill(page, hand, wanted, each, [...steps, index, each.name]);
        } else await hand.type(idOf([...steps, index]), textAt(wanted, [...steps, index]));
      }
  } else if (node.kind === 'yes or no') await hand.tick(id);
  else if (node.kind === 'date') await hand.date(id, textAt(wanted, steps));
  else if (node.choices || node.kind === 'reference' || node.path === 'language') await hand.choose(id, textAt(wanted, steps));
  else await hand.type(id, textAt(wanted, steps));
}
