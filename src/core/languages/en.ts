import { librarianInEnglish } from './en-librarian.ts';
import { retiredInEnglish } from './en-retired.ts';
import { offlineInEnglish } from './en-offline.ts';
import { recordingInEnglish } from './en-recording.ts';
import { programsInEnglish } from './en-programs.ts';
import { stackInEnglish } from './en-stack.ts';

/** English, and by its type the list of every phrase that a page needs. A page's own text comes from the pack. */

import { enBooklet } from './en-booklet.ts';
import { lessonInEnglish } from './en-lesson.ts';
import { handOverInEnglish } from './en-hand-over.ts';
import { makerInEnglish } from './en-maker.ts';
import { findInEnglish } from './en-find.ts';
import { sameBookInEnglish } from './en-same-book.ts';
import { qualityInEnglish } from './en-quality.ts';
import { paperInEnglish } from './en-paper.ts';
import { picturesInEnglish } from './en-pictures.ts';
import { listsIn } from './formats.ts';

const ones = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

function inWords(n: number): string {
  if (n < 20) return ones[n] ?? String(n);
  if (n > 99) return String(n);
  const one = n % 10;
  return `${tens[Math.floor(n / 10)] ?? ''}${one === 0 ? '' : `-${ones[one] ?? ''}`}`;
}

function listed(items: readonly string[]): string {
  return listsIn('en').format(items);
}

/** "kindergarten and grade one", "grades two and three". */
function gradesInWords(grades: readonly string[]): string {
  const early = grades.filter((grade) => !/^\d$/.test(grade)).map((grade) => (grade === 'PreK' ? 'preschool' : 'kindergarten'));
  const numbered = grades.filter((grade) => /^\d$/.test(grade)).map((grade) => inWords(Number(grade)));
  const later = numbered.length === 0 ? [] : [`${numbered.length === 1 ? 'grade' : 'grades'} ${listed(numbered)}`];
  return listed([...early, ...later]);
}

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;

export const en = {
  site: {
    skip: 'Skip to the page',
    nav: 'Main',
    library: 'The library',
    homeReading: 'Reading at home',
    about: 'About',
    languages: 'Languages',
    trail: 'You are here',
    privacy: 'Privacy',
    accessibility: 'Accessibility',
    quality: 'How the packs measure up',
    find: 'Find a book',
    footerNav: 'More about this library',
    contact: 'Who to ask',
    rights: 'Rights',
    rules: 'Local rules, the school and the people in charge of it come before anything written here.',
    listen: 'Listen',
    listenStop: 'Stop',
    endOfLine: 'in',
    /** Said at the foot of every page while no native reader has been through a language; empty once one has. */
    awaiting: '',
    partlyEnglish: '',
    /** Said on a page whose part of the phrases a language does not have at all. */
    notYet: '',
  },
  /** Number and lists in words. */
  inWords,
  listed,
  /** Between the parts of a line. */
  comma: ', ',
  semicolon: '; ',
  grades: (grades: readonly string[]) => gradesInWords(grades),
  forGrades: (grades: readonly string[]) => `For ${gradesInWords(grades)}`,
  minutes: (n: number) => count(n, 'minute', 'minutes'),
  minutesInWords: (n: number) => `${inWords(n)} ${n === 1 ? 'minute' : 'minutes'}`,
  seconds: (n: number) => count(n, 'second', 'seconds'),
  /** "2 minutes 10 seconds", for what a stop takes. */
  span: (seconds: number) => {
    const minutes = Math.floor(seconds / 60);
    const rest = Math.round(seconds % 60);
    return [minutes > 0 ? count(minutes, 'minute', 'minutes') : '', rest > 0 || minutes === 0 ? count(rest, 'second', 'seconds') : ''].filter((part) => part !== '').join(' ');
  },
  words: (n: number) => count(n, 'word', 'words'),
  opening: (n: number) => `opening ${String(n)}`,
  openings: (n: number) => count(n, 'opening', 'openings'),
  stop: (n: number) => `Stop ${String(n)}`,
  quoted: (text: string) => `“${text}”`,
  blank: 'blank to fill',
  wideTable: 'Table',
  inLanguage: (language: string) => `in ${language}`,
  kinds: {
    predict: 'a guess ahead',
    feeling: 'a feeling',
    word: 'a word',
    recall: 'what happened',
    reason: 'a reason',
    opinion: 'an opinion',
    'own life': 'their own life',
    retell: 'telling it again',
    completion: 'finishing a sentence',
  },
  depths: ['recall', 'connect', 'reason', 'extend'],
  depth: (name: string) => `depth: ${name}`,
  ways: { say: 'say it', write: 'write it', draw: 'draw it', act: 'act it out', partner: 'tell a partner' },
  rightsOf: { 'in copyright': 'in copyright', 'public domain': 'in the public domain', licensed: 'under an open licence', 'our own': 'the library’s own' },
  families: {
    glad: 'glad',
    sad: 'sad',
    cross: 'cross',
    afraid: 'afraid',
    surprised: 'surprised',
    disgusted: 'disgusted',
    calm: 'calm',
    caring: 'caring',
    proud: 'proud',
    ashamed: 'ashamed',
    curious: 'curious',
    lonely: 'lonely',
  },
  strengths: ['mild', 'middling', 'strong'],
  about: { character: 'about the character: ask for what shows it', me: 'about the child: every answer is true' },
  book: {
    by: (author: string, illustrator: string | undefined) => (illustrator === undefined ? `by ${author}` : `by ${author}, pictures by ${illustrator}`),
    companionBy: (name: string, school: string | undefined) => (school === undefined ? `Companion made by ${name}` : `Companion made by ${name}, ${school}`),
    licence: (licence: string) => `Companion under ${licence}`,
    translated: (by: string) => `Put into English by ${by}`,
    checked: (by: string) => `checked by ${by}`,
    reviewed: (date: string) => `Last looked over on ${date}`,
    from: (owner: string) => `From ${owner}`,
    forks: 'Companions made from this one',
    moreForks: (n: number) => `and ${String(n)} more`,
    basedOn: (parent: string) => `Based on ${parent}`,
    pictureBy: (credit: string) => `Picture: ${credit}`,
    isbn: (isbn: string) => `ISBN ${isbn}`,
  },
  ribbon: {
    name: 'Where the reading stops',
    first: 'first page',
    last: 'last page',
    mark: (n: number, opening: number, kind: string) => `Stop ${String(n)}, opening ${String(opening)}: ${kind}`,
    short: (opening: number) => `opening ${String(opening)}`,
  },
  library: {
    title: 'The library',
    welcome: 'Companions for reading picture books aloud, for the class and for the evening at home.',
    contents: 'The books',
    none: 'There is no book here yet.',
    elsewhere: 'In another language only',
    elsewhereNote: 'These books have no companion in English yet.',
    description: (n: number) => `${count(n, 'companion', 'companions')} for reading picture books aloud: a page for families, a booklet for children, a lesson for teachers.`,
    frontispiece: 'An open book under a lamp',
  },
  family: {
    kind: 'For the family',
    toc: 'For this book',
    readIn: 'Read this page in English',
    steps: 'Ten minutes together',
    stepsNote: 'You do not need the book. Your child has the story in mind.',
    step: [
      ['Ask for the story.', 'Say: “Tell me what happened.” Then listen to the end, even when it comes out of order. Three minutes.'],
      ['Ask one question.', 'Choose one from the list below. Count five slow breaths before you help. Four minutes.'],
      ['Say it back, and add a little.', 'Repeat what you heard in a full sentence, then tell something of your own. Three minutes.'],
    ],
    anyLanguage: 'Use the language you love best. A story keeps its worth in every one.',
    prompts: 'Questions to choose from',
    example: 'How it may sound',
    speakers: { 'grown-up': 'Grown-up', child: 'Child' },
    words: 'Words to use this week',
    wordsNote: 'Let them turn up at the table, on the stairs, in the bath.',
    gesture: 'Show it:',
    aims: 'What the class reads it for',
    care: 'Before you talk',
    more: 'About the book',
    toBooklet: 'The child’s booklet',
    toBookletNote: 'to answer on the screen or on paper',
    toLesson: 'The lesson',
    toLessonNote: 'the run sheet for the teacher, or for whoever stands in',
    description: (title: string) => `What to talk about at home after “${title}”: three steps, ten minutes, no book needed.`,
  },
  booklet: enBooklet,
  sheet: lessonInEnglish,
  pictures: picturesInEnglish,
  lesson: {
    kind: 'Run sheet',
    of: 'Lesson',
    lead: 'For the teacher, or for whoever stands in today. You need not have read the book before.',
    toMinutes: 'Straight to the minutes',
    glance: 'At a glance',
    who: 'Class',
    time: 'Time',
    book: 'Book',
    have: 'Have ready',
    theBook: 'the book',
    theBookOrRecording: 'the book, or its recording',
    aims: 'What this reading is for',
    before: 'Read this first',
    readUntil: 'Read on until',
    onOpening: (opening: number) => `opening ${String(opening)}`,
    cue: 'and stop after',
    picture: { shown: 'Picture in sight.', hidden: 'Keep the picture hidden until they have answered.' },
    atRecording: (clock: string) => `Recording: ${clock}`,
    say: 'Say',
    how: 'How they answer',
    orWay: (way: string) => `or ${way}`,
    seated: 'Seated',
    materials: 'Have ready',
    frames: 'Sentence frames',
    bank: 'Word bank',
    listenFor: 'Listen for',
    ifQuiet: 'If it stays quiet',
    expand: 'Say back, with a little more',
    models: 'Answers a child may give',
    shows: (traits: string) => `shows: ${traits}`,
    must: 'Keep this one when time is short.',
    after: (n: number) => `Comes after stop ${String(n)}.`,
    questions: 'After the book',
    rubric: 'What to notice in an answer',
    rubricNote: 'Spelling and handwriting are never scored. A trait that is not there yet is something to teach, and no verdict on a child.',
    trait: 'Trait',
    meets: 'It is there',
    notYet: 'Not yet',
    example: 'For example',
    words: 'Words to teach',
    word: 'Word',
    meaning: 'Meaning',
    situation: 'When you meet it',
    firstMet: 'First met',
    gesture: 'Gesture',
    feelings: 'Feeling words',
    feeling: 'Feeling',
    family: 'Kin to',
    strength: 'Strength',
    care: 'With care',
    rights: 'Rights',
    bookRights: (rights: string) => `The book is ${rights}.`,
    quote: 'Only the few words of each cue come from the book. Do not copy, project or record more of it than your school’s rules and the rights holder allow.',
    description: (title: string) => `Run sheet for reading “${title}” aloud: the minutes, each stop with the words to say, and what to listen for.`,
  },
  offline: offlineInEnglish,
  recording: recordingInEnglish,
  stack: stackInEnglish,
  quality: qualityInEnglish,
  sameBook: sameBookInEnglish,
  maker: makerInEnglish,
  handOver: handOverInEnglish,
  find: findInEnglish,
  programs: programsInEnglish,
  paper: paperInEnglish,
  retired: retiredInEnglish,
  librarian: librarianInEnglish,
  missing: {
    title: 'This page is not in the book',
    text: 'Perhaps it was moved, or the address lost a letter on the way. Nothing you did has been lost.',
    back: 'Back to the library',
    description: 'There is no page at this address. The library and its books are one step away from here.',
  },
};

/** Every phrase, by its English shape. */
export type Phrases = typeof en;
