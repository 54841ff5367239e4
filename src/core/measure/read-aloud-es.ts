/**
 * Figures, signs and abbreviations as they are read aloud in Spanish, in words: `8:30` is "ocho y treinta".
 */
import { numberAloud } from './figures-es.ts';

const abbreviations: ReadonlyMap<string, string> = new Map(
  Object.entries({
    sr: 'señor',
    sres: 'señores',
    sra: 'señora',
    sras: 'señoras',
    srta: 'señorita',
    dr: 'doctor',
    dra: 'doctora',
    prof: 'profesor',
    profa: 'profesora',
    ud: 'usted',
    uds: 'ustedes',
    vd: 'usted',
    vds: 'ustedes',
    'd.': 'don',
    dña: 'doña',
    'da.': 'doña',
    'lic.': 'licenciado',
    'ing.': 'ingeniero',
    'sto.': 'santo',
    'sta.': 'santa',
    's.': 'san',
    'gral.': 'general',
    'cap.': 'capítulo',
    etc: 'etcétera',
    'p.': 'por',
    'ej.': 'ejemplo',
    'p.ej': 'por ejemplo',
    pág: 'página',
    págs: 'páginas',
    núm: 'número',
    'no.': 'número',
    'n.º': 'número',
    nº: 'número',
    'vol.': 'volumen',
    'fig.': 'figura',
    'av.': 'avenida',
    avda: 'avenida',
    'aprox.': 'aproximadamente',
    'tel.': 'teléfono',
    'ee.': 'estados',
    'uu.': 'unidos',
    'ee.uu': 'estados unidos',
    eeuu: 'estados unidos',
    'a.c': 'antes de cristo',
    'd.c': 'después de cristo',
    kg: 'kilos',
    km: 'kilómetros',
    cm: 'centímetros',
    'min.': 'minutos',
    'seg.': 'segundos',
  }),
);

const units: ReadonlyMap<string, string> = new Map(Object.entries({ m: 'metros', g: 'gramos', l: 'litros', mm: 'milímetros', h: 'horas', x: 'por', er: '' }));

const letterNames: ReadonlyMap<string, string> = new Map(
  Object.entries({
    b: 'be',
    c: 'ce',
    d: 'de',
    f: 'efe',
    g: 'ge',
    h: 'hache',
    j: 'jota',
    k: 'ka',
    l: 'ele',
    m: 'eme',
    n: 'ene',
    ñ: 'eñe',
    p: 'pe',
    q: 'cu',
    r: 'erre',
    s: 'ese',
    t: 'te',
    v: 'uve',
    w: 'uve doble',
    x: 'equis',
    y: 'ye',
    z: 'zeta',
  }),
);

const fractions: ReadonlyMap<string, string> = new Map([
  ['½', 'medio'],
  ['¼', 'cuarto'],
  ['¾', 'tres cuartos'],
  ['⅓', 'tercio'],
  ['⅔', 'dos tercios'],
]);
const ordinals = `x primero segundo tercero cuarto quinto sexto séptimo octavo noveno décimo`.split(/\s+/u);

/** What a written word sounds like when it is not spelt as it sounds; undefined when it is. */
export function readAloudInSpanish(written: string): string | undefined {
  const key = written.normalize('NFC').toLowerCase();
  const known = abbreviations.get(key) ?? abbreviations.get(key.replace(/\.$/u, ''));
  if (known !== undefined) return known;
  if (/^(?:\p{L}\.)+\p{L}?\.?$/u.test(key)) return byLetter(key.replace(/\./gu, ''));
  if (/\p{N}/u.test(key)) return figures(key);
  return /^[B-DF-HJ-NP-TV-XZ]{2,5}$/u.test(written) && !/(.)\1/u.test(written) ? byLetter(key) : undefined;
}

function byLetter(letters: string): string {
  return Array.from(letters, (letter) => letterNames.get(letter) ?? letter).join(' ');
}

function figures(written: string): string {
  const [, ordinal] = /^(\d{1,2})\.?(?:[ºª]|er|do|ro|to|vo|mo)$/u.exec(written) ?? [];
  const rank = ordinal === undefined ? undefined : ordinals[Number(ordinal)];
  if (rank !== undefined) return rank;
  const pieces = written.match(/[$£€]?\d+(?:[,.:/]\d+)*[%€]?|[½¼¾⅓⅔]|\p{L}+/gu) ?? [];
  const spoken = pieces.map((piece, index) => {
    if (/\d/u.test(piece)) return numberAloud(piece);
    return fractions.get(piece) ?? (index > 0 ? (units.get(piece) ?? abbreviations.get(piece)) : undefined) ?? piece;
  });
  return spoken.join(' ').replace(/\s+/gu, ' ').trim();
}
