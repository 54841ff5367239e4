/** How much of a book a pack quotes, by cases: lines of `field: text` in a pack about a book of 320 words, then what is counted and told. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../../src/core/check/check-pack.ts';
import { measurePassage } from '../../../src/core/measure/measure-passage.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

const passage = readFileSync(new URL('../../packs/one-mistake/copy-too-much/private/passage.txt', import.meta.url), 'utf8');

/** A pack that holds these texts, and nothing else of the book's. */
function packOf(lines: readonly string[]): string {
  const all = (field: string): readonly string[] => lines.filter((line) => line.startsWith(`${field}: `)).map((line) => JSON.stringify(line.slice(field.length + 2)));
  const one = (field: string, otherwise: string): string => all(field)[0] ?? JSON.stringify(otherwise);
  return `---
title: ${one('title', 'Uphill')}
language: ${lines.includes('language: es') ? 'es' : 'en'}
summary: Someone borrows something.
book: { title: ${one('book title', 'Uphill')}, author: Perrin Oake, openings: 12, words: 320, rights: ${lines.find((line) => line.startsWith('rights: '))?.slice(8) ?? 'in copyright'}, rights note: Ours to try. }
by: { name: The test shelf, licence: CC BY 4.0 }
for: { grades: [K], minutes: 60 }
readings: [{ reading: 1, purpose: Listen. }]
stops:
  - { id: one, at: { opening: 3, cue: ${one('cue', 'qqq')} }, ask: ${one('ask', 'Why?')}, kind: predict, depth: 1, answer: say, models: [${all('model')
    .map((text) => `{ text: ${text} }`)
    .join(', ')}] }
recording: { file: reading.webm, captions: reading.vtt, permission: Ours to try. }
pictures: [${all('alt')
    .map((text) => `{ file: a.png, alt: ${text} }`)
    .join(', ')}]
allow words: [${all('allow').join(', ')}]
---

${lines
  .filter((line) => line.startsWith('body: '))
  .map((line) => line.slice(6))
  .join('\n')}
`;
}

function measure(text: string, captions = '', passages: { passage: string | undefined; otherPassages?: readonly string[] } = { passage }) {
  const recordingFiles = [{ name: 'reading.vtt', format: 'captions' as const, bytes: 1, text: captions }];
  const read = readPack({ slug: 'uphill', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], recordingFiles, passage: undefined });
  if (!read.value) throw new Error(JSON.stringify(read.findings));
  return measurePassage(checkPack(read.value).value, passages);
}

describe('what a pack quotes', () => {
  test.each(casesIn('copy-safety'))('$title', ({ input, expected }) => {
    const lines = input.split('\n');
    const spoken = lines.filter((line) => line.startsWith('caption: ')).map((line, index) => `00:0${index}:00.000 --> 00:0${index}:30.000\n${line.slice(9)}\n`);
    const { value, findings } = measure(packOf(lines), spoken.length === 0 ? '' : `WEBVTT\n\n${spoken.join('\n')}`);
    const told = findings.filter((found) => found.code.startsWith('copy/')).map(({ code, level, facts }) => `${level} ${code} ${Object.values(facts).join(', ')}`);
    const { longestRun, words, most } = value?.copied ?? { longestRun: 0, words: 0, most: 0 };
    expect([`longest ${longestRun}, in all ${words} of ${most}`, ...told].join('\n')).toBe(expected);
  });

  test('a pack in another language is held against the passage that there is', () => {
    const text = packOf(['language: es', 'ask: «It squeaked like a gate, then like a goose, and then like seven geese in a bucket.» ¿Qué suena así?']);
    expect(measure(text, '', { passage: undefined, otherPassages: [passage] }).findings.map(({ code }) => code)).toEqual(['copy/long-quote']);
    expect(measure(text, '', { passage: undefined })).toEqual({ value: undefined, findings: [] });
  });

  test('a book that says one word 100,000 times is measured', () => {
    const { value, findings } = measure(packOf(['ask: Knock knock knock knock knock knock knock knock knock knock knock knock knock. Who is there?']), '', { passage: 'knock '.repeat(100_000) });
    expect(value?.copied).toMatchObject({ longestRun: 13, words: 13, most: 60 });
    expect(findings.filter(({ code }) => code === 'copy/long-quote')).toHaveLength(1);
  });
});
