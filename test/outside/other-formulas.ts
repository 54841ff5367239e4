/** Formulas that published items check but that Bookfellow never shows: misfits for young readers, or without a primary source. */

interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly letters: number;
  readonly complexWords: number;
  readonly unfamiliar: number;
}

/** Grade: 0.4 (words/sentences + 100 complex words/words). Gunning 1952; complex words leave out names and easy compounds. */
export function gunningFog({ words, sentences, complexWords }: Pick<Counts, 'words' | 'sentences' | 'complexWords'>): number {
  return 0.4 * (words / sentences + (100 * complexWords) / words);
}

/** The widespread "adjusted" form of Dale-Chall 1948, with its cliff of 3.6365 at 5 % unfamiliar words. */
export function daleChallAdjusted({ words, sentences, unfamiliar }: Pick<Counts, 'words' | 'sentences' | 'unfamiliar'>): number {
  const percent = (100 * unfamiliar) / words;
  return 0.1579 * percent + 0.0496 * (words / sentences) + (percent > 5 ? 3.6365 : 0);
}

/** Comprehensibility: 95.2 - 9.7 letters/words - 0.35 words/sentences. Gutiérrez de Polini 1972; sixth grade only. */
export function gutierrezPolini({ words, sentences, letters }: Pick<Counts, 'words' | 'sentences' | 'letters'>): number {
  return 95.2 - 9.7 * (letters / words) - 0.35 * (words / sentences);
}

/** Flesch's labels, made for adults: the easiest begins at grade 5. */
export function fleschBand(ease: number): string {
  const bands: readonly (readonly [least: number, label: string])[] = [
    [90, 'very easy'],
    [80, 'easy'],
    [70, 'fairly easy'],
    [60, 'standard'],
    [50, 'fairly difficult'],
    [30, 'difficult'],
  ];
  return bands.find(([least]) => ease >= least)?.[1] ?? 'very difficult';
}
