/** What README tells of headers is what the file `_headers` holds. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { headers, headersFile } from '../../src/outputs/headers.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

test('each header of the file stands in the README with its value', () => {
  for (const [pattern, lines] of headers) {
    for (const [name, value] of Object.entries(lines)) {
      const told = readme.split('\n').find((line) => line.startsWith(`| \`${name}\`${pattern === '/*' ? '' : `, for \`${pattern.replace('*', '')}\``} |`));
      expect(told, `${name} for ${pattern}`).toContain(`\`${value}\``);
    }
  }
});

test('the file has a pattern on a line of its own, and below it a header a line, set in', () => {
  expect(headersFile().text).toMatch(/^(?:\/\S*\n(?: {2}[A-Z][\w-]*: \S.*\n)+)+$/);
});
