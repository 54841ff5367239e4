/** Figures in words, as they are read aloud in Spanish. */

const small = `cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis
  diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete
  veintiocho veintinueve`.split(/\s+/u);
const tens = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'];
const hundreds = `x ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos
  novecientos`.split(/\s+/u);
const currencies: ReadonlyMap<string, string> = new Map([
  ['$', 'dólares'],
  ['£', 'libras'],
  ['€', 'euros'],
]);

/** A number with the signs that go with it: 8:30, 20€, 50%. */
export function numberAloud(piece: string): string {
  const [, before = '', digits = '', behind = ''] = /^([$£€]?)([^%€]*)([%€]?)$/u.exec(piece) ?? [];
  const unit = behind === '%' ? 'por ciento' : (currencies.get(before) ?? currencies.get(behind) ?? '');
  return `${clock(digits) ?? fraction(digits) ?? decimal(digits)} ${unit}`.trim();
}

function clock(digits: string): string | undefined {
  const [, hours, minutes] = /^(\d{1,2}):(\d\d)$/u.exec(digits) ?? [];
  if (hours === undefined || minutes === undefined) return undefined;
  return minutes === '00' ? cardinal(hours) : `${cardinal(hours)} y ${cardinal(minutes.replace(/^0/u, ''))}`;
}

function fraction(digits: string): string | undefined {
  if (digits === '1/2') return 'un medio';
  if (digits === '1/4') return 'un cuarto';
  return digits === '3/4' ? 'tres cuartos' : undefined;
}

/** A stop before three figures parts thousands, 1.500; any other stop or comma is the decimal sign. */
function decimal(digits: string): string {
  const whole = digits.replace(/[.](?=\d{3}(?!\d))/gu, '');
  const [, left, sign, right] = /^(\d+)([.,])(\d+)$/u.exec(whole) ?? [];
  if (left !== undefined && right !== undefined) {
    return `${cardinal(left)} ${sign === ',' ? 'coma' : 'punto'} ${cardinal(right)}`;
  }
  return whole
    .split(/[.,:/]/u)
    .map(cardinal)
    .join(' ');
}

function oneByOne(digits: string): string {
  return Array.from(digits, (digit) => small[Number(digit)] ?? digit).join(' ');
}

/** A whole number in words up to 999 999 999; longer ones, and those with a leading zero, figure by figure. */
function cardinal(digits: string): string {
  if (digits.length > 9 || (digits.length > 1 && digits.startsWith('0'))) return oneByOne(digits);
  const value = Number(digits);
  if (value < 1000) return belowThousand(value);
  const [millions, thousands, rest] = [Math.floor(value / 1e6), Math.floor(value / 1e3) % 1e3, value % 1e3];
  return [
    millions > 1 ? `${belowThousand(millions)} millones` : millions === 1 ? 'un millón' : '',
    thousands > 1 ? `${belowThousand(thousands)} mil` : thousands === 1 ? 'mil' : '',
    rest > 0 ? belowThousand(rest) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function belowThousand(value: number): string {
  if (value === 0) return 'cero';
  if (value === 100) return 'cien';
  const [hundred, rest] = [Math.floor(value / 100), value % 100];
  const words = [
    hundred > 0 ? hundreds[hundred] : undefined,
    rest < 30 ? undefined : tens[Math.floor(rest / 10)],
    rest > 30 && rest % 10 > 0 ? 'y' : undefined,
    rest < 30 ? small[rest] : small[rest % 10],
  ];
  return words.filter((word) => word !== undefined && word !== 'cero').join(' ');
}
