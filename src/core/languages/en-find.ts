import { numbersIn } from './formats.ts';

/** English for finding a book: the search, and the index at the back of the library. */

const count = (n: number) => `${numbersIn('en').format(n)} ${n === 1 ? 'book' : 'books'}`;

export const findInEnglish = {
  title: 'Find a book',
  lead: 'Look for a title, a name, a word you want to teach, a feeling, or something children should learn to do. A slip of the pen is forgiven.',
  description: (n: number) => `Find one of ${count(n)} by title, by a word to teach, by a feeling, by grade, by minutes or by the way children answer.`,
  words: 'Words to look for',
  look: 'Look',
  narrow: 'And only',
  fields: {
    language: 'In the language',
    grade: 'Grade',
    minutes: 'Minutes at most',
    way: 'Children can',
    book: 'Kind of book',
    kind: 'A stop for',
    feeling: 'A feeling',
    skill: 'Children learn to',
    school: 'From the school',
    rights: 'The book is',
    since: 'Looked over since',
    order: 'In the order of',
  },
  /** What a book is, for lists of choices and lines of the index. */
  kindsOfBook: {
    story: 'story',
    'folk tale': 'folk tale',
    fable: 'fable',
    'fairy tale': 'fairy tale',
    'story in rhyme': 'story in rhyme',
    poems: 'poems',
    'without words': 'book without words',
    alphabet: 'alphabet book',
    counting: 'counting book',
    concept: 'book about an idea (colors, shapes, opposites)',
    information: 'information book',
    biography: 'story of a real person’s life',
  },
  recording: 'With a recording',
  any: 'any',
  anyLanguage: 'any language',
  orders: { best: 'how well it fits', title: 'titles', minutes: 'minutes', reviewed: 'the last look-over' },
  all: 'Start again',
  /** With {n} for a number. Spoken aloud when the results change. */
  found: { none: 'No book answers this. Take a word away, or choose less.', one: 'One book.', some: '{n} books.', failed: 'The list could not be fetched. The index below works without it.' },
  results: 'What was found',
  pages: 'Pages of the results',
  page: (n: number) => `Page ${String(n)}`,
  withoutScript: 'The search needs a script, which is switched off here. The index leads to every book without it.',
  toIndex: 'The index of the library',
  /** The copy of the search on the device; made only when somebody asks. The first has a gap for its size in MB. */
  copyHere: {
    kept: (size: string) => `The search is saved on this device (${size} MB) and works without a network. What you look up with it is saved, too.`,
    removed: 'The search is not saved on this device.',
    keep: 'Save it, to use without a network',
    newer: 'There is a newer version of the search, saved and ready.',
    noRoom: 'There is no room left on this device for the search. It works as long as there is a network.',
  },
  newest: 'Looked over last',
  allInIndex: (n: number) => `All ${count(n)} in the index`,
  index: {
    title: 'The index',
    lead: 'Every book of the library, as in the index at the back of a book: look up a grade, a feeling or what children learn.',
    description: (n: number) => `An index of ${count(n)}: by grade, by kind of book, by feeling, by what children learn to do, by school and from A to Z.`,
    groups: { grade: 'By grade', book: 'By kind of book', feeling: 'By feeling', skill: 'By what children learn', school: 'By school', letter: 'From A to Z', language: 'In other languages' },
    other: 'Other signs',
    books: count,
    listDescription: (name: string, n: number) => `${count(n)} in the index of the library under “${name}”.`,
    back: 'Back to the index',
    pages: 'Pages of this list',
  },
};
