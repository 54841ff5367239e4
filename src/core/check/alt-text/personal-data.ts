import { isKnown, type AltRule, type ReadAlt } from './alt-context.ts';

/**
 * What leads to a real child or grown-up: mail, telephone, a room or class with its number, a teacher's class, a pupil's name.
 * A room that is in the book is put among the pack's `allow words`. Norm behind it: 16 CFR 312.2 counts names, contact data and places
 * of children as personal information. The patterns are our own: no source.
 */
export const personalData: AltRule<'alt-text/personal-data'> = {
  code: 'alt-text/personal-data',
  level: 'stop',
  look: (alt) => {
    const found = mailIn(alt.text) ?? phoneIn(alt.text) ?? roomIn(alt) ?? classOfTeacher(alt);
    return found === undefined || isKnown(alt, found) ? undefined : { found: found.slice(0, 60) };
  },
};

function mailIn(text: string): string | undefined {
  return /[\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{2,63}){1,4}/u.exec(text)?.[0];
}

const numberRun = /(?<![\p{L}\d])[+(]?\d[\d ()./-]{4,22}\d(?![\p{L}\d])/gu;
const extensions = /(?<!\p{L})(?:ext|extension|extensión)\.? ?\d{2,5}(?!\d)/iu;
const phoneWord = /(?:tel|tel[eé]fono|phone|call|text|llam[ae]|llámenos|llámanos|m[oó]vil|celular|cell|fax)\p{L}*[.:]? (?:\p{L}{1,4} )?$/iu;

function phoneIn(text: string): string | undefined {
  const extension = extensions.exec(text)?.[0];
  if (extension !== undefined) return extension;
  for (const match of text.matchAll(numberRun)) {
    const run = match[0].trim();
    const called = phoneWord.test(text.slice(Math.max(0, match.index - 30), match.index));
    if (isPhone(run, called)) return run;
  }
  return undefined;
}

/** Seven to fifteen digits (ITU-T E.164), in groups that are no year, date, thousands, ISBN or row of numbers. */
function isPhone(run: string, called: boolean): boolean {
  const groups = run.split(/\D+/u).filter(Boolean);
  const digits = groups.join('');
  if (digits.length < 7 || digits.length > 15) return false;
  if (run.startsWith('+') || called) return true;
  if (groups.length < 2 || groups.slice(1).some((group) => group.length < 2)) return false;
  if (/^(?:978|979)/u.test(digits) && digits.length === 13) return false;
  if (groups.every((group) => /^(?:1\d|20)\d\d$/u.test(group))) return false;
  if (isDate(groups) || isRow(groups) || isThousands(run, groups, digits)) return false;
  return !/^\d+\.\d+$/u.test(run);
}

function isDate(groups: readonly string[]): boolean {
  return groups.length === 3 && groups.some((group) => group.length === 4) && groups.filter((group) => group.length <= 2).length === 2;
}

/** 10 20 30 40: the same step between all. */
function isRow(groups: readonly string[]): boolean {
  const steps = groups.slice(1).map((group, index) => Number(group) - Number(groups[index]));
  return steps.length > 1 && steps.every((step) => step === steps[0]);
}

/** 1 000 000 or 12.500.000; nine digits that begin with 6 to 9 are a telephone number in Spain, written the same way. */
function isThousands(run: string, groups: readonly string[], digits: string): boolean {
  if (!/^\d{1,3}(?:([ .])\d{3})(?:\1\d{3})*$/u.test(run)) return false;
  return !(groups.length === 3 && /^[6-9]\d{8}$/u.test(digits) && !digits.includes('000'));
}

const rooms = [
  /\b[Rr]oom (?:no\.? |number |# ?)?\d{1,4}[A-Za-z]?\b/u,
  /\b(?:[Cc]lass|[Cc]lassroom|[Hh]omeroom) (?:no\.? |number |# ?)?\d{1,2}(?: ?-? ?[A-F])?\b/u,
  /\b[Gg]rade \d{1,2} ?-?[A-F]\b/u,
  /(?<!\p{L})(?:[Ss]al[oó]n|[Aa]ula|[Cc]lase) (?:n\.?º ?|número |# ?)?\d{1,3}(?: ?-?[A-F])?(?![\p{L}\d])/u,
  /(?<!\p{L})(?:[Gg]rupo|[Cc]urso|[Gg]rado) \d{1,2}\.?[º°]? ?-?[A-F](?![\p{L}\d])/u,
  /(?<![\p{L}\d])\d{1,2}\.? ?(?:[ºª]\.? ?-?[A-F]|° ?[ABDE])(?![\p{L}\d])/u,
] as const;
/** A hotel, a ship or a hospital has numbered rooms too. */
const otherHouses = /\b(?:hotel|hospital|inn|castle|museum|motel|hostel|ship|hostal|posada|castillo|museo|barco)\b/iu;
const school = /\b(?:class|school|students?|pupils?|teacher|kindergarten|escuela|alumn[oa]s?|maestr[oa]|niñ[oa]s)\b/iu;

function roomIn(alt: ReadAlt): string | undefined {
  if (otherHouses.test(alt.text) && !school.test(alt.text)) return undefined;
  return rooms.map((each) => each.exec(alt.text)?.[0]).find((found) => found !== undefined);
}

const named = [
  /\b(?:Mrs|Ms|Mr|Miss|Mx)\.? (\p{Lu}[\p{L}-]+)['’]s? (?:[\p{L}-]+ ){0,2}(?:class|classroom|students|pupils|homeroom)\b/u,
  /(?<!\p{L})(?:[Cc]lase|[Ss]alón|[Aa]lumnos|[Aa]ula|[Gg]rupo|[Ee]studiantes) (?:de |del )(?:la |el )?(?:maestr[oa]|profesora?|profe|señora?|señorita|seño|don|doña|[Ss]ra?\.) (\p{Lu}\p{L}+)/u,
  /\b(?:[Mm]y|[Oo]ur) (?:students?|pupils?|kinder(?:gartner)?s?) (\p{Lu}\p{L}+)/u,
  /(?<!\p{L})(?!(?:Opening|Page|Stop|Part|Chapter|Parte|Parada)(?!\p{L}))(\p{Lu}\p{Ll}+)(?: \p{Lu}\.)? \((?:\d|1[0-2])\)/u,
  /(?<!\p{L})(\p{Lu}\p{Ll}+)(?: \p{Lu}\.,?|,| \() ?age[d:]? (?:\d|1[0-2])(?!\d)/u,
  /(?<!\p{L})(\p{Lu}\p{Ll}+)(?: \p{Lu}\.,?|,| \() ?(?:de )?(?:\d|1[0-2]) años(?!\p{L})/u,
  /(?<!\p{L})(\p{Lu}\p{Ll}+) (?:from|in|of) (?:our|my) (?:class|school|group|kindergarten)\b/u,
  /(?<!\p{L})(\p{Lu}\p{Ll}+),? de (?:nuestr[oa]|mi) (?:clase|escuela|grupo|colegio|salón)(?!\p{L})/u,
  /(?<!\p{L})(?:[Mm]is?|[Nn]uestr[oa]s?) (?:alumn[oa]s?|estudiantes?) (\p{Lu}\p{L}+)/u,
] as const;

function classOfTeacher(alt: ReadAlt): string | undefined {
  const hit = named.map((each) => each.exec(alt.text)).find((each) => each !== null);
  return hit && !isKnown(alt, hit[1] ?? '') ? hit[0] : undefined;
}
