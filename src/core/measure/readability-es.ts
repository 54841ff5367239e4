/** Readability formulas for Spanish: pure functions of counts. */
import type { Counts } from './readability.ts';

type SpanishCounts = Counts<'words' | 'sentences' | 'syllables'>;

/**
 * Reading ease: 206.84 - 60 syllables/words - 1.02 words/sentences. Higher is easier.
 * Fernández Huerta 1959, Consigna 214:29-32; samples of 100 words. Corrected: as printed, its last term is "sentences per
 * 100 words", which would reward long sentences (G. Law 2011).
 */
export function fernandezHuerta({ words, sentences, syllables }: SpanishCounts): number {
  return 206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);
}

/**
 * Perspicuity: 206.835 - 62.3 syllables/words - words/sentences. Higher is easier.
 * Szigriszt Pazos 1993; `infleszBand` gives its bands. Validated on fragments of 500 words and more.
 */
export function szigrisztPazos({ words, sentences, syllables }: SpanishCounts): number {
  return 206.835 - 62.3 * (syllables / words) - words / sentences;
}

/** The bands of the INFLESZ scale, hardest first. */
export type InfleszBand = 'muy difícil' | 'algo difícil' | 'normal' | 'bastante fácil' | 'muy fácil';

/** The INFLESZ band of a perspicuity (Barrio-Cantalejo et al. 2008, An. Sist. Sanit. Navar. 31:135-152). */
export function infleszBand(perspicuity: number): InfleszBand {
  if (perspicuity < 40) return 'muy difícil';
  if (perspicuity < 55) return 'algo difícil';
  if (perspicuity < 65) return 'normal';
  return perspicuity <= 80 ? 'bastante fácil' : 'muy fácil';
}

/**
 * Grade: -0.205 (sentences per 100 words) + 0.049 (syllables per 100 words) - 3.407.
 * Crawford 1984, Lectura y Vida 10(4); fitted to graded primary readers, grades 1 to 6. The constants are from a
 * secondary source.
 */
export function crawford({ words, sentences, syllables }: SpanishCounts): number {
  return -0.205 * ((100 * sentences) / words) + 0.049 * ((100 * syllables) / words) - 3.407;
}
