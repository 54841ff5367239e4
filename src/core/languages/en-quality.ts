import { listsIn, numbersIn } from './formats.ts';

/** English phrases of the page that shows how packs measure up, and of `bookfellow measure`. */

/** What may be said of how hard a text is, as `core/measure` gives it. */
export type EstimateToSay =
  | { readonly kind: 'too short' }
  | { readonly kind: 'no formula' }
  | { readonly kind: 'grades'; readonly formula: string; readonly low: number; readonly high: number; readonly belowFloor: boolean; readonly aboveCeiling: boolean }
  | { readonly kind: 'ease'; readonly formula: string; readonly band: 'muy difícil' | 'algo difícil' | 'normal' | 'bastante fácil' | 'muy fácil'; readonly shortSample: boolean };

/** Pieces that were left out of the counts, as `core/measure` gives them. */
export type LeftOutToSay = Readonly<Partial<Record<'headings' | 'listItems' | 'meanings' | 'frames' | 'bankWords', number>>>;

const count = (n: number, one: string, many: string) => `${numbersIn('en').format(n)} ${n === 1 ? one : many}`;
const list = (items: readonly string[]) => listsIn('en').format(items);

const bands = { 'muy difícil': 'very hard', 'algo difícil': 'somewhat hard', normal: 'of middling ease', 'bastante fácil': 'fairly easy', 'muy fácil': 'very easy' };

/** "About grades 3 to 7, an estimate by the Flesch-Kincaid formula, which sees length alone." */
function estimate(found: EstimateToSay): string {
  switch (found.kind) {
    case 'too short':
      return 'Too short for a grade estimate: that takes 100 words and 10 sentences.';
    case 'no formula':
      return 'No formula fits this language, so there is no estimate.';
    case 'grades': {
      const { low, high, belowFloor, aboveCeiling, formula } = found;
      const band = belowFloor
        ? `About grade ${String(high)} or below`
        : aboveCeiling
          ? `About grade ${String(low)} or above`
          : low === high
            ? `About grade ${String(low)}`
            : `About grades ${String(low)} to ${String(high)}`;
      return `${band}, an estimate by the ${formula} formula, which sees length alone.`;
    }
    case 'ease':
      return `${capital(bands[found.band])} for a grown-up reader (“${found.band}” on the INFLESZ scale), an estimate by the ${found.formula} formula, which sees length alone.${found.shortSample ? ' The scale was made with texts of 500 words and more; this one is shorter.' : ''}`;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const qualityInEnglish = {
  title: 'How the packs measure up',
  titleOfPage: (n: number) => `How the packs measure up, page ${String(n)}`,
  description: 'Words, sentences, an honest estimate of reading grade and what the checks say about each companion in this library.',
  lead: 'Each companion is counted and checked before it appears here. The figures are about the companion’s own text, never about the book, a child or a teacher.',
  toMeaning: 'What the figures mean, and what they do not',
  toSum: 'The library in sum',
  data: 'The same as data',

  sum: 'The library in sum',
  companions: 'Companions',
  inLanguages: (n: number) => count(n, 'language', 'languages'),
  stops: 'Stops',
  familyWords: 'Words for families',
  pictures: 'Pictures described',
  ofPictures: (described: number, all: number) => (all === 0 ? 'no pictures' : `${String(described)} of ${String(all)}`),
  withFindings: 'With a remark of the checks',
  ofAll: (n: number, all: number) => `${String(n)} of ${String(all)}${all === 0 ? '' : `, ${numbersIn('en', { style: 'percent' }).format(n / all)}`}`,
  keptOff: 'Kept off the site',
  keptOffNote: (n: number) => `${count(n, 'companion', 'companions')}, until mended; “bookfellow check” says why`,
  coverage: 'Grades and languages',
  language: 'Language',
  coverageNote: 'How many companions there are for each grade. One for two grades is counted in both.',
  gradeShort: (grade: string) => (grade === 'PreK' ? 'Pre-K' : grade),
  allFindings: 'What the checks say, all told',
  code: 'Kind',
  noFindingsAtAll: 'The checks have nothing to say about any companion.',

  each: 'The companions, one by one',
  filter: {
    legend: 'Which companions to see',
    language: 'Language',
    grade: 'Grade',
    level: 'What the checks say',
    kind: 'About',
    any: 'any',
    findings: 'Only those with a remark',
    all: 'Show all',
    shown: { none: 'No companion is like that.', one: 'One companion of {all}.', some: '{n} companions of {all}.', all: 'All companions are shown.' },
    elsewhere: 'On the other pages',
    failed: 'Only this page could be searched; the rest did not load.',
  },
  pages: 'Pages of this list',
  page: 'page',
  together: 'Together',
  stopsIn: (stops: number, minutes: number) => `${count(stops, 'stop', 'stops')} in ${count(minutes, 'minute', 'minutes')}`,

  parts: { family: 'For families', children: 'What children read', passage: 'The book’s own text' },
  passageNote: 'Counted on the maker’s own machine; none of it is published.',
  counted: (words: number, sentences: number) => `${count(words, 'word', 'words')} in ${count(sentences, 'sentence', 'sentences')}`,
  lengths: (mean: number, longest: number) => `${count(mean, 'word', 'words')} in the average sentence, ${String(longest)} in the longest`,
  nothing: 'Nothing to count.',
  estimate,
  aim: { en: 'The aim is grade 6 or below.', es: 'The aim is “bastante fácil” or easier.' } as Readonly<Record<string, string>>,
  longWords: 'Long words:',
  longOrRareWords: 'Long or less common words:',
  andMore: (n: number) => `, and ${String(n)} more`,
  leftOut: (pieces: LeftOutToSay) => {
    const named = [
      [pieces.headings, 'heading', 'headings'],
      [pieces.listItems, 'list item', 'list items'],
      [pieces.meanings, 'line of the word list', 'lines of the word list'],
      [pieces.frames, 'sentence frame', 'sentence frames'],
      [pieces.bankWords, 'word of the word banks', 'words of the word banks'],
    ] as const;
    const told = named.flatMap(([n, one, many]) => (n === undefined || n === 0 ? [] : [count(n, one, many)]));
    return told.length === 0 ? '' : `Left out, because they are no running prose: ${list(told)}.`;
  },
  costliest: 'Sentences that cost most',
  sees: 'Length is all a formula sees: not pictures, repetition, rhyme, sounds to decode, layout, or what a reader already knows. Then ask a parent to read it.',

  findings: 'What the checks say',
  noFindings: 'The checks have nothing to say.',
  withheld: 'A remark about privacy; “bookfellow check” says what it is.',
  levels: { stop: 'Keeps it off the site', warn: 'Look again', note: 'Good to know' },
  line: (n: number) => `line ${String(n)}`,
  /** Kinds of finding by the first part of their code. One without a name is shown by that part. */
  kinds: {
    aims: 'aims',
    'alt-text': 'alt text',
    ask: 'the wording of questions',
    balance: 'balance of the stops',
    body: 'the text below the fields',
    by: 'who made it, and when',
    care: 'care notes',
    copy: 'words quoted from the book',
    feelings: 'feeling words',
    file: 'the file',
    folder: 'the folder',
    frames: 'sentence frames',
    'front-matter': 'the front matter',
    home: 'prompts for home',
    models: 'model answers',
    pack: 'fields',
    passage: 'the book’s own text',
    picture: 'pictures',
    plan: 'minutes',
    privacy: 'privacy',
    reading: 'readings',
    recording: 'the recording',
    rights: 'rights',
    stop: 'stops',
    text: 'text for families',
    translation: 'the translation',
    words: 'words to teach',
    yaml: 'the fields as written',
  } as Readonly<Record<string, string>>,

  meaning: 'What the figures mean, and what they do not',
  meanings: [
    ['Words and sentences', 'counted in running prose. Headings, lists, word banks and sentence frames are left out, and each entry says so.'],
    ['The average and the longest sentence', 'a short sentence can still be hard, and a long one easy; they only show where to look.'],
    [
      'The estimate',
      'a band of grades from a formula that counts syllables and sentences, or words that are less common. It sees length: not pictures, repetition, rhyme, sounds to decode, layout, or what a reader already knows. A text under 100 words or 10 sentences gets none. It is for the person who writes, and no level for a person who reads.',
    ],
    [
      'Which formula',
      'each is used only for the readers it was made for: Flesch-Kincaid or INFLESZ for families, Spache in English and Crawford in Spanish for children. A book that a grown-up reads aloud is not bound by any of them.',
    ],
    [
      'Long words',
      'those of three syllables or more; for children also words outside a list of common ones. Names and the words a companion teaches are passed over. A long word may be the best one there is.',
    ],
    ['Sentences that cost most', 'those without which the formula would find the text easier. Rewriting them helps the figure; whether it helps the reader, ask a parent.'],
    ['Pictures described', 'whether each picture that carries meaning has a description. Whether the description is good, only a person can say.'],
    ['Stops and minutes', 'how many moments the companion offers and what they take. More is not better.'],
    ['What the checks say', 'rules that a machine can look at. A companion about which nothing is said can still be dull, and one with three remarks can be the best in the house.'],
  ] as readonly (readonly [string, string])[],
};

export type QualityPhrases = typeof qualityInEnglish;
