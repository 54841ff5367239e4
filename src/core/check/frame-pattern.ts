import { plain, sentencesOf, wordsOf } from './plain-words.ts';

/** A blank is two underscores or more. */
const blank = /_{2,}/gu;

/** How many blanks a frame has. */
export function blanksIn(frame: string): number {
  return frame.match(blank)?.length ?? 0;
}

/** A step of a frame: a blank that takes one word or more, or the words of which one has to stand there. */
type Part = 'blank' | readonly string[];

/**
 * Tells whether a text fits a sentence frame. Case, accents and punctuation are passed over, "he's" is "he is", and "un/una" takes
 * either. The whole text may fit, or one of its sentences.
 */
export function patternOf(frame: string): (text: string) => boolean {
  const parts = partsOf(frame);
  return (text) => wholeAndParts(text).some((each) => fitsAll(parts, spelledOut(each)));
}

/** A text as a whole, and each of its sentences where there are several. */
function wholeAndParts(text: string): readonly string[] {
  const sentences = sentencesOf(text);
  return sentences.length === 1 ? sentences : [text, ...sentences];
}

function partsOf(frame: string): readonly Part[] {
  return frame.split(/\s+/u).flatMap((piece): readonly Part[] => {
    // A blank with letters on it, as in "___'s" or "content__", takes what stands there whole.
    if (/_{2,}/u.test(piece) || /\p{L}\(/u.test(piece)) return ['blank'];
    if (piece.includes('/')) return [piece.split('/').flatMap((either) => wordsOf(either))];
    return spelledOut(piece).map((word) => [word]);
  });
}

function spelledOut(text: string): readonly string[] {
  const said = plain(text);
  if (!/'|cannot/u.test(said)) return wordsOf(said);
  return wordsOf(
    said
      .replace(/\b(he|she|it|that|what|who|there)'s\b/gu, '$1 is')
      .replace(/\bi'm\b/gu, 'i am')
      .replace(/\b(you|we|they)'re\b/gu, '$1 are')
      .replace(/\bcan't\b/gu, 'can not')
      .replace(/\bcannot\b/gu, 'can not')
      .replace(/\b(\w+)n't\b/gu, '$1 not'),
  );
}

/** Which beginnings of the text the beginning of the frame can take, part by part: no going back, whatever the frame. */
function fitsAll(parts: readonly Part[], words: readonly string[]): boolean {
  let ends = new Set([0]);
  for (const part of parts) {
    const next = new Set<number>();
    if (part === 'blank') for (let end = Math.min(...ends) + 1; end <= words.length; end++) next.add(end);
    else for (const end of ends) if (part.includes(words[end] ?? '')) next.add(end + 1);
    if (next.size === 0) return false;
    ends = next;
  }
  return ends.has(words.length);
}
