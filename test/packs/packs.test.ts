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
import { sayFinding } from '../../src/core/languages/say-finding.ts';

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
  'page/address-taken': 'test/build/own-pages.test.ts',
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

/** All that was told about the packs here, for its sentences. */
const all: Finding[] = [];

/** What is told about each pack of a folder: `line:column level code`, under the pack's name. */
async function toldAbout(folder: string): Promise<ReadonlyMap<string, readonly string[]>> {
  const library = mkdtempSync(join(tmpdir(), 'bookfellow-packs-'));
  libraries.push(library);
  cpSync(join(here, folder), join(library, 'packs'), { recursive: true });
  cpSync(join(here, 'library.yaml'), join(library, 'library.yaml'));
  // A fixed day: a review that is fresh today is long past one day.
  const { findings } = await readWholeLibrary(library, '2026-11-25');
  all.push(...inOrder(findings));
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

/** A finding of a code that no pack here can give, with facts as such a finding has them. */
const others = (
  [
    ['file/unreadable', { reason: 'EACCES' }],
    ['file/too-big', { kilobytes: 2048, most: 512 }],
    ['file/link', { name: 'pack.md' }],
    ['file/not-a-file', { name: 'pack.md' }],
    ['folder/name', { folder: 'My Hen!', suggestion: 'my-hen' }],
    ['folder/no-pack', { folder: 'hen' }],
    ['yaml/too-many', { most: 4000 }],
    ['body/too-long', { found: 90000, most: 50000 }],
    ...(['missing', 'not a folder', 'link', 'unreadable', 'twice'] as const).map((why) => ['source/folder', { owner: 'Saltmarsh School', folder: '/srv/packs', why }] as const),
    ...[{ by: 'pages/about.md' }, {}].map((by) => ['page/address-taken', { address: 'about/', ...by }] as const),
    ['source/clash', { slug: 'hen', others: ['packs/hen', '/srv/packs/hen'] }],
    ['library/contrast', { field: 'ink', found: '#ccc', paper: '#fff', ratio: 1.6, least: 4.5, nearest: '#767676' }],
    ...(['missing', 'format', 'unreadable', 'too large'] as const).map((problem) => ['library/logo', { file: 'logo.png', problem }] as const),
    ['library/logo-alt', { languages: ['ar', 'en'] }],
    ...(['missing', 'syntax', 'import', 'no function', 'failed', 'refused', 'no heading', 'link'] as const).map((problem) => ['library/layout', { part: 'footer', problem, detail: 'x.y is no function' }] as const),
    ['recording/too-large', { file: 'hen.mp4', megabytes: 900, most: 200 }],
    ['paper/no-program', { machine: 'linux riscv64' }],
    ['paper/not-made', { sheet: 'hen/lesson.a4', reason: 'unknown font' }],
    ['paper/letters', { characters: '☂' }],
  ] as const
).map(([code, facts]) => ({ code, facts, level: 'note', place: { file: 'pack.md', line: 1, column: 1 } }) as Finding);

describe('what is told', () => {
  test.each(['en', 'es', 'ar'])('can be said in %s', (language) => {
    const codes = new Set([...all, ...others].map(({ code }) => code));
    expect(Object.keys(findingsInEnglish).filter((code) => !codes.has(code as Code))).toEqual([]);
    for (const found of [...all, ...others]) {
      const said = sayFinding(found, language);
      expect(said, found.code).not.toMatch(/undefined|NaN|\[object/u);
      if (language !== 'en') expect(said, found.code).not.toBe(sayFinding(found, 'en'));
    }
  });

  // Names of formats are a single word each, and the Unicode rules set a single word right. All else (fields, file names, texts out of a pack) would take its dots and colons along to the wrong side.
  const formats = /\b(?:PNG|JPEG|WebP|YAML|UTF-8|TSX|PDF|WebM|MP4|WebVTT|INFLESZ)\b/g;

  test('in Arabic keeps names and texts in Latin letters apart from the sentence', () => {
    for (const found of [...all, ...others]) {
      const said = sayFinding(found, 'ar');
      const sentence = said.replace(/[\u2066\u2068][^\u2066-\u2069]*\u2069/gu, '');
      expect(sentence, said).not.toMatch(/[\u2066-\u2069]/u);
      expect(sentence.replace(formats, ''), said).not.toMatch(/\p{Script=Latin}/u);
      expect(sentence, said).toMatch(/\p{Script=Arabic}{3}/u);
    }
  });

  test('in Arabic shows by name what would steer a terminal', () => {
    expect(sayFinding({ code: 'file/link', facts: { name: 'a\u202eb\u2069' }, level: 'stop', place: { file: '', line: 1, column: 1 } }, 'ar')).toContain('«\u2068a‹U+202E›b‹U+2069›\u2069»');
  });
});
