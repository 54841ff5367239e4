/** Two copies of a booklet come together without loss, in any order. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { newBooklet, put, takeAway, type Booklet } from '../../../src/core/booklet/booklet.ts';
import { bringBack, kinship, leftBehind, mergeBooklets } from '../../../src/core/booklet/merge-booklets.ts';
import { tries } from '../../runs.ts';
import { anyBooklet, anyValue, nameOf } from './random-booklets.ts';

const fresh = newBooklet('abcdefgh', { slug: 'rope', language: 'en', title: 'The Rope' }, { pattern: 'waves', colour: 'red' }, []);
const texts = (booklet: Booklet): readonly string[] => booklet.entries.map(({ value }) => ('text' in value ? value.text : value.kind));
const write = (booklet: Booklet, writer: string, text: string, insteadOf?: Booklet['entries'][number]): Booklet => put(booklet, writer, 'rope', { kind: 'written', text, frames: [] }, insteadOf);

test('the order of putting together does not matter, and doing it twice changes nothing in pairs that have nothing to do with each other', () => {
  fc.assert(
    fc.property(anyBooklet, anyBooklet, (a, b) => {
      const both = mergeBooklets(a, b);
      expect(mergeBooklets(b, a)).toEqual(both);
      expect(mergeBooklets(both, a)).toEqual(both);
      expect(mergeBooklets(both, both)).toEqual(both);
    }),
    { numRuns: tries(1000), seed: 11 },
  );
});

/** Three devices write, change, take away and swap files, in any order. The test keeps its own book of what must be there in the end. */
const deed = fc.oneof(
  { weight: 4, arbitrary: fc.record({ what: fc.constant('write' as const), device: fc.nat(2), value: anyValue }) },
  { weight: 3, arbitrary: fc.record({ what: fc.constant('change' as const), device: fc.nat(2), which: fc.nat(20), value: anyValue }) },
  { weight: 1, arbitrary: fc.record({ what: fc.constant('take away' as const), device: fc.nat(2), which: fc.nat(20) }) },
  { weight: 2, arbitrary: fc.record({ what: fc.constant('read file' as const), device: fc.nat(2), from: fc.nat(2) }) },
);

test('nothing is lost between three devices but what somebody replaced or took away, in random histories', () => {
  fc.assert(
    fc.property(fc.array(deed, { maxLength: 30 }), (deeds) => {
      const copies: Booklet[] = [fresh, fresh, fresh];
      const there = new Set<string>();
      for (const each of deeds) {
        const copy = copies[each.device] ?? fresh;
        const writer = `device000${each.device}`;
        if (each.what === 'read file') copies[each.device] = mergeBooklets(copy, copies[each.from] ?? fresh);
        else {
          const old = 'which' in each ? copy.entries[each.which] : undefined;
          if (each.what !== 'write' && !old) continue;
          if (old) there.delete(nameOf(old));
          const next = each.what === 'take away' ? (old ? takeAway(copy, old) : copy) : put(copy, writer, 'rope', each.value, old);
          const made = next.entries.find((entry) => !copy.entries.includes(entry));
          if (made) there.add(nameOf(made));
          copies[each.device] = next;
        }
      }
      const [a = fresh, b = fresh, c = fresh] = copies;
      const all = mergeBooklets(a, mergeBooklets(b, c));
      expect(mergeBooklets(mergeBooklets(c, a), b)).toEqual(all);
      expect(new Set(all.entries.map(nameOf))).toEqual(there);
    }),
    { numRuns: tries(1000), seed: 5 },
  );
});

test('what both changed is kept twice; what one changed is kept once', () => {
  const begun = write(fresh, 'device0001', 'Joss feels');
  const [here] = begun.entries;
  const phone = write(begun, 'device0001', 'Joss feels scared', here);
  const tablet = write(begun, 'device0002', 'Joss feels cold', here);
  expect(texts(mergeBooklets(phone, begun))).toEqual(['Joss feels scared']);
  expect([...texts(mergeBooklets(phone, tablet))].sort()).toEqual(['Joss feels cold', 'Joss feels scared']);
});

test('an answer taken away stays away, and can be brought back from the file', () => {
  const begun = write(fresh, 'device0001', 'first');
  const [first] = begun.entries;
  const without = first ? takeAway(begun, first) : begun;
  const read = mergeBooklets(without, begun);
  expect(texts(read)).toEqual([]);
  expect(texts(bringBack(read, 'device0001', leftBehind(read, begun)))).toEqual(['first']);
});

test('two wordings of one question are both kept', () => {
  const asked = (ask: string): Booklet => newBooklet('abcdefgh', fresh.pack, fresh.bookmark, [{ of: 'rope', number: 1, ask }]);
  expect(mergeBooklets(asked('How does she feel?'), asked('How did she feel?')).prompts.map(({ ask }) => ask)).toEqual(['How did she feel?', 'How does she feel?']);
});

test('copies, two readers with one bookmark, and strangers are told apart', () => {
  expect(kinship(fresh, { ...fresh, bookmark: { pattern: 'rain', colour: 'blue' } })).toBe('copies');
  expect(kinship(fresh, { ...fresh, id: 'otherreader' })).toBe('same bookmark');
  expect(kinship(fresh, { ...fresh, id: 'otherreader', bookmark: { pattern: 'rain', colour: 'red' } })).toBe('strangers');
  expect(kinship(fresh, { ...fresh, pack: { ...fresh.pack, slug: 'other' } })).toBe('strangers');
});
