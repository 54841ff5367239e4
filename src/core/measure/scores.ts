import { automatedReadability, colemanLiau, fleschKincaid, fleschReadingEase, smog } from './readability.ts';
import { crawford, fernandezHuerta, szigrisztPazos } from './readability-es.ts';
import { daleChall1995, spache1974 } from './readability-word-lists.ts';

export interface CountsForScores {
  readonly words: number;
  readonly sentences: number;
  readonly letters: number;
  readonly syllables: number | undefined;
  readonly polysyllables: number | undefined;
  readonly unfamiliar: number | undefined;
  readonly uniqueUnfamiliar: number | undefined;
}

/** The raw scores of every formula of a language, at any length. For scripts; people get `honestEstimate`. */
export function scoresOf(counts: CountsForScores, language: string): Readonly<Record<string, number>> {
  const { words, sentences, letters, syllables, polysyllables, unfamiliar, uniqueUnfamiliar } = counts;
  if (words === 0 || sentences === 0 || syllables === undefined || polysyllables === undefined) return {};
  const primary = language.split('-')[0];
  if (primary === 'es') {
    const spoken = { words, sentences, syllables };
    return { fernandezHuerta: fernandezHuerta(spoken), szigrisztPazos: szigrisztPazos(spoken), crawford: crawford(spoken) };
  }
  if (primary !== 'en') return {};
  return {
    fleschReadingEase: fleschReadingEase({ words, sentences, syllables }),
    fleschKincaid: fleschKincaid({ words, sentences, syllables }),
    smog: smog({ polysyllables, sentences }),
    colemanLiau: colemanLiau({ words, sentences, letters }),
    ari: automatedReadability({ words, sentences, letters }),
    ...(uniqueUnfamiliar === undefined ? {} : { spache1974: spache1974({ words, sentences, uniqueUnfamiliar }) }),
    ...(unfamiliar === undefined ? {} : { daleChall1995: daleChall1995({ words, sentences, unfamiliar }) }),
  };
}
