/** English phrases that the booklet on the screen says before its first answer. A file of its own: a slow phone loads these first, and the rest when it has time. */

export const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;

/** Names of bookmarks, by the slug that is saved. A slug of a later version is shown as it is. */
export const enNames: Readonly<Record<'patterns' | 'colours', Readonly<Record<string, string>>>> = {
  patterns: { waves: 'waves', leaves: 'leaves', stitches: 'stitches', roofs: 'rooftops', rain: 'rain' },
  colours: { red: 'red', blue: 'blue', green: 'green', yellow: 'yellow', brown: 'brown' },
};

export const nameOf = (names: Readonly<Record<string, string>>, slug: string) => (Object.hasOwn(names, slug) ? names[slug] : undefined) ?? slug;

export const enBookletScreen = {
  bookmarks: { waves: 'waves', leaves: 'leaves', stitches: 'stitches', roofs: 'rooftops', rain: 'rain' },
  blank: 'blank to fill',
  screen: {
    whose: 'Whose booklet is it?',
    openIt: (answers: number) => (answers === 0 ? 'nothing answered yet' : count(answers, 'answer', 'answers')),
    another: 'Begin another booklet',
    choose: 'Choose a bookmark',
    chooseNote: 'It stands for you, in place of a name. The booklet keeps your answers on this device and sends them to nobody.',
    pattern: 'What is on it?',
    colour: 'Which colour is it?',
    bookmark: (pattern: string, colour: string) => `The ${nameOf(enNames.colours, colour)} bookmark with ${nameOf(enNames.patterns, pattern)}`,
    yours: (pattern: string, colour: string) => `Your bookmark: ${nameOf(enNames.colours, colour)}, with ${nameOf(enNames.patterns, pattern)}`,
    taken: 'This bookmark is already in a booklet on this device. Opening it goes on with that one.',
    colours: { red: 'red', blue: 'blue', green: 'green', yellow: 'yellow', brown: 'brown' },
    when: 'When do you want to answer?',
    flows: { each: 'At each stop, while we read', end: 'When the story is over: first we read or watch all of it' },
    begin: 'Open the booklet',
    change: 'Put it away, and choose another bookmark',
    goneElsewhere: 'This booklet was erased in another window.',
    readFirst: 'First, the whole story',
    readFirstNote: 'Read the book together, or watch it, from the first page to the last. Nobody has to answer on the way. There is no hurry.',
    readDone: 'The story is over: turn the page',
    pages: 'Turn the pages',
    page: (n: number, of: number) => `page ${String(n)} of ${String(of)}`,
    forward: 'Turn the page',
    back: 'Back a page',
    keeping: {
      kept: 'Kept on this device.',
      full: 'There is no room left on this device, so the last answer is not kept. Go to your page of answers, and print it or save it as a file before you close this window.',
      blocked: 'This browser does not let the booklet keep anything. You can go on; but print your page of answers, or save it as a file, before you close this window.',
    },
    toMine: 'To my page of answers',
    how: 'How will you answer?',
    ways: { write: 'Write', draw: 'Draw', feeling: 'Choose a feeling word', say: 'Say it', act: 'Act it out', pass: 'Pass' },
    has: 'has something in it',
    write: {
      label: 'Your words',
      frames: 'Put one of these in to begin:',
      bank: 'Words to put in:',
      undo: 'Take back the last change',
      look: 'Look at it once more',
      looks: ['Is it a whole sentence?', 'Does it say why, with “because”?', 'Is there an end mark?'],
      lookNote: 'Nobody marks this. Change something, or leave it as it is.',
      two: 'There are two here: they were written on two devices, or in two windows. Both are kept. You can take one away.',
      takeAway: 'Take this one away',
    },
    say: {
      partner: 'Tell it to someone beside you, and listen to theirs.',
      aloud: 'Say it aloud to someone.',
      label: 'A grown-up can write down what you say, word for word',
      micOff: 'If the family likes, the booklet can also keep your voice on this device. A grown-up can allow that on the first page.',
    },
    act: {
      note: 'Show it with your hands, your face or all of you.',
      label: 'What did you do? One word is enough',
    },
    pass: {
      note: 'You may pass. Nobody asks why.',
      do: 'I pass on this one',
      done: 'You passed on this one.',
      undo: 'Answer after all',
    },
    models: 'What others might answer',
    modelsFirst: 'What others might answer: best after your own',
    expand: 'A grown-up might say it back like this:',
    late: {
      wait: 'This page is on its way.',
      missing: 'This part of the page did not come, perhaps because there is no network. What you answered is safe. Real paper is just as good.',
      again: 'Try again',
    },
    mine: { title: 'My page of answers' },
    grown: { title: 'For the grown-up' },
  },
};
