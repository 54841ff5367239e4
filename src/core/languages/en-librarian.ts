import { numbersIn } from './formats.ts';

const count = (n: number, one: string, many: string) => `${numbersIn('en').format(n)} ${n === 1 ? one : many}`;
const companions = (n: number) => count(n, 'companion', 'companions');

/** English phrases of the page for whoever looks after a library. */
export const librarianInEnglish = {
  title: 'For whoever looks after the library',
  titleOfPage: (n: number) => `For whoever looks after the library, page ${String(n)}`,
  description: 'What came in, what is kept off the site, which companions should be looked over again, for which grades and skills there are some, and whom to write to.',
  lead: 'What this library asks of you, as of its last build. Everybody may see this page, so it says of companions that are not published only how many there are.',
  toSum: 'The library in sum',
  toOwners: 'Whom to write to',
  link: 'For whoever looks after the library',

  news: 'What happened',
  newsNote: 'The latest first. A companion came in when a build found it for the first time; it was looked over on the day that its file says.',
  since: 'Since',
  sinceShown: 'Since then: {n}',
  what: { 'came in': 'came in', 'looked over': 'looked over', 'taken out': 'taken out' },
  day: 'Day',
  happened: 'What',
  companion: 'Companion',
  from: 'From',
  noNews: 'No companion tells a day yet.',
  moreLines: (n: number) => `And ${count(n, 'line', 'lines')} more, which are older. All days are in the list for other programs.`,

  keptOff: 'Kept off the site',
  keptOffNone: 'Nothing is kept off the site.',
  keptOffNote: 'Each has a mistake that stops it. “npx bookfellow check” names the file, the line and what to write instead.',
  keptOffOf: (owner: string, n: number) => `${owner}: ${companions(n)}`,
  own: 'The library’s own',

  past: 'Past their review date',
  pastNone: 'No companion is past its review date.',
  pastNote: 'Two years after the last look, a companion should be read again. That is common practice, without a source.',
  lastLooked: 'Last looked over',
  morePast: (n: number) => `And ${companions(n)} more, looked over later than these.`,
  never: (n: number) => `${n === 1 ? 'One companion names' : `${numbersIn('en').format(n)} companions name`} no day of review.`,

  coverage: 'Grades and skills',
  coverageIn: (language: string) => `Grades and skills, ${language}`,
  coverageNote: 'The square grows with the number beside it; a dash is a gap. A companion for two grades or two skills is counted in both.',
  skill: 'Skill',
  otherSkills: 'Other skills',
  noSkill: 'No skill named',
  allPacks: 'All companions',

  owners: 'Whom to write to',
  ownersNone: 'The checks have nothing to say about anybody’s companions.',
  ownersNote: 'A text for each school or person, ready to send. Nothing is sent from here: copy it, or open it in your own mail program.',
  ownerPacks: (n: number) => companions(n),
  ownerOff: (n: number) => `${String(n)} kept off`,
  ownerLook: (n: number) => `${String(n)} to look at again`,
  ownerNotes: (n: number) => `${String(n)} good to know`,
  text: 'The text',
  copy: 'Copy the text',
  copied: 'Copied.',
  notCopied: 'It could not be copied. Select it and copy it yourself.',
  mail: 'Open it in your mail program',
  pages: 'Pages of this list',
  page: 'Page',

  /** The letter. */
  subject: (library: string) => `Your companions in ${library}`,
  opening: (library: string, n: number) => `About your ${companions(n)} in ${library}:`,
  letterOff: (n: number) =>
    `${n === 1 ? 'One companion is' : `${String(n)} companions are`} kept off the site by a mistake that stops ${n === 1 ? 'it' : 'them'}. To see which, and what to write instead, call in your folder: npx bookfellow check`,
  letterLook: 'Please look at these again:',
  letterNotes: 'Good to know:',
  letterMore: (n: number) => `… and ${String(n)} more. “npx bookfellow check” tells all of them.`,
  closing: 'Thank you. If something here is wrong, write back:',
};

export type LibrarianPhrases = typeof librarianInEnglish;
