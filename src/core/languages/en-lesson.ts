import { listsIn } from './formats.ts';

/** The lesson's own phrases in English: the run sheet, the lesson followed step by step, the week. The page and its script both use them. */

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;
const listed = (items: readonly string[]) => listsIn('en').format(items);
const minutes = (n: number) => count(n, 'minute', 'minutes');
const stops = (numbers: readonly number[]) => `${numbers.length === 1 ? 'stop' : 'stops'} ${listed(numbers.map(String))}`;
const span = (seconds: number) => {
  const whole = Math.floor(seconds / 60);
  const rest = Math.round(seconds % 60);
  return [whole > 0 ? minutes(whole) : '', rest > 0 || whole === 0 ? count(rest, 'second', 'seconds') : ''].filter((part) => part !== '').join(' ');
};
const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const few = (n: number) => small[n] ?? String(n);

export const lessonInEnglish = {
  stop: (n: number) => `Stop ${String(n)}`,
  stops,
  opening: (n: number) => `opening ${String(n)}`,
  minutesOf: minutes,
  span,
  /** The line of choices above the sheet. */
  choices: {
    name: 'This lesson',
    start: 'Begins at',
    now: 'Now',
    minutes: 'Minutes',
    reading: 'Reading',
    with: 'With',
    settings: { class: 'a class', 'small group': 'a small group', 'one child': 'one child', recording: 'a recording' },
    pace: 'Words a minute',
    paceNow: (pace: number) => `Reading pace: ${String(Math.round(pace))} words a minute`,
    practiceNote: 'Or find your own: read the whole book aloud once, pages turned, and look at the clock before and after. Nobody reads a picture book at one speed; this is yours.',
    practiceTook: 'My reading took (minutes:seconds)',
    practiceSet: (pace: number) => `That is about ${String(pace)} words a minute.`,
    practiceWrong: 'Write minutes and seconds, such as 4:30, for the whole book.',
    range: (least: number, most: number) => `Write a number from ${String(least)} to ${String(most)}.`,
    shared: 'The address of this page keeps these choices. It holds nothing about anybody.',
  },
  /** Whether it fits. Minutes are whole and rounded up. */
  fit: {
    all: (n: number, takes: number, given: number) => `${n === 1 ? 'Its one stop fits' : n === 2 ? 'Both stops fit' : `All ${few(n)} stops fit`}: about ${String(takes)} of the ${minutes(given)}.`,
    some: (asked: readonly number[], left: readonly number[], given: number) => `In ${minutes(given)}, ask ${stops(asked)}. Left for another day: ${stops(left)}.`,
    onlyReading: (left: readonly number[], given: number) => `${minutes(given)} are enough to read, and for no stop. Left for another day: ${stops(left)}.`,
    noStops: (takes: number, given: number) => `This reading has no stops: about ${String(takes)} of the ${minutes(given)}.`,
    unmet: { 'a feeling': 'No question about a feeling fits.', 'a way without writing': 'All that fits asks for writing. Offer each child the other way to answer.' },
    cannot: (given: number, missing: string, total: number) =>
      `It does not fit: for the reading and the stops that must stay, ${minutes(given)} are ${missing} too few. The whole reading below takes about ${minutes(total)}.`,
    outOfReach: 'A stop that must stay comes after one that this reading does not have.',
    wouldHelp: 'What would help:',
    nothingHelps: 'Only more minutes would help.',
    remedies: {
      ends: 'Cut the opening and the closing short',
      part: (to: number) => `Read only to opening ${String(to)}`,
      days: (to: number) => `Read to opening ${String(to)} today, and the rest tomorrow`,
    },
    endsCut: 'Opening and closing are cut short.',
    endsWhole: 'Give them their time',
    part: (from: number, to: number) => `Only openings ${String(from)} to ${String(to)}.`,
    rest: (from: number, to: number) => `The next day: openings ${String(from)} to ${String(to)}`,
    whole: 'The whole book',
  },
  /** The minutes and the sheet itself. */
  plan: 'The minutes',
  planNote: (pace: number) => `Worked out for a reading pace of ${String(Math.round(pace))} words a minute. Your class has its own pace; trust it.`,
  part: 'Part',
  takes: 'Takes',
  bar: 'The lesson from left to right: reading is a thin line, each numbered block is a stop',
  openingPart: 'Opening',
  closingPart: 'Closing',
  readingAloud: 'Reading aloud',
  turns: 'Turning pages and looking',
  total: 'All together',
  runSheet: 'Minute by minute',
  runNote: 'The clock counts minutes and seconds from the moment you begin.',
  runNoteClock: (from: string, to: string) => `From ${from} to ${to}.`,
  theBook: 'the book',
  theRecording: 'the recording',
  have: (things: readonly string[]) => `Have ready: ${listed(things)}.`,
  planFor: (reading: number, purpose: string) => `${['', 'First', 'Second', 'Third', 'Fourth', 'Fifth'][reading] ?? ''} reading. ${purpose}`,
  begin: 'Show the cover. Read the title and who made the book. Say what this reading is for, then begin.',
  close: 'Close the book. Ask one question from “After the book” below, and thank the class for one thing you heard.',
  toTheEnd: 'Read on to the end of the book.',
  readTo: (to: number) => `Read on to opening ${String(to)}.`,
  wait: (n: number) => `Wait ${count(n, 'second', 'seconds')} in silence.`,
  task: (seconds: number) => `Give ${span(seconds)} to do it.`,
  shares: (n: number, secondWait: number) =>
    n === 0 ? 'Hear nobody alone; look around the room.' : `Hear ${n === 1 ? 'one child' : `${few(n)} children`}, and wait ${count(secondWait, 'second', 'seconds')} after each answer.`,
  hold: 'The recording waits; the child answers to whoever is there.',
  rest: 'Not in this lesson',
  restNote: 'Stops that are left for lack of minutes, and those of the other readings.',
  inReadings: (readings: readonly number[]) => (readings.length === 1 ? `In reading ${String(readings[0])}.` : `In readings ${listed(readings.map(String))}.`),
  week: 'The week',
  weekNote: 'The same book on several days, each time for another purpose.',
  readingN: (n: number) => `Reading ${String(n)}`,
  mustAsk: 'Be sure to ask',
  moved: {
    fresh: (numbers: readonly number[]) => `New: ${stops(numbers)}`,
    again: (numbers: readonly number[]) => `Again: ${stops(numbers)}`,
    back: (numbers: readonly number[]) => `Back: ${stops(numbers)}`,
    resting: (numbers: readonly number[]) => `Resting: ${stops(numbers)}`,
  },
  /** One step at a time, while the lesson goes on. */
  follow: {
    open: 'Follow along',
    openNote: 'One step at a time, in large letters, with the clock in sight. It makes no sound and needs no network.',
    name: 'The lesson, step by step',
    begin: 'Begin',
    before: (minutesThere: number) => `${minutes(minutesThere)} from the moment you press “Begin”.`,
    beforeClock: (start: string, end: string) => `Set for ${start} to ${end}. Press “Begin” when you do.`,
    keys: 'Right arrow or space: next step. Left arrow: back. Escape: close.',
    stepOf: (at: number, all: number) => `Step ${String(at)} of ${String(all)}`,
    next: 'Next',
    finish: 'Finish',
    back: 'Back',
    close: 'Close',
    goOn: 'Go on with the lesson',
    until: (time: string) => `planned until ${time}`,
    ends: (time: string) => `It ends at about ${time}.`,
    onTime: 'On time',
    behind: (n: number) => `About ${n === 1 ? 'a minute' : `${few(n)} minutes`} behind`,
    ahead: (n: number) => `About ${n === 1 ? 'a minute' : `${few(n)} minutes`} ahead`,
    tooMuch: 'More is to come than there is time for',
    leaveOut: (numbers: readonly number[]) => `leave out ${stops(numbers)}`,
    leaveThem: (n: number): string => (n === 1 ? 'Leave it out' : 'Leave them out'),
    roomFor: (numbers: readonly number[]) => `there would be time for ${stops(numbers)}`,
    askThem: (n: number): string => (n === 1 ? 'Ask it after all' : 'Ask them after all'),
    overAlone: (n: number) => `It runs about ${n === 1 ? 'a minute' : `${few(n)} minutes`} over.`,
    over: (n: number) => `Even so it runs about ${n === 1 ? 'a minute' : `${few(n)} minutes`} over.`,
    shortClosing: 'A short closing makes up for it.',
    tally: 'Who has spoken',
    tallyNote: 'Only numbers, for this lesson. They are gone when you leave this page, unless you keep the lesson at the end.',
    children: 'Children in the room',
    heard: (n: number, left: number | undefined) => {
      const spoken = n === 0 ? 'Nobody has spoken yet' : n === 1 ? 'One has spoken' : `${String(n)} have spoken`;
      return left === undefined || n === 0 ? spoken : left === 0 ? 'Everybody has spoken' : `${spoken}, ${String(left)} not yet`;
    },
    oneMore: 'One more has spoken',
    oneLess: 'Take one back',
    done: 'The lesson is over',
    doneIn: (took: string, plannedFor: string) => `It took ${took}; ${plannedFor} were planned.`,
    planned: 'Planned',
    took: 'Took',
    keep: 'Keep these times on this device',
    keepNote: 'The day, the reading, the seconds of each part and, if you counted, two numbers. Nothing about a child, and it goes nowhere.',
    kept: 'Kept on this device.',
    cannotKeep: 'This browser does not let the page keep anything. Write down what you need.',
  },
  /** Lessons that were kept. */
  past: {
    title: 'Lessons you kept',
    note: 'Kept on this device only. A part that often takes longer than planned wants more seconds in the pack, or another question.',
    caption: (day: string, reading: number, given: number) => `${day}, reading ${String(reading)}, ${minutes(given)}`,
    heard: (heard: number, children: number) => `${String(heard)} of ${String(children)} children had spoken.`,
    erase: 'Erase the lessons kept here',
    eraseSure: 'Erase them now',
    eraseNot: 'Keep them',
    erased: 'Erased from this device.',
  },
  /** The week as a calendar file. */
  calendar: {
    title: 'Put the week into a calendar',
    first: 'First day',
    make: 'Make the calendar file',
    note: 'The file is made on this device. The readings are laid on school days, Monday to Friday, with a day between them where there is one.',
    made: (days: string) => `Made for ${days}.`,
    event: (title: string, reading: number) => `${title}, reading ${String(reading)}`,
    ask: (question: string) => `Be sure to ask: “${question}”`,
    stops: (numbers: readonly number[]) => `Ask ${stops(numbers)}.`,
  },
};

/** Every phrase of the lesson, by its English shape. */
export type LessonPhrases = typeof lessonInEnglish;
