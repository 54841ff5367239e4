/** The passages counted by hand: twelve in the public domain and six of our own that are hard to count. */
import data from './readability-passages.json' with { type: 'json' };

export interface Passage {
  readonly name: string;
  readonly text: string;
  readonly own: boolean;
  readonly counts: {
    readonly words: number;
    readonly sentences: number;
    readonly syllables: number;
    readonly letters: number;
    readonly polysyllables: number;
  };
}

export const passages: readonly Passage[] = Object.entries(data.passages).map(([name, { source, sentences, counts }]) => ({
  name,
  text: sentences.map((block) => block.reduce((text, each) => (/^\n/u.test(each) ? text + each : `${text} ${each}`)).trim()).join('\n\n'),
  own: source.startsWith('own text'),
  counts,
}));
