import { isKnown, type AltRule, type ReadAlt } from './alt-context.ts';
import { wordsOf } from './alt-words.ts';

/**
 * An alt text in another language than its page is read out in the wrong voice. Told by the script, and by the small words of six languages,
 * where at least four words stand; names and what is quoted do not count. Source: WCAG 2.2, 3.1.1 and 3.1.2; the lists from memory.
 */
const smallWords = new Map<string, ReadonlySet<string>>([
  ['en', new Set('a an the of and in on at to with from by over under behind between his her their its is are was he she it they that who as for into up down out two three'.split(' '))],
  ['es', new Set('un una unos unas el la los las de del y en con por para sobre bajo entre detrás su sus es está están al que se lo hay como desde hacia sin muy dos tres'.split(' '))],
  ['fr', new Set('un une des le la les du de et dans sur sous avec pour par entre derrière son sa ses est sont il elle ils qui que au aux deux trois'.split(' '))],
  ['de', new Set('ein eine einen einem einer der die das den dem des und in im auf unter mit von vor hinter zwischen seine ihre ist sind er sie es zwei drei am'.split(' '))],
  ['pt', new Set('um uma uns umas o os as de do da dos das e em no na nos nas com por para sobre sob entre atrás seu sua é está estão ao que se dois três'.split(' '))],
  ['it', new Set('un uno una il lo la i gli le di del della dei e in nel nella con per su sul sulla sotto tra dietro suo sua è sono al che si due tre'.split(' '))],
]);
const fewestWords = 4;
/** Small words of the other language that are needed, and how many times as many as of the page's own. */
const fewestHits = 2;
const timesAsMany = 3;
/** Where the page's own language has no list: so many different small words of another. */
const hitsWithoutList = 4;

const latin = /\p{Script=Latin}/u;
const each = (languages: string, script: RegExp) => languages.split(' ').map((language) => [language, script] as const);
const scripts = new Map<string, RegExp>([
  ...each('en es fr de pt it ht nl sv da no nb pl cs tr ro vi id tl fil so sw hmn ca eu gl cy ga', latin),
  ...each('ar fa ur ps', /\p{Script=Arabic}/u),
  ...each('ru uk bg', /\p{Script=Cyrillic}/u),
  ...each('hi ne mr', /\p{Script=Devanagari}/u),
  ['zh', /\p{Script=Han}/u],
  ['ja', /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u],
  ['ko', /[\p{Script=Hangul}\p{Script=Han}]/u],
  ['el', /\p{Script=Greek}/u],
  ['he', /\p{Script=Hebrew}/u],
  ['am', /\p{Script=Ethiopic}/u],
]);
const fewestLetters = 6;
const leastOfOwnScript = 0.3;

export const wrongLanguage: AltRule<'alt-text/wrong-language'> = {
  code: 'alt-text/wrong-language',
  level: 'warn',
  look: (alt) => (isOtherScript(alt) || isOtherLanguage(alt) ? { language: alt.language } : undefined),
};

function isOtherScript(alt: ReadAlt): boolean {
  // A tag may name its script (sr-Latn): then ours may be wrong about it.
  const own = /^[a-z]{2,3}-[A-Z][a-z]{3}/u.test(alt.language) ? undefined : scripts.get(alt.baseLanguage);
  const letters = alt.unquoted.match(/\p{L}/gu) ?? [];
  return own !== undefined && letters.length >= fewestLetters && letters.filter((letter) => own.test(letter)).length < letters.length * leastOfOwnScript;
}

function isOtherLanguage(alt: ReadAlt): boolean {
  const words = plainWords(alt);
  if (words.length < fewestWords) return false;
  const hits = new Map([...smallWords].map(([language, list]) => [language, words.filter((word) => list.has(word))]));
  const others = [...hits].filter(([language]) => language !== alt.baseLanguage);
  const own = hits.get(alt.baseLanguage);
  if (!own) return others.some(([language, found]) => (language === 'en' || language === 'es') && new Set(found).size >= hitsWithoutList);
  const most = Math.max(...others.map(([, found]) => found.length));
  return most >= fewestHits && (own.length === 0 || most > own.length * timesAsMany);
}

/** Words that are no names: no capital, unless they begin the text, and not the book's own. */
function plainWords(alt: ReadAlt): readonly string[] {
  return alt.unquoted
    .split(' ')
    .filter((piece, index) => !isKnown(alt, piece) && (index === 0 || !/^\P{L}*\p{Lu}/u.test(piece)))
    .flatMap((piece) => wordsOf(piece));
}
