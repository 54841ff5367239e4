/**
 * Every HTML file of the built site is sound HTML. Source of the rules: html-validate's recommended, document and a11y sets, after the HTML standard.
 * Left out: how a tag is spelt (case of the doctype, closing slashes, blanks at line ends), the length of a title, which is a pack's own,
 * submit buttons in forms that work as one chooses and are never sent, and check sums for files that come from the same place as the page.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';
import { expect, test } from 'vitest';
import { builtSite, pagesIn } from './site.ts';

const site = await builtSite();
const pages = await pagesIn(site);
const config = JSON.parse(await readFile(new URL('../../.config/html-validate.json', import.meta.url), 'utf8')) as ConfigData;
const validator = new HtmlValidate(new StaticConfigLoader(config));

test.each(pages)('/%s is sound HTML', async (page) => {
  const file = join(site, page === '' || page.endsWith('/') ? `${page}index.html` : page);
  const report = await validator.validateString(await readFile(file, 'utf8'), file);
  const told = report.results.flatMap((result) => result.messages.map((each) => `${each.line}:${each.column} ${each.ruleId} ${each.message}`));
  expect(told).toEqual([]);
});
