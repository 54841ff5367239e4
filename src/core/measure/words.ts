/**
 * Words: what white space or a dash parts, if it holds a letter or a digit. Contractions, hyphenated words,
 * abbreviations and figures are one word each (Flesch 1948).
 */

/** A word as it stands in the text, with the punctuation on either side of it. */
export interface Token {
  readonly before: string;
  readonly word: string;
  readonly after: string;
}

/** White space, a dash of any length, or two hyphens written for a dash. A single hyphen joins. */
const gap = /[\s\u200b\u2012-\u2015]+|-{2,}/u;
/** Where two words stand closer than their writer meant: after an ellipsis, and after a full-width stop. */
const closeEllipsis = /(\.\.|…)(["”’»)]?)(?=\p{L})/gu;
const fullWidthStop = /[。！？]/gu;
const letterOrDigit = /[\p{L}\p{N}]/u;
const invisible = /[\u00ad\u2060\ufeff]/gu;
/** Anchored and greedy on purpose: it looks at each character once or twice, however odd the text. */
const parts = /^([^\p{L}\p{N}]*)(.*[\p{L}\p{N}\p{M}])?(.*)$/su;

/** The words of one block, in order. Punctuation that stands alone goes with the word before it. */
export function tokensOf(block: string): readonly Token[] {
  if (!letterOrDigit.test(block)) return [];
  const spaced = block.normalize('NFC').replace(invisible, '').replace(/[‐‑]/gu, '-').replace(closeEllipsis, '$1$2 ').replace(fullWidthStop, '$& ');
  const tokens: { before: string; word: string; after: string }[] = [];
  const leading: string[] = [];
  let trailing: string[] = [];
  const close = (): void => {
    const last = tokens.at(-1);
    if (last && trailing.length > 0) last.after += trailing.join('');
    trailing = [];
  };
  for (const piece of spaced.split(gap)) {
    if (isBare(piece)) {
      close();
      tokens.push({ before: leading.length === 0 ? '' : leading.splice(0).join(''), word: piece, after: '' });
      continue;
    }
    const [, before = '', word = '', after = ''] = parts.exec(piece) ?? [];
    if (word === '') (tokens.length > 0 ? trailing : leading).push(before);
    else {
      close();
      tokens.push({ before: leading.splice(0).join('') + before, word, after });
    }
  }
  close();
  return tokens;
}

/** A piece that begins and ends with a plain letter has nothing on either side: most do, and need no search. */
function isBare(piece: string): boolean {
  return isPlainLetter(piece.charCodeAt(0)) && isPlainLetter(piece.charCodeAt(piece.length - 1));
}

function isPlainLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

/** Letters and digits in a word; an accented letter is one. */
export function lettersIn(word: string): number {
  return word.match(/[\p{L}\p{N}]/gu)?.length ?? 0;
}

/** The word with capitals and typographer's apostrophes evened out: the key under which it is looked up. */
export function plainWord(word: string): string {
  return word.toLowerCase().replace(/[’ʼ‘`´]/gu, "'");
}
