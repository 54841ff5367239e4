/**
 * Figures, signs and abbreviations as they are read aloud in American English, in words: `8:30` is "eight thirty".
 */

const abbreviations: ReadonlyMap<string, string> = new Map(
  Object.entries({
    mr: 'mister', mrs: 'missus', ms: 'miz', dr: 'doctor', prof: 'professor', jr: 'junior', sr: 'senior', st: 'saint',
    'rev.': 'reverend', 'capt.': 'captain', 'sgt.': 'sergeant', 'lt.': 'lieutenant', 'col.': 'colonel',
    'gen.': 'general', 'gov.': 'governor', 'hon.': 'honorable', 'fr.': 'father', 'mt.': 'mount', 'ft.': 'fort',
    'ave.': 'avenue', 'rd.': 'road', 'blvd.': 'boulevard', 'dept.': 'department', 'apt.': 'apartment',
    'co.': 'company', 'inc.': 'incorporated', 'ltd.': 'limited', etc: 'et cetera', vs: 'versus', 'no.': 'number',
    'nos.': 'numbers', 'vol.': 'volume', 'ch.': 'chapter', 'p.': 'page', 'pp.': 'pages', 'fig.': 'figure',
    'approx.': 'approximately', 'min.': 'minutes', 'mins.': 'minutes', 'sec.': 'seconds', 'hr.': 'hour',
    'hrs.': 'hours', 'oz.': 'ounces', lb: 'pound', lbs: 'pounds', 'yd.': 'yards', tsp: 'teaspoon',
    tbsp: 'tablespoon', cm: 'centimeters', km: 'kilometers', kg: 'kilograms', 
    'jan.': 'january', 'feb.': 'february', 'mar.': 'march', 'apr.': 'april', 'jun.': 'june', 'jul.': 'july',
    'aug.': 'august', 'sep.': 'september', 'sept.': 'september', 'oct.': 'october', 'nov.': 'november',
    'dec.': 'december', 'mon.': 'monday', 'tue.': 'tuesday', 'tues.': 'tuesday', 'wed.': 'wednesday',
    'thu.': 'thursday', 'thurs.': 'thursday', 'fri.': 'friday', 'sat.': 'saturday', 'sun.': 'sunday',
    'ph.d': 'p h d', 'e.g': 'e g', 'i.e': 'i e', eg: 'e g', ie: 'i e',
  }),
);

const units: ReadonlyMap<string, string> = new Map(
  Object.entries({
    m: 'meters', mm: 'millimeters', oz: 'ounces', mph: 'miles per hour', g: 'grams', l: 'liters', ml: 'milliliters', ft: 'feet', in: 'inches', lb: 'pounds', s: '', am: 'a m',
    pm: 'p m', st: '', nd: '', rd: '', th: '', x: 'by', d: 'd',
  }),
);

const small = `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
  seventeen eighteen nineteen`.split(/\s+/u);
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const thousands = ['', 'thousand', 'million', 'billion', 'trillion'];
const fractions: ReadonlyMap<string, string> = new Map([
  ['½', 'half'], ['¼', 'quarter'], ['¾', 'three quarters'], ['⅓', 'third'], ['⅔', 'two thirds'],
]);
const currencies: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['$', ['dollars', 'cents']], ['£', ['pounds', 'pence']], ['€', ['euros', 'cents']],
]);

/** What a written word sounds like when it is not spelt as it sounds, word by word; undefined when it is. */
export function readAloudInEnglish(written: string): string | undefined {
  const key = written.toLowerCase();
  const known = abbreviations.get(key) ?? abbreviations.get(key.replace(/\.$/u, ''));
  if (known !== undefined) return known;
  if (/^(?:\p{L}\.)+\p{L}?\.?$/u.test(written) && written.includes('.')) return key.replace(/\./gu, ' ').trim();
  if (/\p{N}/u.test(written)) return figures(key);
  return isInitials(written) ? [...key].join(' ') : undefined;
}

/** Capitals without a vowel, TV: said letter by letter, unless they are a noise like BRRR or PSST. */
function isInitials(written: string): boolean {
  return /^(?!PST|TSK|SH|HM)[B-DF-HJ-NP-TV-XZ]{2,5}$/u.test(written) && !/(.)\1/u.test(written);
}

function figures(written: string): string {
  const pieces = written.match(/[$£€#]?\d+(?:[,.:/]\d+)*%?|[½¼¾⅓⅔]|[\p{L}']+|\p{N}/gu) ?? [];
  const spoken = pieces.map((piece, index) => {
    if (/\d/u.test(piece)) return number(piece);
    return fractions.get(piece) ?? (index > 0 ? (units.get(piece) ?? abbreviations.get(piece)) : undefined) ?? piece;
  });
  const ordinal = /\d(?:st|nd|rd|th)$/u.test(written);
  const said = spoken.join(' ').replace(/\s+/gu, ' ').trim();
  return ordinal ? said.replace(/[a-z]+$/u, ordinalOf) : said;
}

function ordinalOf(cardinal: string): string {
  const irregular: ReadonlyMap<string, string> = new Map([
    ['one', 'first'], ['two', 'second'], ['three', 'third'], ['five', 'fifth'], ['eight', 'eighth'],
    ['nine', 'ninth'], ['twelve', 'twelfth'],
  ]);
  return irregular.get(cardinal) ?? (cardinal.endsWith('y') ? `${cardinal.slice(0, -1)}ieth` : `${cardinal}th`);
}

function number(piece: string): string {
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
  return [...digits].map((digit) => small[Number(digit)] ?? digit).join(' ');
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
  if (value >= 100) return `${small[Math.floor(value / 100)]} hundred ${value % 100 ? belowThousand(value % 100) : ''}`.trim();
  if (value < 20) return small[value] ?? '';
  return `${tens[Math.floor(value / 10)]} ${value % 10 ? small[value % 10] : ''}`.trim();
}
