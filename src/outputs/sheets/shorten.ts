/** The first sentences of a text. */
export function firstSentences(text: string, number: number, language: string): string {
  const sentences = [...new Intl.Segmenter(language, { granularity: 'sentence' }).segment(text)];
  return sentences
    .slice(0, number)
    .map(({ segment }) => segment)
    .join('')
    .trim();
}

/** A text of at most `most` characters, cut between words, with a mark where it was cut. */
export function shortTo(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), most / 2)).trimEnd()} …`;
}
