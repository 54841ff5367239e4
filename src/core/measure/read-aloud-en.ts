/**
 * Figures, signs and abbreviations as they are read aloud in American English, in words: `8:30` is "eight thirty".
 */
import { numberAloud, ordinalOf } from './figures-en.ts';

const abbreviations: ReadonlyMap<string, string> = new Map(
  Object.entries({
    mr: 'mister',
    mrs: 'missus',
    ms: 'miz',
    dr: 'doctor',
    prof: 'professor',
    jr: 'junior',
    sr: 'senior',
    st: 'saint',
    'rev.': 'reverend',
    'capt.': 'captain',
    'sgt.': 'sergeant',
    'lt.': 'lieutenant',
    'col.': 'colonel',
    'gen.': 'general',
    'gov.': 'governor',
    'hon.': 'honorable',
    'fr.': 'father',
    'mt.': 'mount',
    'ft.': 'fort',
    'ave.': 'avenue',
    'rd.': 'road',
    'blvd.': 'boulevard',
    'dept.': 'department',
    'apt.': 'apartment',
    'co.': 'company',
    'inc.': 'incorporated',
    'ltd.': 'limited',
    etc: 'et cetera',
    vs: 'versus',
    'no.': 'number',
    'nos.': 'numbers',
    'vol.': 'volume',
    'ch.': 'chapter',
    'p.': 'page',
    'pp.': 'pages',
    'fig.': 'figure',
    'approx.': 'approximately',
    'min.': 'minutes',
    'mins.': 'minutes',
    'sec.': 'seconds',
    'hr.': 'hour',
    'hrs.': 'hours',
    'oz.': 'ounces',
    lb: 'pound',
    lbs: 'pounds',
    'yd.': 'yards',
    tsp: 'teaspoon',
    tbsp: 'tablespoon',
    cm: 'centimeters',
    km: 'kilometers',
    kg: 'kilograms',
    'jan.': 'january',
    'feb.': 'february',
    'mar.': 'march',
    'apr.': 'april',
    'jun.': 'june',
    'jul.': 'july',
    'aug.': 'august',
    'sep.': 'september',
    'sept.': 'september',
    'oct.': 'october',
    'nov.': 'november',
    'dec.': 'december',
    'mon.': 'monday',
    'tue.': 'tuesday',
    'tues.': 'tuesday',
    'wed.': 'wednesday',
    'thu.': 'thursday',
    'thurs.': 'thursday',
    'fri.': 'friday',
    'sat.': 'saturday',
    'sun.': 'sunday',
    'ph.d': 'p h d',
    'e.g': 'e g',
    'i.e': 'i e',
    eg: 'e g',
    ie: 'i e',
  }),
);

const units: ReadonlyMap<string, string> = new Map(
  Object.entries({
    m: 'meters',
    mm: 'millimeters',
    oz: 'ounces',
    mph: 'miles per hour',
    g: 'grams',
    l: 'liters',
    ml: 'milliliters',
    ft: 'feet',
    in: 'inches',
    lb: 'pounds',
    s: '',
    am: 'a m',
    pm: 'p m',
    st: '',
    nd: '',
    rd: '',
    th: '',
    x: 'by',
    d: 'd',
  }),
);

const fractions: ReadonlyMap<string, string> = new Map([
  ['½', 'half'],
  ['¼', 'quarter'],
  ['¾', 'three quarters'],
  ['⅓', 'third'],
  ['⅔', 'two thirds'],
]);

/** What a written word sounds like when it is not spelt as it sounds, word by word; undefined when it is. */
export function readAloudInEnglish(written: string): string | undefined {
  const key = written.toLowerCase();
  const known = abbreviations.get(key) ?? abbreviations.get(key.replace(/\.$/u, ''));
  if (known !== undefined) return known;
  if (/^(?:\p{L}\.)+\p{L}?\.?$/u.test(written) && written.includes('.')) return key.replace(/\./gu, ' ').trim();
  if (/\p{N}/u.test(written)) return figures(key.replace(/^(\d[\d.,]*)([$£€])$/u, '$2$1'));
  return isInitials(written) ? Array.from(key).join(' ') : undefined;
}

/** Capitals without a vowel, TV: said letter by letter, unless they are a noise like BRRR or PSST. */
function isInitials(written: string): boolean {
  return /^(?!PST|TSK|SH|HM)[B-DF-HJ-NP-TV-XZ]{2,5}$/u.test(written) && !/(.)\1/u.test(written);
}

function figures(written: string): string {
  const pieces = written.match(/[$£€#]?\d+(?:[,.:/]\d+)*%?|[½¼¾⅓⅔]|[\p{L}']+|\p{N}/gu) ?? [];
  const spoken = pieces.map((piece, index) => {
    if (/\d/u.test(piece)) return numberAloud(piece);
    return fractions.get(piece) ?? (index > 0 ? (units.get(piece) ?? abbreviations.get(piece)) : undefined) ?? piece;
  });
  const ordinal = /\d(?:st|nd|rd|th)$/u.test(written);
  const said = spoken.join(' ').replace(/\s+/gu, ' ').trim();
  return ordinal ? said.replace(/[a-z]+$/u, ordinalOf) : said;
}
