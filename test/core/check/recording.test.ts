/** Recordings: captions by the cases of test/core/cases/captions.txt, and what is told of a film too large to be published. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { mostFilmMegabytes, recording } from '../../../src/core/check/recording.ts';
import { captionsText, readCaptions } from '../../../src/core/pack/captions.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { stopsWithTimes, transcriptOf } from '../../../src/outputs/transcript.ts';
import { casesIn } from '../cases.ts';

describe('captions', () => {
  test.each(casesIn('captions'))('$title', ({ input, expected }) => {
    const { captions, fault } = readCaptions(input);
    const told = captions.map(({ begins, ends, lines }) => `${begins}-${ends}: ${lines.join(' / ')}`);
    expect([...told, ...(fault ? [`line ${fault.line}: ${fault.why}`] : [])].join('\n')).toBe(expected);
    if (!fault) expect(readCaptions(captionsText(captions)).captions.map(({ lines, begins, ends }) => [begins, ends, lines])).toEqual(captions.map(({ lines, begins, ends }) => [begins, ends, lines]));
  });
});

const folder = 'content/packs/the-crow-and-the-tall-jar';
const captions = readFileSync(`${folder}/recording/the-crow.vtt`, 'utf8');
const crow = (bytes: number) => {
  const { value } = readPack({
    slug: 'crow',
    file: 'pack.md',
    text: readFileSync(`${folder}/pack.md`, 'utf8'),
    languageOfFile: undefined,
    pictureFiles: [],
    recordingFiles: [
      { name: 'the-crow.webm', format: 'webm', bytes },
      { name: 'the-crow.vtt', format: 'captions', bytes: captions.length, text: captions },
    ],
    passage: undefined,
  });
  if (!value) throw new Error('the demo pack cannot be read');
  return value;
};

test('a film of a hundred megabytes is too large to be published, one of six hundred kilobytes is not', () => {
  expect([...recording(crow(100 * 1024 * 1024))]).toMatchObject([{ code: 'recording/too-large', level: 'stop', facts: { megabytes: 100, most: mostFilmMegabytes } }]);
  expect([...recording(crow(640_000))]).toEqual([]);
});

test('the text to read along has each stop behind the sentence of its cue', () => {
  const pack = crow(640_000);
  const parts = transcriptOf(readCaptions(captions).captions, stopsWithTimes(pack));
  const letters = (text: string) => text.toLowerCase().replace(/[^a-z ]/g, '');
  const found = parts.flatMap((part, index) => {
    const before = parts[index - 1];
    return part.kind === 'stop' ? [[part.stop.at.cue, before?.kind === 'text' && letters(before.text.split(/(?<=[.!?]”?) /).at(-1) ?? '').includes(letters(part.stop.at.cue))]] : [];
  });
  expect(found).toEqual(pack.stops.map((stop) => [stop.at.cue, true]));
});
