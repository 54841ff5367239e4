import type { AltRule } from './alt-context.ts';

/**
 * Letters broken by a wrong encoding: UTF-8 read as Windows-1252 (`Ã±`, `â€™`), a question mark in the middle of a word, `%C3%B1`,
 * `\u00f1`. Capitals with accents (`Âges`) are no damage: after a broken one stands a sign, never a letter.
 * Source: the table of Windows-1252 and of UTF-8's two- and three-byte letters (Unicode, chapter 3).
 */
const damage = [
  /\ufffd/u,
  /[ÃÂ][\u0080-\u00bf€‚ƒ„†‡ˆ‰Š‹ŒŽ•˜™š›œžŸ]/u,
  /[ÃÂ][‘’“”…–—](?=\p{L})/u,
  /â€|ï»¿|Ã¢/u,
  /(?<=\p{Ll})\?(?=\p{Ll})/u,
  /(?:%[0-9A-F]{2}){2}|%20/iu,
  /\\(?:u[0-9a-f]{4}|x[0-9a-f]{2})/iu,
] as const;
const address = /\b(?:https?:\/\/|www\.)\S*/giu;

export const encoding: AltRule<'alt-text/encoding'> = {
  code: 'alt-text/encoding',
  level: 'stop',
  look: (alt) => {
    const text = alt.text.replace(address, ' ');
    const hit = damage.map((each) => each.exec(text)).find((each) => each !== null);
    return hit ? { found: aroundOf(text, hit.index) } : undefined;
  },
};

/** The word in which something was found. */
function aroundOf(text: string, at: number): string {
  const start = text.lastIndexOf(' ', at) + 1;
  const end = text.indexOf(' ', at);
  return text.slice(start, end === -1 ? undefined : end).slice(0, 40);
}
