/** Words of alt texts: cut, compared and sorted into those that say something and those that only hold a sentence together. */

const invisible = /[\u00ad\u200b-\u200f\u2060\ufeff]/gu;

/** The text with its edges trimmed and each run of white space as one space. */
export function tidy(text: string): string {
  return text.replace(invisible, '').split(/\s+/u).filter(Boolean).join(' ');
}

/** The text with what stands in quotation marks taken out, marks and all. Marks that do not close stay. */
export function withoutQuotes(text: string): string {
  return tidy(text.replace(/"[^"]*"|“[^“”]*”|«[^«»]*»|„[^„“]*“/gu, ' '));
}

/** Words in small letters. An apostrophe or a hyphen inside joins. */
export function wordsOf(text: string): readonly string[] {
  return (
    text
      .normalize('NFC')
      .toLowerCase()
      .replace(/[’ʼ]/gu, "'")
      .match(/[\p{L}\p{N}\p{M}]+(?:['-][\p{L}\p{N}\p{M}]+)*/gu) ?? []
  );
}

/** A word without its accents, so that a forgotten one does not hide a match. */
export function folded(word: string): string {
  return word.normalize('NFD').replace(/\p{M}/gu, '');
}

/** A pattern for phrases, whatever their capitals and accents: to be held against a text that is `folded`. */
export function phrase(pattern: string | RegExp): RegExp {
  return new RegExp(folded(typeof pattern === 'string' ? pattern : pattern.source), 'iu');
}

/** The same words in the same order, whatever the capitals, accents and punctuation. */
export function sameWords(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word, index) => folded(word) === folded(b[index] ?? ''));
}

/** Words that hold sentences together in English and Spanish; `feel` and `look` are the frame of an answer, not the answer. From memory. */
const functionWords = new Set(
  (
    'a an the and or but so because since as if than that this these those there here then when while who whom whose which what why how where ' +
    'i me my we us our you your he him his she her hers it its they them their theirs one ones ' +
    'am is are was were be been being do does did done have has had having can could will would shall should may might must not no ' +
    "isn't aren't wasn't weren't don't doesn't didn't can't couldn't won't wouldn't it's he's she's they're i'm you're " +
    'of in on at by to from with without for into onto over under up down out off about after before again through between near next very too also just still now ' +
    'feel feels felt feeling look looks looked seem seems seemed think thinks book says picture ' +
    'el la los las un una unos unas lo al del de en con sin por para sobre bajo entre hasta desde hacia ante tras y e o u ni que pero porque pues si sino como cuando donde quien cual cuyo ' +
    'qué cómo cuándo dónde quién cuál yo tú él ella ellos ellas nosotros usted ustedes me te se nos le les mi mis tu tus su sus este esta estos estas ese esa esos esas aquel aquella esto eso ' +
    'es son era eran fue fueron ser está están estaba estaban estar hay había ha han he haber va van iba ir muy más menos ya aún también no sí así ' +
    'siente sienten sentía sentir parece parecen parecía tiene tienen tenía libro dice dibujo imagen'
  ).split(' '),
);

/** Words that say something, accents folded. */
export function contentWords(text: string): readonly string[] {
  return wordsOf(text)
    .filter((word) => !functionWords.has(word))
    .map((word) => folded(word.replace(/'s?$/u, '')));
}

export function isFunctionWord(word: string): boolean {
  return functionWords.has(word);
}

/**
 * True for two forms of one word: the same, or a long common beginning with short endings (asustada, asustado; shout, shouting).
 * A rough measure of our own: no source.
 */
export function sameStem(a: string, b: string): boolean {
  return shareBeginning(a, b) || shareBeginning(withoutDiphthong(a), withoutDiphthong(b));
}

/** Spanish verbs change their vowel under stress: vuelca, volcó; piensa, pensó. */
function withoutDiphthong(word: string): string {
  return word.replace(/ue/u, 'o').replace(/ie/u, 'e');
}

function shareBeginning(a: string, b: string): boolean {
  if (a === b) return true;
  // happy, happier
  if (a.endsWith('y') && b.startsWith(`${a.slice(0, -1)}i`)) return b.length - a.length <= 3;
  if (b.endsWith('y') && a.startsWith(`${b.slice(0, -1)}i`)) return a.length - b.length <= 3;
  let common = 0;
  while (common < a.length && common < b.length && a[common] === b[common]) common++;
  const longest = Math.max(a.length, b.length) - common;
  if (common >= 6) return longest <= 3;
  if (common >= 4) return longest <= 2 || (longest === 3 && /^(?:ing|aba|ado|ada)$/u.test((a.length > b.length ? a : b).slice(common)) && Math.min(a.length, b.length) === common);
  return common === 3 && Math.min(a.length, b.length) === 3 && /^(?:s|es|ed|d)$/u.test((a.length > b.length ? a : b).slice(common));
}
