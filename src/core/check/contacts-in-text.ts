/** E-mail addresses and telephone numbers in a text. Careful with what looks like one: ISBN, years, dates, times, scores, counting. */

/** E-mail addresses, those written as "(at)" among them. */
export function emailsIn(text: string): readonly string[] {
  const found: string[] = [];
  for (let at = text.indexOf('@'); at !== -1; at = text.indexOf('@', at + 1)) {
    // Only so much is looked at on either side, so that a long text without an address costs nothing.
    const name = /[\p{L}\p{N}._%+-]{1,64}$/u.exec(text.slice(Math.max(0, at - 64), at))?.[0];
    const host = /^[\p{L}\p{N}-]{1,63}(?:\.[\p{L}\p{N}-]{1,63}){1,5}/u.exec(text.slice(at + 1, at + 255))?.[0];
    if (name !== undefined && host !== undefined && /[\p{L}\p{N}]/u.test(name) && /\.\p{L}{2,}/u.test(host)) found.push(`${name}@${host}`);
  }
  if (!/[([{] ?(?:at|arroba)/iu.test(text)) return [...new Set(found)];
  for (const match of text.matchAll(/(?<![\p{L}\p{N}._-])([\p{L}\p{N}._-]{1,64}) ?[([{] ?(?:at|arroba) ?[)\]}] ?([\p{L}\p{N}-]{1,63}(?: ?(?:\.|[([{] ?(?:dot|punto) ?[)\]}]) ?\p{L}{2,20}){1,3})/giu))
    found.push(match[0]);
  return [...new Set(found)];
}

/** Words that say a number is a telephone's. */
const called =
  /(?:\b(?:tel(?:ephone|éfono)?s?|phone|call|ring|text|fax|dial|mobile|cell|whatsapp|móvil|celular|fijo|llam(?:a|e|en|ar|ad|arnos|anos|enos|ada)|marc(?:a|ar|que))\.?:?|☎|📞)(?:\s+(?:us|me|her|him|them|the|school|office|at|on|number|is|no\.?|al|a|la|el|número|núm\.?|escuela|nos|es|oficina)\b){0,4}:?\s*([+(]?\d[\d ().-]{5,20}\d)/giu;

/** Forms of numbers that need no word beside them. */
const forms: readonly RegExp[] = [
  // With the country first: +1 555 010 0123, +34 612 34 56 78
  /(?<![\p{L}\p{N}+])\+\d{1,3}[ .-]?(?:\(\d{1,4}\)[ .-]?)?\d{1,4}(?:[ .-]?\d{2,4}){1,4}(?!\d)/gu,
  // (555) 010-0123
  /\(\d{2,5}\) ?\d{3,4}[ .-]?\d{3,4}(?!\d)/gu,
  // 555-010-0123, 555.010.0123
  /(?<![\p{L}\p{N}.-])[2-9]\d{2}([-.])\d{3}\1\d{4}(?![\p{L}\p{N}]|-\d)/gu,
  // 555 010 0123; 0117 496 0123
  /(?<![\p{L}\p{N}]|\d[ .,-])(?:[2-9]\d{2} \d{3} \d{4}|0\d{2,4} \d{3,4} \d{3,4})(?![\p{L}\p{N}]|[ .,-]\d)/gu,
  // 612 345 678, 612 34 56 78, 91 234 56 78
  /(?<![\p{L}\p{N}]|\d[ .,-])(?:[6-9]\d{2}[ -]\d{3}[ -]\d{3}|[6-9]\d{2}[ -]\d{2}[ -]\d{2}[ -]\d{2}|9\d[ -]\d{3}[ -]\d{2}[ -]\d{2})(?![\p{L}\p{N}]|[ .,-]\d)/gu,
  // 55 1234 5678
  /(?<![\p{L}\p{N}]|\d[ .,-])\d{2}[ -]\d{4}[ -]\d{4}(?![\p{L}\p{N}]|[ .,-]\d)/gu,
];

/** Digits of the shortest number, as it is dialled within a town; 15 are the most there can be (ITU-T E.164, from memory). */
const leastDigits = 7;
const hasLeastDigits = new RegExp(`(?:\\d\\D*){${String(leastDigits)}}`, 'u');

/** Telephone numbers, as they stand in the text. */
export function phonesIn(text: string): readonly string[] {
  if (/^tel:/iu.test(text.trim())) return [text.trim().slice(4)];
  if (!hasLeastDigits.test(text)) return [];
  const bare = text
    .replace(/https?:\/\/\S{1,2000}/giu, ' ')
    .replace(/\bISBN(?:-1[03])?\b:?\s{0,3}[\dXx -]{9,20}/gu, ' ')
    .replace(/(?<!\d)97[89](?:[- ]?\d){9}[- ]?[\dX](?!\d)/gu, ' ');
  const found = [...bare.matchAll(called)].map((match) => (match[1] ?? '').trim());
  for (const form of forms) for (const match of bare.matchAll(form)) found.push(match[0].trim());
  const numbers = [...new Set(found)].filter(isNumberOfPhone);
  return numbers.filter((number) => !numbers.some((other) => other !== number && digitsOf(other).includes(digitsOf(number))));
}

function isNumberOfPhone(written: string): boolean {
  const digits = digitsOf(written).length;
  const groups = written.match(/\d+/gu) ?? [];
  if (digits < leastDigits || digits > 15) return false;
  // Counting (1 2 3 4 5 6 7; 600 700 800), years (1998 2001), and a span of years or dates.
  const isCounting = groups.length > 2 && (groups.every((group) => group.length < 2) || groups.every((group) => group.endsWith('00')));
  const isDate = /^\d{4}[-. ]\d{2}[-. ]\d{2}$/u.test(written) || groups.filter((group) => /^(?:1[4-9]|20)\d\d$/u.test(group)).length > 1;
  return !isCounting && !isDate;
}

/** The digits of a number alone, to hold two ways of writing it against each other. */
export function digitsOf(text: string): string {
  return text.replace(/\D/gu, '');
}
