/** A library of any size for the reports: invented words, five stops a pack, no pictures. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Numbers from 0 to 1 that are the same each time (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Writes `count` invented packs below `content`, the same each time. */
export function writePacks(content: string, count: number): void {
  const random = seeded(20260301);
  const nouns = ['ferry', 'kettle', 'orchard', 'lantern', 'puddle', 'thimble', 'gate', 'sparrow', 'ladder', 'cellar', 'mitten', 'harbour'];
  const verbs = ['waits for', 'borrows', 'mends', 'follows', 'finds', 'carries', 'hides from', 'draws'];
  const pick = (list: readonly string[]) => list[Math.floor(random() * list.length)] ?? '';
  const sentence = () => `The ${pick(nouns)} ${pick(verbs)} the ${pick(nouns)}, and the ${pick(nouns)} ${pick(verbs)} the ${pick(nouns)}.`;
  const sentences = (number: number) => Array.from({ length: number }, sentence).join(' ');
  for (let index = 0; index < count; index++) {
    const stops = Array.from(
      { length: 5 },
      (_, stop) => `  - id: stop-${stop}
    at: { opening: ${stop * 2 + 1}, cue: "${pick(nouns)} by the ${pick(nouns)}" }
    ask: "What will the ${pick(nouns)} do, and how do you know?"
    kind: predict
    depth: ${1 + (stop % 4)}
    answer: ${stop % 2 === 0 ? 'write' : 'say'}
    or: draw
    frames: ["It will ___.", "It will ___ because ___."]
    models: [{ text: "It will wait." }, { text: "It will wait because ${sentence().toLowerCase().slice(0, -1)}." }]
    listen for: "${sentence()}"
    if quiet: "${sentence()}"
`,
    ).join('');
    const text = `---
title: "The ${pick(nouns)} and the ${pick(nouns)} ${index}"
language: en
summary: "${sentences(2)}"
book: { title: "The ${pick(nouns)} ${index}", author: Nobody, openings: 12, words: 300, rights: our own }
by: { name: The speed shelf, licence: CC0 1.0 }
for: { grades: [K, 1], minutes: 40 }
readings: [{ reading: 1, purpose: "${sentence()}" }]
stops:
${stops}words:
${Array.from({ length: 4 }, () => `  - { word: ${pick(nouns)}, meaning: "${sentence()}", situation: "${sentence()}" }\n`).join('')}home: { prompts: ["${sentence()}", "${sentence()}"] }
---

## About this book

${sentences(6)}

## After reading

${sentences(6)}
`;
    const pack = join(content, 'packs', `pack-${String(index).padStart(5, '0')}`);
    mkdirSync(pack, { recursive: true });
    writeFileSync(join(pack, 'pack.md'), text);
  }
}
