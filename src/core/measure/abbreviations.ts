/**
 * Abbreviations: which full stops belong to a word and not to a sentence. Written without the last stop.
 */

/** The abbreviations of one language, by what has to follow for the stop to be theirs. */
export interface Abbreviations {
  /** A name or more words always follow: `Mr. Fox`, `e.g. a hat`. */
  readonly never: ReadonlySet<string>;
  /** The stop ends a sentence too when a capital follows: `etc.`, `a.m.` */
  readonly beforeCapital: ReadonlySet<string>;
  /** An abbreviation only before a number; otherwise a word of its own: `No. 5`, but `No. I will not.` */
  readonly beforeNumber: ReadonlySet<string>;
  /** May stand before a name or at the end: `St. Ann`, `Oak St. The bus`. Decided by the word that follows. */
  readonly beforeName: ReadonlySet<string>;
  /** Words that begin sentences and are no names. */
  readonly starters: ReadonlySet<string>;
}

const list = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/u));

const english: Abbreviations = {
  never: list(`Mr Mrs Ms Messrs Mme Mlle Dr Prof Rev Fr Capt Cpl Sgt Lt Col Gen Gov Sen Rep Pres Hon Mt
    mr mrs ms dr eg e.g ie i.e cf vs v approx ca incl viz`),
  beforeCapital: list(`etc a.m p.m am pm A.M P.M Inc Ltd Co Corp Ave Rd Blvd Ft Bros Dept dept Apt apt Ph.D
    oz lb lbs ft yd hr hrs min mins sec secs tsp tbsp cm mm km kg ml max
    Jan Feb Mar Apr Jun Jul Aug Sep Sept Oct Nov Dec Tue Tues Wed Thu Thur Thurs Fri`),
  beforeNumber: list('No no Nos nos Vol vol Ch ch p pp Fig fig Sat Sun Mon'),
  beforeName: list('St Jr Sr'),
  starters: list(`a an the this that these those he she it we you they i his her its our your their my there here
    then now so but and or if when where what who why how is are was were do does did can could will would not no yes
    in on at for from to with as after before all every some one once each because soon suddenly later next see let
    please come look go`),
};

const spanish: Abbreviations = {
  never: list(`Sr Sra Srta Sres Sras Dr Dra Dres Dña Prof Profa Lic Ing Arq Gral Cap Sto Sta Mons Pbro
    sr sra srta sres dr dra prof profa p ej p.ej aprox vs EE EE.UU`),
  beforeCapital: list(`etc Ud Uds Vd Vds a.m p.m a.C d.C Av Avda Cía máx mín min seg kg km cm mm ml izq dcha tel
    Depto Dpto depto dpto ed S.A UU`),
  beforeNumber: list('núm Núm pág págs Pág Págs vol Vol cap fig art No no n.º N.º'),
  beforeName: list('St D Da S'),
  starters: list(`el la los las un una unos unas él ella ellos ellas yo tú y o pero entonces no sí en de con cuando
    por para se su sus mi mis tu tus al luego después así como qué quién dónde hoy ayer ya si todos todo cada este
    esta ese esa lo le les nos me te había era es fue`),
};

const none: Abbreviations = {
  never: new Set(),
  beforeCapital: new Set(),
  beforeNumber: new Set(),
  beforeName: new Set(),
  starters: new Set(),
};

/** The abbreviations of a language by its primary tag; of a language without a list here, none. */
export function abbreviationsOf(language: string): Abbreviations {
  return language === 'en' ? english : language === 'es' ? spanish : none;
}

/** Verbs that report speech, for `"Run!" Bear shouted.` A reporting clause in lower case needs no list. */
export const reportingVerbs: ReadonlySet<string> = list(`said says say asked asks cried cries shouted shouts whispered
  whispers answered answers replied replies laughed laughs exclaimed yelled yells sighed sighs muttered murmured screamed
  squealed squeaked roared growled howled barked grumbled groaned moaned sobbed thought thinks wondered wonders begged
  pleaded added explained demanded insisted announced giggled chuckled gasped snapped hissed croaked chirped bellowed
  boomed repeated agreed warned ordered declared sniffed snorted wailed whimpered hooted quacked mewed purred`);
