/** How a pack's text is read, by the cases of test/core/cases. */
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../../src/core/check/check-pack.ts';
import { inOrder, type Finding } from '../../../src/core/finding.ts';
import { readFrontMatter, type Raw } from '../../../src/core/pack/front-matter.ts';
import { bodyHtml, isAllowedLink, readBody } from '../../../src/core/pack/markdown.ts';
import { nearest } from '../../../src/core/pack/nearest.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

function told({ place, level, code }: Finding): string {
  return `${place.line}:${place.column} ${level} ${code}`;
}

describe('front matter', () => {
  test.each(casesIn('front-matter'))('$title', ({ input, expected }) => {
    const { value, findings } = readFrontMatter(`${input}\n`, 'pack.md');
    expect([...leaves(value?.raw ?? {}), ...inOrder(findings).map(told)].join('\n')).toBe(expected);
  });

  function leaves(raw: Raw, path = ''): readonly string[] {
    if (typeof raw === 'string') return [`${path} = ${raw}`];
    return Object.entries(raw).flatMap(([key, value]) => leaves(value, path === '' ? key : `${path}.${key}`));
  }

  test('of files with Windows or old Macintosh line ends, or a byte order mark, says the same at the same lines', () => {
    const text = '---\ntitle: Hen\nlanguage: en\ntitle: Goose\n---\n\nText.\n';
    const findingsOf = (changed: string) => readPack({ slug: 'hen', file: 'pack.md', text: changed, languageOfFile: undefined, pictureFiles: [], passage: undefined }).findings.map(told);
    const expected = findingsOf(text);
    expect(expected).toEqual(['4:1 stop yaml/duplicate']);
    for (const changed of [text.replaceAll('\n', '\r\n'), text.replaceAll('\n', '\r'), `\ufeff${text}`]) expect(findingsOf(changed)).toEqual(expected);
  });

  test('of a file with thousands of faults tells ten of a kind and how many more', () => {
    const { findings } = readFrontMatter(`---\na: &a x\n${Array.from({ length: 3000 }, (_, index) => `b${index}: *a`).join('\n')}\n---\n`, 'pack.md');
    const kept = inOrder(findings);
    expect(kept).toHaveLength(11);
    expect(kept.at(-1)).toMatchObject({ code: 'more/of-the-same', facts: { code: 'yaml/alias', more: 2990 } });
  });
});

describe('links', () => {
  test.each(casesIn('links'))('$title', ({ input, expected }) => {
    const allowed = input.split('\n').filter(isAllowedLink);
    expect(allowed.length === 0 ? '(none)' : allowed.join('\n')).toBe(expected);
  });
});

describe('the body', () => {
  test.each(casesIn('body'))('$title', ({ input, expected }) => {
    const { body, findings } = readBody(input, 1, 'pack.md', ['hen.png']);
    const html = bodyHtml(body, { topHeading: 3, tableName: 'A table', showPicture: (file, alt) => `<!${file}: ${alt}!>` });
    expect([...inOrder(findings).map(told), html.trim()].join('\n')).toBe(expected);
  });
});

describe('the word that was meant', () => {
  const words = ['title', 'language', 'summary', 'book', 'readings', 'stops', 'words'];
  test.each(casesIn('nearest'))('$title', ({ input, expected }) => {
    expect(
      input
        .split('\n')
        .map((word) => nearest(word, words) ?? '(none)')
        .join('\n'),
    ).toBe(expected);
  });
});

/** The fields that each case of places.txt has below the line on which it begins. */
const rest: Readonly<Record<string, string>> = {
  summary: 'summary: The hen bakes.',
  book: 'book: { title: Hen, author: A. Wren, openings: 12, words: 200, rights: our own }',
  by: 'by: { name: The test shelf, licence: CC BY 4.0 }',
  for: 'for: { grades: [K], minutes: 20 }',
  readings: 'readings: [{ reading: 1, purpose: Bake along. }]',
  stops: 'stops: []',
};

describe('places', () => {
  test.each(casesIn('places'))('$title', ({ input, expected }) => {
    const given = new Set(input.split('\n').flatMap((line) => /^([a-z]+):/.exec(line)?.[1]?.replace('sumary', 'summary') ?? []));
    const others = Object.entries(rest).flatMap(([name, line]) => (given.has(name) ? [] : [line]));
    const text = ['---', 'title: Hen', 'language: en', input, ...others, '---', ''].join('\n');
    const read = readPack({ slug: 'hen', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
    const findings = inOrder([...read.findings, ...(read.value ? checkPack(read.value).findings : [])]);
    const lines = findings.map((found) => [told(found), fieldOf(found)].join(' ').trimEnd());
    expect([...lines, ...(read.value?.partial === true ? ['partial'] : [])].join('\n')).toBe(expected);
  });

  function fieldOf({ code, facts }: Finding): string {
    return code.startsWith('pack/') && 'field' in facts ? facts.field : '';
  }
});
