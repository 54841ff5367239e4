import { readPack } from '../../../src/core/pack/read-pack.ts';
import type { Pack } from '../../../src/core/pack/pack.ts';

/** A pack of five stops and three readings, read as an author would write it. */
export function samplePack(minutes = 20): Pack {
  const read = readPack({
    slug: 'the-borrowed-ladder',
    file: 'packs/the-borrowed-ladder/pack.md',
    languageOfFile: undefined,
    pictureFiles: [],
    passage: undefined,
    text: `---
title: The Borrowed Ladder
language: en
summary: A ladder goes from house to house.
book: {title: The Borrowed Ladder, author: Odile Warrender, openings: 10, words: 520, rights: our own}
by: {name: P. Quillfeather, licence: CC BY 4.0}
for: {grades: [K, "1"], minutes: ${String(minutes)}}
readings:
  - {reading: 1, purpose: Follow the ladder.}
  - {reading: 2, purpose: Look at the neighbors., must ask: ask-back}
  - {reading: 3, purpose: Tell it yourselves.}
stops:
  - {id: guess, at: {opening: 2, cue: leaned on the gate}, readings: [1], ask: Who is it for?, kind: predict, depth: 2, answer: say, value: 3}
  - {id: tall, at: {opening: 4, cue: taller than the pear tree}, readings: [1, 2], ask: How does Bo feel?, kind: feeling, depth: 2, answer: write, value: 6, must: true}
  - {id: ask-back, at: {opening: 6, cue: and nobody asked, picture: hidden}, readings: [1, 2], ask: Why does nobody ask?, kind: reason, depth: 3, answer: partner, value: 8, after: tall}
  - {id: climb, at: {opening: 8, cue: up the last rung}, readings: [2, 3], ask: Show how she climbs., kind: retell, depth: 1, answer: act, shares: 0}
  - {id: mine, at: {opening: 9, cue: home again}, readings: [3], ask: What have you borrowed?, kind: own life, depth: 2, answer: draw, after: tall, must: true}
---
Read it slowly.
`,
  });
  if (!read.value) throw new Error(JSON.stringify(read.findings));
  return read.value;
}
