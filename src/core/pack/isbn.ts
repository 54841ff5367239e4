/**
 * The thirteen digits of an ISBN, so that one with ten digits is the same as one with thirteen; undefined for what is none, and for a
 * sample number of nothing but noughts, which a form shows as an example.
 *
 * Source: ISO 2108; an ISBN of ten digits becomes one of thirteen by 978 before it and a new check digit, weights 1 and 3 in turn.
 */
export function isbn13(isbn: string): string | undefined {
  const digits = isbn.replace(/[\s-]/g, '').toUpperCase();
  if (!/^(?:\d{9}[\dX]|97[89]\d{10})$/.test(digits)) return undefined;
  const first = digits.length === 10 ? `978${digits.slice(0, 9)}` : digits.slice(0, 12);
  if (/^97[89]0{6,}/.test(first)) return undefined;
  const sum = [...first].reduce((all, digit, index) => all + Number(digit) * (index % 2 === 0 ? 1 : 3), 0);
  return `${first}${String((10 - (sum % 10)) % 10)}`;
}
