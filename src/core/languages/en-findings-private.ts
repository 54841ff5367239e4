import type { FactsOf } from '../finding.ts';

/** Sentences for some of the codes. */
type Sentences<C extends keyof FactsOf> = { readonly [K in C]: (facts: FactsOf[K]) => string };

/** Findings about the private text of the book: what is counted in it, and how much of it a pack may quote. */
export const passageFindingsInEnglish: Sentences<'passage/word-count' | 'passage/opening-mark' | 'words/not-in-passage' | 'words/first-met' | 'copy/long-quote' | 'copy/too-much'> = {
  'passage/word-count': (f) =>
    `"words" says ${String(f.said)}, and ${String(f.counted)} are counted in the passage. The minutes of the lesson come from this number, so write "words: ${String(f.counted)}", or check whether the passage is whole.`,
  'passage/opening-mark': (f) => {
    if (f.why === 'past the end') return `The passage marks opening ${String(f.opening)}, but the book has ${String(f.openings)}. Correct the mark, or "openings".`;
    const wrong = f.why === 'form' ? 'looks like the mark of an opening and is not read as one' : 'does not come after the one before it';
    return `In the passage, the mark in line ${String(f.line)} ${wrong}. Write "[opening 4]" in a line of its own, with the numbers going up.`;
  },
  'words/not-in-passage': (f) => `The taught word "${f.word}" is not found in the text of the book. Choose a word that children will hear, or leave it if it tells about a picture.`,
  'words/first-met': (f) => `"first met" says opening ${String(f.said)}, and the book has "${f.word}" first at opening ${String(f.found)}. Change the number, so that the word is ready when it comes.`,
  'copy/long-quote': (f) =>
    `This text repeats ${String(f.words)} words of the book in a row, from "${f.begins} …". A pack quotes ${String(f.most)} at most, since the book is in copyright. Say it in your own words, or keep only the few words you need.`,
  'copy/too-much': (f) =>
    `All together, this pack repeats ${String(f.words)} words of the book (${String(f.percent)} %), and ${String(f.most)} is the most for it. Shorten cues and quotations, and tell the rest in your own words.`,
};
