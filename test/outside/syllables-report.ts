/**
 * How far the English syllable counter agrees with the CMU Pronouncing Dictionary and with counts by hand, honestly:
 * `npx tsx test/outside/syllables-report.ts`. The table of exceptions is made from the same dictionary, so agreement by
 * type shows that nothing was lost on the way; what the rules do with unseen words is the line without the table.
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { sentencesOf } from '../../src/core/measure/sentences.ts';
import { countText } from '../../src/core/measure/count-text.ts';
import { exceptions } from '../../src/core/measure/syllable-exceptions-en.ts';
import { syllablesInEnglish } from '../../src/core/measure/syllables-en.ts';
import { plainWord, tokensOf } from '../../src/core/measure/words.ts';
import { dictionaryCounts, listedCounts } from './dictionary-counts.ts';
import { passages } from './passages.ts';

const dictionary = dictionaryCounts();
const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(2)} %`;

const plain = [...dictionary].filter(([word]) => /^[a-z]+$/u.test(word));
const contracted = [...dictionary].filter(([word]) => /^[a-z]+'[a-z]+$/u.test(word));
const agree = (words: readonly (readonly [string, number])[], table = exceptions): string => percent(words.filter(([word, count]) => syllablesInEnglish(word, table) === count).length, words.length);
console.log('by type,', plain.length, `plain words: ${agree(plain)}; by the rules alone ${agree(plain, new Map())}`);
console.log('by type,', contracted.length, `words with an apostrophe: ${agree(contracted)}`);
console.log(`held out: ${heldOut()}`);

const publicDomain = passages.filter((each) => !each.own);
const running = publicDomain.flatMap(({ text }) => text.split(/\n\n/u).flatMap((block) => sentencesOf(tokensOf(block), 'en').flat()));
let asTaken = 0;
let asListed = 0;
let covered = 0;
const differing = new Set<string>();
for (const { word } of running) {
  const key = plainWord(word);
  const count = dictionary.get(key);
  if (count === undefined) continue;
  covered += 1;
  const ours = syllablesInEnglish(word);
  if (listedCounts(key).includes(ours)) asListed += 1;
  if (ours === count) asTaken += 1;
  else differing.add(`${word} ${String(ours)} (${String(count)})`);
}
console.log('running words of', publicDomain.length, 'passages:', running.length, 'of which in the dictionary:', covered);
console.log(`  equal to the pronunciation taken: ${percent(asTaken, covered)}; to one that is listed: ${percent(asListed, covered)}`);
console.log(`  differing: ${[...differing].join(', ') || 'none'}`);
const first = running.filter(({ word }) => listedCounts(plainWord(word))[0] === syllablesInEnglish(word)).length;
console.log(`  equal to the first pronunciation: ${percent(first, covered)}`);

console.log('ours, then by hand: sentences, syllables, words of three or more');
for (const { name, text, counts } of passages) {
  const { sentences, syllables, polysyllables } = countText(text, 'en');
  console.log(`  ${name}:`, sentences, syllables, polysyllables, '|', counts.sentences, counts.syllables, counts.polysyllables);
}
const file = readFileSync(new URL('../../src/core/measure/syllable-exceptions-en.ts', import.meta.url));
console.log('table:', exceptions.size, 'words,', file.length, 'bytes,', gzipSync(file, { level: 9 }).length, 'compressed');

/** Every tenth word taken out of the table: what happens to words of the dictionary that the table has not seen. */
function heldOut(): string {
  const unseen = plain.filter((_, index) => index % 10 === 0);
  const names = new Set(unseen.map(([word]) => word));
  return agree(unseen, new Map([...exceptions].filter(([word]) => !names.has(word))));
}
