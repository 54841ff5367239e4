/**
 * Writes src/core/measure/syllable-exceptions-en.ts: the words of the CMU Pronouncing Dictionary that the rules of
 * syllables-en.ts would miscount. Run it again after changing those rules: `npx tsx test/outside/make-exceptions.ts`.
 */
import { writeFileSync } from 'node:fs';
import { syllablesInEnglish } from '../../src/core/measure/syllables-en.ts';
import { dictionaryCounts } from './dictionary-counts.ts';

const words = [...dictionaryCounts()].filter(([word]) => /^[a-z]+$/u.test(word));
// Short words first, so that an inflected word is tried only when its stem has found its place.
words.sort(([a], [b]) => a.length - b.length || (a < b ? -1 : 1));

const table = new Map<string, number>();
for (const [word, count] of words) if (syllablesInEnglish(word, table) !== count) table.set(word, count);

const lines: string[] = [];
for (const count of [...new Set(table.values())].sort((a, b) => a - b)) {
  const found = [...table].filter(([, each]) => each === count).map(([word]) => word);
  lines.push(`  ${String(count)}: \`\n${wrapped(found.sort())}\`,`);
}

writeFileSync(
  new URL('../../src/core/measure/syllable-exceptions-en.ts', import.meta.url),
  `/*
 * Made by test/outside/make-exceptions.ts; change that file, not this one.
 *
 * Syllable counts below are drawn from the CMU Pronouncing Dictionary, by way of cmu-pronouncing-dictionary 3.0.0
 * (ISC License, Copyright (c) 2015 Zeke Sikelianos). The dictionary's own notice:
 *
 * Copyright (C) 1993-2015 Carnegie Mellon University. All rights reserved.
 *
 * Redistribution and use in source and binary forms, with or without modification, are permitted provided that the
 * following conditions are met:
 * 1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following
 *    disclaimer. The contents of this file are deemed to be source code.
 * 2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the
 *    following disclaimer in the documentation and/or other materials provided with the distribution.
 *
 * This work was supported in part by funding from the Defense Advanced Research Projects Agency, the Office of Naval
 * Research and the National Science Foundation of the United States of America, and by member companies of the
 * Carnegie Mellon Sphinx Speech Consortium. We acknowledge the contributions of many volunteers to the expansion and
 * improvement of this dictionary.
 *
 * THIS SOFTWARE IS PROVIDED BY CARNEGIE MELLON UNIVERSITY \`\`AS IS'' AND ANY EXPRESSED OR IMPLIED WARRANTIES,
 * INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
 * DISCLAIMED. IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR ITS EMPLOYEES BE LIABLE FOR ANY DIRECT, INDIRECT,
 * INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE
 * GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF
 * LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT
 * OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
 */

/** Words that the rules would miscount, by the syllables they have. */
const wordsBySyllables: Readonly<Record<string, string>> = {
${lines.join('\n')}
};

/** Syllables of the words that the rules would miscount. */
export const exceptions: ReadonlyMap<string, number> = new Map(
  Object.entries(wordsBySyllables).flatMap(([count, words]) =>
    words.trim().split(/\\s+/u).map((word) => [word, Number(count)] as const),
  ),
);
`,
);
console.log(table.size, 'of', words.length, 'words');

function wrapped(found: readonly string[]): string {
  const rows: string[] = [''];
  for (const word of found) {
    const row = rows.at(-1) ?? '';
    if (row.length + word.length > 118) rows.push(word);
    else rows[rows.length - 1] = row === '' ? word : `${row} ${word}`;
  }
  return rows.join('\n');
}
