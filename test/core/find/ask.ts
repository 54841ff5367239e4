/** Asks an index as a browser does: only the parts that a question needs are there, and what is fetched is weighed. */
import { gzipSync } from 'node:zlib';
import { choiceFrom, type Choice } from '../../../src/core/find/choice.ts';
import type { FindIndex } from '../../../src/core/find/find-index.ts';
import { findPacks, meantBy, partsFor } from '../../../src/core/find/find.ts';

export const chosenBy = (fields: Partial<Choice>): Choice => choiceFrom({ get: (name) => fields[name as keyof Choice] ?? '' });

/** Addresses of what is found, and the kilobytes that a browser had to fetch for it, compressed. */
export function ask(index: FindIndex, fields: Partial<Choice>): { readonly urls: readonly string[]; readonly kilobytes: number } {
  const meant = meantBy(fields.words ?? '', index.words.words.split('\n'));
  const parts = partsFor(meant, index.words);
  const got = new Map(parts.map((part) => [part, index.where[part] ?? []]));
  const numbers = findPacks(index.words, chosenBy(fields), meant, (part) => {
    const where = got.get(part);
    if (!where) throw new Error(`part ${part} was not fetched`);
    return where;
  });
  const shown = new Set(numbers.slice(0, 12).map((number) => Math.floor(number / index.words.packsInPart)));
  const fetched = [index.words, ...got.values(), ...[...shown].map((part) => index.listed[part])];
  return {
    urls: numbers.map((number) => index.listed[Math.floor(number / index.words.packsInPart)]?.[number % index.words.packsInPart]?.url ?? ''),
    kilobytes: fetched.reduce((sum, each) => sum + gzipSync(JSON.stringify(each)).length / 1000, 0),
  };
}
