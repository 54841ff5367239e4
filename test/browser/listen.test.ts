/** Questions and words that can be heard: only with a voice of the device in the language of the page. The voices are stand-ins that tell what they are given. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { siteInBrowser } from '../whole-site/site-in-browser.ts';

const here = siteInBrowser();

interface Voice {
  readonly lang: string;
  readonly localService: boolean;
}

async function withVoices(path: string, voices: readonly Voice[], late = false): Promise<Page> {
  const context = await here.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript(
    ({ voices, late }) => {
      const heard: string[] = [];
      const listeners: (() => void)[] = [];
      let there = !late;
      const synthesis = {
        getVoices: () => (there ? voices : []),
        addEventListener: (_: string, listener: () => void) => listeners.push(listener),
        cancel: () => undefined,
        speak: (utterance: { text: string; onend?: () => void; voice: Voice }) => {
          heard.push(utterance.text.trim());
          setTimeout(() => utterance.onend?.(), 1500);
        },
      };
      Object.defineProperty(window, 'speechSynthesis', { value: synthesis });
      Object.defineProperty(window, 'SpeechSynthesisUtterance', {
        value: class {
          constructor(readonly text: string) {}
        },
      });
      Object.assign(window, {
        heard,
        voicesCome: () => {
          there = true;
          for (const listener of listeners) listener();
        },
      });
    },
    { voices, late },
  );
  await page.goto(here.server.address + path);
  return page;
}
const buttons = (page: Page) => page.$$eval('.listen', (all) => all.length);
const heard = (page: Page) => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
const home = 'packs/the-crow-and-the-tall-jar/';

test.each([
  ['no voice at all', []],
  ['only a voice that would send the text away', [{ lang: 'en-US', localService: false }]],
  ['only a voice in another language', [{ lang: 'fr-FR', localService: true }]],
])('with %s there is no button', async (_, voices) => {
  const page = await withVoices(home, voices);
  await page.waitForLoadState('load');
  expect(await buttons(page)).toBe(0);
  await page.context().close();
});

test('a voice that comes late brings the buttons', async () => {
  const page = await withVoices(home, [{ lang: 'en_US', localService: true }], true);
  expect(await buttons(page)).toBe(0);
  await page.evaluate(() => {
    (window as unknown as { voicesCome: () => void }).voicesCome();
  });
  expect(await buttons(page)).toBeGreaterThan(4);
  await page.context().close();
});

test('a question is heard sentence by sentence, the sentence is marked, and a second press stops it', async () => {
  const page = await withVoices('es/packs/tomato-weather/', [
    { lang: 'en-US', localService: true },
    { lang: 'es-MX', localService: true },
  ]);
  const question = page.locator('.prompts [data-listen-to]').first();
  const text = (await question.textContent()) ?? '';
  const button = page.locator('.prompts .listen').first();
  expect(await button.textContent()).toBe('Escuchar');
  await button.click();
  expect(await button.textContent()).toBe('Parar');
  expect(await page.locator('.is-heard').count()).toBe(1);
  await page.waitForFunction(() => document.querySelectorAll('.is-heard').length === 0);
  const said = await heard(page);
  expect(said.join(' ')).toBe(text.trim());
  expect(said.length).toBeGreaterThan(0);
  expect(await button.textContent()).toBe('Escuchar');
  await button.click();
  await button.click();
  expect(await page.locator('.is-heard').count()).toBe(0);
  expect(await question.textContent()).toBe(text);
  await page.context().close();
});
