import { numbersIn } from './formats.ts';

/** English for the page that shows packs of one book beside each other. */

const books = (n: number) => `${numbersIn('en').format(n)} ${n === 1 ? 'book' : 'books'}`;

export const sameBookInEnglish = {
  title: 'The same book twice',
  titleOfPage: (n: number) => `The same book twice, page ${String(n)}`,
  description: 'Companions of one book beside each other: what they have alike, where they differ, who made them, and what can be done.',
  lead: 'Several people may have made a companion for the same book, and one may be a copy of another. Here they stand beside each other, so that somebody can settle which of them stay.',
  none: 'No book has two companions that nobody has looked at.',
  count: (n: number) => (n === 1 ? 'One book has more than one companion in the same language.' : `${books(n)} have more than one companion in the same language.`),
  what: 'What can be done',
  /** What a person does, and how. */
  ways: [
    [
      'One takes the other’s place.',
      'Retire the other: write “retired” into its file, with the day, the reason, and under “instead” the name of the folder that stays. Its page then says where to go.',
    ],
    ['One was made from the other.', 'Write that into the newer one’s file: “based on” with the name of the older one’s folder. They are then called relatives and stand no longer here.'],
    ['Both are good.', 'Write their folders’ names into “both stay” in library.yaml. Nobody is asked again.'],
  ] as readonly (readonly [string, string])[],
  grounds: { isbn: 'The same ISBN', title: 'The same title and author, as they are or with a slip of the pen', prompts: 'Many of the same questions' },
  why: 'Why they stand here',
  alike: 'Alike in all',
  differs: 'Where they differ',
  same: 'Nothing but the questions and texts themselves.',
  shared: (n: number) => (n === 1 ? 'One question that they share' : `${String(n)} questions that they share`),
  andMore: (n: number) => (n === 1 ? 'and one more' : `and ${String(n)} more`),
  others: 'Of the same book, too',
  pages: 'Pages of this list',
  notGiven: 'not told',
  facts: {
    book: 'The book’s title',
    author: 'Author',
    illustrator: 'Pictures',
    edition: 'Edition',
    maker: 'Made by',
    grades: 'Grades',
    minutes: 'Minutes',
    stops: 'Stops',
    reviewed: 'Last looked over',
    version: 'Version',
    licence: 'Licence',
    from: 'Based on',
    file: 'File',
  },
  relatedHeading: 'Relatives, which nobody has to settle',
  relatedLead: 'Translations of one companion lie in one folder and are not listed.',
  how: { fork: 'one was made from the other, or both from a third', 'both stay': 'somebody looked at both, and both stay', language: 'the same book in two languages, in two folders' },
  and: 'and',
};
