/** Figures in words, as they are read aloud in American English. */

const small = `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
  seventeen eighteen nineteen`.split(/\s+/u);
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const thousands = ['', 'thousand', 'million', 'billion', 'trillion'];
const currencies: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['$', ['dollars', 'cents']],
  ['£', ['pounds', 'pence']],
  ['€', ['euros', 'cents']],
]);

/** The ordinal of a number in words. */
export function ordinalOf(cardinal: string): string {
  const irregular: ReadonlyMap<string, string> = new Map([
    ['one', 'first'],
    ['two', 'second'],
    ['three', 'third'],
    ['five', 'fifth'],
    ['eight', 'eighth'],
    ['nine', 'ninth'],
    ['twelve', 'twelfth'],
  ]);
  return irregular.get(cardinal) ?? (cardinal.endsWith('y') ? `${cardinal.slice(0, -1)}ieth` : `${cardinal}th`);
}

/** A number with the signs that go with it: $3.00, 8:30, 1/2, 20%. */
export function numberAloud(piece: string): string {
  const [, sign = '', digits = '', percent = ''] = /^([$£€#]?)([^%]*)(%?)$/u.exec(piece) ?? [];
  const currency = currencies.get(sign);
  if (currency) return money(digits, currency);
  const said = clock(digits) ?? fraction(digits) ?? year(digits) ?? decimal(digits);
  return `${sign === '#' ? 'number ' : ''}${said}${percent ? ' percent' : ''}`;
}

function money(digits: string, [whole, part]: readonly [string, string]): string {
  const [dollars = '0', cents = ''] = digits.split('.');
  const unit = dollars === '1' ? whole.replace(/s$/u, '') : whole;
  const rest = /^\d\d$/u.test(cents) && cents !== '00' ? ` and ${cardinal(cents)} ${part}` : '';
  return `${cardinal(dollars)} ${unit}${rest}`;
}

function clock(digits: string): string | undefined {
  const [, hours, minutes] = /^(\d{1,2}):(\d\d)$/u.exec(digits) ?? [];
  if (hours === undefined || minutes === undefined) return undefined;
  if (minutes === '00') return `${cardinal(hours)} o'clock`;
  return `${cardinal(hours)} ${minutes.startsWith('0') ? 'oh ' : ''}${cardinal(minutes)}`;
}

function fraction(digits: string): string | undefined {
  const [, over, under] = /^(\d{1,2})\/(\d{1,2})$/u.exec(digits) ?? [];
  if (over === undefined || under === undefined) return undefined;
  const name = under === '2' ? 'half' : under === '4' ? 'quarter' : ordinalOf(cardinal(under));
  return `${cardinal(over)} ${name}${over === '1' ? '' : 's'}`;
}

/** Four figures without a comma read as a year: nineteen oh two. From 2000 to 2009 they read as a number. */
function year(digits: string): string | undefined {
  if (!/^(?:1[1-9]|20[1-9]|2[1-9])\d+$/u.test(digits) || digits.length !== 4) return undefined;
  const last = digits.slice(2);
  const rest = last === '00' ? 'hundred' : last.startsWith('0') ? `oh ${cardinal(last)}` : cardinal(last);
  return `${cardinal(digits.slice(0, 2))} ${rest}`;
}

function decimal(digits: string): string {
  const parts = digits.replace(/,/gu, '').split(/[.:/]/u).filter(Boolean);
  if (!digits.includes('.') || parts.length !== 2) return parts.map(cardinal).join(' ');
  const [whole = '0', after = ''] = parts;
  return `${cardinal(whole)} point ${oneByOne(after)}`;
}

function oneByOne(digits: string): string {
  return Array.from(digits, (digit) => small[Number(digit)] ?? digit).join(' ');
}

/** A whole number in words; one with a leading zero, or too long for a name, figure by figure. */
function cardinal(digits: string): string {
  if (digits.length > 15 || (digits.length > 2 && digits.startsWith('0'))) return oneByOne(digits);
  const groups: string[] = [];
  for (let end = digits.length, scale = 0; end > 0; end -= 3, scale++) {
    const value = Number(digits.slice(Math.max(0, end - 3), end));
    if (value > 0) groups.unshift(`${belowThousand(value)} ${thousands[scale] ?? ''}`.trim());
  }
  return groups.join(' ') || 'zero';
}

function belowThousand(value: number): string {
  const [hundreds, rest] = [Math.floor(value / 100), value % 100];
  const words = [hundreds > 0 ? small[hundreds] : undefined, hundreds > 0 ? 'hundred' : undefined, rest < 20 ? undefined : tens[Math.floor(rest / 10)], rest < 20 ? small[rest] : small[rest % 10]];
  return words.filter((word) => word !== undefined && word !== 'zero').join(' ');
}
