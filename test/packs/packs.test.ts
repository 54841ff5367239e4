/**
 * The packs beside this file. `one-mistake/` holds for each code a small pack with exactly that mistake and what is to be
 * told about it; `sound/` holds packs that nothing is to be told about. All are read in one run, as a library is.
 */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { inOrder, type Code, type Finding } from '../../src/core/finding.ts';
import { findingsInEnglish } from '../../src/core/languages/en-findings.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
const libraries: string[] = [];
afterAll(() => {
  for (const library of libraries) rmSync(library, { recursive: true });
});

/** Codes that no file of a pack can give, and the tests that show them. */
const shownElsewhere: Partial<Record<Code, string>> = {
  'file/unreadable': 'test/build/read-content.test.ts',
  'file/too-big': 'test/build/read-content.test.ts',
  'file/link': 'test/build/read-content.test.ts',
  'file/not-a-file': 'test/build/read-content.test.ts',
  'folder/name': 'test/build/read-content.test.ts',
  'folder/no-pack': 'test/build/read-content.test.ts',
  'yaml/too-many': 'test/core/pack/limits.test.ts',
  'body/too-long': 'test/core/pack/limits.test.ts',
  'source/folder': 'test/build/sources.test.ts',
  'source/clash': 'test/build/sources.test.ts',
  'library/contrast': 'test/core/pack/theme.test.ts',
  'library/logo': 'test/build/own-look.test.ts',
  'library/logo-alt': 'test/build/own-look.test.ts',
  'library/layout': 'test/build/own-look.test.ts',
  'recording/too-large': 'test/core/check/recording.test.ts',
  'paper/no-program': 'test/build/papers.test.ts',
  'paper/not-made': 'test/build/papers.test.ts',
  'paper/letters': 'test/build/papers.test.ts',
};

/** What is told about each pack of a folder: `line:column level code`, under the pack's name. */
async function toldAbout(folder: string): Promise<ReadonlyMap<string, readonly string[]>> {
  const library = mkdtempSync(join(tmpdir(), 'bookfellow-packs-'));
  libraries.push(library);
  cpSync(join(here, folder), join(library, 'packs'), { recursive: true });
  cpSync(join(here, 'library.yaml'), join(library, 'library.yaml'));
  // A fixed day: a review that is fresh today is long past one day.
  const { findings } = await readWholeLibrary(library, '2026-11-25');
  const told = new Map<string, string[]>();
  for (const found of inOrder(findings)) {
    const [, slug = '', file = ''] = found.place.file.split('/');
    told.set(slug, [...(told.get(slug) ?? []), lineOf(found, file)]);
  }
  return told;
}

function lineOf({ place, level, code }: Finding, file: string): string {
  return `${file === 'pack.md' ? '' : `${file}:`}${place.line}:${place.column} ${level} ${code}`;
}

const oneMistake = readdirSync(join(here, 'one-mistake')).sort();
const toldAboutMistakes = await toldAbout('one-mistake');

describe('a pack with one mistake', () => {
  test.each(oneMistake)('%s: is told that, at its place, and nothing else', (name) => {
    const expected = readFileSync(join(here, 'one-mistake', name, 'expected.txt'), 'utf8').trimEnd();
    expect((toldAboutMistakes.get(name) ?? []).join('\n')).toBe(expected);
  });

  test.each(Object.keys(findingsInEnglish) as Code[])('there is one for %s, or a test elsewhere', (code) => {
    const elsewhere = shownElsewhere[code];
    if (elsewhere === undefined) expect(toldAboutMistakes.get(code.replace('/', '-'))?.join('\n')).toContain(` ${code}`);
    else expect(existsSync(join(here, '../..', elsewhere)) && readFileSync(join(here, '../..', elsewhere), 'utf8').includes(code)).toBe(true);
  });
});

const toldAboutSound = await toldAbout('sound');

test.each(readdirSync(join(here, 'sound')))('nothing is told about the sound pack %s', (name) => {
  expect(toldAboutSound.get(name) ?? []).toEqual([]);
});
