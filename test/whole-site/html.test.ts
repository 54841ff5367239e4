/**
 * Every HTML file of the built site is sound HTML. Source of the rules: html-validate's recommended, document and a11y sets, after the HTML standard.
 * Left out: how a tag is spelt (case of the doctype, closing slashes, blanks at line ends), the length of a title, which is a pack's own,
 * and check sums for files that come from the same place as the page.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';
import { expect, test } from 'vitest';
import config from '../../.config/html-validate.json' with { type: 'json' };
import { builtSite, pagesIn } from './site.ts';

const site = await builtSite();
const pages = await pagesIn(site);
const validator = new HtmlValidate(new StaticConfigLoader(config as ConfigData));

test.each(pages)('/%s is sound HTML', async (page) => {
  const file = join(site, page === '' || page.endsWith('/') ? `${page}index.html` : page);
  const report = await validator.validateString(await readFile(file, 'utf8'), file);
  const told = report.results.flatMap((result) => result.messages.map((each) => `${each.line}:${each.column} ${each.ruleId} ${each.message}`));
  expect(told).toEqual([]);
});
