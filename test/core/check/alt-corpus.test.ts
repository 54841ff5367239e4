/**
 * How well the alt-text rules tell good alt texts from bad ones: precision (of what was told, how much was right) and recall (of what was to be
 * told, how much was told), over all and for each rule, on the set that they were mended against and on one that was held back.
 */
import { describe, expect, test } from 'vitest';
import type { AltContext, AltStop } from '../../../src/core/check/alt-text/alt-context.ts';
import { altCodes, checkAlt } from '../../../src/core/check/alt-text/check-alt.ts';
import type { Kind } from '../../../src/core/pack/pack.ts';
import { casesIn, type Case } from '../cases.ts';

const escapes: Readonly<Record<string, string>> = { '\\n': '\n', '\\s': ' ' };

/** A case of the files as the rules take it. */
function contextOf({ title, input }: Case): AltContext {
  const [first = '', ...lines] = input.split('\n');
  const [language = '', file = ''] = first.split(' ');
  const all = (name: string) => lines.flatMap((line) => (line.startsWith(`${name}: `) ? [line.slice(name.length + 2)] : []));
  const has = (name: string) => lines.includes(name);
  const unknown = lines.filter((line) => !/^(?:taught|stop|frame|model|bank|beside|other|in picture|names|maker|credit|why): .|^(?:link|decorative|about me)$/u.test(line));
  if (unknown.length > 0) throw new Error(`Not understood in "${title}": ${unknown.join(' / ')}`);
  const [kind = '', ask = ''] = all('stop').flatMap((line) => [line.split(': ', 1)[0] ?? '', line.slice(line.indexOf(': ') + 2)]);
  const stop: AltStop = {
    kind: kind as Kind,
    ask,
    about: has('about me') ? 'me' : 'character',
    frames: all('frame'),
    words: all('bank').flatMap((line) => line.split(', ')),
    models: all('model').map((text) => ({ text })),
  };
  const taught = all('taught');
  return {
    file,
    language,
    alt: title === '(none)' ? undefined : title.replace(/\\[ns]/gu, (escape) => escapes[escape] ?? ''),
    decorative: has('decorative'),
    use: has('link') ? 'link' : taught.length > 0 ? 'word picture' : 'illustration',
    known: [...taught, ...all('names').flatMap((line) => line.split(', '))],
    stop: ask === '' ? undefined : stop,
    beside: [...all('beside'), ...(ask === '' ? [] : [ask])],
    others: all('other').map((line) => ({ file: line.split(': ', 1)[0] ?? '', alt: line.slice(line.indexOf(': ') + 2) })),
    textInPicture: all('in picture')[0],
    makers: all('maker'),
    credit: all('credit')[0],
  };
}

interface Figures {
  readonly told: number;
  readonly toBeTold: number;
  readonly right: number;
  readonly precision: number;
  readonly recall: number;
}

function figuresOf(results: readonly { readonly expected: string; readonly got: string }[], code?: string): Figures {
  const isHit = (answer: string) => (code === undefined ? answer !== 'fine' : answer === code);
  const told = results.filter(({ got }) => isHit(got)).length;
  const toBeTold = results.filter(({ expected }) => isHit(expected)).length;
  const right = results.filter(({ expected, got }) => isHit(got) && got === expected).length;
  return { told, toBeTold, right, precision: told === 0 ? 1 : right / told, recall: toBeTold === 0 ? 1 : right / toBeTold };
}

function report(name: string, results: readonly { readonly title: string; readonly expected: string; readonly got: string }[]): void {
  const line = (what: string, f: Figures) => `${what.padEnd(32)} precision ${f.precision.toFixed(3)}  recall ${f.recall.toFixed(3)}  (told ${f.told}, to be told ${f.toBeTold}, right ${f.right})`;
  const wrong = results.filter(({ expected, got }) => expected !== got);
  const lines = [
    `\n${name}: ${results.length} alt texts, ${results.filter(({ expected }) => expected === 'fine').length} of them fine`,
    line('all', figuresOf(results)),
    ...altCodes.map((code) => line(code, figuresOf(results, code))),
    ...wrong.map(({ title, expected, got }) => `  "${title}": ${expected} expected, ${got} told`),
  ];
  // eslint-disable-next-line no-console -- the figures are to be read
  console.info(lines.join('\n'));
}

describe.each([
  { file: 'alt-texts', least: 0.95, each: true },
  { file: 'alt-texts-held-back', least: 0.9, each: false },
])('the alt texts in $file', ({ file, least, each }) => {
  const results = casesIn(file).map((one) => ({ title: one.title, expected: one.expected, got: checkAlt(contextOf(one))?.code ?? 'fine' }));
  report(file, results);

  test('expect only codes that there are', () => {
    const codes: readonly string[] = ['fine', ...altCodes];
    expect(results.filter(({ expected }) => !codes.includes(expected))).toEqual([]);
  });

  test(`are told with a precision and a recall above ${least}`, () => {
    const all = figuresOf(results);
    expect(all.toBeTold).toBeGreaterThan(20);
    expect(all.precision).toBeGreaterThan(least);
    expect(all.recall).toBeGreaterThan(least);
  });

  // A held-back set is too small to judge a rule by.
  const judged = each ? altCodes : [];
  test.each(judged)('%s has cases, and is as good by itself', (code) => {
    const figures = figuresOf(results, code);
    expect(figures.toBeTold).toBeGreaterThan(0);
    expect(figures.precision).toBeGreaterThan(least);
    expect(figures.recall).toBeGreaterThan(least);
  });
});
