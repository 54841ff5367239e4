/**
 * What the forms of a Spanish word have in common: number, gender, the regular verb endings, pronouns that hang on a verb,
 * and the usual changes inside a stem. It is generous on purpose: it serves to find a word again, and takes a form too
 * many (pato, pata) rather than miss one.
 */

/** Regular endings of verbs, without accents. */
const verbEndings = `o as a amos ais an es e emos eis en imos is aste asteis aron iste isteis ieron eron i io aba abas abamos abais
aban ia ias iamos iais ian are aras ara aremos areis aran ere eras era eremos ereis eran ire iras ira iremos ireis iran aria
arias ariamos ariais arian eria erias eriamos eriais erian iria irias iriamos iriais irian aramos arais ieras iera ieramos
ierais ieran ase ases asemos aseis asen iese ieses iesemos ieseis iesen ad ed id ando iendo yendo ado ada ados adas ido ida
idos idas ar er ir`.split(/\s+/u);
/** Endings of nouns and adjectives: gender, number, and the small and the large. */
const nounEndings = 'o a os as e es s ito ita itos itas cito cita citos citas illo illa illos illas ote ota on ona ones isimo isima mente'.split(' ');
const endings = [...new Set([...verbEndings, ...nounEndings])];
/** Fewest letters that a stem must have, so that short words do not all meet. */
const shortestStem = 3;

/** Forms that no rule finds, by their verb; common verbs of stories. */
const irregular = new Map(
  `tener tuv teng tien tendr; hacer hic hiz hag hech har; decir dij dig dic dich dir; poner pus pong puest pondr; querer quis quier querr;
venir vin veng vien vendr; poder pud pued podr; saber sup sep sabr; traer traj traig; salir salg saldr; caer cai cay caig; oir oy oig oi;
ir fui fue fuer va vam vay voy iba; ser fui fue er es soy so sea; estar estuv esta estoy; haber hub hay ha he habr; dar di dio de doy;
andar anduv; caber cup quep; ver vi ve vist veo; leer ley lei; creer crey crei; reir ri rie; dormir durm duerm; morir mur muer muert;
romper rot; abrir abiert; volver vuelt; cubrir cubiert; escribir escrit; pedir pid; seguir sig sigu; sentir sint; vestir vist; servir sirv; medir mid`
    .split(';')
    .flatMap((family) => {
      const [verb = '', ...stems] = family.trim().split(/\s+/u);
      return stems.map((stem) => [stem, verb] as const);
    }),
);

/** The stems that a word may have, itself among them, without accents. Two words that share one may be forms of one word. */
export function stemsInSpanish(word: string): ReadonlySet<string> {
  const plain = withoutAccents(word.toLowerCase());
  const stems = new Set<string>([plain, evenedOut(plain, plain.length)]);
  for (const form of [plain, withoutPronouns(plain)]) {
    for (const ending of endings) {
      if (!form.endsWith(ending)) continue;
      const stem = form.slice(0, form.length - ending.length);
      const verb = irregular.get(stem);
      if (verb !== undefined) stems.add(evenedOut(verb.slice(0, -2), verb.length - 2)).add(verb);
      if (stem.length >= shortestStem) stems.add(evenedOut(stem, stem.length));
    }
  }
  return stems;
}

/** Accents off, ñ kept. */
function withoutAccents(word: string): string {
  return word
    .normalize('NFD')
    .replace(/([aeiou])[\u0300\u0301\u0308]/gu, '$1')
    .normalize('NFC');
}

/** Stirred vowels and spelling: piens- and pens-, vuel- and vol-, toqu- and toc-, lleg- and llegu-, luz and luc-. */
function evenedOut(stem: string, length: number): string {
  if (length < shortestStem) return stem;
  return stem
    .replace(/qu$/u, 'c')
    .replace(/gu$/u, 'g')
    .replace(/z$/u, 'c')
    .replace(/ie(?=[^aeiou]+$)/u, 'e')
    .replace(/ue(?=[^aeiou]+$)/u, 'o');
}

/** asomarse, dímelo, mirándola: what hangs on an infinitive, a gerund or a command. */
function withoutPronouns(word: string): string {
  return word.replace(/(?<=[aei]r|ndo|[aei])(?:me|te|se|nos|os)?(?:l[aeo]s?)?$/u, '');
}
