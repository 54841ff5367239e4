/** Published values and counts by hand: 94 items with their sources, twelve passages, sixty Spanish words. */
import { afterAll, describe, expect, test } from 'vitest';
import { countText } from '../../src/core/measure/count-text.ts';
import * as english from '../../src/core/measure/readability.ts';
import * as spanish from '../../src/core/measure/readability-es.ts';
import * as lists from '../../src/core/measure/readability-word-lists.ts';
import { syllablesInEnglish } from '../../src/core/measure/syllables-en.ts';
import { syllablesInSpanish } from '../../src/core/measure/syllables-es.ts';
import * as other from './other-formulas.ts';
import { passages } from './passages.ts';
import checks from './readability-checks.json' with { type: 'json' };
import spanishWords from './spanish-syllables.json' with { type: 'json' };

type Numbers = Record<'words' | 'sentences' | 'syllables' | 'letters' | 'polysyllables' | 'complexWords' | 'unfamiliar' | 'uniqueUnfamiliar', number>;
const formulas: Readonly<Record<string, (counts: Numbers) => number | string | undefined>> = {
  flesch: english.fleschReadingEase,
  flesch_kincaid: english.fleschKincaid,
  ari: english.automatedReadability,
  coleman_liau: english.colemanLiau,
  fog: other.gunningFog,
  smog: english.smog,
  smog_quick_grade: (counts) => english.smogQuickGrade(counts.polysyllables),
  smog_table_grade: (counts) => english.smogTableGrade(counts.polysyllables),
  smog_sample: (counts) => english.smogSample(counts.sentences),
  new_dale_chall_cloze: lists.daleChall1995,
  spache_1974: lists.spache1974,
  dale_chall_adjusted: other.daleChallAdjusted,
  fernandez_huerta: spanish.fernandezHuerta,
  szigriszt_pazos: spanish.szigrisztPazos,
  crawford: spanish.crawford,
  gutierrez_polini: other.gutierrezPolini,
  words: (counts) => counts.words,
  sentences: (counts) => counts.sentences,
  syllables: (counts) => counts.syllables,
  letters: (counts) => counts.letters,
};
const labels: Readonly<Record<string, (score: number) => string>> = {
  ari_grade_label: english.automatedReadabilityLabel,
  flesch_band: other.fleschBand,
  inflesz_band: spanish.infleszBand,
  new_dale_chall_level: lists.daleChallLevel,
};

type Item = (typeof checks.items)[number];

/** The value that Bookfellow gives for an item. */
function valueOf({ measure, lang, input }: Item): number | string | undefined {
  const language = lang === 'es' ? 'es' : 'en';
  if (input.word !== undefined) return language === 'es' ? syllablesInSpanish(input.word) : syllablesInEnglish(input.word);
  const score = input.score ?? input.cloze;
  if (score !== undefined) return labels[measure]?.(score);
  const counts = input.text === undefined ? input.counts : countText(input.text, language);
  return formulas[measure]?.(counts as Numbers);
}

describe('published items', () => {
  test('there are 94', () => {
    expect(checks.items).toHaveLength(94);
  });

  // Printed whole at the end, because a run of all tests names only the files that passed.
  const told: string[] = [];
  afterAll(() => {
    console.log(`Published values and ours, each with its source:\n${told.join('\n')}`);
  });

  test.each(checks.items.map((item) => [`${item.id} ${item.measure}: ${item.source}`, item] as const))('%s', (_, item) => {
    const got = valueOf(item);
    const ours = typeof got === 'number' ? String(Math.round(got * 1000) / 1000) : String(got);
    told.push(`${item.id}  ${item.measure}: ${String(item.expected)}${item.tolerance > 0 ? ` (within ${String(item.tolerance)})` : ''}, here ${ours}. ${item.source}`);
    if (typeof item.expected === 'string') expect(String(got).toLowerCase()).toBe(item.expected.toLowerCase());
    else expect(Math.abs(Number(got) - item.expected)).toBeLessThanOrEqual(item.tolerance);
  });
});

describe('passages counted by hand', () => {
  test.each(passages.map((each) => [each.name, each] as const))('%s', (_, { text, own, counts }) => {
    const { words, sentences, letters, syllables, polysyllables } = countText(text, 'en');
    expect({ words, sentences, letters }).toEqual({
      words: counts.words,
      sentences: counts.sentences,
      letters: counts.letters,
    });
    // A text of our own is so short that 1.5 % is less than one syllable.
    const tolerance = own ? 1 : 0.015 * counts.syllables;
    expect(Math.abs(syllables - counts.syllables)).toBeLessThanOrEqual(tolerance);
    expect(polysyllables).toBe(counts.polysyllables);
  });
});

describe('Spanish words divided by hand', () => {
  test.each(spanishWords.map((each) => [each.split, each] as const))('%s', (_, { word, syllables }) => {
    expect(syllablesInSpanish(word.normalize('NFC'))).toBe(syllables);
    expect(syllablesInSpanish(word.normalize('NFD'))).toBe(syllables);
  });
});
