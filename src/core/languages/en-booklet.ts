/** English phrases of the child's booklet: on paper, on the screen and in the file. A file of its own, so that the browser loads these alone. */

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;

/** Names of bookmarks, by the slug that is saved. A slug of a later version is shown as it is. */
const enNames: Readonly<Record<'patterns' | 'colours', Readonly<Record<string, string>>>> = {
  patterns: { waves: 'waves', leaves: 'leaves', stitches: 'stitches', roofs: 'rooftops', rain: 'rain' },
  colours: { red: 'red', blue: 'blue', green: 'green', yellow: 'yellow', brown: 'brown' },
};

const nameOf = (names: Readonly<Record<string, string>>, slug: string) => (Object.hasOwn(names, slug) ? names[slug] : undefined) ?? slug;

export const enBooklet = {
  kind: 'A booklet to answer in',
  of: 'Booklet',
  name: 'Name',
  choose: 'Choose a bookmark',
  chooseNote: 'Draw a ring around the one that is yours. It can stand in for your name.',
  bookmarks: { waves: 'waves', leaves: 'leaves', stitches: 'stitches', roofs: 'rooftops', rain: 'rain' },
  open: (opening: number) => `Opening ${String(opening)}`,
  answer: (ways: string) => `You can ${ways}.`,
  or: (ways: readonly string[]) => new Intl.ListFormat('en', { type: 'disjunction' }).format(ways),
  frames: 'You can begin like this:',
  bank: 'Words that may help:',
  lines: 'Lines to write on',
  box: 'Room to draw',
  sayNote: 'Say it in whole sentences. You may look at the picture.',
  rating: 'Your stars',
  ratingNote: 'Draw a ring around one line.',
  stars: (n: number) => count(n, 'star', 'stars'),
  starWords: ['not for me', 'it was all right', 'I liked it', 'I liked it very much', 'I want it again and again'],
  because: 'and because',
  reasons: 'It may be because of',
  end: 'The end of your booklet. Well kept.',
  description: (title: string) => `A booklet for children to say, write, draw and act their answers to “${title}”, on paper or on the screen.`,
  /** The file that a family hands over. */
  file: {
    title: (book: string) => `${book}: my page of answers`,
    lead: 'A child answered these questions about a picture book. The pages below are all that this file holds. They can be read here, and read back into the booklet on another device.',
    mark: (pattern: string, colour: string) => `Kept by the bookmark with ${nameOf(enNames.patterns, pattern)}, in ${nameOf(enNames.colours, colour)}`,
    open: (opening: number) => `Opening ${String(opening)}`,
    whole: 'The whole book',
    about: { character: 'About someone in the story', me: 'About the child: every answer is true' },
    nothing: 'Nothing here yet.',
    kinds: {
      written: 'Written',
      feeling: 'A feeling word',
      'cannot-tell': 'A feeling word',
      said: 'Said, and written down by a grown-up',
      voice: 'Said aloud',
      drawing: 'Drawn',
      photo: 'A photo',
      acted: 'Acted out',
      passed: 'Passed',
      stars: 'Stars',
      because: 'And because',
    },
    passed: 'I pass on this one.',
    cannotTell: 'I can’t tell.',
    stars: (stars: number, of: number, words: string) => `${String(stars)} of ${String(of)}: ${words}`,
    untitledDrawing: 'A drawing without words beside it',
    untitledPhoto: 'A photo without words beside it',
    seconds: (n: number) => count(n, 'second', 'seconds'),
  },
  /** Why a file could not be read back. */
  unreadable: {
    empty: 'This file is empty. Choose the file that was saved from a booklet: its name ends in “.booklet.html”.',
    'too-big': 'This file is larger than any booklet can be, so it was not opened. Choose one whose name ends in “.booklet.html”.',
    'not-a-booklet': 'This file is not a booklet. Choose one that was saved from a booklet: its name ends in “.booklet.html”.',
    'cut-short': 'The end of this file is missing, as if copying had stopped halfway. Copy it again from where it was saved.',
    newer: 'This file was saved by a newer version of these pages. Load this page anew and try once more.',
    damaged: 'Something in this file was changed, and its answers can no longer be read back. It may still open to be read, like any page.',
  },
};
