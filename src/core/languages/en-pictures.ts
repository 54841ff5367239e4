import { listsIn } from './formats.ts';

/** The phrases of a pack's pictures in English. */

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;
const listed = (items: readonly string[]) => listsIn('en').format(items);

const spent = {
  title: 'How the minutes are spent',
  table: 'The minutes in a table',
  on: 'What for',
  takes: 'Takes',
  minutes: 'minutes',
  spending: {
    reading: 'Reading aloud',
    pages: 'Turning pages and looking',
    asking: 'Asking',
    thinking: 'Time to think',
    doing: 'Saying, writing, drawing, acting',
    hearing: 'Hearing children',
    ends: 'Opening and closing',
  },
  /** Minutes, whole. */
  text: (total: number, reading: number, children: number, stops: number) =>
    `A lesson of about ${count(total, 'minute', 'minutes')}. Some ${String(reading)} of them are reading and looking, and ${stops === 0 ? 'none is kept for stops' : `some ${String(children)} belong to the children, who think, answer and are heard at ${count(stops, 'stop', 'stops')}`}.`,
};

export const picturesInEnglish = {
  spent,
  heading: 'The book and its stops, drawn',
  /** Name of the pictures in the ledger of quality. */
  inLedger: 'Drawn',
  table: 'The figures in a table',
  stopMap: {
    title: 'Where the reading stops',
    text: (stops: number, openings: number, words: number, must: number) =>
      `${count(stops, 'stop', 'stops')} along ${count(openings, 'opening', 'openings')} and ${count(words, 'word', 'words')}. ${must === 0 ? 'None has to stay' : must === 1 ? 'One has to stay' : `${String(must)} have to stay`} when time is short.`,
    none: 'This companion has no stops, so there is nothing to draw along the book.',
    counted: 'Words are counted in the book’s own text, to the end of each opening.',
    shared: 'Words are shared out evenly over the openings; nobody has counted them one by one.',
    openings: 'opening',
    words: 'words',
    stop: 'Stop',
    opening: 'Opening',
    read: 'Words read',
    answer: 'Answer',
    depth: 'Depth',
    keep: 'When time is short',
    must: 'has to stay',
    may: 'may wait',
    mustKey: 'Full stem: has to stay when time is short',
    mayKey: 'Broken stem: may wait',
    depthKey: 'The taller the stem and the more its leaves, the deeper the question',
  },
  path: {
    title: 'The path of feelings',
    text: (feelings: readonly (readonly [stop: number, words: readonly string[]])[]) =>
      `What answers may say of a character’s feelings: ${feelings.map(([stop, words]) => `${listed(words)} at stop ${String(stop)}`).join('; ')}.`,
    none: 'No stop of this companion asks about a character in words of feeling that the library knows. So there is no path to draw.',
    note: 'Places are the library’s own judgement of a word, and say nothing about a child.',
    stop: (n: number, opening: number) => `Stop ${String(n)}, opening ${String(opening)}`,
    unpleasant: 'hard to feel',
    pleasant: 'good to feel',
    strokes: 'Strokes under a word tell its strength, from one to three.',
    at: 'Stop',
    opening: 'Opening',
    feeling: 'Feeling',
    strength: 'Strength',
    /** From -100 to 100. */
    valence: 'Good to feel (−100 to 100)',
  },
};

export type PicturePhrases = typeof picturesInEnglish;
