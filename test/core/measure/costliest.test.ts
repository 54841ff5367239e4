/** Which sentences cost a text most: those without which its formula would find it easier, by hand and by trying. */
import { describe, expect, test } from 'vitest';
import { countText, sentencesIn } from '../../../src/core/measure/count-text.ts';
import { costliestOf } from '../../../src/core/measure/costliest.ts';
import { familiarBy } from '../../../src/core/measure/familiar-words.ts';
import { figureOf, fittingFormula } from '../../../src/core/measure/fitting-formula.ts';
import { measureProse } from '../../../src/core/measure/measure-prose.ts';
import { passages } from '../../outside/passages.ts';

describe('by hand', () => {
  test('Flesch-Kincaid: a sentence costs what the grade would fall without it', () => {
    // 30 words, 3 sentences, 40 syllables: 0.39 * 10 + 11.8 * 40/30 - 15.59 = 4.0433
    // without the last: 10 words, 2 sentences, 10 syllables: 0.39 * 5 + 11.8 - 15.59 = -1.84
    const sentences = [
      { words: 5, syllables: 5, unfamiliar: [] },
      { words: 5, syllables: 5, unfamiliar: [] },
      { words: 20, syllables: 30, unfamiliar: [] },
    ];
    const [first, ...others] = costliestOf(sentences, 'flesch-kincaid', 3);
    expect(first?.index).toBe(2);
    expect(first?.cost).toBeCloseTo(5.8833, 3);
    // The short ones make the text easier, so nobody is sent to them.
    expect(others).toEqual([]);
  });

  test('Spache: a rare word counts once, so a sentence is charged only with the words that stand nowhere else', () => {
    const sentences = [
      { words: 10, syllables: 0, unfamiliar: ['heron'] },
      { words: 10, syllables: 0, unfamiliar: ['heron'] },
      { words: 10, syllables: 0, unfamiliar: ['sluice'] },
    ];
    expect(costliestOf(sentences, 'spache-1974', 3).map(({ index }) => index)).toEqual([2]);
  });

  test('ease turns the other way: the sentence without which ease would rise', () => {
    const sentences = [
      { words: 6, syllables: 9, unfamiliar: [] },
      { words: 25, syllables: 60, unfamiliar: [] },
      { words: 6, syllables: 9, unfamiliar: [] },
    ];
    expect(costliestOf(sentences, 'szigriszt-pazos', 1)).toMatchObject([{ index: 1 }]);
  });

  test('nothing to name in no sentence, and in a single one', () => {
    expect(costliestOf([], 'flesch-kincaid', 3)).toEqual([]);
    expect(costliestOf([{ words: 9, syllables: 30, unfamiliar: [] }], 'flesch-kincaid', 3)).toEqual([]);
  });
});

describe('by trying: take each sentence of a public-domain passage out and count again', () => {
  test.each(passages.filter((each) => !each.own).flatMap((each) => (['family', 'child'] as const).map((reader) => [each.name, reader, each.text] as const)))('%s, %s', (_, reader, text) => {
    // One block a sentence, so that one can be taken out whole; blocks end sentences in both counts.
    const blocks = sentencesIn(text, 'en').map((tokens, index) => ({ text: tokens.map(({ before, word, after }) => before + word + after).join(' '), line: index + 1 }));
    const formula = fittingFormula('en', reader) ?? 'flesch-kincaid';
    const figure = (given: readonly { readonly text: string }[]) => figureOf(formula, countText(given, 'en', { familiar: familiarBy('spache') })) ?? 0;
    const costs = blocks.map((_, index) => figure(blocks) - figure(blocks.filter((_, other) => other !== index)));
    const named = measureProse(blocks, { language: 'en', reader }).costliest;
    const best = [...costs].sort((a, b) => b - a).slice(0, 3);
    const wanted = countText(blocks, 'en').sentences >= 10 ? best.filter((cost) => cost > 0) : [];
    expect(named.map(({ cost }) => cost)).toHaveLength(wanted.length);
    // Names are told apart by the sentences around them, so a word's familiarity can change with a sentence gone: a tenth of a grade.
    named.forEach(({ cost, line }, index) => {
      expect(Math.abs(cost - (wanted[index] ?? 0))).toBeLessThan(0.2);
      expect(Math.abs(cost - (costs[line - 1] ?? 0))).toBeLessThan(0.2);
    });
  });
});
