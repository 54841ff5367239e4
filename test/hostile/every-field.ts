/** A pack in which every field that takes any text holds `few` (where 40 characters are the most) or `many`. */
export function everyField(few: string, many: string, body: string): string {
  const [f, m] = [JSON.stringify(few), JSON.stringify(many)];
  return `---
title: ${m}
language: en
summary: ${m}
book: { title: ${m}, author: ${m}, illustrator: ${m}, year: 2001, publisher: ${m}, openings: 12, words: 300, rights: in copyright, rights note: ${m} }
by: { name: ${m}, school: ${m}, licence: ${m}, reviewed: 2026-03-02, version: "1", based on: ${m} }
for: { grades: [K, 1], minutes: 60 }
aims: [{ skill: ${m}, standard: { framework: ${m}, code: ${f}, uri: "https://standards.example/?a=%22%3E%3Cb&b='x'", paraphrase: ${m} } }]
readings: [{ reading: 1, purpose: ${m}, must ask: one }, { reading: 2, purpose: ${m} }]
stops:
  - { id: one, at: { opening: 2, cue: ${m}, picture: hidden }, readings: [1], ask: ${m}, kind: predict, depth: 2, answer: draw, or: say, seated: ${m}, materials: [${m}], listen for: ${m}, if quiet: ${m}, expand: ${m} }
  - { id: constructor, at: { opening: 5, cue: ${m} }, ask: ${m}, kind: feeling, about: character, depth: 3, answer: write, or: say, frames: [${m}, ${m}], words: [${f}], models: [{ text: ${m}, shows: [${f}] }, { text: ${m} }], must: true }
words: [{ word: ${f}, meaning: ${m}, situation: ${m}, first met: 2, gesture: ${m}, in other languages: { es: ${m} } }]
feelings: [{ word: ${f}, family: sad, strength: 1, situation: ${m} }]
questions: [{ ask: ${m}, depth: 2, models: [{ text: ${m} }] }]
rubric: [{ trait: ${f}, meets: ${m}, not yet: ${m}, example: ${m} }]
rating: { ask: ${m}, out of: 5, reasons: [${m}] }
home: { prompts: [${m}], example: [{ who: child, says: ${m} }], note: ${m} }
care: [${m}]
allow words: [${f}]
---

${body}
`;
}
