/**
 * Blocks: the paragraphs and list items of a text. Every block ends a sentence, even without a stop.
 */

/** Something with a text of its own: a paragraph, a list item. `Block` in `pack/pack.ts` is one. */
export interface Prose {
  readonly text: string;
}

/** Prose with the line, from 1, on which it begins. */
export interface PlacedProse extends Prose {
  readonly line: number;
  /** True when each new line in the text is a line of the file too, as in a body; a field may be folded. */
  readonly keepsLines?: boolean;
}

const bullet = /^\s*[-*•]\s+/u;
const number = /^\s*\d{1,3}[.)]\s+/u;
const firstNumber = /^\s*1[.)]\s+/u;

/**
 * The blocks of plain text. A blank line parts them and so does the mark of a list item, which is no word and
 * is left off; a single new line inside a paragraph or a verse does not.
 */
export function blocksOf(text: string): readonly PlacedProse[] {
  const blocks: { readonly lines: string[]; readonly line: number }[] = [];
  let lines: string[] | undefined;
  let numbered = false;
  for (const [index, line] of text.split(/\r\n|[\n\r\u2028\u2029]/u).entries()) {
    if (line.trim() === '') {
      lines = undefined;
      continue;
    }
    const startsItem: boolean = bullet.test(line) || (numbered ? number : firstNumber).test(line);
    numbered = startsItem ? number.test(line) : numbered && lines !== undefined;
    if (!lines || startsItem) blocks.push({ lines: (lines = []), line: index + 1 });
    lines.push(startsItem ? line.replace(number.test(line) ? number : bullet, '') : line);
  }
  return blocks.map((each) => ({ text: each.lines.join('\n'), line: each.line, keepsLines: true }));
}
