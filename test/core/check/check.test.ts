/** What the checks tell, by the cases of test/core/cases/checks.txt: the first line of a case is a part of a sound pack, the others stand in its place. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkPack, rules } from '../../../src/core/check/check-pack.ts';
import { nothingAround } from '../../../src/core/check/surroundings.ts';
import { inOrder, stops } from '../../../src/core/finding.ts';
import { newPack } from '../../../src/core/pack/new-pack.ts';
import type { PictureFile } from '../../../src/core/pack/pack.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

const sound = readFileSync(new URL('../../packs/sound/the-wheelbarrow-goes-home/pack.md', import.meta.url), 'utf8');

function findingsOf(text: string, pictureFiles: readonly PictureFile[] = []) {
  const read = readPack({ slug: 'hen', file: 'pack.md', text, languageOfFile: undefined, pictureFiles, passage: undefined });
  if (!read.value) throw new Error(`not readable: ${JSON.stringify(read.findings)}`);
  return inOrder([...read.findings, ...checkPack(read.value).findings]);
}

describe('a check', () => {
  test.each(casesIn('checks'))('$title', ({ input, expected }) => {
    const [part = '', ...by] = input.split('\n');
    expect(sound).toContain(part);
    const axle: PictureFile = { name: 'axle.png', format: 'png', width: 10, height: 10 };
    const findings = findingsOf(
      sound.replace(part, () => by.join('\n')),
      expected.includes('axle.png') ? [axle] : [],
    ).filter((found) => found.code !== 'picture/not-named');
    expect(findings.map(({ place, code, facts }) => `${place.line}:${place.column} ${code} ${JSON.stringify(facts)}`).join('\n')).toBe(expected);
  });

  test.each(Object.keys(rules))('%s has nothing to tell about a sound pack', (name) => {
    const read = readPack({ slug: 'hen', file: 'pack.md', text: sound, languageOfFile: undefined, pictureFiles: [], passage: undefined });
    expect(read.value && [...(rules[name]?.(read.value, nothingAround) ?? [])]).toEqual([]);
  });
});

test('a new pack has blanks to fill in and no other fault', () => {
  const findings = findingsOf(newPack('the-paper-boat'));
  expect(new Set(findings.map((found) => found.code))).toEqual(new Set(['pack/blank', 'more/of-the-same']));
  expect(stops(findings)).toBe(true);
});

test('a new pack whose blanks are filled in is sound', () => {
  let blank = 0;
  const filled = newPack('the-paper-boat').replace(/«[^«»]*»/g, () => `A few plain words ${String(++blank)}`);
  expect(findingsOf(filled)).toEqual([]);
});

test('a picture that is suggested for a missing one is not told as lying about as well', () => {
  const text = sound.replace('home:\n', 'pictures:\n  - file: barow.png\n    alt: A barrow on a hill.\nhome:\n');
  const codes = findingsOf(text, [{ name: 'barrow.png', format: 'png', width: 10, height: 10 }]).map((found) => found.code);
  expect(codes).toEqual(['picture/missing-file']);
});
