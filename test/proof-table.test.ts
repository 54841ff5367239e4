/** The numbers under Security in README are those of the table of proofs in DEVELOPERS.md, and every row of the table held. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { disagreements, promisedIn, readRows, toldIn, withTable } from './proof-table.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const read = (name: string) => readFileSync(join(root, name), 'utf8');

test('README promises what the table tells, and all of it held', () => {
  const told = toldIn(read('DEVELOPERS.md'));
  const promised = promisedIn(read('README.md'));
  expect(promised.length).toBeGreaterThan(3);
  expect(disagreements(promised, told)).toEqual([]);
  expect([...told].filter(([, { held }]) => !held)).toEqual([]);
});

describe('the table', () => {
  const row = { class: 'a build killed', cases: 1200, held: 1200, ms: 61_000, peakMB: 160 };
  const document = withTable('before\n<!-- table of proofs: written by `npm run prove -- --write` -->\nold\n<!-- end of the table of proofs -->\nafter\n', [row]);
  const readme = (number: string) => `# A\n\n## Security\n\n| What | Class | Cases |\n| --- | --- | --: |\n| Kills | a build killed | ${number} |\n\n## Next\n`;
  test('takes the old one’s place and leaves the rest', () => {
    expect(document).toContain('before\n');
    expect(document).toContain('| a build killed | 1200 | all | 61.0 s | 160 MB |');
    expect(document).not.toContain('old');
    expect(document).toMatch(/after\n$/);
  });
  test('agrees with a README of the same number, and with no other', () => {
    expect(disagreements(promisedIn(readme('1,200')), toldIn(document))).toEqual([]);
    expect(disagreements(promisedIn(readme('1,201')), toldIn(document))).toEqual(['README says 1201 of "a build killed", and the table 1200']);
    expect(disagreements([['a flood', 1]], toldIn(document))).toEqual(['README names "a flood", and the table has no such class']);
  });
  test('tells a class that did not hold', () => {
    const broken = withTable(document, [{ ...row, held: 1199 }]);
    expect(disagreements([['a build killed', 1200]], toldIn(broken))).toEqual(['README says 1200 of "a build killed", and the table 1200, not all held']);
  });
  test('has one row a class, the later one', () => {
    expect(readRows(`${JSON.stringify(row)}\n${JSON.stringify({ ...row, cases: 3 })}\n`)).toEqual([{ ...row, cases: 3 }]);
  });
});
