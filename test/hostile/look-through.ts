/** What a browser makes of built pages: which elements and attributes there are, and what happens when a page is opened. */
import type { Browser, Page } from 'playwright-core';

/** A page of the site: where it stands, its text, and what it must show. */
export interface BuiltPage {
  readonly url: string;
  readonly html: string;
  readonly shows: readonly string[];
}

/** Every `element attribute` of the pages, and every element alone. */
export async function marksOf(page: Page, pages: readonly BuiltPage[]): Promise<ReadonlySet<string>> {
  const marks = await page.evaluate(
    (texts) =>
      texts.flatMap((text) =>
        [...new DOMParser().parseFromString(text, 'text/html').querySelectorAll('*')].flatMap((each) => [each.localName, ...[...each.attributes].map(({ name }) => `${each.localName} ${name}`)]),
      ),
    pages.map(({ html }) => html),
  );
  return new Set(marks);
}

/** What is wrong with pages as they are written: marks that no good page has, scripts and addresses that run, ids that stand in for a property of the document, texts that are not shown. Of each page the first few. */
export async function faultsIn(page: Page, pages: readonly BuiltPage[], known: ReadonlySet<string>): Promise<readonly (readonly string[])[]> {
  return page.evaluate(
    ([all, allowed]) => {
      const marks = new Set(allowed);
      const plain = (words: string) => words.replace(/\s+/g, ' ').trim();
      const icon = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 32 32'";
      return all.map(({ html, shows }) => {
        const found = new Set<string>();
        const made = new DOMParser().parseFromString(html, 'text/html');
        for (const each of made.querySelectorAll('*')) {
          if (!marks.has(each.localName)) found.add(`the element ${each.outerHTML.slice(0, 120)}`);
          for (const { name, value } of each.attributes) {
            if (!marks.has(`${each.localName} ${name}`) || name.startsWith('on')) found.add(`the attribute ${name} of ${each.outerHTML.slice(0, 120)}`);
            const leads = ['href', 'src', 'srcset', 'poster', 'data', 'action'].includes(name) && /^\s*[a-z][a-z0-9+.-]*:/i.test(value);
            if (leads && !/^(?:https?|mailto|tel):/.test(value) && !value.startsWith(icon)) found.add(`the address ${value.slice(0, 120)}`);
            const names = (name === 'id' || name === 'name') && each.localName !== 'meta';
            if (names && (value in document || value in HTMLFormElement.prototype || value in Object.prototype)) found.add(`the ${name} ${value}`);
          }
        }
        const shown = plain(made.querySelector('main')?.textContent ?? '');
        for (const words of shows) if (!shown.includes(plain(words))) found.add(`not shown: ${words}`);
        return [...found].slice(0, 5);
      });
    },
    [pages, [...known]] as const,
  );
}

/** Opens pages one after the other, and tells what ran, what was asked of other places, and what the browser complains of. */
export async function faultsWhenOpened(browser: Browser, address: string, urls: readonly string[]): Promise<readonly string[]> {
  const found: string[] = [];
  const context = await browser.newContext();
  await context.addInitScript(() => {
    Object.assign(window, {
      canary: () => {
        throw new Error('the canary was called');
      },
    });
    document.addEventListener('securitypolicyviolation', (event) => {
      reportError(new Error(`against the policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`));
    });
  });
  const page = await context.newPage();
  let here = '';
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') found.push(`${here}: ${message.text()}`);
  });
  page.on('pageerror', (error) => found.push(`${here}: ${error.message}`));
  page.on('dialog', (dialog) => {
    found.push(`${here}: a dialog, ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(address)) found.push(`${here}: asked ${request.url()}`);
  });
  page.on('framenavigated', (frame) => {
    if (!frame.url().startsWith(address) && frame.url() !== 'about:blank') found.push(`${here}: went to ${frame.url()}`);
  });
  for (const url of urls) {
    here = url;
    await page.goto(address + url, { waitUntil: 'load' });
  }
  await context.close();
  return found;
}
