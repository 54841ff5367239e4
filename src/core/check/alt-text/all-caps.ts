import { folded, wordsOf } from './alt-words.ts';
import type { AltRule, ReadAlt } from './alt-context.ts';

/**
 * Three words in capitals and more: some screen readers spell them out. A sign that "says KEEP OFF THE GRASS" is written as it stands there.
 * Common practice, no source.
 */
const fewest = 3;
const saysWhatIsWritten = /(?<!\p{L})(?:reads?|reading|says?|saying|signs?|letters|lettered|words?|labell?ed|spells?|dice|dicen|pone|lee|letrero|cartel|palabras?|letras)[,:]?$|:$/iu;

export const allCaps: AltRule<'alt-text/all-caps'> = {
  code: 'alt-text/all-caps',
  level: 'note',
  look: (alt) => {
    const run = shoutedIn(alt);
    return run === undefined ? undefined : { found: run.slice(0, 60) };
  },
};

function shoutedIn(alt: ReadAlt): string | undefined {
  const pieces = alt.unquoted.split(' ');
  for (let start = 0; start < pieces.length; start++) {
    let end = start;
    while (end < pieces.length && isShouted(pieces[end] ?? '')) end++;
    if (end - start >= fewest && countLong(pieces.slice(start, end)) >= 2 && !saysWhatIsWritten.test(pieces[start - 1] ?? '') && !isInPicture(alt, pieces.slice(start, end)))
      return pieces.slice(start, end).join(' ');
    start = end;
  }
  return undefined;
}

function isShouted(piece: string): boolean {
  return /\p{Lu}/u.test(piece) && !/\p{Ll}/u.test(piece);
}

function countLong(pieces: readonly string[]): number {
  return pieces.filter((piece) => (piece.match(/\p{Lu}/gu)?.length ?? 0) > 1).length;
}

function isInPicture(alt: ReadAlt, run: readonly string[]): boolean {
  const plain = (text: string) => ` ${wordsOf(text).map(folded).join(' ')} `;
  return alt.textInPicture !== undefined && plain(alt.textInPicture).includes(plain(run.join(' ')));
}
